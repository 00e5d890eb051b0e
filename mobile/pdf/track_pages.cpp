#include <algorithm>

#include "engine/report/words.hpp"
#include "mobile/pdf/by_time.hpp"
#include "mobile/pdf/report_pages.hpp"
#include "mobile/pdf/report_pictures.hpp"

namespace fleetrung::pdf
{
namespace
{

constexpr double sprintHeight = 165; // points
constexpr std::size_t fewestForPicture = 3;

using Runs = std::vector<const report::Sprint*>;

QString orNotKnown(const std::string& text)
{
    return text.empty() ? notKnown() : qtText(text);
}

QString timeText(const report::Sprint& run)
{
    return qtText(report::numberText(run.timeS, 2));
}

/// "2.06 (+1.4)": with its wind, and its surface where that is not the best one's.
QString besideText(const report::Sprint& run, const report::Sprint& best)
{
    QStringList notes;
    if (run.windMps)
        notes << qtText(report::signedText(*run.windMps, 1));
    if (run.surface != best.surface)
        notes << qtText(run.surface);
    return notes.isEmpty() ? timeText(run)
                           : timeText(run) + QStringLiteral(" (") + notes.join(QStringLiteral(", ")) + QLatin1Char(')');
}

QStringList sprintRow(const QString& when, const Runs& runs)
{
    const auto& best =
        **std::min_element(runs.begin(), runs.end(), [](const auto* a, const auto* b) { return a->timeS < b->timeS; });
    QStringList others;
    for (const auto* run : runs)
        if (run != &best)
            others << besideText(*run, best);
    return {best.competition ? when + QStringLiteral(", race") : when,
            timeText(best) + QStringLiteral(" s"),
            best.windMps ? qtText(report::signedText(*best.windMps, 1)) + QStringLiteral(" m/s") : notKnown(),
            orNotKnown(best.surface),
            orNotKnown(best.shoes),
            orNotKnown(best.timing),
            best.runInM ? qtText(report::numberText(*best.runInM, 0)) + QStringLiteral(" m") : notKnown(),
            others.isEmpty() ? notKnown() : others.join(QStringLiteral(", "))};
}

void setTest(PageFlow& flow, const report::SeasonReport& report, const std::string& test)
{
    Runs runs;
    for (const auto& run : report.sprints)
        if (run.test == test)
            runs.push_back(&run);
    std::vector<QStringList> rows;
    for (const auto& [when, group] : byTime(report, runs))
        rows.push_back(sprintRow(when, group));
    flow.subsection(qtText(report::capitalised(test)));
    if (runs.size() >= fewestForPicture)
        flow.picture(sprintTrendOf(report, test), sprintHeight);
    flow.table({{QStringLiteral("When"), 2.55},
                {QStringLiteral("Best"), 1.1, true},
                {QStringLiteral("Wind"), 1, true},
                {QStringLiteral("Surface"), 0.95},
                {QStringLiteral("Shoes"), 0.9},
                {QStringLiteral("Timing"), 1.1},
                {QStringLiteral("Run-in"), 0.8, true},
                {QStringLiteral("Other times (wind, m/s)"), 2.6}},
               rows);
    setSprintFits(flow, report, test);
}

} // namespace

void setTrack(PageFlow& flow, const report::SeasonReport& report, Units units)
{
    if (!report.sprints.empty()) {
        flow.section(QStringLiteral("Sprint times"));
        flow.lead(
            QStringLiteral("Only times of the same test are comparable; wind, surface and shoes stand beside each."));
        for (const auto& test : sprintTests(report))
            setTest(flow, report, test);
    }
    setTrackWork(flow, report, units);
    setJumps(flow, report, units);
}

} // namespace fleetrung::pdf
