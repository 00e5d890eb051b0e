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

State carried(const State& start)
{
    Propagation propagation(start, sampleAt(0));
    for (int i = 1; i <= 80; ++i)
        propagation.step(sampleAt(i * 0.0025));
    return propagation.state();
}

} // namespace

TEST_CASE("The sensitivities of the end of an interval agree with finite differences", "[motion][property]")
{
    State start;
    start.attitude = Eigen::Quaterniond(Eigen::AngleAxisd(0.4, Eigen::Vector3d(1, 2, 0.5).normalized()));
    start.velocity = {0.2, -0.1, 0.5};
    Propagation propagation(start, sampleAt(0));
    for (int i = 1; i <= 80; ++i)
        propagation.step(sampleAt(i * 0.0025));
    const StateMatrix transition = propagation.transition();

    constexpr double step = 1e-5;
    for (int i = 0; i < stateSize; ++i) {
        CAPTURE(i);
        const StateVector ahead = difference(carried(moved(start, step * StateVector::Unit(i))), carried(start)) / step;
        // Second-order terms and the trapezoidal rule of the integrals leave about a thousandth.
        CHECK((ahead - transition.col(i)).norm() < 2e-3 * (1 + ahead.norm()));
    }
    CHECK((propagation.verticalVelocityRow() - transition.row(at::velocity + 2)).norm() < 1e-12);
    CHECK((propagation.heightRow() - transition.row(at::height)).norm() < 1e-12);
}

// Closed form: free fall from rest, h = -g t^2 / 2.
TEST_CASE("A sensor that feels no force falls", "[motion][closed-form]")
{
    Propagation propagation(State{}, {0, Eigen::Vector3d::Zero(), Eigen::Vector3d::Zero()});
    for (int i = 1; i <= 100; ++i)
        propagation.step({i * 0.01, Eigen::Vector3d::Zero(), Eigen::Vector3d::Zero()});
    CHECK(propagation.state().velocity.z() == Approx(-standardGravity).epsilon(1e-12));
    CHECK(propagation.state().height == Approx(-standardGravity / 2).epsilon(1e-12));
}
