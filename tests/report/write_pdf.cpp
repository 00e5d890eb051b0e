// write_pdf FILE [letter]: the invented season as PDF; A4 in metric units, or Letter in pounds and inches. Exit code 1
// and a sentence where it cannot be written.
#include <QGuiApplication>
#include <iostream>

#include "mobile/pdf/season_pdf.hpp"
#include "tests/report/invented_season.hpp"

int main(int count, char** arguments)
{
    using namespace fleetrung;
    const QGuiApplication application(count, arguments);
    const auto words = QGuiApplication::arguments();
    if (words.size() < 2)
        return 2;
    const bool letter = words.size() > 2 && words[2] == QLatin1String("letter");
    const auto written =
        pdf::writeSeasonPdf(invented::season(), words[1], letter ? pdf::PageSize::Letter : pdf::PageSize::A4,
                            letter ? pdf::Units::PoundsAndInches : pdf::Units::Metric);
    if (written)
        return 0;
    std::cerr << describe(written.error()) << "\n";
    return 1;
}
