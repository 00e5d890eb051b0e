// The same estimation problem as engine/motion solves, put differently and solved by Ceres: every keyframe has a whole
// attitude, velocity and height, every interval its own residuals by automatic differentiation through the samples, and
// nothing is linearised by hand or swept. For tests only.
#pragma once

#include <span>
#include <vector>

#include "engine/motion/vertical_motion.hpp"

namespace fleetrung::oracle
{

struct Solution {
    bool converged = false;
    std::vector<double> velocity, height; ///< vertical, at each keyframe [m/s, m]
    Eigen::Vector3d gyroscopeBias, accelerometerBias;
    /// Standard deviations asked for; see `Wanted`.
    double velocityDeviation = 0, riseDeviation = 0;
};

/// Uncertainties to work out: velocity at one keyframe, and height there minus height at an earlier one.
struct Wanted {
    std::size_t earlier, keyframe;
};

/// `engine` says where the keyframes are, which of them stand still, and how far the bar goes in the less than 0.1 s
/// from a keyframe to a turning point; nothing else of it is used.
[[nodiscard]] Solution solve(const motion::Recording& recording, const motion::Knowledge& knowledge,
                             const motion::VerticalMotion& engine, std::span<const motion::Return> returns,
                             Wanted wanted);

} // namespace fleetrung::oracle
