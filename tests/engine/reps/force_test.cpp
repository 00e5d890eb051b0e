// Force, impulse and power against closed forms and the simulator's truth.
#include <catch2/catch.hpp>

#include <iomanip>
#include <iostream>
#include <map>

#include "closed_form.hpp"
#include "demo/simulator/simulator.hpp"
#include "engine/base/numbers.hpp"
#include "engine/reps/analyse.hpp"
#include "engine/reps/force.hpp"

using namespace fleetrung;
using namespace fleetrung::tests;
using reps::analyseSet;
using reps::findLift;
using reps::forceMetrics;
using reps::Loading;

namespace
{

constexpr double pi = 3.14159265358979323846;
constexpr double g = 9.80665;
constexpr Loading loading{100, 80};
constexpr double mass = 100 + 0.878 * 80; // all of the body but shanks and feet

reps::SetAnalysis analysed(const motion::Recording& recording, std::string_view lift)
{
    auto analysis = analyseSet(recording, *findLift(lift));
    REQUIRE(analysis);
    REQUIRE(analysis->repetitions.size() == 1);
    return *analysis;
}

reps::ForceMetrics forcesIn(const reps::SetAnalysis& analysis, std::string_view lift)
{
    const auto forces = forceMetrics(analysis.trace, analysis.repetitions.front(), *findLift(lift), loading);
    REQUIRE(forces);
    return *forces;
}

} // namespace

// Closed form. F(t) = 1000 (1 - e^(-t / 0.1)) N above the weight: 393.47, 632.12, 776.87, 864.66 N at 50,
// 100, 150, 200 ms; mean RFD 7869.4, 6321.2, 5179.1, 4323.3 N/s; impulse over 0-100 ms 36.788 N s. The acceleration is
// the one that the system mass has under this force; the bar is braked on half a sine of force afterwards.
TEST_CASE("Force that rises exponentially from a dead stop has the RFD and impulse of its closed form",
          "[force][closed-form]")
{
    constexpr double tau = 0.1, push = 0.3, ease = 0.06, brake = 0.4, newtons = 1000;
    const double last = newtons / mass * (1 - std::exp(-push / tau)); // m/s2, then let off evenly
    const double atPush = newtons / mass * (push - tau * (1 - std::exp(-push / tau)));
    const double speed = atPush + last * ease / 2;
    const double rise = newtons / mass * (push * push / 2 - tau * push + tau * tau * (1 - std::exp(-push / tau))) +
                        atPush * ease + last * ease * ease / 3 + speed * brake / 2;
    const Stretch pushed{push, [=](double t) { return newtons / mass * (1 - std::exp(-t / tau)); }};
    const Stretch eased{ease, [=](double t) { return last * (1 - t / ease); }};
    const Stretch braked{brake, [=](double t) { return -speed * pi / (2 * brake) * std::sin(pi * t / brake); }};
    const auto recording = recordingOf(
        {stillness(1.5), pushed, eased, braked, stillness(0.6), minimumJerk(-rise, 1.2), stillness(1.5)}, 1000);
    const auto analysis = analysed(recording, "block-pull");
    const auto& rep = analysis.repetitions.front();
    CHECK(rep.fromDeadStop);
    CHECK(rep.concentricStart == Approx(1.5).margin(0.0006));
    // The formula at the exact onset; the onset that the analysis finds is another 0.5 ms, or 1 % of the first window.
    auto exact = rep;
    exact.concentricStart = 1.5;
    const auto atOnset = forceMetrics(analysis.trace, exact, *findLift("block-pull"), loading);
    REQUIRE(atOnset);
    const auto forces = forcesIn(analysis, "block-pull");
    CHECK(forces.systemMass == Approx(mass));
    constexpr std::array<double, 4> rfd{7869.4, 6321.2, 5179.1, 4323.3};
    // Impulse by integration of the same formula: 1000 (t - tau (1 - e^(-t / tau))).
    constexpr std::array<double, 4> impulse{10.6531, 36.7879, 72.3130, 113.5335};
    for (std::size_t i = 0; i < 4; ++i) {
        CAPTURE(reps::earlyWindows[i]);
        REQUIRE(forces.rateOfForceDevelopment[i]);
        CHECK(atOnset->rateOfForceDevelopment[i]->value == Approx(rfd[i]).epsilon(0.005));
        CHECK(forces.rateOfForceDevelopment[i]->value == Approx(rfd[i]).epsilon(0.01));
        // Net impulse grows with the square of the time: half a millisecond of onset is 1 N at 50 ms.
        CHECK(forces.netImpulse[i]->value == Approx(impulse[i]).margin(0.0005 * newtons));
        CHECK(forces.impulse[i]->value ==
              Approx(forces.netImpulse[i]->value + mass * g * reps::earlyWindows[i]).epsilon(1e-12));
    }
    CHECK(forces.netImpulse[1]->value == Approx(36.788).epsilon(0.01));
    CHECK(forces.peakForce->value == Approx(mass * g + newtons * (1 - std::exp(-push / tau))).epsilon(0.01));
}

