// The metrics of a repetition against closed forms, published values and the simulator's truth.
#include <catch2/catch.hpp>

#include <iomanip>
#include <iostream>
#include <map>

#include "closed_form.hpp"
#include "demo/simulator/simulator.hpp"
#include "demo/simulator/truth.hpp"
#include "engine/base/numbers.hpp"
#include "engine/reps/analyse.hpp"
#include "engine/reps/metrics.hpp"

using namespace fleetrung;
using namespace fleetrung::tests;
using reps::analyseSet;
using reps::findLift;
using reps::Measured;
using reps::Repetition;
using simulator::SensorPlan;
using simulator::SetPlan;

namespace
{

constexpr double pi = 3.14159265358979323846;

Repetition only(const motion::Recording& recording, std::string_view lift)
{
    const auto analysis = analyseSet(recording, *findLift(lift));
    REQUIRE(analysis);
    REQUIRE(analysis->repetitions.size() == 1);
    return analysis->repetitions.front();
}

/// One stroke up between still spans, and back down.
motion::Recording pull(const Stretch& up, double range, double rate)
{
    return recordingOf({stillness(1.5), up, stillness(0.6), minimumJerk(-range, 1.2), stillness(1.5)}, rate);
}

/// Errors of one metric, in units of what may be expected of it.
struct Score {
    int count = 0, covered = 0, missing = 0;
    double squares = 0;

    void add(const Measured& measured, double truth)
    {
        const double error = measured.value - truth;
        ++count;
        covered += std::abs(error) <= 1.96 * measured.uncertainty;
        squares += error * error;
    }
    void add(const std::optional<Measured>& measured, double truth)
    {
        measured ? add(*measured, truth) : void(++missing);
    }
    [[nodiscard]] double rms() const { return std::sqrt(squares / std::max(1, count)); }
    [[nodiscard]] double coverage() const { return static_cast<double>(covered) / std::max(1, count); }
};

using Scores = std::map<std::string, Score>;

void score(Scores& scores, const Repetition& rep, const simulator::StrokeTruth& truth)
{
    scores["v100"].add(rep.velocityAt100ms, truth.velocityAt100ms);
    scores["v200"].add(rep.velocityAt200ms, truth.velocityAt200ms);
    for (std::size_t i = 0; i < reps::earlyWindows.size(); ++i)
        scores["mean acceleration " + integerText(static_cast<std::int64_t>(50 * (i + 1)))].add(
            rep.meanAcceleration[i], truth.meanAcceleration[i]);
    scores["peak acceleration"].add(rep.peakAcceleration, truth.peakAcceleration);
    scores["displacement to peak"].add(rep.displacementToPeak, truth.displacementToPeak);
    if (truth.peakReversalAcceleration > 0)
        scores["reversal acceleration"].add(rep.peakReversalAcceleration, truth.peakReversalAcceleration);
    if (truth.brakingSlope > 0)
        scores["braking slope"].add(rep.brakingSlope, truth.brakingSlope);
    if (rep.dropStopTime) {
        scores["drop stop time"].add(rep.dropStopTime, truth.dropStopTime);
        scores["stop depth"].add(rep.stopDepth, truth.stopDepth);
    }
    if (rep.secondPullTime)
        scores["second pull time"].add(rep.secondPullTime, truth.secondPullTime);
}

/// Sets of one lift against their truth, repetition by repetition.
Scores simulated(SetPlan plan, SensorPlan sensor, std::uint64_t seed, int sets)
{
    Scores scores;
    for (int i = 0; i < sets; ++i) {
        const auto set = simulator::simulateSet(plan, sensor, seed + static_cast<std::uint64_t>(i));
        REQUIRE(set);
        const auto analysis = analyseSet(set->recording, *findLift(plan.lift));
        REQUIRE(analysis);
        REQUIRE(analysis->repetitions.size() == set->truth.size());
        for (std::size_t k = 0; k < set->truth.size(); ++k)
            score(scores, analysis->repetitions[k], set->truth[k].sensor);
    }
    return scores;
}

void print(const SetPlan& plan, const SensorPlan& sensor, std::uint64_t seed, const Scores& scores)
{
    std::cout << plan.lift << ", " << sensor.rate << " Hz, seed " << seed << '\n';
    for (const auto& [name, found] : scores)
        std::cout << "  " << std::left << std::setw(24) << name << " n " << std::setw(5) << found.count << " rms "
                  << std::setw(12) << found.rms() << " within 95 %: " << found.coverage() << '\n';
}

} // namespace

