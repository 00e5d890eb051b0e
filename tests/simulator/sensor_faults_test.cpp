// Faults of the simulated sensor: each does what it says, and nothing beside it.
#include <catch2/catch.hpp>

#include <algorithm>
#include <cmath>

#include "demo/simulator/simulator.hpp"

using namespace fleetrung;
using namespace fleetrung::simulator;

namespace
{

constexpr std::uint64_t seed = 20261;

SimulatedSet simulated(const SensorPlan& sensor, const SetPlan& plan = {})
{
    auto set = simulateSet(plan, sensor, seed);
    REQUIRE(set);
    return std::move(*set);
}

/// Samples that stand in both recordings at the same time: how many, and whether all are equal.
std::pair<std::size_t, bool> shared(const motion::Recording& a, const motion::Recording& b)
{
    std::size_t count = 0;
    bool equal = true;
    auto other = b.samples.begin();
    for (const auto& sample : a.samples) {
        while (other != b.samples.end() && other->time < sample.time)
            ++other;
        if (other == b.samples.end() || other->time != sample.time)
            continue;
        ++count;
        equal = equal && other->specificForce == sample.specificForce && other->angularRate == sample.angularRate;
    }
    return {count, equal};
}

} // namespace

TEST_CASE("A burst of loss takes the samples of its time away and no other")
{
    const auto whole = simulated({});
    SensorPlan sensor;
    sensor.faults.burstLoss = 0.3;
    sensor.faults.burstAt = 1.0;
    const auto set = simulated(sensor);
    CHECK(whole.recording.samples.size() - set.recording.samples.size() == 60); // 0.3 s at 200 Hz
    CHECK(set.motion.velocity.size() == set.recording.samples.size());
    const auto [count, equal] = shared(set.recording, whole.recording);
    CHECK(count == set.recording.samples.size());
    CHECK(equal);
    CHECK(std::none_of(set.recording.samples.begin(), set.recording.samples.end(),
                       [](const motion::Sample& sample) { return sample.time >= 1.0 && sample.time < 1.3; }));
    CHECK(set.received.size() == set.recording.samples.size());
}

TEST_CASE("A burst of loss can be laid into the concentric phase of a repetition")
{
    SensorPlan sensor;
    sensor.clockSkew = 300e-6;
    sensor.startTime = 50;
    sensor.faults.burstLoss = 0.2;
    sensor.faults.burstRepetition = 3;
    const auto set = simulated(sensor);
    const auto& truth = set.truth[3].bar;
    const auto& samples = set.recording.samples;
    for (std::size_t i = 1; i < samples.size(); ++i)
        if (samples[i].time - samples[i - 1].time > 0.1) {
            CHECK(samples[i - 1].time > truth.concentricStart);
            CHECK(samples[i].time < truth.concentricEnd);
        }
    CHECK(std::is_sorted(samples.begin(), samples.end(), [](const auto& a, const auto& b) { return a.time < b.time; }));
    const auto lost = simulated({}).recording.samples.size() - samples.size();
    CHECK(lost >= 39); // 0.2 s at 200 Hz, wherever the grid of samples lies
    CHECK(lost <= 41);
}

TEST_CASE("A clock that steps changes the time stamps off the air, not the recording that the truth belongs to")
{
    const double step = GENERATE(-2.0, 1.5);
    const auto whole = simulated({});
    SensorPlan sensor;
    sensor.faults.clockStep = step;
    sensor.faults.clockStepAt = 3.0;
    const auto set = simulated(sensor);
    REQUIRE(set.recording.samples.size() == whole.recording.samples.size());
    CHECK(shared(set.recording, whole.recording) == std::pair{set.recording.samples.size(), true});
    REQUIRE(set.received.size() == set.recording.samples.size());
    for (std::size_t i = 0; i < set.received.size(); ++i) {
        const double stamp = set.recording.samples[i].time;
        REQUIRE(set.received[i].time == Approx(stamp + (stamp < 3.0 ? 0.0 : step)).margin(1e-12));
    }
}