// Source: closed form. v = -0.9 cos(pi t / 0.8) through the reversal: a there 3.5343 m/s2 and the greatest; from the
// greatest descent 0.4 s before, the slope is 8.8357 m/s3; mean concentric acceleration to the peak 0.9 / 0.4 = 2.25.
TEST_CASE("A counter-movement has a braking slope and no RFD, and from rest to rest the mean force is the weight",
          "[force][closed-form]")
{
    const auto turning = Stretch{0.8, [](double t) { return 0.9 * pi / 0.8 * std::sin(pi * t / 0.8); }};
    const auto swing = Stretch{0.4, [](double t) { return -0.9 * pi / 0.8 * std::sin(pi * t / 0.4); }};
    const auto analysis = analysed(recordingOf({stillness(1.5), swing, turning, swing, stillness(1.5)}, 400), //
                                   "half-squat");
    const auto forces = forcesIn(analysis, "half-squat");
    CHECK(forces.peakForce->value == Approx(mass * (g + 3.5343)).epsilon(0.005));
    CHECK(forces.brakingForceSlope->value == Approx(mass * 8.8357).epsilon(0.02));
    CHECK(forces.meanForce.value == Approx(mass * g).epsilon(0.003));
    CHECK(forces.meanForceToPeak.value == Approx(mass * (g + 2.25)).epsilon(0.01));
    CHECK(forces.meanPower.value == Approx(mass * g * analysis.repetitions.front().meanVelocity.value).epsilon(0.003));
    CHECK_FALSE(forces.rateOfForceDevelopment[3]);
    CHECK(forces.impulse[3]->value == Approx(mass * (g * 0.2 + 0.63640)).epsilon(0.005));
}

// Source: closed form of the minimum-jerk stroke (Flash and Hogan 1985), its power m (a + g) v searched on a grid of 10
// microseconds.
TEST_CASE("Peak power is the greatest product of force and velocity", "[force][closed-form]")
{
    constexpr double distance = 0.5, duration = 0.7;
    double greatest = 0;
    for (double t = 0; t < duration; t += 1e-5) {
        const double s = t / duration;
        const double v = distance / duration * (30 * s * s - 60 * s * s * s + 30 * s * s * s * s);
        const double a = distance / (duration * duration) * (60 * s - 180 * s * s + 120 * s * s * s);
        greatest = std::max(greatest, mass * (a + g) * v);
    }
    const auto analysis = analysed(recordingOf({stillness(1.5), minimumJerk(distance, duration), stillness(0.6),
                                                minimumJerk(-distance, 1.2), stillness(1.5)},
                                               200),
                                   "block-pull");
    const auto forces = forcesIn(analysis, "block-pull");
    REQUIRE(forces.peakPower);
    CHECK(forces.peakPower->value == Approx(greatest).epsilon(0.005));
    CHECK(forces.meanPower.value == Approx(mass * g * distance / duration).epsilon(0.01));
}