// Source: closed form, with the definition of Sanchez-Medina et al. 2010 (from memory). v = 1.6 sin(pi t / 0.35):
// mean 1.01859, range 0.356507 m, peak at 0.175 s; acceleration falls below -9.81 m/s2 at 0.25877 s, mean propulsive
// velocity to there 1.15936. Acceleration jumps at both ends, as no body can: a start that looks for a ramp is off by a
// millisecond or two there.
TEST_CASE("Mean propulsive velocity ends where the bar is braked harder than gravity would", "[metrics][closed-form]")
{
    const auto rep = only(pull(halfSine(1.6, 0.35), 0.356507, 2000), "free");
    CHECK(rep.peakVelocity.value == Approx(1.6).epsilon(0.005));
    CHECK(rep.range.value == Approx(0.356507).epsilon(0.005));
    CHECK(rep.meanVelocity.value == Approx(1.01859).epsilon(0.01));
    CHECK(rep.meanPropulsiveVelocity.value == Approx(1.15936).epsilon(0.005));
    CHECK(rep.timeToPeakVelocity.value == Approx(0.175).margin(0.003));
}

// Source: as before; v = 1.2 sin(pi t / 0.8) is never braked harder than gravity, mean = propulsive = 0.763944.
TEST_CASE("Without hard braking the propulsive phase is the whole concentric phase", "[metrics][closed-form]")
{
    const auto rep = only(pull(halfSine(1.2, 0.8), 0.611155, 1000), "free");
    CHECK(rep.meanPropulsiveVelocity.value == rep.meanVelocity.value);
    CHECK(rep.meanVelocity.value == Approx(0.763944).epsilon(0.01));
    CHECK(rep.range.value == Approx(0.611155).epsilon(0.005));
}

// Source: the same stroke; to release at 0.25877 s it rises 1.6 0.35 / pi (1 - cos(pi 0.25877 / 0.35)) = 0.300008 m.
TEST_CASE("A ballistic lift ends at release, with its range, duration and mean velocity, and so does the truth",
          "[metrics][closed-form]")
{
    const double rate = GENERATE(200.0, 1000.0);
    CAPTURE(rate);
    const auto rep = only(pull(halfSine(1.6, 0.35), 0.356507, rate), "high-pull");
    CHECK(rep.concentricDuration.value == Approx(0.25877).margin(0.005));
    CHECK(rep.concentricEnd == Approx(1.5 + 0.25877).margin(0.001));
    CHECK(rep.range.value == Approx(0.300008).margin(0.003));
    CHECK(rep.meanVelocity.value == Approx(1.15936).epsilon(0.02));
    CHECK(rep.meanPropulsiveVelocity.value == rep.meanVelocity.value);

    const simulator::Motion stroke = [](double t) {
        const double w = pi / 0.35;
        return simulator::Kinematics{1.6 / w * (1 - std::cos(w * t)), 1.6 * std::sin(w * t), 1.6 * w * std::cos(w * t)};
    };
    const auto truth = simulator::measureStroke(stroke, {0, 0, 0.35, true, false, false}, 9.80665, true);
    CHECK(truth.concentricEnd == Approx(0.25877).margin(1e-4));
    CHECK(truth.range == Approx(0.300008).margin(1e-4));
    CHECK(truth.meanVelocity == Approx(1.15936).epsilon(1e-3));
}

