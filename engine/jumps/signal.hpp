// A recording made ready for jumps: where the athlete stands still, which way is up, and the vertical specific force.
#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include <Eigen/Core>

#include "engine/motion/sample.hpp"

namespace fleetrung::jumps
{

struct Rest {
    std::size_t first, last; ///< samples, both inside
    double force;            ///< m/s2, mean length of specific force: what the sensor reads for gravity
    Eigen::Vector3d up;      ///< sensor axes
    Eigen::Vector3d rate;    ///< rad/s, mean: the gyroscope's offset
};

struct Signal {
    const motion::Recording* recording; ///< never null
    double rate;                        ///< Hz
    std::vector<double> time;           ///< s
    std::vector<double> length;         ///< m/s2, of the specific force
    std::vector<Rest> rests;
    std::vector<Eigen::Vector3d>
        up; ///< sensor axes, carried on by the gyroscope from the last rest; empty without rest

    [[nodiscard]] const Eigen::Vector3d& force(std::size_t i) const { return recording->samples[i].specificForce; }
    [[nodiscard]] std::size_t size() const { return time.size(); }
    /// First sample at or after `when`, at most size().
    [[nodiscard]] std::size_t at(double when) const;
    /// The last rest that ends before `when`; null where there is none.
    [[nodiscard]] const Rest* restBefore(double when) const;
};

/// Still: over 0.25 s the force spreads little more than in the recording's quietest moment (0.06-0.25 m/s2) and
/// turning by 0.15 rad/s at most, and the force has the length of gravity within 1 m/s2 (starting values of this
/// project: a standing athlete trembles by 0.05 m/s2).
[[nodiscard]] Signal readSignal(const motion::Recording& recording);

} // namespace fleetrung::jumps
