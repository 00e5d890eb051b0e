// Upward strokes in a vertical motion, and the exact instants of one stroke. Used inside reps/.
#pragma once

#include <optional>
#include <vector>

#include "engine/motion/vertical_motion.hpp"

namespace fleetrung::reps
{

/// Sample indices of a lower turning point and of the upper one that follows it.
struct Stroke {
    std::size_t bottom;
    std::size_t top;
    std::optional<std::size_t> topBefore; ///< the upper turning point before `bottom`
};

/// Every rise between turning points of height of at least `prominence` [m] on both sides.
[[nodiscard]] std::vector<Stroke> findStrokes(const motion::VerticalMotion& motion, double prominence);

/// Start, velocity extremum and end of a movement in one direction, to a fraction of a sample. Times in s.
struct Movement {
    double start;
    double peak;
    double end;
    double peakVelocity; ///< m/s, with its sign
    bool fromDeadStop;   ///< the start was found as a change point in acceleration, not as a zero of velocity
    bool toDeadStop;
    std::size_t peakSample;
};

/// The movement of the given direction (+1 up, -1 down) with the greatest speed between two samples.
[[nodiscard]] Movement findMovement(const motion::VerticalMotion& motion, std::size_t from, std::size_t to,
                                    int direction);

/// Linear between samples; `values` belong to `motion.time`.
[[nodiscard]] double valueAt(const motion::VerticalMotion& motion, const std::vector<double>& values, double time);
/// Height at an instant, by the velocity at both neighbours (cubic Hermite).
[[nodiscard]] double heightAt(const motion::VerticalMotion& motion, double time);
/// Last sample at or before an instant.
[[nodiscard]] std::size_t sampleAt(const motion::VerticalMotion& motion, double time);

} // namespace fleetrung::reps
