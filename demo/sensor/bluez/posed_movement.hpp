// A sensor in somebody's hands: laid on its faces, turned, raised, one after the other as it is told. For teaching and
// calibration.
#pragma once

#include <deque>

#include <Eigen/Geometry>

#include "demo/sensor/bluez/movement.hpp"
#include "demo/simulator/random.hpp"

namespace fleetrung::demo
{

/// Knows "face +x" (that axis up), "turn" (once about the vertical, counter-clockwise seen from above), "raise 0.5"
/// (m, straight up; below 0 down), "still 3" (s), and "teach": all that a guided teaching asks for, still in between.
class PosedMovement : public Movement
{
public:
    PosedMovement(double rate, std::uint64_t seed);
    [[nodiscard]] motion::Sample next() override;
    [[nodiscard]] Expected<void> command(const std::string& words) override;

private:
    /// One movement: a rotation about a fixed axis of the room and a way up, both from rest to rest.
    struct Act {
        double duration; ///< s
        Eigen::Vector3d axis = Eigen::Vector3d::UnitZ();
        double angle = 0;  ///< rad
        double height = 0; ///< m
    };

    void face(const Eigen::Vector3d& up);
    void teach(double stillSeconds);
    void add(const Act& act);

    double rate_, time_ = 0;                                           ///< time_: s in the act going on
    Eigen::Quaterniond attitude_ = Eigen::Quaterniond::Identity();     ///< sensor -> room, when the act began
    Eigen::Quaterniond lastAttitude_ = Eigen::Quaterniond::Identity(); ///< after the last act told
    std::deque<Act> acts_;
    simulator::Random random_;
    Eigen::Vector3d accelerometerOffset_, gyroscopeOffset_; ///< m/s2, rad/s
    double accelerometerNoise_, gyroscopeNoise_;            ///< m/s2, rad/s, standard deviation of one sample
};

} // namespace fleetrung::demo
