#include "engine/strength/load_velocity_curve.hpp"

#include <algorithm>

namespace fleetrung::strength
{
namespace
{

constexpr int bandSteps = 6; // each costs a robust fit; the edges bend little

} // namespace

Expected<LoadVelocityCurve> loadVelocityCurve(std::span<const LoadVelocityPoint> points, std::string_view lift)
{
    LoadVelocityCurve curve;
    curve.slowest = velocityAtMaximum(lift);
    double slowest = curve.slowest ? curve.slowest->velocity : 0;
    for (const auto& point : points) {
        curve.fastest = std::max(curve.fastest, point.velocity);
        slowest = slowest > 0 ? std::min(slowest, point.velocity) : point.velocity;
    }
    // The line is the same for whatever velocity is asked of it.
    const double end = curve.slowest ? curve.slowest->velocity : std::max(slowest, 1e-9);
    const auto line = fitLoadVelocity(points, end, LineMethod::Robust);
    if (!line)
        return tl::unexpected(line.error());
    curve.line = *line;
    for (int step = 0; step <= bandSteps; ++step) {
        const double velocity = curve.fastest + (slowest - curve.fastest) * step / bandSteps;
        const auto there = fitLoadVelocity(points, velocity, LineMethod::Robust);
        if (there && there->maximumLow)
            curve.band.push_back({velocity, *there->maximumLow, *there->maximumHigh});
    }
    return curve;
}

} // namespace fleetrung::strength
