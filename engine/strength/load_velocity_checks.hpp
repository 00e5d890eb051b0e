// What both lines ask of their points (private to engine/strength).
#pragma once

#include "engine/strength/load_velocity.hpp"

namespace fleetrung::strength
{

inline constexpr const char* noFall = "velocity does not fall as load grows; lift each load with full intent";

/// InvalidInput for numbers that cannot be.
[[nodiscard]] Expected<void> checkPoints(std::span<const LoadVelocityPoint> points, double velocityAtMaximum);

/// Closer loads than 10 % make a line of noise (starting value of this project).
[[nodiscard]] bool loadsDiffer(std::span<const LoadVelocityPoint> points);

} // namespace fleetrung::strength
