#include "mobile/plot/load_velocity_picture.hpp"

#include "mobile/plot/season_axis.hpp"
#include "mobile/plot/touch.hpp"
#include "mobile/plot/words.hpp"

namespace fleetrung::plot
{
namespace
{

Point placeOf(const strength::LoadVelocityPoint& point, const LoadUnit& unit)
{
    return {point.loadKg / unit.kilograms, point.velocity};
}

/// The line from the fastest point's velocity down to that of the 1RM, and the edges of where it may lie.
void addCurve(Plot& plot, const strength::LoadVelocityCurve& curve, const LoadUnit& unit)
{
    const auto& line = curve.line;
    const auto loadAt = [&](double velocity) { return (velocity - line.velocityAtZero) / line.slope / unit.kilograms; };
    Line low{Role::Planned, "", {}, false}, high = low;
    for (const auto& reach : curve.band) {
        low.points.push_back({reach.low / unit.kilograms, reach.velocity});
        high.points.push_back({reach.high / unit.kilograms, reach.velocity});
    }
    if (!low.points.empty()) {
        plot.primitives.push_back(std::move(low));
        plot.primitives.push_back(std::move(high));
        plot.legend.push_back({Role::Planned, LegendEntry::Sample::Line, Shape::Ring, "95 %"});
    }
    const double slowest = line.velocityAtMaximum;
    plot.primitives.push_back(
        Line{Role::Taken, "the line", {{loadAt(curve.fastest), curve.fastest}, {loadAt(slowest), slowest}}, false});
    plot.legend.push_back({Role::Taken, LegendEntry::Sample::Line, Shape::Ring, "your line"});
    if (!curve.slowest)
        return;
    Mark mark;
    mark.role = Role::Latest;
    mark.shape = Shape::Diamond;
    mark.at = {loadAt(slowest), slowest};
    mark.label = numberText(mark.at.x, 0);
    mark.series = "estimated 1RM";
    mark.name = numberText(mark.at.x, 0) + " " + unit.spoken;
    plot.primitives.push_back(mark);
    plot.legend.push_back({Role::Latest, LegendEntry::Sample::Mark, Shape::Diamond, "e1RM"});
}

/// Wide enough for everything drawn, with a little air.
void setAxes(Plot& plot, const LoadUnit& unit)
{
    Extent loads, velocities;
    for (const auto& primitive : plot.primitives) {
        if (const auto* line = std::get_if<Line>(&primitive))
            for (const auto& point : line->points) {
                loads.hold(point.x, point.x);
                velocities.hold(point.y, point.y);
            }
        if (const auto* mark = std::get_if<Mark>(&primitive)) {
            loads.hold(mark->at.x, mark->at.x);
            velocities.hold(mark->at.y, mark->at.y);
        }
    }
    plot.x = valueAxis(loads, 10, 0);
    plot.x.title = "load";
    plot.x.unit = unit.name;
    plot.x.spokenUnit = unit.spoken;
    plot.y = valueAxis(velocities, 0.2, 2);
    plot.y.title = "mean velocity";
    plot.y.unit = "m/s";
    plot.y.spokenUnit = "metres a second";
}

} // namespace

Plot loadVelocityPicture(const std::string& lift, std::span<const strength::LoadVelocityPoint> points,
                         const strength::LoadVelocityCurve* curve, const LoadUnit& unit,
                         std::optional<std::size_t> chosen)
{
    Plot plot;
    plot.title = lift + ", load and velocity";
    if (points.empty()) {
        plot.empty = "No measured loads yet.";
        return plot;
    }
    plot.legend = {{Role::Mark, LegendEntry::Sample::Mark, Shape::Ring, "fastest at a load"}};
    if (curve != nullptr)
        addCurve(plot, *curve, unit);
    for (const auto& point : points) {
        Mark mark;
        mark.at = placeOf(point, unit);
        mark.series = "fastest repetition of a day";
        mark.name = numberText(mark.at.x, 0) + " " + unit.spoken;
        plot.primitives.push_back(mark);
    }
    setAxes(plot, unit);
    if (chosen && *chosen < points.size())
        addChosen(plot, placeOf(points[*chosen], unit), numberText(points[*chosen].velocity, 2));
    return plot;
}

std::optional<std::size_t> loadVelocityHit(const Plot& picture, std::span<const strength::LoadVelocityPoint> points,
                                           const LoadUnit& unit, Point place)
{
    std::vector<Point> places;
    for (const auto& point : points)
        places.push_back(placeOf(point, unit));
    return nearestPoint(picture, places, place);
}

} // namespace fleetrung::plot
