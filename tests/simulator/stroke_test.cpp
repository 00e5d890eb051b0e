#include <catch2/catch.hpp>

#include <cmath>
#include <numbers>

#include "demo/simulator/strokes.hpp"
#include "demo/simulator/truth.hpp"

using namespace fleetrung::simulator;

namespace
{

constexpr double standardGravity = 9.80665;

/// A stroke that begins and ends at rest, with the rest around it.
StrokeTruth truthOf(const Path& path, double start, double end)
{
    return measureStroke([&](double time) { return path.at(time); }, {start, start, end, true, false, false},
                         standardGravity);
}

} // namespace

TEST_CASE("A minimum-jerk stroke of 0.5 m in 0.7 s has the textbook velocities")
{
    // Peak velocity 1.875 D/T at T/2, peak acceleration 5.7735 D/T^2 (10/sqrt(3)): arithmetic from Flash and Hogan
    // 1985.
    Path path;
    path.hold(1);
    path.minimumJerk(0.7, 0.5);
    path.hold(1);
    const auto truth = truthOf(path, 1.0, 1.7);
    CHECK(truth.meanVelocity == Approx(0.714286).epsilon(1e-5));
    CHECK(truth.peakVelocity == Approx(1.339286).epsilon(1e-5));
    CHECK(truth.timeToPeakVelocity == Approx(0.35).margin(1e-6));
    CHECK(truth.range == Approx(0.5).margin(1e-12));
    double greatest = 0;
    for (double t = 1; t < 1.7; t += 1e-4) {
        greatest = std::max(greatest, path.at(t).acceleration);
    }
    CHECK(greatest == Approx(5.8913).epsilon(1e-4));
}

TEST_CASE("Half the range in the same time halves both velocities of a minimum-jerk stroke")
{
    Path path;
    path.minimumJerk(0.7, 0.25);
    const auto truth = truthOf(path, 0, 0.7);
    CHECK(truth.meanVelocity == Approx(0.714286 / 2).epsilon(1e-5));
    CHECK(truth.peakVelocity == Approx(1.339286 / 2).epsilon(1e-5));
}

TEST_CASE("A half-sine stroke has the mean propulsive velocity of the definition")
{
    // Definition: from the start to the first instant with acceleration below -9.81 m/s2 (Sanchez-Medina et al. 2010,
    // Int J Sports Med 31:123-129, from memory); the values are arithmetic. Here g = 9.81.
    Path fast;
    fast.halfSine(0.35, 1.6);
    const auto truth =
        measureStroke([&](double time) { return fast.at(time); }, {0, 0, 0.35, true, false, false}, 9.81);
    CHECK(truth.meanVelocity == Approx(1.01859).epsilon(1e-5));
    CHECK(truth.peakVelocity == Approx(1.6).epsilon(1e-9));
    CHECK(truth.timeToPeakVelocity == Approx(0.175).margin(1e-8));
    CHECK(truth.range == Approx(0.356507).epsilon(1e-5));
    CHECK(truth.meanPropulsiveVelocity == Approx(1.15936).epsilon(1e-5));

    Path slow; // never brakes harder than gravity: all of it is propulsive
    slow.halfSine(0.8, 1.2);
    const auto whole = measureStroke([&](double time) { return slow.at(time); }, {0, 0, 0.8, true, false, false}, 9.81);
    CHECK(whole.meanVelocity == Approx(0.763944).epsilon(1e-5));
    CHECK(whole.meanPropulsiveVelocity == Approx(0.763944).epsilon(1e-5));
    CHECK(whole.range == Approx(0.611155).epsilon(1e-5));
}

TEST_CASE("An upward stroke goes exactly as far as asked and is fastest exactly when asked")
{
    const Upward wanted{0.5, 0.8, 0.5, 3.0};
    const auto stroke = upwardStroke(wanted, 9);
    REQUIRE(stroke);
    Path path;
    append(path, *stroke);
    CHECK(path.state().velocity == Approx(0).margin(1e-12));
    CHECK(path.state().height == Approx(0.5).margin(1e-12));
    CHECK(path.at(0.5).acceleration == Approx(0).margin(1e-9));
    for (double t = 0.01; t < 0.8; t += 0.01) {
        CHECK(path.at(t).velocity <= path.at(0.5).velocity + 1e-12);
    }
}

TEST_CASE("An upward stroke that would turn round on its way is refused")
{
    CHECK_FALSE(upwardStroke({0.1, 2.0, 1.2, 9.0}, 9));
}

TEST_CASE("Velocity and height are the integrals of acceleration on every ease curve")
{
    for (const auto ease : {Ease::Smooth, Ease::Rise, Ease::Fall, Ease::MinimumJerk, Ease::HalfSine}) {
        Path path;
        path.ease(0.5, 2, -3, ease);
        double velocity = 0;
        double height = 0;
        constexpr int steps = 100000;
        constexpr double dt = 0.5 / steps;
        for (int i = 0; i < steps; ++i) {
            velocity += dt * path.at((i + 0.5) * dt).acceleration;
            height += dt * path.at((i + 0.5) * dt).velocity;
        }
        CHECK(path.state().velocity == Approx(velocity).margin(1e-7));
        CHECK(path.state().height == Approx(height).margin(1e-7));
    }
}

TEST_CASE("Ground contact turns a landing into a take-off at the same height")
{
    Path path;
    path.settleAt(0, -2.0);
    append(path, contactStroke(2.0, 2.6, 0.2, standardGravity));
    CHECK(path.state().velocity == Approx(2.6).margin(1e-12));
    CHECK(path.state().height == Approx(0).margin(1e-12));
}
