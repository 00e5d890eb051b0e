#include "tests/teach/hand.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace fleetrung::tests
{
namespace
{

using Eigen::AngleAxisd;
using Eigen::Quaterniond;
using Eigen::Vector3d;
using sensor::TeachStep;

constexpr double pi = std::numbers::pi;
constexpr double degree = pi / 180;

/// Minimum jerk, 0 to 1.
double ease(double share)
{
    const double u = std::clamp(share, 0.0, 1.0);
    return u * u * u * (10 - 15 * u + 6 * u * u);
}

/// 0 to 1 and back, three derivatives vanish at the ends.
double bump(double share)
{
    const double u = std::clamp(share, 0.0, 1.0);
    return 64 * std::pow(u * (1 - u), 3);
}

Vector3d anyDirection(simulator::Random& random)
{
    Vector3d direction{random.normal(), random.normal(), random.normal()};
    return direction.normalized();
}

Vector3d upOf(int face)
{
    Vector3d up = Vector3d::Zero();
    up[face / 2] = face % 2 == 0 ? 1 : -1;
    return up;
}

} // namespace

Hand::Hand(simulator::Random& random, double raiseHeight) : random_(random), raiseHeight_(raiseHeight)
{
    lever_ = anyDirection(random) * random.uniform(0, 0.06);
    rest(random.uniform(0.5, 1.5));
}

void Hand::add(double duration, const Vector3d& axis, double angle, const Vector3d& by, double arc, double shake)
{
    pieces_.push_back({end_, duration, attitude_, axis, angle, position_, by, arc, shake, random_.uniform(8, 12)});
    end_ += duration;
    attitude_ = Quaterniond(AngleAxisd(angle, axis)) * attitude_;
    position_ += by;
}

void Hand::rest(double duration, double shake)
{
    add(duration, Vector3d::UnitZ(), 0, Vector3d::Zero(), 0, shake);
}

void Hand::turnTo(const Quaterniond& attitude)
{
    const AngleAxisd turn(attitude * attitude_.conjugate());
    const double duration = random_.uniform(0.9, 1.6) * std::max(0.5, turn.angle() / (pi / 2));
    Vector3d by{random_.uniform(-0.1, 0.1), random_.uniform(-0.1, 0.1), -position_.z()};
    add(duration, turn.axis(), turn.angle(), by, random_.uniform(0.05, 0.25), random_.uniform(2e-5, 1e-4));
    attitude_ = attitude;
}

/// That body axis up, any heading, some degrees off; sometimes by way of another attitude.
void Hand::layOn(int face)
{
    const auto upright = Quaterniond::FromTwoVectors(upOf(face), Vector3d::UnitZ());
    const Quaterniond heading(AngleAxisd(random_.uniform(-pi, pi), Vector3d::UnitZ()));
    const Vector3d level = Vector3d{random_.normal(), random_.normal(), 0}.normalized();
    const Quaterniond tilt(AngleAxisd(2 * degree * random_.normal(), level));
    if (random_.chance(0.3)) {
        turnTo(Quaterniond(AngleAxisd(random_.uniform(0.3, 1.2), anyDirection(random_))) * attitude_);
    }
    turnTo(tilt * heading * upright);
}

void Hand::span(TeachStep step)
{
    spans_.push_back({step, end_, end_});
}

void Hand::face(TeachStep step, int face, bool restless)
{
    layOn(face);
    rest(random_.uniform(0.5, 1.2));
    span(step);
    rest(sensor::secondsOf(step));
    if (restless) {
        pieces_.back().rock = random_.uniform(25, 60) * degree;
        pieces_.back().axis = Vector3d{random_.normal(), random_.normal(), 0}.normalized();
    }
    spans_.back().to = end_;
    rest(random_.uniform(0.1, 0.5));
}

void Hand::turn(TeachStep step, double angle)
{
    rest(random_.uniform(0.5, 1.0));
    span(step);
    const double whole = sensor::secondsOf(step);
    const double before = random_.uniform(0.6, 0.9), duration = random_.uniform(2.8, 4.2);
    rest(before);
    add(duration, Vector3d::UnitZ(), angle, Vector3d::Zero(), 0, random_.uniform(0, 3e-5));
    rest(whole - before - duration);
    spans_.back().to = end_;
    rest(random_.uniform(0.1, 0.5));
}

void Hand::raise(TeachStep step, double height)
{
    rest(random_.uniform(0.6, 1.2));
    span(step);
    const double whole = sensor::secondsOf(step);
    const double before = random_.uniform(0.6, 1.0), duration = random_.uniform(0.8, 1.4);
    rest(before);
    const Vector3d tilt = Vector3d{random_.normal(), random_.normal(), 0}.normalized();
    const Vector3d by{random_.normal(0, 0.01), random_.normal(0, 0.01), height};
    add(duration, tilt, 2 * degree * random_.normal(), by, 0, height > 0 ? 3e-5 : 0);
    rest(whole - before - duration, height > 0 ? 1e-5 : 0);
    spans_.back().to = end_;
    rest(random_.uniform(0.1, 0.4));
    add(1.2, Vector3d::UnitZ(), 0, {0, 0, -position_.z()}, 0, 3e-5);
}

void Hand::doSteps(const Mistake& mistake)
{
    std::array<int, 6> order{0, 1, 2, 3, 4, 5};
    for (int i = 5; i > 0; --i) {
        std::swap(order.at(static_cast<std::size_t>(i)), order.at(static_cast<std::size_t>(random_.below(i + 1))));
    }
    const auto wrong = static_cast<std::size_t>(mistake.step);
    if (mistake.spoil == Spoil::SameFaceTwice) {
        order.at(wrong) = order.at(static_cast<std::size_t>(random_.below(static_cast<int>(wrong))));
    }
    for (std::size_t i = 0; i < 6; ++i) {
        face(static_cast<TeachStep>(i), order.at(i), mistake.spoil == Spoil::RestlessFace && i == wrong);
    }
    int axes[3] = {0, 1, 2};
    std::swap(axes[0], axes[random_.below(3)]);
    for (std::size_t i = 0; i < 3; ++i) {
        layOn(2 * axes[i] + random_.below(2));
        double angle = (360 + random_.uniform(-10, 10)) * degree;
        if (wrong == 6 + i) {
            angle = mistake.spoil == Spoil::HalfTurn ? pi : mistake.spoil == Spoil::TurnOtherWay ? -angle : angle;
        }
        turn(static_cast<TeachStep>(6 + i), angle);
    }
    layOn(random_.below(6));
    for (std::size_t i = 0; i < 2; ++i) {
        const bool none = mistake.spoil == Spoil::NoRaise && wrong == 9 + i;
        raise(static_cast<TeachStep>(9 + i), none ? 0 : raiseHeight_ + random_.uniform(-0.02, 0.02));
    }
}

void Hand::waveAbout(double duration)
{
    const double until = end_ + duration;
    while (end_ < until) {
        turnTo(Quaterniond(AngleAxisd(random_.uniform(0.5, 2.5), anyDirection(random_))) * attitude_);
        rest(random_.uniform(0.1, 0.6));
    }
}

HandState Hand::at(double time) const
{
    auto piece = std::upper_bound(pieces_.begin(), pieces_.end(), time,
                                  [](double when, const Piece& p) { return when < p.begin; });
    piece = piece == pieces_.begin() ? piece : piece - 1;
    const double share = (time - piece->begin) / piece->duration;
    const double angle = piece->angle * ease(share) + piece->rock * bump(share);
    const double tremor = piece->shake * bump(share) * std::sin(2 * pi * piece->beat * time);
    HandState state;
    state.attitude = AngleAxisd(angle, piece->axis).toRotationMatrix() * piece->attitude.toRotationMatrix();
    state.position = piece->from + ease(share) * piece->by + piece->arc * bump(share) * Vector3d::UnitZ() +
                     tremor * Vector3d{1, 0.7, 0.5} + state.attitude * lever_;
    return state;
}

std::pair<Vector3d, Vector3d> Hand::feel(double time, double gravity) const
{
    constexpr double step = 1e-3;
    const auto before = at(time - step), here = at(time), after = at(time + step);
    const Vector3d acceleration = (after.position - 2 * here.position + before.position) / (step * step);
    const AngleAxisd turned(Eigen::Matrix3d(before.attitude.transpose() * after.attitude));
    return {here.attitude.transpose() * (acceleration + gravity * Vector3d::UnitZ()),
            turned.axis() * (turned.angle() / (2 * step))};
}

} // namespace fleetrung::tests
