#include <algorithm>
#include <cmath>

#include "engine/base/numbers.hpp"
#include "mobile/plot/pictures.hpp"
#include "mobile/plot/season_axis.hpp"
#include "mobile/plot/words.hpp"

namespace fleetrung::plot
{
namespace
{

constexpr int mostTicks = 5;
constexpr int curvePoints = 80;

std::string metres(double distance)
{
    return shortestText(roundTo(distance, 100));
}

Axis wayAxis(const SprintCurveInput& input)
{
    Axis axis;
    axis.to = input.stretches.back().metres.to;
    axis.ticks = niceTicks(0, axis.to, mostTicks);
    // The last metres stand in the picture, and with them the unit.
    axis.unit = "m";
    axis.spokenUnit = "metres";
    axis.title = "way";
    return axis;
}

Mark markOf(const SprintStretch& stretch, Point at, const std::string& series, const std::string& name)
{
    Mark mark;
    mark.at = at;
    mark.series = stretch.used ? series : series + " left out of the fit";
    mark.shape = stretch.used ? Shape::Ring : Shape::Cross;
    mark.name = name;
    return mark;
}

void addLegend(Plot& plot, const SprintCurveInput& input, const std::string& name)
{
    plot.legend.push_back({Role::Mark, LegendEntry::Sample::Mark, Shape::Ring, name});
    if (!std::ranges::all_of(input.stretches, &SprintStretch::used))
        plot.legend.push_back({Role::Mark, LegendEntry::Sample::Mark, Shape::Cross, "left out"});
}

} // namespace

SprintCurveInput sprintCurveInput(const sprint::SprintFit& fit, double beam)
{
    SprintCurveInput input;
    if (fit.residuals.empty())
        return input;
    input.topSpeed = fit.model.vmax;
    input.residualDeviation = fit.residualDeviation;
    const double last = fit.residuals.back().split.distance;
    for (int i = 0; i <= curvePoints; ++i) {
        const double share = static_cast<double>(i) / curvePoints;
        const double way = last * share * share; // closer where the speed rises fast
        input.curve.push_back({way, fit.model.speedAt(fit.model.timeTo(beam + way))});
    }
    // The first stretch takes what is left of its split once the wait for the first movement is taken off.
    const auto& first = fit.residuals.front();
    double from = 0;
    double began =
        first.split.time - first.residual - (fit.model.timeTo(beam + first.split.distance) - fit.model.timeTo(beam));
    for (const auto& [split, residual, used, why] : fit.residuals) {
        input.stretches.push_back(
            {{from, split.distance}, (split.distance - from) / (split.time - began), residual, used});
        from = split.distance;
        began = split.time;
    }
    return input;
}

Plot sprintCurve(const SprintCurveInput& input)
{
    Plot plot;
    plot.title = "Speed along the run";
    if (input.curve.empty() || input.stretches.empty()) {
        plot.empty = "No fit.";
        return plot;
    }
    plot.x = wayAxis(input);
    plot.y.to = input.topSpeed;
    for (const auto& stretch : input.stretches)
        plot.y.to = std::max(plot.y.to, stretch.speed);
    roundOut(plot.y.from, plot.y.to, 1, mostTicks);
    plot.y.ticks = niceTicks(plot.y.from, plot.y.to, mostTicks);
    plot.y.unit = "m/s";
    plot.y.spokenUnit = "metres per second";
    plot.y.title = "speed";
    plot.y.decimals = 2;

    plot.primitives.push_back(Line{Role::Planned, "", {{0, input.topSpeed}, {plot.x.to, input.topSpeed}}, false});
    plot.primitives.push_back(Line{Role::Taken, "fitted speed", input.curve, false});
    for (const auto& stretch : input.stretches) {
        const auto& [from, to] = stretch.metres;
        plot.primitives.push_back(Line{Role::Mark, "", {{from, stretch.speed}, {to, stretch.speed}}, false});
        plot.primitives.push_back(markOf(stretch, {(from + to) / 2, stretch.speed}, "mean speed of a stretch",
                                         metres(from) + " to " + metres(to) + " m"));
    }
    plot.legend = {{Role::Taken, LegendEntry::Sample::Line, Shape::Ring, "fitted"},
                   {Role::Planned, LegendEntry::Sample::Line, Shape::Ring, "top speed"}};
    addLegend(plot, input, "mean speed");
    return plot;
}

Plot splitResiduals(const SprintCurveInput& input)
{
    Plot plot;
    plot.title = "Splits against the fit";
    if (input.stretches.empty()) {
        plot.empty = "No fit.";
        return plot;
    }
    plot.x = wayAxis(input);
    Extent extent;
    extent.hold(0, 0);
    for (const auto& stretch : input.stretches)
        extent.hold(1000 * stretch.residual, 1000 * stretch.residual);
    constexpr double least = 20; // ms: noise of a thousandth must not fill the picture
    plot.y = valueAxis(extent, least, 0);
    plot.y.unit = "ms";
    plot.y.spokenUnit = "milliseconds";
    plot.y.title = "measured less fitted";

    const double deviation = 1000 * input.residualDeviation;
    if (deviation > 0)
        plot.primitives.push_back(Band{Role::Phase, "", {}, {}, -deviation, deviation});
    plot.primitives.push_back(Line{Role::Axis, "", {{0, 0}, {plot.x.to, 0}}, false});
    for (const auto& stretch : input.stretches) {
        const double value = 1000 * stretch.residual;
        Mark mark = markOf(stretch, {stretch.metres.to, value}, "split", metres(stretch.metres.to) + " m");
        mark.label = signedText(value, 0);
        plot.primitives.push_back(mark);
    }
    addLegend(plot, input, "a split");
    if (deviation > 0)
        plot.legend.push_back({Role::Phase, LegendEntry::Sample::Area, Shape::Ring, "usual error"});
    plot.note = "Above the line: later than fitted.";
    return plot;
}

} // namespace fleetrung::plot
