// The state at a keyframe, its propagation to the next, and the sensitivities of the end to the start.
#pragma once

#include <span>

#include <Eigen/Core>
#include <Eigen/Geometry>

#include "engine/motion/sample.hpp"

namespace fleetrung::motion
{

/// Order of the error states: tilt (2, rad, about the world's x and y), velocity (3), height, gyroscope bias (3),
/// accelerometer bias (3), height of the tops, height of the bottoms. Yaw and horizontal position are of no use here.
namespace at
{
inline constexpr int tilt = 0, velocity = 2, height = 5, gyroscopeBias = 6, accelerometerBias = 9, top = 12,
                     bottom = 13;
}
inline constexpr int stateSize = 14;
using StateVector = Eigen::Matrix<double, stateSize, 1>;
using StateMatrix = Eigen::Matrix<double, stateSize, stateSize>;
using StateRow = Eigen::Matrix<double, 1, stateSize>;

struct State {
    Eigen::Quaterniond attitude = Eigen::Quaterniond::Identity(); ///< sensor to world
    Eigen::Vector3d velocity = Eigen::Vector3d::Zero();
    double height = 0;
    Eigen::Vector3d gyroscopeBias = Eigen::Vector3d::Zero();
    Eigen::Vector3d accelerometerBias = Eigen::Vector3d::Zero();
    double top = 0;
    double bottom = 0;
};

/// `state` moved by an error vector, and the error vector from one state to another.
[[nodiscard]] State moved(const State& state, const StateVector& error);
[[nodiscard]] StateVector difference(const State& to, const State& from);

/// Carries a state over samples and accumulates d(end)/d(start). One step costs a few dozen multiplications; nothing is
/// allocated. Trapezoidal in acceleration, with the third-order term in height.
class Propagation
{
public:
    Propagation(const State& start, const Sample& first);

    void step(const Sample& next);

    [[nodiscard]] const State& state() const { return state_; }
    [[nodiscard]] const Eigen::Vector3d& acceleration() const { return acceleration_; } ///< world, gravity removed
    [[nodiscard]] double duration() const { return duration_; }
    [[nodiscard]] double acceleratedTravel() const { return acceleratedTravel_; } ///< m/s, integral of |acceleration|
    [[nodiscard]] double turned() const { return turned_; }                       ///< rad, integral of |rate|

    [[nodiscard]] StateMatrix transition() const;
    [[nodiscard]] StateRow verticalVelocityRow() const; ///< row of the transition, without forming all of it
    [[nodiscard]] StateRow heightRow() const;

private:
    Eigen::Vector3d accelerationAt(const Sample& sample, const Eigen::Matrix3d& rotation) const;

    State state_;
    Sample last_;
    Eigen::Matrix3d rotation_;
    Eigen::Vector3d acceleration_;
    double duration_ = 0;
    double acceleratedTravel_ = 0;
    double turned_ = 0;
    // Integrals over time: rotation; [force]x; [force]x * rotation integral; and once more for the vertical row.
    Eigen::Matrix3d rotationSum_ = Eigen::Matrix3d::Zero();
    Eigen::Matrix3d forceSum_ = Eigen::Matrix3d::Zero();
    Eigen::Matrix3d biasSum_ = Eigen::Matrix3d::Zero();
    Eigen::RowVector3d heightRotationSum_ = Eigen::RowVector3d::Zero();
    Eigen::RowVector3d heightForceSum_ = Eigen::RowVector3d::Zero();
    Eigen::RowVector3d heightBiasSum_ = Eigen::RowVector3d::Zero();
};

} // namespace fleetrung::motion
