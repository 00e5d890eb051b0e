// From the instants of a repetition to its metrics, and from the repetitions to what happened over the set.
// Definitions: repetition.hpp. Uncertainty: J P J' of the solve over the instants concerned, with the errors of the
// instants. Used inside reps/.
#pragma once

#include "engine/reps/repetition.hpp"
#include "engine/reps/selection.hpp"

namespace fleetrung::reps
{

[[nodiscard]] Repetition measure(const motion::VerticalMotion& motion, const motion::Recording& recording,
                                 const Candidate& candidate, const Lift& lift);

[[nodiscard]] SetSummary summarise(const std::vector<Repetition>& repetitions, const Lift& lift);

} // namespace fleetrung::reps