TEST_CASE("A simulated pull that is let fly ends where its truth ends", "[metrics][simulated]")
{
    SetPlan plan;
    plan.lift = "high-pull";
    plan.shape = simulator::Shape::MinimumJerk;
    plan.range = 0.40;
    plan.meanVelocity = 1.15;
    plan.velocityLoss = 0.05;
    const auto set = simulator::simulateSet(plan, SensorPlan{}, 911);
    REQUIRE(set);
    const auto analysis = analyseSet(set->recording, *findLift(plan.lift));
    REQUIRE(analysis);
    REQUIRE(analysis->repetitions.size() == set->truth.size());
    for (std::size_t i = 0; i < set->truth.size(); ++i) {
        const auto& truth = set->truth[i].sensor;
        const auto& rep = analysis->repetitions[i];
        CHECK(truth.endVelocity > 0.3);
        CHECK(rep.concentricEnd == Approx(truth.concentricEnd).margin(0.003));
        CHECK(rep.range.value == Approx(truth.range).margin(0.008));
        CHECK(rep.meanVelocity.value == Approx(truth.meanVelocity).margin(0.03));
    }
}

// Source: closed form of the minimum-jerk stroke (Flash & Hogan 1985), D = 0.5 m, T = 0.7 s: mean 0.714286,
// peak 1.339286 at 0.35 s, peak acceleration 5.7735 D / T^2 = 5.8913; v(t) = D/T (30 s^2 - 60 s^3 + 30 s^4) gives
// v(0.1) = 0.32130, v(0.2) = 0.89252; displacement to peak D / 2.
TEST_CASE("A minimum-jerk stroke from a dead stop has the metrics of its closed form", "[metrics][closed-form]")
{
    const double rate = GENERATE(200.0, 400.0, 1000.0);
    CAPTURE(rate);
    const auto rep = only(pull(minimumJerk(0.5, 0.7), 0.5, rate), "block-pull");
    CHECK(rep.meanVelocity.value == Approx(0.714286).epsilon(0.01));
    CHECK(rep.peakVelocity.value == Approx(1.339286).epsilon(0.01));
    CHECK(rep.timeToPeakVelocity.value == Approx(0.35).margin(0.006));
    CHECK(rep.displacementToPeak.value == Approx(0.25).epsilon(0.01));
    REQUIRE(rep.peakAcceleration);
    CHECK(rep.peakAcceleration->value == Approx(5.8913).epsilon(0.01));
    // The onset of a stroke that begins so gently is found within some milliseconds: slope times these.
    CHECK(rep.velocityAt100ms->value == Approx(0.32130).margin(0.03));
    CHECK(rep.velocityAt200ms->value == Approx(0.89252).margin(0.03));
    CHECK(rep.meanAcceleration[1]->value == Approx(3.2130).margin(0.3));
    CHECK(rep.meanAcceleration[3]->value == Approx(4.4626).margin(0.15));
    CHECK_FALSE(rep.brakingSlope);
    CHECK_FALSE(rep.secondPullTime);
    CHECK_FALSE(rep.otherPeak);
}

