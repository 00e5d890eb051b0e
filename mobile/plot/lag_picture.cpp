#include "mobile/plot/lag_picture.hpp"

#include <algorithm>

#include "engine/base/numbers.hpp"

namespace fleetrung::plot
{
namespace
{

constexpr double aside = 0.4; // weeks left and right of the outermost lags
constexpr double over = 0.1;  // of correlation, above 1 and below -1

Mark lagMark(const transfer::Lag& lag)
{
    Mark mark;
    mark.at = {static_cast<double>(lag.weeks), *lag.correlation};
    mark.label = integerText(lag.pairs);
    mark.series = "lag";
    mark.name =
        integerText(lag.weeks) + (lag.weeks == 1 ? " week, " : " weeks, ") + integerText(lag.pairs) + " with both";
    if (lag.chanceReaches && *lag.correlation > *lag.chanceReaches) {
        mark.shape = Shape::Dot;
        mark.role = Role::Taken;
    }
    return mark;
}

/// One dash a lag: chance has no value between them.
void addChance(Plot& plot, std::span<const transfer::Lag> lags)
{
    Line line{Role::Planned, "chance reaches", {}, false};
    for (const auto& lag : lags)
        if (lag.chanceReaches)
            line.points.push_back({static_cast<double>(lag.weeks), std::min(*lag.chanceReaches, 1.0)});
    if (line.points.empty())
        return;
    plot.legend.push_back({Role::Planned, LegendEntry::Sample::Line, Shape::Ring, line.name});
    plot.primitives.push_back(std::move(line));
}

} // namespace

Plot lagPicture(std::span<const transfer::Lag> lags)
{
    Plot plot;
    plot.title = "Bar and sprint by lag";
    if (std::ranges::none_of(lags, [](const auto& lag) { return lag.correlation.has_value(); })) {
        plot.empty = "No weeks with both yet.";
        return plot;
    }
    plot.x.from = -aside;
    plot.x.to = transfer::longestLag + aside;
    plot.x.title = "weeks from bar to sprint";
    plot.x.unit = plot.x.spokenUnit = "weeks";
    for (int weeks = 0; weeks <= transfer::longestLag; ++weeks)
        plot.x.ticks.push_back({static_cast<double>(weeks), integerText(weeks)});
    plot.y.from = -1 - over;
    plot.y.to = 1 + over;
    plot.y.title = "rank correlation";
    plot.y.ticks = niceTicks(-1, 1, 5);
    plot.y.decimals = 2;
    addChance(plot, lags);
    for (const auto& lag : lags) {
        if (!lag.correlation)
            continue;
        const auto x = static_cast<double>(lag.weeks);
        if (lag.low && lag.high)
            plot.primitives.push_back(Line{Role::Mark, "", {{x, *lag.low}, {x, *lag.high}}, false});
        plot.primitives.push_back(lagMark(lag));
    }
    plot.legend.push_back({Role::Mark, LegendEntry::Sample::Mark, Shape::Ring, "weeks counted"});
    plot.note = "Above zero: quicker bar, quicker sprint that many weeks later. Whiskers: 95 %, for show.";
    return plot;
}

} // namespace fleetrung::plot
