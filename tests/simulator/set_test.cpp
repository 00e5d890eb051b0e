#include <catch2/catch.hpp>

#include <cmath>
#include <string>
#include <vector>

#include "demo/simulator/simulator.hpp"
#include "engine/reps/lift.hpp"

using namespace fleetrung;
using namespace fleetrung::simulator;

namespace
{

SensorPlan perfect(double rate = 200)
{
    SensorPlan sensor;
    sensor.part = "perfect";
    sensor.rate = rate;
    return sensor;
}

SimulatedSet mustSimulate(const SetPlan& plan, const SensorPlan& sensor, std::uint64_t seed)
{
    auto set = simulateSet(plan, sensor, seed);
    INFO(plan.lift << ": " << (set ? "" : describe(set.error())));
    REQUIRE(set);
    return std::move(*set);
}

/// Variants of the ladders (rungs share lift keys where only the range differs), with ranges [m].
struct Rung {
    const char* lift;
    double range;
};

const std::vector<Rung> rungs{
    {"full-squat", 0.62},
    {"parallel-squat", 0.50},
    {"half-squat", 0.36},
    {"quarter-squat", 0.18},
    {"pin-quarter-squat", 0.16},
    {"drop-squat", 0.14},
    {"step-up", 0.45},
    {"step-up", 0.35},
    {"step-up", 0.25},
    {"step-up", 0.15},
    {"step-up", 0.10},
    {"floor-clean", 1.05},
    {"floor-power-clean", 1.15},
    {"block-power-clean", 0.80},
    {"hang-power-clean", 0.70},
    {"drop-hang-power-clean", 0.70},
    {"hinge", 0.50},
    {"hinge", 0.40},
    {"hinge", 0.20},
    {"block-pull", 0.55},
    {"block-pull", 0.35},
    {"block-pull", 0.15},
    {"high-pull", 0.55},
    {"bench-press", 0.40},
    {"calf-raise", 0.09},
    {"calf-raise", 0.05},
    {"free", 0.05},
    {"free", 0.40},
    {"free", 1.20},
};

} // namespace

TEST_CASE("Every rung yields the repetitions asked for, of the range asked for")
{
    for (const auto& rung : rungs) {
        for (const double load : {0.3, 0.6, 0.75, 0.9, 1.0}) {
            for (const double pause : {0.0, 1.0}) {
                SetPlan plan;
                plan.lift = rung.lift;
                plan.range = rung.range;
                plan.loadShare = load;
                plan.topPause = pause;
                plan.bottomPause = load > 0.8 ? pause : 0;
                plan.rangeScatter = 0;
                plan.living = false;
                const auto set = mustSimulate(plan, perfect(50), 7);
                INFO(rung.lift << " " << rung.range << " m at " << load << ", pause " << pause);
                REQUIRE(set.truth.size() == 5);
                for (const auto& repetition : set.truth) {
                    CHECK(repetition.bar.range == Approx(rung.range).margin(1e-9));
                    CHECK(repetition.bar.peakTime > repetition.bar.concentricStart);
                    CHECK(repetition.bar.peakTime < repetition.bar.concentricEnd);
                    CHECK(repetition.bar.meanVelocity < repetition.bar.peakVelocity);
                }
            }
        }
    }
}

TEST_CASE("Every lift the engine knows can be simulated, and begins as the engine's data say")
{
    for (const auto& lift : reps::allLifts()) {
        SetPlan plan;
        plan.lift = lift.key;
        plan.repetitions = 3;
        const auto set = mustSimulate(plan, perfect(), 11);
        INFO(lift.key);
        REQUIRE(set.truth.size() == 3);
        for (const auto& repetition : set.truth) {
            const bool eccentric = repetition.bar.eccentricStart < repetition.bar.concentricStart;
            CHECK(eccentric == (lift.start == reps::Start::Eccentric));
            CHECK(repetition.bar.range >= lift.minimumRange);
            CHECK(repetition.bar.range <= lift.maximumRange);
        }
    }
}

TEST_CASE("With a breathing lifter the range stays within the sway of what was asked")
{
    SetPlan plan;
    plan.lift = "half-squat";
    plan.rangeScatter = 0;
    plan.repetitions = 10;
    for (std::uint64_t seed = 1; seed <= 20; ++seed) {
        for (const auto& repetition : mustSimulate(plan, perfect(100), seed).truth) {
            CHECK(repetition.bar.range == Approx(0.36).margin(0.005));
        }
    }
}

TEST_CASE("Deeper squats go further at the same share of the maximum")
{
    const auto range = [](const char* lift) {
        SetPlan plan;
        plan.lift = lift;
        plan.rangeScatter = 0;
        return mustSimulate(plan, perfect(), 3).truth.front().bar.range;
    };
    CHECK(range("full-squat") > range("half-squat"));
    CHECK(range("half-squat") > range("quarter-squat"));
}

