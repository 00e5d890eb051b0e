// The vertical motion of a set: one point a sample, up positive, SI units.
#pragma once

#include <vector>

namespace fleetrung::reps
{

struct MotionTrace {
    std::vector<double> time;         ///< s
    std::vector<double> velocity;     ///< m/s
    std::vector<double> height;       ///< m, from an arbitrary zero
    std::vector<double> acceleration; ///< m/s2, gravity removed
};

} // namespace fleetrung::reps
