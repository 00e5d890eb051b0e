// How the corrections of a solve, known at the keyframes, spread over the samples between them: linearly in time, in
// the final solve and in the live one alike.
#pragma once

#include <span>

#include "engine/motion/vertical_motion.hpp"

namespace fleetrung::motion
{

/// One entry a sample; at a keyframe the values with which the interval after it starts.
struct NominalMotion {
    std::span<const double> acceleration, velocity, height;
};

/// The samples between two keyframes.
struct Stretch {
    std::size_t first, end;     ///< [first, end): the keyframe's sample and the next one's
    double duration;            ///< s
    const LocalVector& start;   ///< correction at the first keyframe
    const LocalVector& endings; ///< and at the next one
    const LocalVector& reset;   ///< by which the nominal motion was moved at the next one
    bool stillStart, stillEnd;
};

/// Fills in all but the times, which must stand there already.
void spreadCorrection(const Stretch& stretch, const NominalMotion& nominal, VerticalMotion& motion);
/// The last sample, where the last stretch ends.
void correctLast(const Stretch& last, const NominalMotion& nominal, VerticalMotion& motion);

} // namespace fleetrung::motion
