// The residuals of the batch solution, written for automatic differentiation (Ceres' jets).
#pragma once

#include <cmath>
#include <span>

#include <Eigen/Core>
#include <Eigen/Geometry>

#include "engine/motion/gravity.hpp"
#include "engine/motion/sample.hpp"

namespace fleetrung::oracle
{

using motion::Sample;
template <class T> using Vector3 = Eigen::Matrix<T, 3, 1>;

template <class T> Eigen::Quaternion<T> turnBy(const Vector3<T>& angle)
{
    // The sinc form to second order is exact to 1e-10 for the angles between samples, and has a derivative at zero.
    const T square = angle.squaredNorm();
    const T vectorPart = T(0.5) - square / T(48.0) + square * square / T(3840.0);
    const T scalarPart = T(1.0) - square / T(8.0) + square * square / T(384.0);
    return Eigen::Quaternion<T>(scalarPart, vectorPart * angle.x(), vectorPart * angle.y(), vectorPart * angle.z());
}

/// What the model leaves open over one interval: variances of tilt and velocity.
struct Openness {
    double tilt, speed;
};

/// From one keyframe to the next through all samples in between.
class IntervalResidual
{
public:
    IntervalResidual(std::span<const Sample> samples, const Openness& openness) : samples_(samples)
    {
        const double t = samples.back().time - samples.front().time;
        tiltWeight_ = 1 / std::sqrt(openness.tilt);
        speedWeight_ = 1 / std::sqrt(openness.speed);
        // Height shares the noise of vertical velocity: what is left of it given the velocity at the end.
        sharedHeight_ = t / 2;
        heightWeight_ = 1 / std::sqrt(openness.speed * t * t / 12 + 1e-10);
    }

    template <class T>
    bool operator()(const T* attitude0, const T* velocity0, const T* height0, const T* attitude1, const T* velocity1,
                    const T* height1, const T* gyroscopeBias, const T* accelerometerBias, T* residual) const
    {
        const Vector3<T> turnBias(gyroscopeBias[0], gyroscopeBias[1], gyroscopeBias[2]);
        const Vector3<T> forceBias(accelerometerBias[0], accelerometerBias[1], accelerometerBias[2]);
        Eigen::Quaternion<T> attitude = Eigen::Map<const Eigen::Quaternion<T>>(attitude0);
        Vector3<T> velocity = Eigen::Map<const Vector3<T>>(velocity0);
        T height = height0[0];
        Vector3<T> before = levelled(attitude, samples_.front(), forceBias);
        for (std::size_t i = 0; i + 1 < samples_.size(); ++i) {
            const double dt = samples_[i + 1].time - samples_[i].time;
            const Eigen::Vector3d rate = 0.5 * (samples_[i].angularRate + samples_[i + 1].angularRate);
            attitude = attitude * turnBy<T>((rate.cast<T>() - turnBias) * T(dt));
            const Vector3<T> after = levelled(attitude, samples_[i + 1], forceBias);
            // Acceleration is linear in between.
            height += T(dt) * velocity.z() + T(dt * dt) * (before.z() / T(3.0) + after.z() / T(6.0));
            velocity += T(0.5 * dt) * (before + after);
            before = after;
        }
        const Eigen::Quaternion<T> attitudeNow = Eigen::Map<const Eigen::Quaternion<T>>(attitude1);
        const Vector3<T> angle = T(2.0) * (attitude * attitudeNow.conjugate()).vec();
        const Vector3<T> gap = Eigen::Map<const Vector3<T>>(velocity1) - velocity;
        for (int axis = 0; axis < 3; ++axis) {
            residual[axis] = T(tiltWeight_) * angle[axis];
            residual[3 + axis] = T(speedWeight_) * gap[axis];
        }
        residual[6] = T(heightWeight_) * (height1[0] - height - T(sharedHeight_) * gap.z());
        return true;
    }

private:
    template <class T>
    static Vector3<T> levelled(const Eigen::Quaternion<T>& attitude, const Sample& sample, const Vector3<T>& bias)
    {
        Vector3<T> acceleration = attitude * (sample.specificForce.cast<T>() - bias);
        acceleration.z() -= T(motion::standardGravity);
        return acceleration;
    }

    std::span<const Sample> samples_;
    double tiltWeight_, speedWeight_, sharedHeight_, heightWeight_;
};

/// A vector is what it is believed to be.
template <int size> class Belief
{
public:
    Belief(const Eigen::Matrix<double, size, 1>& value, const Eigen::Matrix<double, size, 1>& deviation)
        : value_(value), deviation_(deviation)
    {
    }
    template <class T> bool operator()(const T* x, T* residual) const
    {
        for (int i = 0; i < size; ++i)
            residual[i] = (x[i] - T(value_[i])) / T(deviation_[i]);
        return true;
    }

private:
    Eigen::Matrix<double, size, 1> value_, deviation_;
};

/// The first attitude is what it seemed to be, loosely in tilt; yaw is held to one of all that are equally good.
class FirstAttitude
{
public:
    explicit FirstAttitude(const Eigen::Quaterniond& seemed) : seemed_(seemed) {}
    template <class T> bool operator()(const T* attitude, T* residual) const
    {
        const Eigen::Quaternion<T> now = Eigen::Map<const Eigen::Quaternion<T>>(attitude);
        const Vector3<T> angle = T(2.0) * (now * seemed_.conjugate().cast<T>()).vec();
        residual[0] = angle.x() / T(0.1);
        residual[1] = angle.y() / T(0.1);
        residual[2] = angle.z() / T(1e-3);
        return true;
    }

private:
    Eigen::Quaterniond seemed_;
};

/// The height at a turning point `delay` after a keyframe is that of all others of its kind, unless it strays too far.
class ReturnResidual
{
public:
    ReturnResidual(double travelled, double delay, double spread)
        : travelled_(travelled), delay_(delay), spread_(spread)
    {
    }
    template <class T> bool operator()(const T* height, const T* velocity, const T* level, T* residual) const
    {
        residual[0] = (height[0] + T(delay_) * velocity[2] + T(travelled_) - level[0]) / T(spread_);
        return true;
    }

private:
    double travelled_, delay_, spread_;
};

} // namespace fleetrung::oracle
