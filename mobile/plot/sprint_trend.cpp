#include <algorithm>
#include <map>

#include "mobile/plot/pictures.hpp"
#include "mobile/plot/season_axis.hpp"
#include "mobile/plot/touch.hpp"
#include "mobile/plot/words.hpp"

namespace fleetrung::plot
{

std::optional<std::size_t> sprintHit(const SprintTrendInput& input, std::size_t which, Point place)
{
    if (which >= input.tests.size())
        return std::nullopt;
    std::vector<Point> points;
    for (const auto& point : input.tests[which].points)
        points.push_back({placeOf(input.season, point.day), point.seconds});
    return nearestPoint(sprintTrend(input, which), points, place);
}

Plot sprintTrend(const SprintTrendInput& input, std::size_t which, std::optional<std::size_t> chosen)
{
    Plot plot;
    plot.title = which < input.tests.size() ? input.tests[which].test : "Sprint times";
    plot.x = weekAxis(input.season);
    if (which >= input.tests.size() || input.tests[which].points.empty()) {
        plot.empty = "No runs yet.";
        return plot;
    }
    const auto& points = input.tests[which].points;
    Extent extent;
    std::map<CivilDate, double> best;
    bool wind = false;
    for (const auto& point : points) {
        extent.hold(point.seconds, point.seconds);
        const auto known = best.find(point.day);
        best[point.day] = known == best.end() ? point.seconds : std::min(known->second, point.seconds);
        wind = wind || point.windMps;
    }
    plot.y = valueAxis(extent, 0.08, 2);
    plot.y.unit = "s";
    plot.y.spokenUnit = "seconds";
    plot.y.title = "time";
    plot.strip = phaseStrip(input.season);

    Line line{Role::Taken, "", {}, false};
    for (const auto& [day, seconds] : best)
        line.points.push_back({placeOf(input.season, day), seconds});
    plot.primitives.push_back(line);
    for (const auto& point : points) {
        Mark mark;
        mark.at = {placeOf(input.season, point.day), point.seconds};
        mark.series = "run";
        if (point.windMps && point.seconds == best[point.day])
            mark.label = signedText(*point.windMps, 1);
        plot.primitives.push_back(mark);
    }
    if (chosen && *chosen < points.size())
        addChosen(plot, {placeOf(input.season, points[*chosen].day), points[*chosen].seconds},
                  numberText(points[*chosen].seconds, plot.y.decimals));
    plot.legend = {{Role::Mark, LegendEntry::Sample::Mark, Shape::Ring, "a run"},
                   {Role::Taken, LegendEntry::Sample::Line, Shape::Ring, "best of the day"}};
    plot.note =
        wind ? "Lower is faster. Beside the best of a day: wind in m/s, tail wind positive." : "Lower is faster.";
    return plot;
}

} // namespace fleetrung::plot
