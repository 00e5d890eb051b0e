#include "mobile/pdf/report_pictures.hpp"

#include <algorithm>

namespace fleetrung::pdf
{
namespace
{

plot::Side plotSide(report::Side side)
{
    switch (side) {
    case report::Side::Left:
        return plot::Side::Left;
    case report::Side::Right:
        return plot::Side::Right;
    case report::Side::Both:
        break;
    }
    return plot::Side::Both;
}

plot::SeasonSpan spanOf(const report::SeasonReport& report)
{
    plot::SeasonSpan span;
    span.first = report.first;
    span.last = report.last;
    span.today = report.upTo;
    for (const auto& phase : report.phases)
        span.phases.push_back({phase.name, phase.first, phase.last});
    for (const auto& race : report.competitions)
        span.races.push_back({race.day, race.name, race.main});
    return span;
}

std::vector<plot::StairStay> staysOf(const std::vector<report::Stay>& stays)
{
    std::vector<plot::StairStay> out;
    for (const auto& stay : stays)
        out.push_back({stay.rung, stay.first, stay.last});
    return out;
}

/// A rung of the picture begins where the evidence changes rung.
std::vector<plot::TrendStay> trendStays(const report::Ladder& ladder)
{
    std::vector<plot::TrendStay> stays;
    std::size_t rung = ladder.rungs.size();
    for (const auto& point : ladder.evidence) {
        if (!point.time.value || point.rung >= ladder.rungs.size())
            continue;
        if (point.rung != rung) {
            rung = point.rung;
            auto& stay = stays.emplace_back();
            stay.rung = ladder.rungs[rung].name;
            if (const auto& band = ladder.rungs[rung].targetBand)
                stay.targetBand = plot::Span{band->from, band->to};
        }
        stays.back().points.push_back(
            {point.day, *point.time.value, point.time.uncertainty.value_or(0), plotSide(point.side)});
    }
    return stays;
}

} // namespace

plot::Plot stairOf(const report::SeasonReport& report, const report::Ladder& ladder)
{
    plot::StairInput input;
    input.ladder = ladder.name;
    for (const auto& rung : ladder.rungs)
        input.rungs.push_back(rung.name);
    input.planned = staysOf(ladder.planned);
    input.taken = staysOf(ladder.taken);
    input.season = spanOf(report);
    return plot::stair(input);
}

plot::Plot trendOf(const report::SeasonReport& report, const report::Ladder& ladder)
{
    plot::TpvTrendInput input;
    input.lift = ladder.name;
    input.quantity = ladder.evidenceName;
    input.stays = trendStays(ladder);
    input.season = spanOf(report);
    return plot::tpvTrend(input);
}

plot::Plot sprintTrendOf(const report::SeasonReport& report, const std::string& test)
{
    plot::SprintTrendInput input;
    input.season = spanOf(report);
    auto& series = input.tests.emplace_back();
    series.test = test;
    for (const auto& run : report.sprints)
        if (run.test == test)
            series.points.push_back({run.day, run.timeS, run.windMps});
    return plot::sprintTrend(input);
}

plot::Plot speedCurveOf(const report::SpeedCurve& curve)
{
    return plot::sprintCurve(plot::sprintCurveInput(*curve.fit, curve.beamM));
}

plot::Plot splitResidualsOf(const report::SpeedCurve& curve)
{
    return plot::splitResiduals(plot::sprintCurveInput(*curve.fit, curve.beamM));
}

std::vector<std::string> sprintTests(const report::SeasonReport& report)
{
    std::vector<std::string> tests;
    for (const auto& run : report.sprints)
        if (std::find(tests.begin(), tests.end(), run.test) == tests.end())
            tests.push_back(run.test);
    return tests;
}

} // namespace fleetrung::pdf
