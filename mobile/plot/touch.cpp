#include "mobile/plot/touch.hpp"

#include <algorithm>
#include <cmath>

namespace fleetrung::plot
{
namespace
{

// A fingertip on a phone, as shares of the picture. Starting values of this project.
constexpr double reachAcross = 1.0 / 10;
constexpr double reachUp = 1.0 / 4;

} // namespace

std::optional<std::size_t> nearestPoint(const Plot& plot, std::span<const Point> points, Point place)
{
    const double across = reachAcross * (plot.x.to - plot.x.from);
    const double up = reachUp * (plot.y.to - plot.y.from);
    std::optional<std::size_t> nearest;
    double least = 1;
    for (std::size_t i = 0; i < points.size(); ++i) {
        const double distance = std::hypot((points[i].x - place.x) / across, (points[i].y - place.y) / up);
        if (distance > least)
            continue;
        least = distance;
        nearest = i;
    }
    return nearest;
}

void addChosen(Plot& plot, Point at, std::string label)
{
    const auto isNewest = [&at](const Primitive& primitive) {
        const auto* mark = std::get_if<Mark>(&primitive);
        return mark != nullptr && mark->role == Role::Latest && mark->at.x == at.x && mark->at.y == at.y;
    };
    Mark mark;
    mark.role = Role::Chosen;
    mark.shape = Shape::Ring;
    mark.at = at;
    if (std::ranges::none_of(plot.primitives, isNewest))
        mark.label = std::move(label);
    plot.primitives.push_back(std::move(mark));
}

} // namespace fleetrung::plot
