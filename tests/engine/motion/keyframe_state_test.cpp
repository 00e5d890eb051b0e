#include <catch2/catch.hpp>

#include "engine/motion/gravity.hpp"
#include "engine/motion/keyframe_state.hpp"

using namespace fleetrung::motion;

namespace
{

/// A sensor that swings, turns and accelerates smoothly: enough to exercise every sensitivity.
Sample sampleAt(double t)
{
    return {t,
            {1.5 * std::sin(3 * t), 0.8 * std::cos(2 * t), standardGravity + 2.5 * std::sin(5 * t)},
            {0.9 * std::sin(2 * t), 0.7 * std::cos(3 * t), 0.4}};
}

Propagation carried(const State& start, const WholeVector& assumed = WholeVector::Zero())
{
    Propagation propagation(start, sampleAt(0), assumed);
    for (int i = 1; i <= 80; ++i)
        propagation.step(sampleAt(i * 0.0025));
    return propagation;
}

State someStart()
{
    State start;
    start.attitude = Eigen::Quaterniond(Eigen::AngleAxisd(0.4, Eigen::Vector3d(1, 2, 0.5).normalized()));
    start.velocity = {0.2, -0.1, 0.5};
    return start;
}

constexpr double step = 1e-5;

} // namespace

TEST_CASE("What a small error at the start of an interval does to its end agrees with finite differences",
          "[motion][property]")
{
    const State start = someStart();
    const Propagation nominal = carried(start);
    const Interval interval = nominal.interval();
    for (int i = 0; i < localSize; ++i) {
        CAPTURE(i);
        const LocalVector error = step * LocalVector::Unit(i);
        const LocalVector ahead = difference(carried(moved(start, error)).state(), nominal.state()) / step;
        // Second-order terms and the trapezoidal rule of the integrals leave about a thousandth.
        CHECK((ahead - interval.carry(LocalVector(LocalVector::Unit(i)))).norm() < 2e-3 * (1 + ahead.norm()));
        CHECK((interval.transition().col(i) - interval.carry(LocalVector(LocalVector::Unit(i)))).norm() < 1e-12);
    }
}

TEST_CASE("What biases and scale errors do to the end of an interval agrees with finite differences",
          "[motion][property]")
{
    const State start = someStart();
    const Propagation nominal = carried(start);
    const Interval interval = nominal.interval();
    for (int i = 0; i < wholeSize; ++i) {
        CAPTURE(i);
        if (i == whole::top || i == whole::bottom)
            continue; // what returns to a height does not move the sensor
        const LocalVector ahead =
            difference(carried(start, step * WholeVector::Unit(i)).state(), nominal.state()) / step;
        CHECK((ahead - interval.border.col(i)).norm() < 2e-3 * (0.2 + ahead.norm()));
    }
}

TEST_CASE("A covariance is carried as the transition says", "[motion][property]")
{
    const Interval interval = carried(someStart()).interval();
    LocalMatrix root;
    for (int i = 0; i < localSize; ++i)
        for (int j = 0; j < localSize; ++j)
            root(i, j) = std::sin(1.0 + i + 3 * j);
    const LocalMatrix covariance = root * root.transpose();
    const LocalMatrix expected = interval.transition() * covariance * interval.transition().transpose();
    CHECK((interval.carry(covariance) - expected).norm() < 1e-10 * expected.norm());
}

// Closed form: free fall from rest, h = -g t^2 / 2.
TEST_CASE("A sensor that feels no force falls", "[motion][closed-form]")
{
    Propagation propagation(State{}, {0, Eigen::Vector3d::Zero(), Eigen::Vector3d::Zero()}, WholeVector::Zero());
    for (int i = 1; i <= 100; ++i)
        propagation.step({i * 0.01, Eigen::Vector3d::Zero(), Eigen::Vector3d::Zero()});
    CHECK(propagation.state().velocity.z() == Approx(-standardGravity).epsilon(1e-12));
    CHECK(propagation.state().height == Approx(-standardGravity / 2).epsilon(1e-12));
}

TEST_CASE("A rotation by its series is that by sine and cosine", "[motion][closed-form]")
{
    for (const double angle : {0.0, 1e-6, 0.01, 0.1, 0.29, 0.31, 2.0}) {
        CAPTURE(angle);
        const Eigen::Vector3d axis = Eigen::Vector3d(1, -2, 0.5).normalized();
        const Eigen::Quaterniond expected(Eigen::AngleAxisd(angle, axis));
        CHECK((rotationBy(angle * axis).coeffs() - expected.coeffs()).norm() < 1e-14);
    }
}
