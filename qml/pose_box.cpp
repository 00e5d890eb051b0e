#include "qml/pose_box.hpp"

#include <algorithm>
#include <cmath>

namespace fleetrung::ui
{
namespace
{

// Half edges of the box, and how thick the slab of its main side is.
constexpr double halfLength = 0.85;
constexpr double halfWidth = 0.58;
constexpr double halfHeight = 0.30;
constexpr double slab = 0.20;

constexpr double pi = 3.14159265358979;

Point3 scaled(const Point3& p, double by)
{
    return {p.x * by, p.y * by, p.z * by};
}

Point3 sum(const Point3& a, const Point3& b)
{
    return {a.x + b.x, a.y + b.y, a.z + b.z};
}

/// Nearness to the eye, which looks from X, Y and Z alike.
double nearness(const Point3& p)
{
    return p.x + p.y + 0.8 * p.z;
}

struct Slab {
    Point3 low, high;
    bool main;
};

/// One side of a slab: the axis it is across, and whether it is the high end.
std::array<Point3, 4> corners(const Slab& box, int axis, bool high)
{
    const auto at = [&box, axis, high](bool first, bool second) {
        const std::array<double, 3> low{box.low.x, box.low.y, box.low.z};
        const std::array<double, 3> top{box.high.x, box.high.y, box.high.z};
        std::array<double, 3> p{};
        const auto across = static_cast<std::size_t>(axis);
        const std::size_t one = (across + 1) % 3;
        const std::size_t two = (across + 2) % 3;
        p[across] = high ? top[across] : low[across];
        p[one] = first ? top[one] : low[one];
        p[two] = second ? top[two] : low[two];
        return Point3{p[0], p[1], p[2]};
    };
    return {at(false, false), at(true, false), at(true, true), at(false, true)};
}

double lightOf(const Point3& outward)
{
    return outward.z > 0.5 ? 1.0 : outward.y > 0.5 ? 0.82 : 0.66;
}

} // namespace

QPointF seen(const Point3& point)
{
    return {(point.y - point.x) * 0.866, (point.x + point.y) * 0.45 - point.z};
}

Point3 Turned::operator()(const Point3& point) const
{
    return sum(sum(scaled(axes[0], point.x), scaled(axes[1], point.y)), scaled(axes[2], point.z));
}

Turned lying(int face)
{
    // Proper rotations: the third column is the cross product of the first two.
    static const std::array<Turned, 6> ways{{{{{{1, 0, 0}, {0, 1, 0}, {0, 0, 1}}}},
                                             {{{{1, 0, 0}, {0, -1, 0}, {0, 0, -1}}}},
                                             {{{{-1, 0, 0}, {0, 0, 1}, {0, 1, 0}}}},
                                             {{{{1, 0, 0}, {0, 0, -1}, {0, 1, 0}}}},
                                             {{{{0, 0, 1}, {1, 0, 0}, {0, 1, 0}}}},
                                             {{{{0, 0, -1}, {-1, 0, 0}, {0, 1, 0}}}}}};
    return ways[static_cast<std::size_t>(std::clamp(face, 0, 5))];
}

BoxSeen boxSeen(const Turned& turned, double raised)
{
    BoxSeen box;
    const Point3 reach = turned({halfLength, halfWidth, halfHeight});
    box.height = 2 * std::abs(reach.z);
    const Point3 shift{0, 0, std::abs(reach.z) + raised};

    std::array<Slab, 2> slabs{
        {{{-halfLength, -halfWidth, -halfHeight}, {halfLength, halfWidth, halfHeight - slab}, false},
         {{-halfLength, -halfWidth, halfHeight - slab}, {halfLength, halfWidth, halfHeight}, true}}};
    if (nearness(turned({0, 0, 1})) < 0) // the main side is turned away: its slab is drawn first
        std::swap(slabs[0], slabs[1]);
    for (const auto& part : slabs)
        for (int axis = 0; axis < 3; ++axis)
            for (const bool high : {false, true}) {
                Point3 normal{axis == 0 ? 1.0 : 0.0, axis == 1 ? 1.0 : 0.0, axis == 2 ? 1.0 : 0.0};
                normal = turned(scaled(normal, high ? 1 : -1));
                if (nearness(normal) <= 0)
                    continue;
                Side side{.outline = {}, .main = part.main, .light = lightOf(normal)};
                for (const auto& corner : corners(part, axis, high))
                    side.outline << seen(sum(turned(corner), shift));
                box.sides.push_back(side);
            }
    if (nearness(turned({0, 0, 1})) > 0)
        for (int i = 0; i < 24; ++i) {
            const double angle = 2 * pi * i / 24;
            box.dot << seen(
                sum(turned({halfLength - 0.3 + 0.12 * std::cos(angle), 0.12 * std::sin(angle), halfHeight}), shift));
        }
    return box;
}

QPolygonF circleSeen(double radius, double height, double from, double to)
{
    QPolygonF points;
    constexpr int steps = 40;
    for (int i = 0; i <= steps; ++i) {
        const double angle = from + (to - from) * i / steps;
        points << seen({radius * std::cos(angle), radius * std::sin(angle), height});
    }
    return points;
}

} // namespace fleetrung::ui
