// Which strokes are repetitions of the lift: the rules that keep un-racking, walking and plates out. Used inside reps/.
#pragma once

#include <vector>

#include "engine/reps/lift.hpp"
#include "engine/reps/strokes.hpp"

namespace fleetrung::reps
{

struct Candidate {
    Stroke stroke;
    Movement up;
    std::optional<Movement> down; ///< the descent before it, for lifts that begin with one
    double rise;                  ///< m
};

/// Repetitions among all strokes of the motion, in order of time.
[[nodiscard]] std::vector<Candidate> selectRepetitions(const motion::VerticalMotion& motion, const Lift& lift);

// What the rules rest on, one by one: the live set applies them to one stroke at a time.

/// Prominence [m] that turning points of this lift need.
[[nodiscard]] double strokeProminence(const Lift& lift);
/// A stroke that may be a repetition, were it alone in its set.
[[nodiscard]] std::optional<Candidate> candidateOf(const motion::VerticalMotion& motion, const Lift& lift,
                                                   const Stroke& stroke);
/// Below this rise [m] a stroke among others of the given rises is something else. Not for free strokes.
[[nodiscard]] double leastRise(std::vector<double> rises);
/// Whether a rise that begins so far above the set's support is no pull from it.
[[nodiscard]] bool startsRaised(double above, double rise);

} // namespace fleetrung::reps
