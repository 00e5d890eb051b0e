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

} // namespace fleetrung::reps