TEST_CASE("What a lift moves is the load and its share of body mass, and without body mass there is no force",
          "[force][error]")
{
    CHECK(reps::systemMass(*findLift("half-squat"), loading) == Approx(170.24));
    CHECK(reps::systemMass(*findLift("hinge"), loading) == Approx(100 + 0.678 * 80));
    CHECK(reps::systemMass(*findLift("bench-press"), loading) == Approx(100));
    const auto analysis = analysed(
        recordingOf({stillness(1.5), minimumJerk(0.5, 0.7), stillness(0.6), minimumJerk(-0.5, 1.2), stillness(1.5)},
                    200),
        "block-pull");
    const auto& rep = analysis.repetitions.front();
    const auto refusal = [&](std::string_view lift, Loading given) {
        const auto forces = forceMetrics(analysis.trace, rep, *findLift(lift), given);
        return forces ? std::string() : forces.error().place;
    };
    CHECK(refusal("block-pull", {100, 0}) == "body mass");
    CHECK(refusal("block-pull", {-1, 80}) == "load");
    CHECK(refusal("free", {0, 80}) == "load");
    CHECK(refusal("free", {100, 0}).empty());
    auto elsewhere = rep;
    elsewhere.concentricEnd = 1e6;
    const auto outside = forceMetrics(analysis.trace, elsewhere, *findLift("free"), loading);
    REQUIRE_FALSE(outside);
    CHECK(outside.error().place == "repetition");
}

TEST_CASE("Force and power of simulated sets are near the truth, within what they state", "[force][simulated]")
{
    struct Score {
        int count = 0, covered = 0;
        double squares = 0;
        void add(const reps::Measured& measured, double truth)
        {
            const double relative = (measured.value - truth) / truth;
            ++count;
            covered += std::abs(measured.value - truth) <= 1.96 * measured.uncertainty;
            squares += relative * relative;
        }
    };
    constexpr std::uint64_t seed = 640;
    simulator::SetPlan plan;
    plan.lift = GENERATE("half-squat", "block-pull", "floor-power-clean");
    simulator::SensorPlan sensor;
    sensor.randomMounting = true;
    std::map<std::string, Score> scores;
    for (std::uint64_t i = 0; i < 15; ++i) {
        const auto set = simulator::simulateSet(plan, sensor, seed + i);
        REQUIRE(set);
        const auto analysis = analyseSet(set->recording, *findLift(plan.lift));
        REQUIRE(analysis);
        REQUIRE(analysis->repetitions.size() == set->truth.size());
        for (std::size_t k = 0; k < set->truth.size(); ++k) {
            const auto& truth = set->truth[k].sensor;
            const auto forces = forceMetrics(analysis->trace, analysis->repetitions[k], *findLift(plan.lift), loading);
            REQUIRE(forces);
            const double duration = truth.concentricEnd - truth.concentricStart;
            scores["peak force"].add(*forces->peakForce, mass * (g + truth.peakAcceleration));
            scores["mean force to peak"].add(forces->meanForceToPeak,
                                             mass * (g + truth.peakVelocity / truth.timeToPeakVelocity));
            scores["mean power"].add(forces->meanPower,
                                     mass * (g * truth.range + 0.5 * truth.endVelocity * truth.endVelocity) / duration);
            scores["peak power"].add(*forces->peakPower, mass * truth.peakPowerPerMass);
            for (std::size_t w = 0; w < reps::earlyWindows.size(); ++w) {
                const double window = reps::earlyWindows[w];
                const auto name = integerText(static_cast<std::int64_t>(50 * (w + 1)));
                scores["impulse " + name].add(*forces->impulse[w], mass * window * (g + truth.meanAcceleration[w]));
                if (forces->rateOfForceDevelopment[w])
                    scores["RFD " + name].add(*forces->rateOfForceDevelopment[w],
                                              mass * truth.earlyAcceleration[w] / window);
            }
        }
    }
    std::cout << plan.lift << ", force, " << sensor.rate << " Hz, seed " << seed << '\n';
    for (const auto& [name, found] : scores) {
        const double rms = std::sqrt(found.squares / found.count);
        const double coverage = static_cast<double>(found.covered) / found.count;
        std::cout << "  " << std::left << std::setw(24) << name << " rms " << std::setw(12) << rms
                  << " of the value, within 95 %: " << coverage << '\n';
        CAPTURE(plan.lift, name);
        CHECK(found.count == 75);
        CHECK(coverage >= 0.85);
        if (name.starts_with("RFD"))
            CHECK(rms <= 0.15);
        else
            CHECK(rms <= 0.02);
    }
}
