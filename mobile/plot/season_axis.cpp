#include "mobile/plot/season_axis.hpp"

#include <algorithm>
#include <cmath>

#include "engine/base/numbers.hpp"

namespace fleetrung::plot
{
namespace
{

constexpr int mostWeekTicks = 9;
constexpr double middayOfWeek = 0.5 / 7;

int weekStep(int weeks)
{
    for (const int step : {1, 2, 5, 10, 20})
        if (weeks <= step * mostWeekTicks)
            return step;
    return 50;
}

} // namespace

double weeksAt(const SeasonSpan& season, CivilDate day)
{
    return daysBetween(season.first, day) / 7.0;
}

Axis weekAxis(const SeasonSpan& season)
{
    Axis axis;
    axis.kind = Axis::Kind::Week;
    axis.title = "week";
    if (season.shownFrom)
        axis.from = std::max(std::floor(weeksAt(season, *season.shownFrom)), 0.0);
    const auto last = season.shownTo.value_or(season.last);
    axis.to = std::max(weeksAt(season, last + std::chrono::days{1}), axis.from + 1);
    const int first = static_cast<int>(axis.from) + 1, weeks = static_cast<int>(std::ceil(axis.to));
    const int step = weekStep(weeks - first + 1);
    // Week 1, then the round ones.
    for (int week = first; week <= weeks; week = (week / step + 1) * step)
        axis.ticks.push_back({week - 1.0, (week == first ? "week " : "") + integerText(week)});
    return axis;
}

std::vector<StripPart> phaseStrip(const SeasonSpan& season)
{
    std::vector<StripPart> strip;
    const auto axis = weekAxis(season);
    for (const auto& phase : season.phases) {
        const double from = std::max(weeksAt(season, phase.first), axis.from);
        const double to = std::min(weeksAt(season, phase.last + std::chrono::days{1}), axis.to);
        if (from < to)
            strip.push_back({phase.name, from, to});
    }
    return strip;
}

double placeOf(const SeasonSpan& season, CivilDate day)
{
    return weeksAt(season, day) + middayOfWeek;
}

Axis valueAxis(Extent extent, double least, int decimals)
{
    Axis axis;
    const double air = std::max(0.1 * (extent.to - extent.from), (least - (extent.to - extent.from)) / 2);
    axis.from = extent.from - air;
    axis.to = extent.to + air;
    axis.ticks = niceTicks(axis.from, axis.to, 6);
    axis.decimals = decimals;
    return axis;
}

void addToday(Plot& plot, const SeasonSpan& season)
{
    if (season.today && *season.today >= season.first && *season.today <= season.last)
        plot.primitives.push_back(Rule{Role::Today, "today", placeOf(season, *season.today)});
}

} // namespace fleetrung::plot
