// From the instants of a repetition to its metrics. Used inside reps/.
//
// Mean velocity = range / duration. Mean propulsive velocity = displacement / time from concentric start to the first
// instant with acceleration below -g: Sanchez-Medina, Perez, Gonzalez-Badillo, Int J Sports Med 2010;31:123-129 (from
// memory). Uncertainty: J P J' of the solve over the instants concerned, with the data sheet's scale error and the
// error of the instants.
#pragma once

#include "engine/reps/repetition.hpp"
#include "engine/reps/selection.hpp"

namespace fleetrung::reps
{

[[nodiscard]] Repetition measure(const motion::VerticalMotion& motion, const motion::Recording& recording,
                                 const Candidate& candidate, const Lift& lift);

[[nodiscard]] SetSummary summarise(const std::vector<Repetition>& repetitions, const Lift& lift);

} // namespace fleetrung::reps