// Source: closed form. v = -0.9 cos(pi t / 0.8) from its fastest descent (t = 0) through the reversal (t = 0.4 s) to
// the peak (t = 0.8 s): a at the reversal is 0.9 pi / 0.8 = 3.5343, also its greatest; the slope from the fastest
// descent is 3.5343 / 0.4 = 8.8357; v(0.1 s after) = 0.34442, v(0.2) = 0.63640.
TEST_CASE("A reversal has the braking slope and the acceleration of its closed form", "[metrics][closed-form]")
{
    const double rate = GENERATE(100.0, 200.0, 1000.0);
    CAPTURE(rate);
    const auto turning = Stretch{0.8, [](double t) { return 0.9 * pi / 0.8 * std::sin(pi * t / 0.8); }};
    const auto faster = Stretch{0.4, [](double t) { return -0.9 * pi / 0.8 * std::sin(pi * t / 0.4); }}; // to -0.9 m/s
    const auto slower = Stretch{0.4, [](double t) { return -0.9 * pi / 0.8 * std::sin(pi * t / 0.4); }};
    const auto rep = only(recordingOf({stillness(1.5), faster, turning, slower, stillness(1.5)}, rate), "half-squat");
    REQUIRE(rep.brakingSlope);
    REQUIRE(rep.peakReversalAcceleration);
    CHECK(rep.reversalTime->value == Approx(0.4).margin(0.004));
    CHECK(rep.peakReversalAcceleration->value == Approx(3.5343).epsilon(0.01));
    CHECK(rep.brakingSlope->value == Approx(8.8357).epsilon(0.02));
    CHECK(rep.velocityAt100ms->value == Approx(0.34442).margin(0.01));
    CHECK(rep.velocityAt200ms->value == Approx(0.63640).margin(0.01));
    CHECK(rep.meanAcceleration[2].has_value());
}

TEST_CASE("What is told of early windows needs ten samples in each, and a phase that lasts so long",
          "[metrics][property]")
{
    const auto earlyAt = [](double rate) {
        return only(pull(minimumJerk(0.5, 0.7), 0.5, rate), "block-pull").meanAcceleration;
    };
    const auto at200 = earlyAt(200), at100 = earlyAt(100), at50 = earlyAt(50);
    CHECK((at200[0] && at200[1] && at200[2] && at200[3]));
    CHECK((!at100[0] && at100[1] && at100[2] && at100[3]));
    CHECK((!at50[0] && !at50[1] && !at50[2] && at50[3]));
    const auto slowSensor = only(pull(minimumJerk(0.5, 0.7), 0.5, 50), "block-pull");
    CHECK_FALSE(slowSensor.peakAcceleration);
    CHECK_FALSE(slowSensor.velocityAt100ms);
    CHECK(slowSensor.velocityAt200ms);
    const auto shortStroke = only(pull(minimumJerk(0.05, 0.16), 0.05, 400), "calf-raise");
    CHECK(shortStroke.velocityAt100ms);
    CHECK_FALSE(shortStroke.velocityAt200ms);
    CHECK_FALSE(shortStroke.meanAcceleration[3]);
}

TEST_CASE(
    "Both velocity peaks of a sticky repetition are kept, and two of nearly one height are no evidence for time to "
    "peak",
    "[metrics][closed-form]")
{
    // Two half sines of velocity on a floor of 0.3 m/s between them, entered and left on quarter sines of acceleration.
    const auto sticky = [](double second) {
        const auto hump = [](double size, double floorFrom, double floorTo) {
            return [=](double t) { // velocity goes floorFrom -> floorFrom + size -> floorTo in 0.4 s
                return t < 0.2 ? size * pi / 0.4 * std::sin(pi * t / 0.2)
                               : -(size + floorFrom - floorTo) * pi / 0.4 * std::sin(pi * (t - 0.2) / 0.2);
            };
        };
        return std::vector<Stretch>{stillness(1.5),           minimumJerk(-0.36, 1.0),           stillness(0.5),
                                    {0.4, hump(0.6, 0, 0.3)}, {0.4, hump(second - 0.3, 0.3, 0)}, stillness(1.5)};
    };
    const auto alike = only(recordingOf(sticky(0.62), 200), "half-squat");
    REQUIRE(alike.otherPeak);
    CHECK(alike.peakVelocity.value == Approx(0.62).margin(0.01));
    CHECK(alike.timeToPeakVelocity.value == Approx(0.6).margin(0.008));
    CHECK(alike.otherPeak->velocity.value == Approx(0.60).margin(0.01));
    CHECK(alike.otherPeak->time.value == Approx(0.2).margin(0.008));
    CHECK(reps::has(alike.flags, reps::Flag::TwoPeaked));

    const auto unlike = only(recordingOf(sticky(0.45), 200), "half-squat");
    REQUIRE(unlike.otherPeak);
    CHECK(unlike.otherPeak->velocity.value == Approx(0.45).margin(0.01));
    CHECK(unlike.otherPeak->time.value == Approx(0.6).margin(0.008));
    CHECK_FALSE(reps::has(unlike.flags, reps::Flag::TwoPeaked));

    const auto shallow = only(recordingOf(sticky(0.32), 200), "half-squat"); // stands out by 0.02 m/s
    CHECK_FALSE(shallow.otherPeak);
}

