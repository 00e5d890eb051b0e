// Vertical motion of a sensor from its specific force and angular rate.
//
// A nominal state (attitude, velocity, height, biases) is propagated between keyframes together with the closed-form
// sensitivities of its end to its start. What is known of the motion (zero velocity where the sensor stands still, tops
// and bottoms that return to their height, a weak bound on how far a lifter goes) enters one robust least-squares solve
// over the keyframes; its corrections spread back over the samples, and its covariance gives the uncertainty of
// differences.
//
// Frame: z up, yaw arbitrary. Height has an arbitrary zero. Units: SI.
#pragma once

#include <span>
#include <vector>

#include "engine/base/error.hpp"
#include "engine/motion/keyframe_solve.hpp"
#include "engine/motion/sample.hpp"

namespace fleetrung::motion
{

/// A sample at which the sensor is believed to be at a height it has been at before.
struct Return {
    std::size_t sample;
    bool top; ///< at the upper turning point; else the lower one
};

/// What is known of the motion beside the samples.
struct Knowledge {
    double heightSpread = 1.0;  ///< m, standard deviation of height about its mean over the capture
    double speedSpread = 1.0;   ///< m/s, standard deviation of horizontal velocity about zero
    double topSpread = 0.012;   ///< m, standard deviation of the height at which tops return
    double bottomSpread = 0.02; ///< m
    std::vector<Return> returns;
};

struct VerticalMotion {
    std::vector<double> time;           ///< s, one entry a sample
    std::vector<double> acceleration;   ///< m/s2, up positive, gravity removed
    std::vector<double> velocity;       ///< m/s
    std::vector<double> height;         ///< m
    std::vector<bool> still;            ///< the solve believes that the sensor stood still here
    std::vector<std::size_t> keyframes; ///< sample of each keyframe
    KeyframeSolution solution;          ///< for uncertainties

    /// Covariance of (velocity, height) at the given samples, stacked: 2 rows a sample.
    [[nodiscard]] Eigen::MatrixXd covariance(std::span<const std::size_t> samples) const;
};

/// The recording needs 8 samples with increasing times; the callers check and say so in the words of the trade.
/// Fails with NotAvailable where the specific force is nowhere near gravity, and NotConverged where the solve breaks
/// down.
[[nodiscard]] Expected<VerticalMotion> solveVerticalMotion(const Recording& recording, const Knowledge& knowledge);

} // namespace fleetrung::motion
