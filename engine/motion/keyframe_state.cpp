#include "engine/motion/keyframe_state.hpp"

#include <cmath>

#include "engine/motion/gravity.hpp"

namespace fleetrung::motion
{
namespace
{

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

LocalMatrix Interval::carry(const LocalMatrix& covariance) const
{
    // Rows, then columns: the transition differs from the identity in nine places only.
    LocalMatrix half = covariance;
    for (int axis = 0; axis < 3; ++axis)
        half.row(at::velocity + axis) +=
            velocityByTilt(axis, 0) * covariance.row(0) + velocityByTilt(axis, 1) * covariance.row(1);
    half.row(at::height) += heightByTilt[0] * covariance.row(0) + heightByTilt[1] * covariance.row(1) +
                            duration * covariance.row(at::velocity + 2);
    LocalMatrix result = half;
    for (int axis = 0; axis < 3; ++axis)
        result.col(at::velocity + axis) +=
            velocityByTilt(axis, 0) * half.col(0) + velocityByTilt(axis, 1) * half.col(1);
    result.col(at::height) +=
        heightByTilt[0] * half.col(0) + heightByTilt[1] * half.col(1) + duration * half.col(at::velocity + 2);
    return result;
}

Propagation::Propagation(const State& start, const Sample& first, const WholeVector& assumed)
    : assumed_(assumed), state_(start), last_(first), rotation_(start.attitude.toRotationMatrix()),
      force_(forceOf(first)), acceleration_(rotation_ * force_ - Eigen::Vector3d(0, 0, standardGravity)),
      startVelocity_(start.velocity)
{
}

Eigen::Vector3d Propagation::forceOf(const Sample& sample) const
{
    return (sample.specificForce - assumed_.segment<3>(whole::accelerometerBias))
        .cwiseProduct(Eigen::Vector3d::Ones() - assumed_.segment<3>(whole::accelerometerScale));
}

void Propagation::step(const Sample& next)
{
    const double dt = next.time - last_.time;
    const Eigen::Vector3d rate =
        (0.5 * (last_.angularRate + next.angularRate) - assumed_.segment<3>(whole::gyroscopeBias))
            .cwiseProduct(Eigen::Vector3d::Ones() - assumed_.segment<3>(whole::gyroscopeScale));
    // The product of two unit quaternions strays from length one by rounding only; keyframes normalise.
    state_.attitude = state_.attitude * rotationBy(rate * dt);
    const Eigen::Matrix3d nextRotation = state_.attitude.toRotationMatrix();
    const Eigen::Vector3d nextForce = forceOf(next);
    const Eigen::Vector3d up(0, 0, standardGravity);
    const Eigen::Vector3d nextAcceleration = nextRotation * nextForce - up;

    // Sensitivities first: they use the integrals as they stand at the beginning of the step.
    const Eigen::Matrix3d meanRotation = 0.5 * (rotation_ + nextRotation);
    const Eigen::Vector3d meanForce = 0.5 * (force_ + nextForce);
    const Eigen::Vector3d worldForce = 0.5 * (acceleration_ + nextAcceleration) + up;
    const Eigen::Matrix3d rotationStep = dt * meanRotation;
    const Eigen::Matrix3d turnStep = rotationStep * rate.asDiagonal();
    const Eigen::Matrix3d forceStep = rotationStep * meanForce.asDiagonal();
    const Eigen::Matrix3d rotationMiddle = rotationSum_ + 0.5 * rotationStep;
    const Eigen::Matrix3d biasStep = crossed(dt * worldForce, rotationMiddle);
    const Eigen::Matrix3d turnBiasStep = crossed(dt * worldForce, turnSum_ + 0.5 * turnStep);
    heightRotationSum_ += dt * rotationMiddle.row(2);
    heightForceSum_ += dt * (forceSum_.row(2) + 0.5 * forceStep.row(2));
    heightBiasSum_ += dt * (biasSum_.row(2) + 0.5 * biasStep.row(2));
    heightTurnBiasSum_ += dt * (turnBiasSum_.row(2) + 0.5 * turnBiasStep.row(2));
    rotationSum_ += rotationStep;
    turnSum_ += turnStep;
    forceSum_ += forceStep;
    biasSum_ += biasStep;
    turnBiasSum_ += turnBiasStep;

    const Eigen::Vector3d gain = nextAcceleration - acceleration_;
    if (stepped_)
        missed_ += dt * dt / 144 * (gain - lastGain_).squaredNorm();
    stepped_ = true;
    lastGain_ = gain;
    const Eigen::Vector3d travelled = dt * state_.velocity + dt * dt * (acceleration_ / 3.0 + nextAcceleration / 6.0);
    displacement_ += travelled;
    state_.height += travelled.z();
    state_.velocity += 0.5 * dt * (acceleration_ + nextAcceleration);
    turned_ += dt * rate.norm();
    acceleratedTravel_ += 0.5 * dt * (acceleration_ + nextAcceleration).norm();
    duration_ += dt;
    rotation_ = nextRotation;
    force_ = nextForce;
    acceleration_ = nextAcceleration;
    last_ = next;
}

Interval Propagation::interval() const
{
    Interval interval;
    interval.duration = duration_;
    const Eigen::Vector3d up(0, 0, standardGravity);
    const Eigen::Vector3d gained = state_.velocity - startVelocity_ + duration_ * up;
    const Eigen::Vector3d travelled = displacement_ - duration_ * startVelocity_ + 0.5 * duration_ * duration_ * up;
    interval.velocityByTilt = -cross(gained).leftCols<2>();
    interval.heightByTilt = -cross(travelled).row(2).leftCols<2>();
    Border& b = interval.border;
    b.block<2, 3>(at::tilt, whole::gyroscopeBias) = -rotationSum_.topRows<2>();
    b.block<2, 3>(at::tilt, whole::gyroscopeScale) = -turnSum_.topRows<2>();
    b.block<3, 3>(at::velocity, whole::gyroscopeBias) = biasSum_;
    b.block<3, 3>(at::velocity, whole::gyroscopeScale) = turnBiasSum_;
    b.block<3, 3>(at::velocity, whole::accelerometerBias) = -rotationSum_;
    b.block<3, 3>(at::velocity, whole::accelerometerScale) = -forceSum_;
    b.block<1, 3>(at::height, whole::gyroscopeBias) = heightBiasSum_;
    b.block<1, 3>(at::height, whole::gyroscopeScale) = heightTurnBiasSum_;
    b.block<1, 3>(at::height, whole::accelerometerBias) = -heightRotationSum_;
    b.block<1, 3>(at::height, whole::accelerometerScale) = -heightForceSum_;
    return interval;
}

} // namespace fleetrung::motion
