#include "engine/motion/keyframe_state.hpp"

#include <algorithm>
#include <cmath>

#include "engine/motion/gravity.hpp"

namespace fleetrung::motion
{
namespace
{

constexpr double sensitivityStep = 0.0199; // s

Eigen::Matrix3d cross(const Eigen::Vector3d& v)
{
    Eigen::Matrix3d m;
    m << 0, -v.z(), v.y(), v.z(), 0, -v.x(), -v.y(), v.x(), 0;
    return m;
}

/// [v]x * m without forming the cross matrix.
Eigen::Matrix3d crossed(const Eigen::Vector3d& v, const Eigen::Matrix3d& m)
{
    Eigen::Matrix3d result;
    result.row(0) = v.y() * m.row(2) - v.z() * m.row(1);
    result.row(1) = v.z() * m.row(0) - v.x() * m.row(2);
    result.row(2) = v.x() * m.row(1) - v.y() * m.row(0);
    return result;
}

} // namespace

Eigen::Quaterniond rotationBy(const Eigen::Vector3d& angle)
{
    const double square = angle.squaredNorm();
    if (square > 0.09) {
        const double size = std::sqrt(square);
        return Eigen::Quaterniond(Eigen::AngleAxisd(size, angle / size));
    }
    // Series of cos(x/2) and sin(x/2)/x: a call of sine and cosine a sample would double the cost of a step.
    const double q = 0.25 * square;
    const double cosine = 1 - q * (1.0 / 2 - q * (1.0 / 24 - q * (1.0 / 720 - q / 40320)));
    const double sine = 0.5 * (1 - q * (1.0 / 6 - q * (1.0 / 120 - q * (1.0 / 5040 - q / 362880))));
    return {cosine, sine * angle.x(), sine * angle.y(), sine * angle.z()};
}

State moved(const State& state, const LocalVector& error)
{
    State result = state;
    const Eigen::Vector3d tilt(error[at::tilt], error[at::tilt + 1], 0.0);
    result.attitude = (rotationBy(tilt) * state.attitude).normalized();
    result.velocity += error.segment<3>(at::velocity);
    result.height += error[at::height];
    return result;
}

LocalVector difference(const State& to, const State& from)
{
    LocalVector error;
    const Eigen::Quaterniond turn = to.attitude * from.attitude.conjugate();
    // Small by construction: twice the vector part is the angle. The yaw part is left out on purpose.
    const double sign = turn.w() < 0 ? -2.0 : 2.0;
    error[at::tilt] = sign * turn.x();
    error[at::tilt + 1] = sign * turn.y();
    error.segment<3>(at::velocity) = to.velocity - from.velocity;
    error[at::height] = to.height - from.height;
    return error;
}

LocalVector Interval::carry(const LocalVector& error) const
{
    LocalVector result = error;
    result.segment<3>(at::velocity) += velocityByTilt * error.head<2>();
    result[at::height] += heightByTilt.dot(error.head<2>()) + duration * error[at::velocity + 2];
    return result;
}

Border Interval::carry(const Border& slope) const
{
    Border result = slope;
    for (int axis = 0; axis < 3; ++axis)
        result.row(at::velocity + axis) +=
            velocityByTilt(axis, 0) * slope.row(0) + velocityByTilt(axis, 1) * slope.row(1);
    result.row(at::height) +=
        heightByTilt[0] * slope.row(0) + heightByTilt[1] * slope.row(1) + duration * slope.row(at::velocity + 2);
    return result;
}

LocalMatrix Interval::transition() const
{
    LocalMatrix f = LocalMatrix::Identity();
    f.block<3, 2>(at::velocity, at::tilt) = velocityByTilt;
    f.block<1, 2>(at::height, at::tilt) = heightByTilt;
    f(at::height, at::velocity + 2) = duration;
    return f;
}

// The transition differs from the identity in nine places only.
LocalMatrix Interval::carryRows(const LocalMatrix& covariance) const
{
    LocalMatrix half = covariance;
    for (int axis = 0; axis < 3; ++axis)
        half.row(at::velocity + axis) +=
            velocityByTilt(axis, 0) * covariance.row(0) + velocityByTilt(axis, 1) * covariance.row(1);
    half.row(at::height) += heightByTilt[0] * covariance.row(0) + heightByTilt[1] * covariance.row(1) +
                            duration * covariance.row(at::velocity + 2);
    return half;
}

LocalMatrix Interval::carry(const LocalMatrix& covariance) const
{
    const LocalMatrix half = carryRows(covariance);
    LocalMatrix result = half;
    for (int axis = 0; axis < 3; ++axis)
        result.col(at::velocity + axis) +=
            velocityByTilt(axis, 0) * half.col(0) + velocityByTilt(axis, 1) * half.col(1);
    result.col(at::height) +=
        heightByTilt[0] * half.col(0) + heightByTilt[1] * half.col(1) + duration * half.col(at::velocity + 2);
    return result;
}

Propagation::Propagation(const State& start, const Sample& first, const WholeVector& assumed)
    : gyroscopeBias_(assumed.segment<3>(whole::gyroscopeBias)),
      gyroscopeGain_(Eigen::Vector3d::Ones() - assumed.segment<3>(whole::gyroscopeScale)),
      accelerometerBias_(assumed.segment<3>(whole::accelerometerBias)),
      accelerometerGain_(Eigen::Vector3d::Ones() - assumed.segment<3>(whole::accelerometerScale)), state_(start),
      last_(first), rotation_(start.attitude.toRotationMatrix()),
      acceleration_(rotation_ * forceOf(first) - Eigen::Vector3d(0, 0, standardGravity)),
      startVelocity_(start.velocity), openRotation_(rotation_), openVelocity_(start.velocity)
{
}

Eigen::Vector3d Propagation::forceOf(const Sample& sample) const
{
    return (sample.specificForce - accelerometerBias_).cwiseProduct(accelerometerGain_);
}

void Propagation::step(const Sample& next)
{
    const double dt = next.time - last_.time;
    const Eigen::Vector3d turn =
        (0.5 * (last_.angularRate + next.angularRate) - gyroscopeBias_).cwiseProduct(gyroscopeGain_) * dt;
    // The product of two unit quaternions strays from length one by rounding only; keyframes normalise.
    state_.attitude = state_.attitude * rotationBy(turn);
    rotation_ = state_.attitude.toRotationMatrix();
    Eigen::Vector3d nextAcceleration = rotation_ * forceOf(next);
    nextAcceleration.z() -= standardGravity;

    const Eigen::Vector3d slope = (nextAcceleration - acceleration_) * (1 / dt);
    if (lastStep_ > 0) {
        // Between samples far apart an impact may hide: there the second difference says less than it seems.
        const double hidden = std::clamp(dt / 0.005 - 1, 1.0, 4.0);
        const double weight = hidden * dt * dt * dt / (6 * (dt + lastStep_)); // dt^3 / 12 * second derivative
        missed_ += weight * weight * (slope - slope_).squaredNorm();
    }
    slope_ = slope;
    lastStep_ = dt;
    const Eigen::Vector3d travelled = dt * state_.velocity + dt * dt * (acceleration_ / 3.0 + nextAcceleration / 6.0);
    displacement_ += travelled;
    state_.height += travelled.z();
    state_.velocity += 0.5 * dt * (acceleration_ + nextAcceleration);
    duration_ += dt;
    openTurn_ += turn;
    openDuration_ += dt;
    acceleration_ = nextAcceleration;
    last_ = next;
    if (openDuration_ >= sensitivityStep) {
        sums_ = withOpenStep();
        openRotation_ = rotation_;
        openVelocity_ = state_.velocity;
        openTurn_.setZero();
        openDuration_ = 0;
    }
}

Propagation::Sensitivities Propagation::withOpenStep() const
{
    const double dt = openDuration_;
    if (dt == 0)
        return sums_;
    Sensitivities sums = sums_;
    const Eigen::Vector3d gained = state_.velocity - openVelocity_;
    const Eigen::Vector3d worldForce = gained + Eigen::Vector3d(0, 0, dt * standardGravity); // integral over the step
    const Eigen::Matrix3d meanRotation = 0.5 * (openRotation_ + rotation_);
    const Eigen::Matrix3d rotationStep = dt * meanRotation;
    const Eigen::Matrix3d turnStep = meanRotation * openTurn_.asDiagonal();
    const Eigen::Matrix3d forceStep = meanRotation * (meanRotation.transpose() * worldForce).asDiagonal();
    const Eigen::Matrix3d rotationMiddle = sums.rotation + 0.5 * rotationStep;
    const Eigen::Matrix3d biasStep = crossed(worldForce, rotationMiddle);
    const Eigen::Matrix3d turnBiasStep = crossed(worldForce, sums.turn + 0.5 * turnStep);
    sums.heightRotation += dt * rotationMiddle.row(2);
    sums.heightForce += dt * (sums.force.row(2) + 0.5 * forceStep.row(2));
    sums.heightBias += dt * (sums.bias.row(2) + 0.5 * biasStep.row(2));
    sums.heightTurnBias += dt * (sums.turnBias.row(2) + 0.5 * turnBiasStep.row(2));
    sums.rotation += rotationStep;
    sums.turn += turnStep;
    sums.force += forceStep;
    sums.bias += biasStep;
    sums.turnBias += turnBiasStep;
    sums.turned += openTurn_.norm();
    sums.acceleratedTravel += gained.norm();
    return sums;
}

double Propagation::turned() const
{
    return sums_.turned + openTurn_.norm();
}

double Propagation::acceleratedTravel() const
{
    return sums_.acceleratedTravel + (state_.velocity - openVelocity_).norm();
}

Interval Propagation::interval() const
{
    const Sensitivities sums = withOpenStep();
    Interval interval;
    interval.duration = duration_;
    const Eigen::Vector3d up(0, 0, standardGravity);
    const Eigen::Vector3d gained = state_.velocity - startVelocity_ + duration_ * up;
    const Eigen::Vector3d travelled = displacement_ - duration_ * startVelocity_ + 0.5 * duration_ * duration_ * up;
    interval.velocityByTilt = -cross(gained).leftCols<2>();
    interval.heightByTilt = -cross(travelled).row(2).leftCols<2>();
    Border& b = interval.border;
    b.block<2, 3>(at::tilt, whole::gyroscopeBias) = -sums.rotation.topRows<2>();
    b.block<2, 3>(at::tilt, whole::gyroscopeScale) = -sums.turn.topRows<2>();
    b.block<3, 3>(at::velocity, whole::gyroscopeBias) = sums.bias;
    b.block<3, 3>(at::velocity, whole::gyroscopeScale) = sums.turnBias;
    b.block<3, 3>(at::velocity, whole::accelerometerBias) = -sums.rotation;
    b.block<3, 3>(at::velocity, whole::accelerometerScale) = -sums.force;
    b.block<1, 3>(at::height, whole::gyroscopeBias) = sums.heightBias;
    b.block<1, 3>(at::height, whole::gyroscopeScale) = sums.heightTurnBias;
    b.block<1, 3>(at::height, whole::accelerometerBias) = -sums.heightRotation;
    b.block<1, 3>(at::height, whole::accelerometerScale) = -sums.heightForce;
    return interval;
}

} // namespace fleetrung::motion
