// Instants inside a concentric phase beside its start, peak and end. Used inside reps/.
#pragma once

#include <optional>

#include "engine/reps/strokes.hpp"

namespace fleetrung::reps
{

/// First instant after the peak with acceleration below -g: the end of the propulsive part, take-off or release. None
/// where the bar is never braked so hard.
[[nodiscard]] std::optional<double> freeFallStart(const motion::VerticalMotion& motion, const Movement& up);

struct SecondPull {
    double start; ///< s, on the motion's clock
    double slope; ///< m/s3, of acceleration there
};

/// Between first and second pull the knees go back under the bar: acceleration sinks to a least value and rises again.
/// The least value is flat, and tremor would choose its instant; the second pull starts where a tenth of the rise to
/// its greatest acceleration is made up. None where acceleration does not sink by 0.5 m/s2 (starting value). That the
/// transition shows in acceleration instead of knee angle is common practice, no source.
[[nodiscard]] std::optional<SecondPull> findSecondPull(const motion::VerticalMotion& motion, const Movement& up);

struct VelocityPeak {
    double time; ///< s, on the motion's clock
    double velocity;
};

/// The highest other maximum of velocity that stands out by max(0.03 m/s, 8 % of the peak) from the valley between the
/// two (season rules, evidence 5).
[[nodiscard]] std::optional<VelocityPeak> findOtherPeak(const motion::VerticalMotion& motion, const Movement& up);

} // namespace fleetrung::reps