TEST_CASE("The set tells loss, drift and consistency, and two-peaked repetitions have no say in time to peak",
          "[metrics][property]")
{
    const auto rep = [](double mean, double peakTime, reps::Flags flags) {
        Repetition made;
        made.meanVelocity = {mean, 0.01};
        made.timeToPeakVelocity = {peakTime, 0.002};
        made.flags = flags;
        return made;
    };
    const auto& lift = *findLift("half-squat");
    const auto summary = reps::summarise(
        {rep(0.80, 0.30, 0), rep(0.90, 0.28, 0), rep(0.60, 0.10, 0U | reps::Flag::TwoPeaked), rep(0.72, 0.35, 0)},
        lift);
    CHECK(summary.velocityLoss == Approx(1 - 0.72 / 0.90));
    CHECK(summary.velocityLossUncertainty == Approx(0.8 * std::hypot(0.01 / 0.72, 0.01 / 0.90)));
    CHECK(summary.timeToPeakDrift->value == Approx(0.35 / 0.28 - 1));
    CHECK(*summary.meanTimeToPeak == Approx(0.31));
    CHECK(*summary.spreadTimeToPeak == Approx(0.036055512754639)); // sample standard deviation of 0.30, 0.28, 0.35
    CHECK(*summary.timeToPeakVariation == Approx(0.036055512754639 / 0.31));
    CHECK(*summary.velocityVariation == Approx(0.168061).epsilon(1e-4)); // of 0.80, 0.90, 0.60, 0.72
    const auto alone = reps::summarise({rep(0.6, 0.1, 0U | reps::Flag::TwoPeaked)}, lift);
    CHECK_FALSE(alone.meanTimeToPeak);
    CHECK_FALSE(alone.timeToPeakDrift);
    CHECK_FALSE(alone.velocityVariation);
}

TEST_CASE("New metrics of simulated sets are near the truth, within what they state", "[metrics][simulated]")
{
    struct Wanted {
        const char* lift;
        std::map<std::string, double> rms; // SI
    };
    const auto wanted = GENERATE(values<Wanted>({
        {"half-squat",
         {{"v100", 0.015},
          {"mean acceleration 200", 0.08},
          {"reversal acceleration", 0.15},
          {"braking slope", 1.5},
          {"peak acceleration", 0.15}}},
        {"drop-squat", {{"drop stop time", 0.004}, {"stop depth", 0.004}, {"reversal acceleration", 0.15}}},
        {"floor-clean", {{"second pull time", 0.006}, {"peak acceleration", 0.15}, {"mean acceleration 200", 0.15}}},
        {"floor-power-clean", {{"second pull time", 0.006}}},
    }));
    constexpr std::uint64_t seed = 52;
    SetPlan plan;
    plan.lift = wanted.lift;
    SensorPlan sensor;
    sensor.randomMounting = true;
    const auto scores = simulated(plan, sensor, seed, 20);
    print(plan, sensor, seed, scores);
    for (const auto& [name, limit] : wanted.rms) {
        CAPTURE(wanted.lift, name);
        REQUIRE(scores.contains(name));
        const auto& found = scores.at(name);
        CHECK(found.count == 100);
        CHECK(found.rms() <= limit);
    }
    for (const auto& [name, found] : scores) {
        CAPTURE(wanted.lift, name);
        CHECK(found.coverage() >= 0.85);
    }
}
