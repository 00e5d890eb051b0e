// The state at a keyframe, its propagation to the next, and the sensitivities of the end to the start.
#pragma once

#include <Eigen/Core>
#include <Eigen/Geometry>

#include "engine/motion/sample.hpp"

namespace fleetrung::motion
{

/// Errors that change from keyframe to keyframe: tilt (2, rad, about the world's x and y), velocity (3), height.
/// Yaw and horizontal position are of no use here.
namespace at
{
inline constexpr int tilt = 0, velocity = 2, height = 5;
}
inline constexpr int localSize = 6;
using LocalVector = Eigen::Matrix<double, localSize, 1>;
using LocalMatrix = Eigen::Matrix<double, localSize, localSize>;

/// Unknowns that stay the same over the whole capture; scale errors are relative, one a sensor axis. A still pose shows
/// bias and scale of the accelerometer only as a sum along gravity, and no lift tells them apart: the scales are
/// *considered*, that is never estimated, but with the data sheet's spread in every uncertainty (Schmidt 1966, after
/// Bierman, Factorization Methods for Discrete Sequential Estimation, 1977; from memory).
namespace whole
{
inline constexpr int gyroscopeBias = 0, accelerometerBias = 3, top = 6, bottom = 7, accelerometerScale = 8,
                     gyroscopeScale = 11;
}
inline constexpr int estimatedSize = 8, consideredSize = 6; ///< the first ones, the others
inline constexpr int wholeSize = estimatedSize + consideredSize;
using WholeVector = Eigen::Matrix<double, wholeSize, 1>;
using WholeMatrix = Eigen::Matrix<double, wholeSize, wholeSize>;
using WholeRow = Eigen::Matrix<double, 1, wholeSize>;
using Border = Eigen::Matrix<double, localSize, wholeSize, Eigen::RowMajor>; ///< d(local) / d(whole)

struct State {
    Eigen::Quaterniond attitude = Eigen::Quaterniond::Identity(); ///< sensor to world
    Eigen::Vector3d velocity = Eigen::Vector3d::Zero();
    double height = 0;
};

/// `state` moved by an error vector, and the error vector from one state to another.
[[nodiscard]] State moved(const State& state, const LocalVector& error);
[[nodiscard]] LocalVector difference(const State& to, const State& from);

/// error at the end = error at the start, carried over, + border * (whole - the values the nominal motion assumed) +
/// noise. The transition is the identity but for what a tilt does to velocity and height, and velocity to height.
struct Interval {
    double duration = 0; ///< s
    Eigen::Matrix<double, 3, 2> velocityByTilt = Eigen::Matrix<double, 3, 2>::Zero();
    Eigen::RowVector2d heightByTilt = Eigen::RowVector2d::Zero();
    Border border = Border::Zero();
    LocalMatrix noise = LocalMatrix::Zero();

    [[nodiscard]] LocalVector carry(const LocalVector& error) const;
    [[nodiscard]] Border carry(const Border& slope) const;
    /// transition * covariance * transition', without the noise.
    [[nodiscard]] LocalMatrix carry(const LocalMatrix& covariance) const;
    [[nodiscard]] LocalMatrix carryRows(const LocalMatrix& covariance) const; ///< transition * covariance
    [[nodiscard]] LocalMatrix transition() const;
};

/// Carries a state over samples and accumulates d(end)/d(start). Nothing is allocated. Trapezoidal in acceleration,
/// with the third-order term in height. Sensitivities change slowly: they are summed over steps of up to 20 ms.
class Propagation
{
public:
    /// `assumed`: biases and scale errors taken off the readings.
    Propagation(const State& start, const Sample& first, const WholeVector& assumed);

    void step(const Sample& next);

    [[nodiscard]] const State& state() const { return state_; }
    [[nodiscard]] const Eigen::Vector3d& acceleration() const { return acceleration_; } ///< world, gravity removed
    [[nodiscard]] double duration() const { return duration_; }
    /// Without its noise.
    [[nodiscard]] Interval interval() const;
    /// Variance of velocity [m2/s2] that the trapezoidal rule may have missed: (dt / 12 second difference)^2, summed.
    [[nodiscard]] double missedVariance() const { return missed_; }
    [[nodiscard]] double turned() const;            ///< rad, integral of |rate|
    [[nodiscard]] double acceleratedTravel() const; ///< m/s, integral of |acceleration|

private:
    /// Integrals over time of: rotation; rotation * diag(force); rotation * diag(rate); [world force]x times the first
    /// and the third of these; and once more of each one's vertical row.
    struct Sensitivities {
        Eigen::Matrix3d rotation = Eigen::Matrix3d::Zero(), force = Eigen::Matrix3d::Zero(),
                        turn = Eigen::Matrix3d::Zero(), bias = Eigen::Matrix3d::Zero(),
                        turnBias = Eigen::Matrix3d::Zero();
        Eigen::RowVector3d heightRotation = Eigen::RowVector3d::Zero(), heightForce = Eigen::RowVector3d::Zero(),
                           heightBias = Eigen::RowVector3d::Zero(), heightTurnBias = Eigen::RowVector3d::Zero();
        double turned = 0, acceleratedTravel = 0;
    };

    [[nodiscard]] Eigen::Vector3d forceOf(const Sample& sample) const;
    [[nodiscard]] Sensitivities withOpenStep() const;

    Eigen::Vector3d gyroscopeBias_, gyroscopeGain_, accelerometerBias_, accelerometerGain_;
    State state_;
    Sample last_;
    Eigen::Matrix3d rotation_;
    Eigen::Vector3d acceleration_;
    Eigen::Vector3d slope_ = Eigen::Vector3d::Zero(); ///< of acceleration over the last step
    double lastStep_ = 0;
    double duration_ = 0;
    double missed_ = 0;
    Eigen::Vector3d startVelocity_;
    Eigen::Vector3d displacement_ = Eigen::Vector3d::Zero();

    Sensitivities sums_;
    // The step of the sensitivities that is open: where it began, and the integral of the rate over it.
    Eigen::Matrix3d openRotation_;
    Eigen::Vector3d openVelocity_;
    Eigen::Vector3d openTurn_ = Eigen::Vector3d::Zero();
    double openDuration_ = 0;
};

/// Rotation by a vector angle [rad]; exact to 1e-15 below 0.3 rad, and for larger ones by sine and cosine.
[[nodiscard]] Eigen::Quaterniond rotationBy(const Eigen::Vector3d& angle);

} // namespace fleetrung::motion
