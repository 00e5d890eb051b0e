// Where a movement in one direction begins and ends, to a fraction of a sample. Used inside reps/.
#pragma once

#include "engine/motion/vertical_motion.hpp"

namespace fleetrung::reps
{

/// A motion seen in the direction of one movement: +1 up, -1 down.
struct Directed {
    const motion::VerticalMotion& motion;
    double sign;
    double velocity(std::size_t i) const { return sign * motion.velocity[i]; }
    double acceleration(std::size_t i) const { return sign * motion.acceleration[i]; }
};

struct Edge {
    double time;
    bool deadStop;
};

/// Walks from a velocity peak towards `limit` and finds where the movement begins (step -1) or ends (step +1): the zero
/// of velocity at a reversal, the change point in acceleration next to a pause.
[[nodiscard]] Edge findEdge(const Directed& view, std::size_t peak, std::size_t limit, int step);

} // namespace fleetrung::reps
