#include <algorithm>

#include "engine/base/numbers.hpp"
#include "mobile/plot/pictures.hpp"
#include "mobile/plot/words.hpp"

namespace fleetrung::plot
{
namespace
{

constexpr double millisecondsPerSecond = 1000.0;
constexpr double shortestAxis = 500.0; // ms: the axis does not jump while the first repetitions come in

double axisEnd(const StrikeLineInput& input)
{
    double end = shortestAxis;
    if (input.targetBand)
        end = std::max(end, input.targetBand->to * millisecondsPerSecond);
    for (const auto& repetition : input.repetitions)
        end = std::max(end, (repetition.timeToPeak + 2 * repetition.uncertainty) * millisecondsPerSecond);
    double from = 0;
    roundOut(from, end, shortestAxis, 6);
    return end;
}

Mark markOf(const StrikeRepetition& repetition, double y, bool isLatest)
{
    Mark mark;
    mark.at = {repetition.timeToPeak * millisecondsPerSecond, y};
    mark.uncertainty = repetition.uncertainty * millisecondsPerSecond;
    mark.label = integerText(repetition.number);
    mark.series = repetition.side == Side::Both ? "repetition" : "repetition, " + sideText(repetition.side);
    if (repetition.side == Side::Right) {
        mark.role = Role::Second;
        mark.shape = Shape::Diamond;
    }
    if (isLatest) {
        mark.role = Role::Latest;
        mark.shape = repetition.side == Side::Right ? Shape::Diamond : Shape::Dot;
    }
    if (!repetition.counts)
        mark.shape = Shape::Cross;
    return mark;
}

std::vector<LegendEntry> legendOf(const StrikeLineInput& input)
{
    std::vector<LegendEntry> legend;
    const auto any = [&](auto test) { return std::any_of(input.repetitions.begin(), input.repetitions.end(), test); };
    if (any([](const auto& repetition) { return repetition.side == Side::Right; })) {
        legend.push_back({Role::Mark, LegendEntry::Sample::Mark, Shape::Ring, "left"});
        legend.push_back({Role::Second, LegendEntry::Sample::Mark, Shape::Diamond, "right"});
    }
    if (any([](const auto& repetition) { return !repetition.counts; }))
        legend.push_back({Role::Mark, LegendEntry::Sample::Mark, Shape::Cross, "no evidence"});
    return legend;
}

} // namespace

std::vector<ContactBand> sprintContactBands()
{
    return {{"top speed", {0.08, 0.12}}, {"first steps", {0.18, 0.22}}};
}

Plot strikeLine(const StrikeLineInput& input)
{
    Plot plot;
    plot.title = "Strike line";
    plot.valueIsX = true;
    plot.x.to = axisEnd(input);
    plot.x.ticks = niceTicks(0, plot.x.to, 6);
    plot.x.unit = "ms";
    plot.x.spokenUnit = "milliseconds";
    plot.x.title = "time from concentric onset to peak velocity";
    plot.y.visible = false;
    plot.y.to = static_cast<double>(std::max<std::size_t>(input.repetitions.size(), 4)) + 0.6;

    for (const auto& contact : input.contactBands)
        plot.primitives.push_back(Band{Role::ScaleBand,
                                       contact.name,
                                       contact.seconds.from * millisecondsPerSecond,
                                       contact.seconds.to * millisecondsPerSecond,
                                       {},
                                       {}});
    if (input.targetBand)
        plot.primitives.push_back(Band{Role::Band,
                                       "target band",
                                       input.targetBand->from * millisecondsPerSecond,
                                       input.targetBand->to * millisecondsPerSecond,
                                       {},
                                       {}});
    for (std::size_t i = 0; i < input.repetitions.size(); ++i)
        plot.primitives.push_back(
            markOf(input.repetitions[i], static_cast<double>(i) + 0.8, i + 1 == input.repetitions.size()));
    plot.legend = legendOf(input);
    plot.note = "Each mark is a repetition, from concentric onset.";
    if (!input.contactBands.empty())
        plot.note += " Sprint contact times are for scale, not a goal.";
    return plot;
}

} // namespace fleetrung::plot
