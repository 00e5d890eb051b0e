// Velocity loss within a set and the set stop. Velocity drift of single repetitions is noise; loss counts from the
// fastest.
#pragma once

#include <span>

namespace fleetrung::strength
{

/// 1 - last / fastest (share). 0 for an empty set.
[[nodiscard]] double velocityLoss(std::span<const double> velocities);

/// True from the repetition on at which two in a row lie beyond `limit` (share) below the fastest so far, or one lies
/// beyond limit + 0.05. Starting values of this project. Call it after each repetition.
[[nodiscard]] bool shouldStopSet(std::span<const double> velocities, double limit);

} // namespace fleetrung::strength
