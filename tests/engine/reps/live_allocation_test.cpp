// What a live set asks of memory.
#include <catch2/catch.hpp>

#include <cmath>
#include <iostream>

#include "demo/simulator/simulator.hpp"
#include "engine/reps/live_set.hpp"
#include "tests/benchmarks/allocations.hpp"

using namespace fleetrung;

TEST_CASE("After the first half second a live set asks for memory only where it looks at the end of a stroke",
          "[reps][live]")
{
    if (!benchmarks::allocationsAreCounted()) {
        std::cout << "skipped: allocations are not counted in this build\n";
        return;
    }
    simulator::SetPlan plan;
    plan.lift = GENERATE("half-squat", "hinge", "floor-power-clean", "step-up");
    plan.topPause = 1.0;
    const auto set = simulator::simulateSet(plan, {}, 77);
    REQUIRE(set);
    const auto& lift = *reps::findLift(plan.lift);
    const auto& recording = set->recording;
    reps::LiveSet live(lift, recording.sensor, recording.hasGyroscope);
    constexpr double started = 0.6; // s
    std::size_t samples = 0, withRequests = 0, requests = 0, announced = 0, most = 0;
    for (const auto& sample : recording.samples) {
        const std::size_t before = benchmarks::allocations();
        const auto fresh = live.add(sample);
        const std::size_t asked = benchmarks::allocations() - before;
        if (sample.time - recording.samples.front().time < started)
            continue;
        ++samples;
        announced += fresh.size();
        requests += asked;
        withRequests += asked > 0 ? 1U : 0U;
        most = std::max(most, asked);
    }
    CAPTURE(plan.lift, samples, announced, requests, withRequests, most);
    std::cout << "live set of " << lift.key << ": " << samples << " samples, " << announced << " announced, "
              << requests << " requests for memory in " << withRequests << " samples, at most " << most << " in one\n";
    REQUIRE(announced > 0);
    // A few looks a stroke, each with a bounded number of requests; nothing at all in any other sample.
    CHECK(withRequests <= 8 * announced + 12);
    CHECK(most <= 120);
}

TEST_CASE("A live set at rest asks for no memory at all", "[reps][live]")
{
    if (!benchmarks::allocationsAreCounted())
        return;
    motion::Recording recording;
    for (int i = 0; i < 200 * 120; ++i) {
        // A tremor of 8 Hz, which no detector takes for a stroke.
        const double time = i / 200.0;
        recording.samples.push_back({time, {0, 0.02 * std::sin(50 * time), 9.80665}, {0.001, 0, 0}});
    }
    reps::LiveSet live(*reps::findLift("half-squat"), recording.sensor);
    std::size_t before = 0;
    for (std::size_t i = 0; i < recording.samples.size(); ++i) {
        if (i == 120)
            before = benchmarks::allocations();
        live.add(recording.samples[i]);
    }
    const std::size_t asked = benchmarks::allocations() - before;
    CHECK(asked == 0);
}