TEST_CASE("Fatigue makes later repetitions slower and their peaks later")
{
    SetPlan plan;
    plan.lift = "full-squat";
    plan.repetitions = 10;
    plan.velocityLoss = 0.3;
    plan.speedScatter = 0;
    plan.rangeScatter = 0;
    plan.living = false;
    const auto truth = mustSimulate(plan, perfect(), 5).truth;
    for (std::size_t i = 1; i < truth.size(); ++i) {
        CHECK(truth[i].bar.meanVelocity < truth[i - 1].bar.meanVelocity);
        CHECK(truth[i].bar.timeToPeakVelocity > truth[i - 1].bar.timeToPeakVelocity);
    }
    CHECK(truth.back().bar.meanVelocity == Approx(0.7 * truth.front().bar.meanVelocity).epsilon(0.03));
}

TEST_CASE("Partial repetitions are short and say so")
{
    SetPlan plan;
    plan.lift = "full-squat";
    plan.partial = {1, 3};
    plan.living = false;
    plan.rangeScatter = 0;
    const auto truth = mustSimulate(plan, perfect(), 5).truth;
    CHECK(truth[1].partial);
    CHECK_FALSE(truth[2].partial);
    CHECK(truth[3].bar.range == Approx(0.6 * 0.62).margin(1e-9));
}

TEST_CASE("A near-maximal squat sticks: it has two peaks, a light one has not")
{
    SetPlan plan;
    plan.lift = "full-squat";
    plan.repetitions = 3;
    plan.living = false;
    plan.velocityLoss = 0;
    plan.loadShare = 0.97;
    int peaks = 0;
    for (std::uint64_t seed = 1; seed <= 10; ++seed) {
        for (const auto& repetition : mustSimulate(plan, perfect(), seed).truth) {
            peaks += repetition.bar.twoPeaked ? 1 : 0;
        }
    }
    plan.loadShare = 0.6;
    for (const auto& repetition : mustSimulate(plan, perfect(), 4).truth) {
        CHECK_FALSE(repetition.bar.twoPeaked);
    }
    CHECK(peaks >= 24); // of 30
}

TEST_CASE("Rack work holds no repetition, and moves more than a squat on pins")
{
    SetPlan plan;
    plan.lift = "half-squat";
    plan.repetitions = 0;
    plan.rackWork = true;
    const auto set = mustSimulate(plan, perfect(), 9);
    CHECK(set.truth.empty());
    double least = 0;
    double greatest = 0;
    double impact = 0;
    for (std::size_t i = 0; i < set.motion.height.size(); ++i) {
        least = std::min(least, set.motion.height[i]);
        greatest = std::max(greatest, set.motion.height[i]);
        impact = std::max(impact, std::abs(set.motion.acceleration[i]));
    }
    CHECK(greatest - least > 0.025);
    CHECK(impact > 5);
    CHECK(set.recording.samples.size() > 2000);
}

TEST_CASE("A dropped bar falls at g, hits, bounces and ends where it began")
{
    SetPlan plan;
    plan.lift = "floor-power-clean";
    plan.repetitions = 1;
    plan.drop = true;
    plan.living = false;
    const auto set = mustSimulate(plan, perfect(1000), 9);
    double fall = 0;
    double hit = 0;
    for (std::size_t i = 0; i < set.motion.velocity.size(); ++i) {
        fall = std::min(fall, set.motion.velocity[i]);
        hit = std::max(hit, set.motion.acceleration[i]);
    }
    CHECK(fall < -4);
    CHECK(hit > 150);
    CHECK(set.motion.height.back() == Approx(0).margin(1e-9));
}

TEST_CASE("A drop jump falls from its box, and contact and flight are as asked")
{
    SetPlan plan;
    plan.lift = "drop-jump";
    plan.range = 0.30;
    plan.repetitions = 3;
    plan.contactTime = 0.210;
    plan.jumpHeight = 0.35745; // flight 0.540 s: g t^2 / 8
    plan.velocityLoss = 0;
    plan.speedScatter = 0;
    const auto set = mustSimulate(plan, perfect(400), 2);
    REQUIRE(set.jumps.size() == 3);
    for (const auto& jump : set.jumps) {
        CHECK(jump.takeoff - jump.landing == Approx(0.210).margin(1e-9));
        CHECK(jump.secondLanding - jump.takeoff == Approx(0.540).margin(1e-4));
    }
    // sqrt(2 g 0.30 m) = 2.4257 m/s, arithmetic; the impact's ring and sway add a little.
    CHECK(set.truth.front().bar.eccentricPeakVelocity == Approx(-2.4257).epsilon(0.02));
}

TEST_CASE("A plan outside its limits is refused, by name")
{
    SetPlan plan;
    plan.repetitions = 31;
    CHECK(simulateSet(plan, perfect(), 1).error().place == "repetitions");
    plan.repetitions = 3;
    CHECK(simulateSet(plan, perfect(10), 1).error().place == "rate");
    plan.lift = "flying-carpet";
    CHECK(simulateSet(plan, perfect(), 1).error().code == Code::InvalidArgument);
}
