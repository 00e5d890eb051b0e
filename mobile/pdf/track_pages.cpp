#include "engine/report/words.hpp"
#include "mobile/pdf/report_pages.hpp"
#include "mobile/pdf/report_pictures.hpp"

namespace fleetrung::pdf
{
namespace
{

constexpr double sprintHeight = 165; // points
constexpr std::size_t fewestForPicture = 3;

QString orNotKnown(const std::string& text)
{
    return text.empty() ? notKnown() : qtText(text);
}

QStringList sprintRow(const report::Sprint& run)
{
    return {qtText(report::dayText(run.day)),
            qtText(report::numberText(run.timeS, 2)) + QStringLiteral(" s"),
            run.windMps ? qtText(report::signedText(*run.windMps, 1)) + QStringLiteral(" m/s") : notKnown(),
            orNotKnown(run.surface),
            orNotKnown(run.shoes),
            orNotKnown(run.timing),
            run.runInM ? qtText(report::numberText(*run.runInM, 0)) + QStringLiteral(" m") : notKnown(),
            run.competition ? QStringLiteral("competition") : QStringLiteral("training")};
}

void setTest(PageFlow& flow, const report::SeasonReport& report, const std::string& test)
{
    std::vector<QStringList> rows;
    for (const auto& run : report.sprints)
        if (run.test == test)
            rows.push_back(sprintRow(run));
    const bool pictured = rows.size() >= fewestForPicture;
    flow.subsection(qtText(report::capitalised(test)));
    if (pictured)
        flow.picture(sprintTrendOf(report, test), sprintHeight);
    flow.table({{QStringLiteral("Day"), 1.7},
                {QStringLiteral("Time"), 0.9, true},
                {QStringLiteral("Wind"), 1, true},
                {QStringLiteral("Surface"), 1},
                {QStringLiteral("Shoes"), 1},
                {QStringLiteral("Timing"), 1.1},
                {QStringLiteral("Run-in"), 0.8, true},
                {QStringLiteral("Where"), 1.2}},
               rows);
}

QString measuredText(const report::Measurement& value, double scale, int decimals, const QString& unit)
{
    if (!value.value)
        return notKnown();
    QString text = qtText(report::numberText(*value.value * scale, decimals));
    if (value.uncertainty)
        text += QStringLiteral(" ± ") + qtText(report::numberText(*value.uncertainty * scale, decimals));
    return text + QLatin1Char(' ') + unit;
}

void setJumps(PageFlow& flow, const report::SeasonReport& report, Units units)
{
    if (report.jumps.empty())
        return;
    flow.section(QStringLiteral("Jumps"));
    std::vector<QStringList> rows;
    for (const auto& jump : report.jumps) {
        const bool metric = units == Units::Metric;
        rows.push_back({qtText(report::dayText(jump.day)), qtText(jump.kind) + qtText(report::sideWords(jump.side)),
                        jump.boxHeightM ? heightText(*jump.boxHeightM, units) : notKnown(),
                        measuredText(jump.contactTime, 1000, 0, QStringLiteral("ms")),
                        jump.distanceM ? qtText(report::numberText(*jump.distanceM, 2)) + QStringLiteral(" m")
                                       : measuredText(jump.height, metric ? 100 : 1 / 0.0254, 1,
                                                      metric ? QStringLiteral("cm") : QStringLiteral("in")),
                        measuredText(jump.reactiveStrength, 1, 2, QStringLiteral("m/s"))});
    }
    flow.table({{QStringLiteral("Day"), 1.4},
                {QStringLiteral("Jump"), 1.5},
                {QStringLiteral("Box"), 0.8, true},
                {QStringLiteral("Contact"), 1.2, true},
                {QStringLiteral("Height or distance"), 1.5, true},
                {QStringLiteral("Reactive strength"), 1.5, true}},
               rows);
    flow.quiet(QStringLiteral("± is the standard uncertainty. Reactive strength: jump height over contact time."));
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
    setJumps(flow, report, units);
}

} // namespace fleetrung::pdf
