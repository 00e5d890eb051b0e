#include "demo/simulator/scene.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace fleetrung::simulator
{
namespace
{

using Eigen::Matrix3d;
using Eigen::Vector3d;

/// A scalar with its first two time derivatives.
struct Jet {
    double value = 0, rate = 0, acceleration = 0;
};

/// f(x(t)) where f has the derivatives f1, f2 at x.
Jet through(const Jet& x, double f, double f1, double f2)
{
    return {f, f1 * x.rate, f1 * x.acceleration + f2 * x.rate * x.rate};
}

Jet scaled(const Jet& x, double factor)
{
    return {x.value * factor, x.rate * factor, x.acceleration * factor};
}

Jet smoothStep(double time, const Grip& grip)
{
    const double u = (time - grip.start) / grip.duration;
    if (u >= 1) {
        return {grip.to, 0, 0};
    }
    const double change = grip.to - grip.from;
    const double s = u * u * u * (10 - 15 * u + 6 * u * u);
    const double s1 = 30 * u * u * (1 - u) * (1 - u) / grip.duration;
    const double s2 = 60 * u * (1 - u) * (1 - 2 * u) / (grip.duration * grip.duration);
    return {grip.from + change * s, change * s1, change * s2};
}

Jet gripAt(double time, const std::vector<Grip>& grips)
{
    const auto after =
        std::upper_bound(grips.begin(), grips.end(), time, [](double t, const Grip& grip) { return t < grip.start; });
    return after == grips.begin() ? Jet{} : smoothStep(time, *std::prev(after));
}

Jet ringAt(double time, const Ring& ring)
{
    const double s = (time - ring.start) / ring.duration;
    const double q = 4 * s * (1 - s);
    const double q1 = 4 - 8 * s;
    const double w = q * q * q * q;
    const double w1 = 4 * q * q * q * q1;
    const double w2 = 12 * q * q * q1 * q1 - 32 * q * q * q;
    const double turn = 2 * std::numbers::pi * ring.cycles;
    const double sine = std::sin(turn * s);
    const double cosine = std::cos(turn * s);
    return {w * sine, (w1 * sine + w * turn * cosine) / ring.duration,
            (w2 * sine + 2 * w1 * turn * cosine - w * turn * turn * sine) / (ring.duration * ring.duration)};
}

void add(Pose& pose, const Vector3d& direction, const Jet& jet)
{
    pose.position += direction * jet.value;
    pose.velocity += direction * jet.rate;
    pose.acceleration += direction * jet.acceleration;
}

/// A rotation about one axis with its derivatives.
struct Turn {
    Matrix3d value, rate, acceleration;
};

Turn turnAbout(int axis, const Jet& angle)
{
    const double c = std::cos(angle.value);
    const double s = std::sin(angle.value);
    const int i = (axis + 1) % 3;
    const int j = (axis + 2) % 3;
    Matrix3d value = Matrix3d::Identity();
    Matrix3d first = Matrix3d::Zero();  // by the angle
    Matrix3d second = Matrix3d::Zero(); // by the angle, twice
    value(i, i) = value(j, j) = c;
    value(i, j) = -s;
    value(j, i) = s;
    first(i, i) = first(j, j) = -s;
    first(i, j) = -c;
    first(j, i) = c;
    second(i, i) = second(j, j) = -c;
    second(i, j) = s;
    second(j, i) = -s;
    return {value, first * angle.rate, first * angle.acceleration + second * (angle.rate * angle.rate)};
}

Turn product(const Turn& a, const Turn& b)
{
    return {a.value * b.value, a.rate * b.value + a.value * b.rate,
            a.acceleration * b.value + 2 * a.rate * b.rate + a.value * b.acceleration};
}

} // namespace

Pose Scene::at(double time) const
{
    const auto up = vertical.at(time);
    const auto ahead = forward.at(time);
    // Sway and tilt follow the stroke on a curve of its height, so that they are as smooth as the stroke is.
    const double share = (up.height - reference) / strokeRange;
    const Jet s{share, up.velocity / strokeRange, up.acceleration / strokeRange};
    const double pi = std::numbers::pi;
    const Jet bow = through(s, std::sin(pi * share), pi * std::cos(pi * share), -pi * pi * std::sin(pi * share));
    const Jet lean =
        through(s, share + 0.2 * bow.value, 1 + 0.2 * pi * std::cos(pi * share), -0.2 * pi * pi * std::sin(pi * share));

    Pose pose;
    pose.position = {ahead.height, 0, up.height};
    pose.velocity = {ahead.velocity, 0, up.velocity};
    pose.acceleration = {ahead.acceleration, 0, up.acceleration};
    add(pose, Vector3d::UnitX(), scaled(bow, swayForward));

    const auto grip = gripAt(time, grips);
    if (grip.value > 0) {
        for (const auto& o : oscillations) {
            const double sine = std::sin(o.frequency * time + o.phase);
            const double cosine = std::cos(o.frequency * time + o.phase);
            const double w = o.frequency;
            add(pose, o.amplitude,
                {grip.value * sine, grip.rate * sine + grip.value * w * cosine,
                 grip.acceleration * sine + 2 * grip.rate * w * cosine - grip.value * w * w * sine});
        }
    }
    for (const auto& ring : rings) {
        if (time > ring.start && time < ring.start + ring.duration) {
            add(pose, ring.amplitude, ringAt(time, ring));
        }
    }

    const auto turned = pitch.at(time);
    const auto tilted = scaled(lean, tilt);
    const auto attitude = product(product(turnAbout(2, scaled(bow, yaw)), turnAbout(0, scaled(lean, roll))),
                                  turnAbout(1, {tilted.value + turned.height, tilted.rate + turned.velocity,
                                                tilted.acceleration + turned.acceleration}));
    pose.attitude = attitude.value;
    pose.attitudeRate = attitude.rate;
    pose.attitudeAcceleration = attitude.acceleration;
    return pose;
}

Kinematics Scene::pointAt(double time, const Eigen::Vector3d& lever) const
{
    const auto pose = at(time);
    return {pose.position.z() + pose.attitude.row(2).dot(lever),
            pose.velocity.z() + pose.attitudeRate.row(2).dot(lever),
            pose.acceleration.z() + pose.attitudeAcceleration.row(2).dot(lever)};
}

std::vector<Oscillation> livingOscillations(Random& random)
{
    constexpr int tremors = 4;
    constexpr double turn = 2 * std::numbers::pi;
    std::vector<Oscillation> all;
    for (int axis = 0; axis < 3; ++axis) {
        const double together = random.uniform(0.02, 0.05); // m/s2, root mean square of the axis
        for (int i = 0; i < tremors; ++i) {
            const double frequency = turn * random.uniform(8, 12);
            const double amplitude = together * std::sqrt(2.0 / tremors) / (frequency * frequency);
            all.push_back({amplitude * Vector3d::Unit(axis), frequency, turn * random.uniform()});
        }
        const double frequency = turn * random.uniform(0.2, 0.4);
        const double amplitude = (axis == 2 ? 0.0015 : 0.004) * random.uniform(0.6, 1.4);
        all.push_back({amplitude * Vector3d::Unit(axis), frequency, turn * random.uniform()});
    }
    return all;
}

} // namespace fleetrung::simulator
