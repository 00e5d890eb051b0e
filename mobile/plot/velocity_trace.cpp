#include <algorithm>

#include "engine/base/numbers.hpp"
#include "mobile/plot/pictures.hpp"

namespace fleetrung::plot
{
namespace
{

/// Lowest and highest point of each of equal stretches: peaks survive, whatever the number of points.
std::vector<Point> thinned(const VelocityTraceInput& input, std::size_t size)
{
    std::vector<Point> points;
    const std::size_t stretches = std::max<std::size_t>(input.mostPoints / 2, 1);
    const std::size_t width = std::max<std::size_t>((size + stretches - 1) / stretches, 1);
    for (std::size_t begin = 0; begin < size; begin += width) {
        const std::size_t end = std::min(begin + width, size);
        const auto first = input.velocity.begin() + static_cast<std::ptrdiff_t>(begin);
        const auto last = input.velocity.begin() + static_cast<std::ptrdiff_t>(end);
        const auto [low, high] = std::minmax_element(first, last);
        auto lowIndex = static_cast<std::size_t>(low - input.velocity.begin());
        auto highIndex = static_cast<std::size_t>(high - input.velocity.begin());
        if (lowIndex > highIndex)
            std::swap(lowIndex, highIndex);
        points.push_back({input.time[lowIndex], input.velocity[lowIndex]});
        if (highIndex != lowIndex)
            points.push_back({input.time[highIndex], input.velocity[highIndex]});
    }
    return points;
}

double velocityAt(const VelocityTraceInput& input, std::size_t size, double time)
{
    const auto end = input.time.begin() + static_cast<std::ptrdiff_t>(size);
    const auto after = std::lower_bound(input.time.begin(), end, time);
    const auto index = std::min(static_cast<std::size_t>(after - input.time.begin()), size - 1);
    return input.velocity[index];
}

} // namespace

Plot velocityTrace(const VelocityTraceInput& input)
{
    Plot plot;
    plot.title = "Bar velocity";
    const std::size_t size = std::min(input.time.size(), input.velocity.size());
    if (size < 2) {
        plot.empty = "No recording.";
        return plot;
    }
    const auto end = input.velocity.begin() + static_cast<std::ptrdiff_t>(size);
    const auto [low, high] = std::minmax_element(input.velocity.begin(), end);
    plot.x.from = input.time.front();
    plot.x.to = input.time[size - 1];
    plot.x.ticks = niceTicks(plot.x.from, plot.x.to, 8);
    plot.x.unit = "s";
    plot.x.spokenUnit = "seconds";
    plot.x.title = "time";
    plot.x.decimals = 1;
    plot.y.from = std::min(*low, 0.0);
    plot.y.to = *high;
    roundOut(plot.y.from, plot.y.to, 0.5, 5);
    plot.y.ticks = niceTicks(plot.y.from, plot.y.to, 5);
    plot.y.unit = "m/s";
    plot.y.spokenUnit = "metres per second";
    plot.y.title = "vertical velocity";
    plot.y.decimals = 2;

    for (const auto& phase : input.concentric)
        plot.primitives.push_back(Band{Role::Band, "", phase.from, phase.to, {}, {}});
    plot.primitives.push_back(Line{Role::Axis, "", {{plot.x.from, 0}, {plot.x.to, 0}}, false});
    plot.primitives.push_back(Line{Role::Taken, "vertical velocity", thinned(input, size), false});
    for (std::size_t i = 0; i < input.peakTimes.size(); ++i) {
        Mark mark;
        mark.at = {input.peakTimes[i], velocityAt(input, size, input.peakTimes[i])};
        mark.label = integerText(static_cast<std::int64_t>(i) + 1);
        mark.series = "peak velocity of repetition";
        plot.primitives.push_back(mark);
    }
    if (!input.concentric.empty())
        plot.legend.push_back({Role::Band, LegendEntry::Sample::Area, Shape::Ring, "concentric phase"});
    if (!input.peakTimes.empty())
        plot.legend.push_back({Role::Mark, LegendEntry::Sample::Mark, Shape::Ring, "peak velocity"});
    return plot;
}

} // namespace fleetrung::plot
