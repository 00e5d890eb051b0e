// write_pdf FILE [letter|empty|crowded]: the invented season as PDF. A4 in metric units, or Letter in pounds and
// inches; a season in which nothing happened; one with long names and very many decisions. Exit code 1 and a sentence
// where it cannot be written.
#include <QGuiApplication>
#include <iostream>

#include "mobile/pdf/season_pdf.hpp"
#include "tests/report/invented_season.hpp"

namespace
{

using namespace fleetrung;

report::SeasonReport emptySeason()
{
    const auto full = invented::season();
    report::SeasonReport report;
    report.athlete.name = full.athlete.name;
    report.seasonName = full.seasonName;
    report.first = report.upTo = full.first;
    report.last = full.last;
    return report;
}

report::SeasonReport crowdedSeason()
{
    auto report = invented::season();
    report.athlete.name = "Anneliese-Friederike Oudenhoven-Castellanos y Vårdhaug-Lindqvist of the Northern Lakes";
    report.competitions.front().name = std::string(90, 'W');
    for (auto& rung : report.ladders.front().rungs)
        rung.name += " with a long pause at the bottom and both hands free";
    const auto once = report.decisions;
    while (report.decisions.size() < 300)
        report.decisions.insert(report.decisions.end(), once.begin(), once.end());
    report.decisions[100].reason = "\xD8\xB3\xD8\xB1\xD8\xB9\xD8\xA9, \xCE\xA9, \xE9\x80\x9F\xE3\x81\x84";
    return report;
}

} // namespace

int main(int count, char** arguments)
{
    const QGuiApplication application(count, arguments);
    const auto words = QGuiApplication::arguments();
    if (words.size() < 2)
        return 2;
    const auto kind = words.value(2);
    const bool letter = kind == QLatin1String("letter");
    const auto season = kind == QLatin1String("empty")     ? emptySeason()
                        : kind == QLatin1String("crowded") ? crowdedSeason()
                                                           : invented::season();
    const auto written = pdf::writeSeasonPdf(season, words[1], letter ? pdf::PageSize::Letter : pdf::PageSize::A4,
                                             letter ? pdf::Units::PoundsAndInches : pdf::Units::Metric);
    if (written)
        return 0;
    std::cerr << describe(written.error()) << "\n";
    return 1;
}
