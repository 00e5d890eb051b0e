#include "engine/strength/load_velocity.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <vector>

#include "engine/statistics/linear_fit.hpp"
#include "engine/statistics/robust.hpp"
#include "engine/statistics/student.hpp"
#include "engine/strength/load_velocity_checks.hpp"

namespace fleetrung::strength
{
namespace
{

constexpr std::array<MaximumVelocity, 4> maximumVelocities{{
    {"full-squat", 0.29, 0.05, "Conceicao et al. 2016, J Sports Sci 34(12):1099-1106, mean propulsive velocity"},
    {"half-squat", 0.33, 0.05, "Conceicao et al. 2016, J Sports Sci 34(12):1099-1106, mean propulsive velocity"},
    {"parallel-squat", 0.31, 0.05, "starting value of this project, between the published full and half squat"},
    {"bench-press", 0.16, 0.04, "Gonzalez-Badillo & Sanchez-Medina 2010, Int J Sports Med 31(5):347-352"},
}};

/// Theil and Sen's line in place of the least squares one; errors as those of a line with that scatter about it.
void makeRobust(statistics::LinearFit& line, std::span<const double> loads, std::span<const double> velocities)
{
    const auto robust = statistics::theilSen(loads, velocities);
    line.slope = robust.slope;
    line.intercept = robust.intercept;
    std::vector<double> residuals;
    double spread = 0;
    for (std::size_t i = 0; i < loads.size(); ++i) {
        residuals.push_back(velocities[i] - robust.intercept - robust.slope * loads[i]);
        spread += (loads[i] - line.meanX) * (loads[i] - line.meanX);
    }
    if (line.count < 3)
        return;
    line.residualDeviation = statistics::medianAbsoluteDeviation(residuals);
    line.slopeError = line.residualDeviation / std::sqrt(spread);
}

/// Fieller: the loads x with (x - meanX) (slope -+ t slopeError) about the velocity, solved as a quadratic around
/// meanX.
void setInterval(LoadVelocityProfile& profile, const statistics::LinearFit& line)
{
    if (line.count < 3)
        return;
    const double t = statistics::studentT95(line.count - 2);
    const double below = profile.velocityAtMaximum - line.intercept - line.slope * line.meanX; // from the mean point
    const double atMean = t * line.residualDeviation;
    const double a = line.slope * line.slope - t * t * line.slopeError * line.slopeError;
    const double b = line.slope * below;
    const double c = below * below - atMean * atMean / line.count;
    const double root = b * b - a * c;
    if (!(a > 0) || root < 0) // the slope might be zero: no load is ruled out
        return;
    profile.maximumLow = line.meanX + (b - std::sqrt(root)) / a;
    profile.maximumHigh = line.meanX + (b + std::sqrt(root)) / a;
}

} // namespace

Expected<LoadVelocityProfile> fitLoadVelocity(std::span<const LoadVelocityPoint> points, double velocityAtMaximum,
                                              LineMethod method)
{
    if (const auto sound = checkPoints(points, velocityAtMaximum); !sound)
        return tl::unexpected(sound.error());
    if (!loadsDiffer(points))
        return fail(Code::NotAvailable, "",
                    "lift at two loads at least 10 % apart; a third and a fourth steady the line");
    std::vector<double> loads, velocities;
    for (const auto& point : points) {
        loads.push_back(point.loadKg);
        velocities.push_back(point.velocity);
    }
    auto line = statistics::fitLine(loads, velocities);
    if (!line)
        return tl::unexpected(line.error());
    if (method == LineMethod::Robust)
        makeRobust(*line, loads, velocities);
    if (!(line->slope < 0))
        return fail(Code::NotAvailable, "", noFall);

    LoadVelocityProfile profile;
    profile.points = line->count;
    profile.slope = line->slope;
    profile.velocityAtZero = line->intercept;
    profile.loadAtZero = -line->intercept / line->slope;
    profile.velocityAtMaximum = velocityAtMaximum;
    profile.estimatedMaximum = (velocityAtMaximum - line->intercept) / line->slope;
    // Inverse prediction, first order: error of the line at that load, divided by its slope.
    const double fromMean = (profile.estimatedMaximum - line->meanX) * line->slopeError;
    const double atMean = line->residualDeviation / std::sqrt(static_cast<double>(line->count));
    profile.standardError = std::hypot(atMean, fromMean) / std::abs(line->slope);
    setInterval(profile, *line);
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
