// What a reader must know before trusting a repetition. Used inside reps/.
#pragma once

#include "engine/reps/repetition.hpp"
#include "engine/reps/strokes.hpp"

namespace fleetrung::reps
{

/// Flags that the samples of the concentric phase and its start tell; not ShortRange (told by the set) nor TwoPeaked
/// (told by the peaks).
[[nodiscard]] Flags flagsOf(const motion::VerticalMotion& motion, const motion::Recording& recording,
                            const Movement& up);

} // namespace fleetrung::reps
