// Whether a bar rests or moves, sample by sample: a set can begin when it moves, and end when it has rested.
//
// Windows of 0.25 s are quiet where the specific force scatters by no more than 0.20 m/s2 over its three axes (standard
// deviation; turning shows there too, as gravity changes its axis). A racked bar scatters by the sensor's noise alone,
// 0.02-0.1 m/s2; a bar that stands on living shoulders by about 0.1 (both: values of the simulator's sensors and body),
// so that it counts as rest too. Limit and window are starting values of this project.
#pragma once

#include <Eigen/Core>

#include "engine/motion/sample.hpp"

namespace fleetrung::reps
{

class BarWatch
{
public:
    /// Takes the next sample; one that does not move forward in time is passed over.
    void add(const motion::Sample& sample);
    /// How long it has been quiet without a break [s]; 0 while it moves.
    [[nodiscard]] double rested() const { return rested_; }
    /// Moves now, after at least one second of rest. Stays so until it rests for a second again.
    [[nodiscard]] bool moves() const { return moves_; }

private:
    void close(double end);

    bool any_ = false;
    double last_ = 0;       ///< s
    double windowFrom_ = 0; ///< s
    double count_ = 0;
    Eigen::Vector3d origin_ = Eigen::Vector3d::Zero(); ///< taken off before summing: the sums stay small
    Eigen::Vector3d sum_ = Eigen::Vector3d::Zero();
    double squares_ = 0;
    double quietFrom_ = 0; ///< s
    double rested_ = 0;
    bool quiet_ = false;
    bool hasRested_ = false; ///< for a second, since it moved last
    bool moves_ = false;
};

} // namespace fleetrung::reps
