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

Eigen::Quaterniond rotationBy(const Eigen::Vector3d& angle)
{
    const double size = angle.norm();
    if (size < 1e-12)
        return {1.0, 0.5 * angle.x(), 0.5 * angle.y(), 0.5 * angle.z()};
    return Eigen::Quaterniond(Eigen::AngleAxisd(size, angle / size));
}

} // namespace

State moved(const State& state, const StateVector& error)
{
    State result = state;
    const Eigen::Vector3d tilt(error[at::tilt], error[at::tilt + 1], 0.0);
    result.attitude = (rotationBy(tilt) * state.attitude).normalized();
    result.velocity += error.segment<3>(at::velocity);
    result.height += error[at::height];
    result.gyroscopeBias += error.segment<3>(at::gyroscopeBias);
    result.accelerometerBias += error.segment<3>(at::accelerometerBias);
    result.top += error[at::top];
    result.bottom += error[at::bottom];
    return result;
}

StateVector difference(const State& to, const State& from)
{
    StateVector error;
    const Eigen::Quaterniond turn = to.attitude * from.attitude.conjugate();
    // Small by construction: twice the vector part is the angle. The yaw part is left out on purpose.
    const double sign = turn.w() < 0 ? -2.0 : 2.0;
    error[at::tilt] = sign * turn.x();
    error[at::tilt + 1] = sign * turn.y();
    error.segment<3>(at::velocity) = to.velocity - from.velocity;
    error[at::height] = to.height - from.height;
    error.segment<3>(at::gyroscopeBias) = to.gyroscopeBias - from.gyroscopeBias;
    error.segment<3>(at::accelerometerBias) = to.accelerometerBias - from.accelerometerBias;
    error[at::top] = to.top - from.top;
    error[at::bottom] = to.bottom - from.bottom;
    return error;
}

Propagation::Propagation(const State& start, const Sample& first)
    : state_(start), last_(first), rotation_(start.attitude.toRotationMatrix()),
      acceleration_(accelerationAt(first, rotation_))
{
}

Eigen::Vector3d Propagation::accelerationAt(const Sample& sample, const Eigen::Matrix3d& rotation) const
{
    return rotation * (sample.specificForce - state_.accelerometerBias) - Eigen::Vector3d(0, 0, standardGravity);
}

void Propagation::step(const Sample& next)
{
    const double dt = next.time - last_.time;
    const Eigen::Vector3d turn = (0.5 * (last_.angularRate + next.angularRate) - state_.gyroscopeBias) * dt;
    state_.attitude = (state_.attitude * rotationBy(turn)).normalized();
    const Eigen::Matrix3d nextRotation = state_.attitude.toRotationMatrix();
    const Eigen::Vector3d nextAcceleration = accelerationAt(next, nextRotation);
    const Eigen::Vector3d up(0, 0, standardGravity);

    // Sensitivities first: they use the integrals as they stand at the beginning of the step.
    const Eigen::Matrix3d meanRotation = 0.5 * (rotation_ + nextRotation);
    const Eigen::Matrix3d force = cross(0.5 * (acceleration_ + nextAcceleration) + up);
    const Eigen::Matrix3d rotationMiddle = rotationSum_ + 0.5 * dt * meanRotation;
    const Eigen::Matrix3d forceMiddle = forceSum_ + 0.5 * dt * force;
    const Eigen::Matrix3d biasStep = force * rotationMiddle;
    heightRotationSum_ += dt * rotationMiddle.row(2);
    heightForceSum_ += dt * forceMiddle.row(2);
    heightBiasSum_ += dt * (biasSum_.row(2) + 0.5 * dt * biasStep.row(2));
    rotationSum_ += dt * meanRotation;
    forceSum_ += dt * force;
    biasSum_ += dt * biasStep;

    const Eigen::Vector3d gained = 0.5 * dt * (acceleration_ + nextAcceleration);
    state_.height += dt * state_.velocity.z() + dt * dt * (acceleration_.z() / 3.0 + nextAcceleration.z() / 6.0);
    state_.velocity += gained;
    acceleratedTravel_ += 0.5 * dt * (acceleration_.norm() + nextAcceleration.norm());
    turned_ += turn.norm();
    duration_ += dt;
    rotation_ = nextRotation;
    acceleration_ = nextAcceleration;
    last_ = next;
}

StateMatrix Propagation::transition() const
{
    StateMatrix f = StateMatrix::Identity();
    f.block<2, 3>(at::tilt, at::gyroscopeBias) = -rotationSum_.topRows<2>();
    f.block<3, 2>(at::velocity, at::tilt) = -forceSum_.leftCols<2>();
    f.block<3, 3>(at::velocity, at::gyroscopeBias) = biasSum_;
    f.block<3, 3>(at::velocity, at::accelerometerBias) = -rotationSum_;
    f.row(at::height) = heightRow();
    return f;
}

StateRow Propagation::verticalVelocityRow() const
{
    StateRow row = StateRow::Zero();
    row[at::velocity + 2] = 1;
    row.segment<2>(at::tilt) = -forceSum_.row(2).leftCols<2>();
    row.segment<3>(at::gyroscopeBias) = biasSum_.row(2);
    row.segment<3>(at::accelerometerBias) = -rotationSum_.row(2);
    return row;
}

StateRow Propagation::heightRow() const
{
    StateRow row = StateRow::Zero();
    row[at::height] = 1;
    row[at::velocity + 2] = duration_;
    row.segment<2>(at::tilt) = -heightForceSum_.leftCols<2>();
    row.segment<3>(at::gyroscopeBias) = heightBiasSum_;
    row.segment<3>(at::accelerometerBias) = -heightRotationSum_;
    return row;
}

} // namespace fleetrung::motion
