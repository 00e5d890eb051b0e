// A bar that rests, and one that moves: simulated sets whose instants are known.
#include <catch2/catch.hpp>

#include "demo/simulator/simulator.hpp"
#include "engine/reps/bar_watch.hpp"

using namespace fleetrung;
using fleetrung::reps::BarWatch;

namespace
{

simulator::SimulatedSet squats(double stillBefore, double stillAfter, double topPause,
                               const simulator::SensorPlan& sensor)
{
    simulator::SetPlan plan;
    plan.lift = "half-squat";
    plan.repetitions = 3;
    plan.stillBefore = stillBefore;
    plan.stillAfter = stillAfter;
    plan.topPause = topPause;
    auto set = simulator::simulateSet(plan, sensor, 11);
    REQUIRE(set);
    return *set;
}

/// The bar alone on its rack for that long, with the noise of a consumer part.
motion::Recording racked(double seconds, double gravity)
{
    simulator::SetPlan plan;
    plan.lift = "half-squat";
    plan.repetitions = 0;
    plan.living = false;
    plan.stillBefore = seconds;
    plan.gravity = gravity;
    const auto set = simulator::simulateSet(plan, {}, 5);
    REQUIRE(set);
    return set->recording;
}

} // namespace

TEST_CASE("A bar that stands before its set rests, and moves with the first repetition, not before")
{
    const auto set = squats(4, 3, 1.0, {});
    BarWatch watch;
    double began = 0;
    double restedBefore = 0;
    for (const auto& sample : set.recording.samples) {
        watch.add(sample);
        if (began == 0 && watch.moves())
            began = sample.time;
        if (began == 0)
            restedBefore = std::max(restedBefore, watch.rested());
    }
    const double first = set.truth.front().sensor.eccentricStart;
    CAPTURE(first, began);
    CHECK(restedBefore > 3);
    CHECK(began > first - 0.3);
    CHECK(began < set.truth.front().sensor.peakTime); // known before the bar is at its fastest
}

TEST_CASE("Pauses between repetitions are no end of a set, the rest after it grows")
{
    const auto set = squats(3, 12, 4.0, {});
    BarWatch watch;
    double longestWithin = 0;
    const double lastEnd = set.truth.back().sensor.concentricEnd;
    for (const auto& sample : set.recording.samples) {
        watch.add(sample);
        if (sample.time > set.truth.front().sensor.eccentricStart && sample.time < lastEnd)
            longestWithin = std::max(longestWithin, watch.rested());
    }
    CAPTURE(longestWithin, watch.rested());
    CHECK(longestWithin < 6);
    CHECK(watch.rested() > 9);
}

TEST_CASE("A racked bar rests for as long as it hangs there, with no false start")
{
    const auto recording = racked(60, 9.80665);
    BarWatch watch;
    bool moved = false;
    for (const auto& sample : recording.samples) {
        watch.add(sample);
        moved = moved || watch.moves();
    }
    CHECK_FALSE(moved);
    CHECK(watch.rested() > 55);
}

TEST_CASE("A bar that was never seen at rest does not begin a set, and a gap is no rest")
{
    BarWatch watch;
    for (int i = 0; i < 1000; ++i) // carried through the room
        watch.add({.time = i * 0.005, .specificForce = {0, 0, 9.8 + 3 * std::sin(i * 0.1)}, .angularRate = {0, 0, 0}});
    CHECK_FALSE(watch.moves());
    for (int i = 0; i < 100; ++i)
        watch.add({.time = 5 + i * 0.005, .specificForce = {0, 0, 9.8}, .angularRate = {0, 0, 0}});
    watch.add({.time = 30, .specificForce = {0, 0, 9.8}, .angularRate = {0, 0, 0}}); // the link was lost for 24 s
    CHECK(watch.rested() == 0);
}
