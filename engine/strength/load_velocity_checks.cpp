#include "engine/strength/load_velocity_checks.hpp"

#include <algorithm>
#include <cmath>

namespace fleetrung::strength
{
namespace
{

constexpr double smallestSpread = 1.10; ///< heaviest / lightest load

} // namespace

Expected<void> checkPoints(std::span<const LoadVelocityPoint> points, double velocityAtMaximum)
{
    for (const auto& point : points)
        if (!std::isfinite(point.loadKg) || point.loadKg < 0 || !std::isfinite(point.velocity) || point.velocity <= 0)
            return fail(Code::InvalidInput, "", "each point needs a load of zero or more and a velocity above zero");
    if (!std::isfinite(velocityAtMaximum) || velocityAtMaximum <= 0)
        return fail(Code::InvalidInput, "", "the velocity at 1RM must lie above zero");
    return {};
}

bool loadsDiffer(std::span<const LoadVelocityPoint> points)
{
    const auto [lightest, heaviest] = std::ranges::minmax_element(points, {}, &LoadVelocityPoint::loadKg);
    return points.size() >= 2 && heaviest->loadKg >= smallestSpread * lightest->loadKg;
}

} // namespace fleetrung::strength
