// Where the sensor may be standing still. A proposal only: a bar that moves slowly and evenly looks just as quiet, so
// the solver tests every proposal against the velocity it predicts.
#pragma once

#include <span>
#include <vector>

#include "engine/motion/sample.hpp"

namespace fleetrung::motion
{

struct Quietness {
    bool quiet = false;
    Eigen::Vector3d meanForce = Eigen::Vector3d::Zero(); ///< m/s2 over the window
    Eigen::Vector3d meanRate = Eigen::Vector3d::Zero();  ///< rad/s
    double rateSpread = 0;                               ///< rad/s, root of the summed variances of three axes
};

/// Looks at a window of +-0.08 s (at least 3 samples to each side) about each of the given samples. Quiet: the spread
/// of both sensors is that of a held bar at most, turning is under 0.15 rad/s beyond `gyroscopeBias`, and the force has
/// the length of gravity within 0.5 m/s2. These limits are starting values of this project.
[[nodiscard]] std::vector<Quietness> findQuiet(const Recording& recording, std::span<const std::size_t> samples);

/// Neighbouring quiet windows that are either all still or all moving evenly: [first, last] of the windows.
struct QuietSpan {
    std::size_t first;
    std::size_t last;
    bool continues; ///< no change of force since the span before it: both are still, or both move at one speed
};

/// Splits runs of quiet windows where the mean force changes (the bar sets off gently there) and after every second, so
/// that one wrong judgement never carries far.
[[nodiscard]] std::vector<QuietSpan> quietSpans(std::span<const Quietness> windows, std::size_t longest);

} // namespace fleetrung::motion
