// What a live value is stated with beyond its own solve. Used inside reps/.
#pragma once

#include "engine/reps/repetition.hpp"

namespace fleetrung::reps
{

/// Widens every standard uncertainty of a repetition that is announced before its set is over. The slopes and jerks
/// that an uncertainty is worked out from are themselves estimates, and change by some percent with what comes after: a
/// live value must not claim to be better known than the final one will. 10 %: starting value of this project.
void widen(Repetition& repetition);

} // namespace fleetrung::reps
