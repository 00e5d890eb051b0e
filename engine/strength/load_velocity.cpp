#include "engine/strength/load_velocity.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <vector>

#include "engine/statistics/linear_fit.hpp"

namespace fleetrung::strength
{
namespace
{

constexpr double smallestSpread =
    1.10; ///< heaviest / lightest load; closer loads make a line of noise (starting value)

constexpr std::array<MaximumVelocity, 4> maximumVelocities{{
    {"full-squat", 0.29, 0.05, "Conceicao et al. 2016, J Sports Sci 34(12):1099-1106, mean propulsive velocity"},
    {"half-squat", 0.33, 0.05, "Conceicao et al. 2016, J Sports Sci 34(12):1099-1106, mean propulsive velocity"},
    {"parallel-squat", 0.31, 0.05, "starting value of this project, between the published full and half squat"},
    {"bench-press", 0.16, 0.04, "Gonzalez-Badillo & Sanchez-Medina 2010, Int J Sports Med 31(5):347-352"},
}};

} // namespace

Expected<LoadVelocityProfile> fitLoadVelocity(std::span<const LoadVelocityPoint> points, double velocityAtMaximum)
{
    std::vector<double> loads, velocities;
    for (const auto& point : points) {
        if (!std::isfinite(point.loadKg) || point.loadKg < 0 || !std::isfinite(point.velocity) || point.velocity <= 0)
            return fail(Code::InvalidInput, "", "each point needs a load of zero or more and a velocity above zero");
        loads.push_back(point.loadKg);
        velocities.push_back(point.velocity);
    }
    if (!std::isfinite(velocityAtMaximum) || velocityAtMaximum <= 0)
        return fail(Code::InvalidInput, "", "the velocity at 1RM must lie above zero");
    if (loads.size() < 2 ||
        *std::max_element(loads.begin(), loads.end()) < smallestSpread * *std::min_element(loads.begin(), loads.end()))
        return fail(Code::NotAvailable, "",
                    "lift at two loads at least 10 % apart; a third and a fourth steady the line");
    const auto line = statistics::fitLine(loads, velocities);
    if (!line)
        return tl::unexpected(line.error());
    if (!(line->slope < 0))
        return fail(Code::NotAvailable, "", "velocity does not fall as load grows; lift each load with full intent");

    LoadVelocityProfile profile;
    profile.slope = line->slope;
    profile.velocityAtZero = line->intercept;
    profile.loadAtZero = -line->intercept / line->slope;
    profile.velocityAtMaximum = velocityAtMaximum;
    profile.estimatedMaximum = (velocityAtMaximum - line->intercept) / line->slope;
    // Inverse prediction, first order: error of the line at that load, divided by its slope.
    const double fromMean = (profile.estimatedMaximum - line->meanX) * line->slopeError;
    const double atMean = line->residualDeviation / std::sqrt(static_cast<double>(line->count));
    profile.standardError = std::hypot(atMean, fromMean) / std::abs(line->slope);
    return profile;
}

std::optional<MaximumVelocity> velocityAtMaximum(std::string_view lift)
{
    const auto found = std::find_if(maximumVelocities.begin(), maximumVelocities.end(),
                                    [&](const MaximumVelocity& entry) { return entry.lift == lift; });
    if (found == maximumVelocities.end())
        return std::nullopt;
    return *found;
}

} // namespace fleetrung::strength
