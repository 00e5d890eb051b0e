// A capture as a chain of keyframes: their states, and what lies between neighbours. Used inside motion/.
#pragma once

#include <optional>
#include <vector>

#include "engine/motion/keyframe_state.hpp"
#include "engine/motion/stillness.hpp"

namespace fleetrung::motion
{

/// error[k+1] = transition * error[k] - defect, up to noise.
struct Interval {
    StateMatrix transition;
    StateVector defect;
    StateMatrix noise;
};

struct Chain {
    const Recording& recording;
    std::vector<std::size_t> keyframes; ///< sample of each keyframe
    std::vector<Quietness> quiet;       ///< one a keyframe
    std::vector<QuietSpan> spans;       ///< of keyframes
    std::vector<State> states;          ///< one a keyframe: the nominal motion
    std::vector<Interval> intervals;    ///< one less

    [[nodiscard]] double timeOf(std::size_t k) const { return recording.samples[keyframes[k]].time; }
    /// The keyframe at or before a sample, never the last one.
    [[nodiscard]] std::size_t keyframeBefore(std::size_t sample) const;
    /// Distance of the first state from what is believed beforehand (at rest, unbiased), and how firmly that is
    /// believed.
    [[nodiscard]] StateVector priorOffset() const;
    [[nodiscard]] StateVector priorSpread() const;
};

/// Places keyframes, finds quiet windows, and takes attitudes from gravity and the gyroscope; velocities and heights
/// begin at nothing. None where the specific force is nowhere near gravity.
[[nodiscard]] std::optional<Chain> startChain(const Recording& recording);

/// Noise of an interval: what the data sheet says, and scale errors as a share of what was turned and gained in speed.
[[nodiscard]] StateMatrix intervalNoise(const Recording& recording, const Propagation& propagation);

/// Standard deviations of a held bar's velocity in a still window [m/s]: breathing lifts it less than balance sways it.
inline const Eigen::Vector3d stillSpeed(0.015, 0.015, 0.006);

/// How well a quiet window shows the gyroscope's bias (1 / variance): less so the more the hand moves.
[[nodiscard]] double rateWeight(const Quietness& quiet);

/// 1 for every keyframe that may be zero velocity, 0 for the others: a forward filter judges each quiet span.
[[nodiscard]] std::vector<double> gateStillness(const Chain& chain);

} // namespace fleetrung::motion
