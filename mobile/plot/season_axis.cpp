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
    axis.to = std::max(weeksAt(season, season.last + std::chrono::days{1}), 1.0);
    const int weeks = static_cast<int>(std::ceil(axis.to));
    const int step = weekStep(weeks);
    for (int week = 1; week <= weeks; week = week == 1 && step > 1 ? step : week + step)
        axis.ticks.push_back({week - 1.0, (week == 1 ? "week " : "") + integerText(week)});
    return axis;
}

std::vector<StripPart> phaseStrip(const SeasonSpan& season)
{
    std::vector<StripPart> strip;
    for (const auto& phase : season.phases)
        strip.push_back({phase.name, weeksAt(season, phase.first), weeksAt(season, phase.last + std::chrono::days{1})});
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