TEST_CASE("What comes off the air is the packets one after the other, doubled ones twice")
{
    SensorPlan sensor;
    sensor.doubledShare = 0.1;
    sensor.swappedShare = 0.1;
    const auto set = simulated(sensor);
    CHECK(set.received.size() > set.recording.samples.size());
    CHECK_FALSE(std::is_sorted(set.received.begin(), set.received.end(),
                               [](const auto& a, const auto& b) { return a.time < b.time; }));
    CHECK(set.received.front().time == set.packets.front().samples.front().time);
    CHECK(set.received.back().time == set.packets.back().samples.back().time);
}

TEST_CASE("A range of 2 to 32 g clips there, and its counts are as fine as 16 bits allow")
{
    const double range = GENERATE(2.0, 4.0, 8.0, 16.0, 32.0);
    SetPlan plan;
    plan.lift = "floor-power-clean";
    plan.repetitions = 2;
    plan.drop = true;
    SensorPlan sensor;
    sensor.accelerometerRange = range;
    sensor.rate = 400;
    const auto set = simulated(sensor, plan);
    const double limit = range * 9.80665;
    CHECK(set.recording.sensor.accelerometerRange == Approx(limit));
    double greatest = 0;
    for (const auto& sample : set.recording.samples)
        for (int axis = 0; axis < 3; ++axis) {
            const double counts = sample.specificForce[axis] / limit * 32768;
            REQUIRE(std::abs(counts - std::round(counts)) < 1e-6);
            greatest = std::max(greatest, std::abs(sample.specificForce[axis]));
        }
    CHECK(greatest <= limit);
    CHECK(greatest >= 0.99 * limit); // the bar was dropped
}

TEST_CASE("A stuck axis keeps one reading from its time on, the other five go on")
{
    const int stuck = GENERATE(0, 1, 2, 3, 4, 5);
    const auto whole = simulated({});
    SensorPlan sensor;
    sensor.faults.stuckAxis = stuck;
    sensor.faults.stuckFrom = 2.0;
    const auto set = simulated(sensor);
    REQUIRE(set.recording.samples.size() == whole.recording.samples.size());
    const auto reading = [](const motion::Sample& sample, int axis) {
        return axis < 3 ? sample.specificForce[axis] : sample.angularRate[axis - 3];
    };
    const double kept = reading(set.recording.samples[400], stuck); // at 2 s
    for (std::size_t i = 0; i < whole.recording.samples.size(); ++i)
        for (int axis = 0; axis < 6; ++axis) {
            const bool same = axis != stuck || i < 400;
            REQUIRE(reading(set.recording.samples[i], axis) ==
                    (same ? reading(whole.recording.samples[i], axis) : kept));
        }
}

TEST_CASE("A swapped sign turns one axis of the gyroscope the other way")
{
    const auto whole = simulated({});
    SensorPlan sensor;
    sensor.faults.swappedSign = {false, true, false};
    const auto set = simulated(sensor);
    for (std::size_t i = 0; i < whole.recording.samples.size(); ++i) {
        const auto& rate = whole.recording.samples[i].angularRate;
        REQUIRE(set.recording.samples[i].angularRate == Eigen::Vector3d(rate.x(), -rate.y(), rate.z()));
        REQUIRE(set.recording.samples[i].specificForce == whole.recording.samples[i].specificForce);
    }
}

TEST_CASE("Faults that cannot be are refused by name")
{
    SensorPlan sensor;
    SECTION("accelerometerRange")
    {
        sensor.accelerometerRange = 64;
    }
    SECTION("burstLoss")
    {
        sensor.faults.burstLoss = -1;
    }
    SECTION("stuckAxis")
    {
        sensor.faults.stuckAxis = 6;
    }
    const auto set = simulateSet({}, sensor, seed);
    REQUIRE_FALSE(set);
    CHECK(set.error().code == Code::InvalidArgument);
    CHECK((set.error().place == "accelerometerRange" || set.error().place == "burstLoss" ||
           set.error().place == "stuckAxis"));
}
