// The geometry of the drawn box: a body with a coloured slab on its main side, put down on a table in one of six ways
// and seen from above at an angle. World axes: X to the lower left, Y to the lower right, Z up.
#pragma once

#include <array>
#include <vector>

#include <QPolygonF>

namespace fleetrung::ui
{

struct Point3 {
    double x = 0, y = 0, z = 0;
};

/// Where it is seen, in units of the box (its long edge is 1.7).
[[nodiscard]] QPointF seen(const Point3& point);

/// Body axes to world: the columns are where the body's x, y and z point.
struct Turned {
    std::array<Point3, 3> axes;
    [[nodiscard]] Point3 operator()(const Point3& point) const;
};
/// The six ways to lie, in the order of PoseDrawing::Pose.
[[nodiscard]] Turned lying(int face);

struct Side {
    QPolygonF outline;
    bool main = false; ///< of the coloured slab
    double light = 1;  ///< of how it faces the light
};

/// The sides that are seen, those farther away first, and the dot where it is seen (else empty).
struct BoxSeen {
    std::vector<Side> sides;
    QPolygonF dot;
    double height = 0; ///< of the lying box
};
/// `raised`: how far above the table.
[[nodiscard]] BoxSeen boxSeen(const Turned& turned, double raised);

/// Points of the circle around the box on the table, counter-clockwise seen from above, between two angles [rad].
[[nodiscard]] QPolygonF circleSeen(double radius, double height, double from, double to);

} // namespace fleetrung::ui
