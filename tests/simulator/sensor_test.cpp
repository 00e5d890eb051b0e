#include <catch2/catch.hpp>

#include <algorithm>
#include <cmath>
#include <limits>
#include <set>

#include "demo/simulator/simulator.hpp"

using namespace fleetrung;
using namespace fleetrung::simulator;

namespace
{

constexpr double standardGravity = 9.80665;

SetPlan stillFor(double seconds)
{
    SetPlan plan;
    plan.repetitions = 0;
    plan.living = false;
    plan.sway = 0;
    plan.stillBefore = seconds;
    plan.stillAfter = 0;
    return plan;
}

double deviation(const motion::Recording& recording, int axis)
{
    double sum = 0;
    double squares = 0;
    const auto n = static_cast<double>(recording.samples.size());
    for (const auto& sample : recording.samples) {
        sum += sample.specificForce[axis];
    }
    for (const auto& sample : recording.samples) {
        squares += std::pow(sample.specificForce[axis] - sum / n, 2);
    }
    return std::sqrt(squares / (n - 1));
}

} // namespace

TEST_CASE("A class A part held still for 60 s at 200 Hz scatters by 0.0157 m/s2")
{
    // 160 micro-g per root Hz over 100 Hz: 160e-6 * 9.80665 * sqrt(100) = 0.01569 m/s2 (arithmetic).
    SensorPlan sensor;
    sensor.part = "A";
    sensor.rate = 200;
    for (const std::uint64_t seed : {1U, 2U, 3U}) {
        const auto set = simulateSet(stillFor(60), sensor, seed);
        REQUIRE(set);
        for (int axis = 0; axis < 3; ++axis) {
            CHECK(deviation(set->recording, axis) == Approx(0.0157).epsilon(0.05));
        }
    }
}

TEST_CASE("At rest the perfect sensor reads gravity upwards and nothing else, however it is mounted")
{
    SensorPlan sensor;
    sensor.part = "perfect";
    sensor.randomMounting = true;
    auto plan = stillFor(1);
    plan.gravity = 9.8061977694; // 45 degrees, WGS84
    const auto set = simulateSet(plan, sensor, 5);
    REQUIRE(set);
    for (const auto& sample : set->recording.samples) {
        CHECK(sample.specificForce.norm() == Approx(9.8061977694).epsilon(1e-12));
        CHECK(sample.angularRate.norm() == Approx(0).margin(1e-12));
    }
}

TEST_CASE("Integrating what the perfect sensor feels gives the truth's velocity back, with wobble and lever")
{
    SetPlan plan;
    plan.lift = "hang-power-clean";
    plan.repetitions = 3;
    SensorPlan sensor;
    sensor.part = "perfect";
    sensor.rate = 2000;
    sensor.randomMounting = true;
    sensor.wobble = 0.7; // 40 degrees
    sensor.lever = {0.03, 0.9, 0.02};
    const auto set = simulateSet(plan, sensor, 5);
    REQUIRE(set);

    // Strapdown by the midpoint rule. It begins from the still pose, where specific force points up: only the vertical
    // is wanted, so heading does not matter.
    const auto& samples = set->recording.samples;
    Eigen::Vector3d up = samples.front().specificForce.normalized(); // world's vertical in sensor axes
    double velocity = set->motion.velocity.front();
    double worst = 0;
    for (std::size_t i = 1; i < samples.size(); ++i) {
        const double dt = samples[i].time - samples[i - 1].time;
        const Eigen::Vector3d turn = 0.5 * dt * (samples[i].angularRate + samples[i - 1].angularRate);
        const double before = up.dot(samples[i - 1].specificForce) - standardGravity;
        if (turn.norm() > 0) {
            up = Eigen::AngleAxisd(-turn.norm(), turn.normalized()) * up;
        }
        velocity += 0.5 * dt * (before + up.dot(samples[i].specificForce) - standardGravity);
        worst = std::max(worst, std::abs(velocity - set->motion.velocity[i]));
    }
    CHECK(worst < 0.02); // what is left is the unknown tilt of tremor and sway in the first sample
    // Truth and motion agree at every peak.
    for (const auto& repetition : set->truth) {
        const auto i = static_cast<std::size_t>(std::llround(repetition.sensor.peakTime * sensor.rate));
        CHECK(set->motion.velocity[i] == Approx(repetition.sensor.peakVelocity).margin(1e-4));
        CHECK(set->motion.acceleration[i] == Approx(0).margin(0.1));
    }
}

TEST_CASE("The sensor's stroke differs from the bar's where a lever and a wobble are between them")
{
    SetPlan plan;
    plan.lift = "full-squat";
    plan.rangeScatter = 0;
    plan.living = false;
    SensorPlan sensor;
    sensor.part = "perfect";
    sensor.lever = {0.05, 0, 0};
    sensor.wobble = 0.5;
    const auto set = simulateSet(plan, sensor, 3);
    REQUIRE(set);
    CHECK(set->truth.front().bar.range == Approx(0.62).margin(1e-9));
    CHECK(std::abs(set->truth.front().sensor.range - 0.62) > 0.015);
    CHECK(std::abs(set->truth.front().sensor.range - 0.62) < 0.05);
}

TEST_CASE("Readings are whole counts of the part, and end at its range")
{
    SetPlan plan;
    plan.lift = "floor-power-clean";
    plan.repetitions = 2;
    plan.drop = true;
    SensorPlan sensor;
    sensor.part = "A";
    sensor.rate = 500;
    const auto set = simulateSet(plan, sensor, 3);
    REQUIRE(set);
    const double step = standardGravity / 2048;
    double greatest = 0;
    for (const auto& sample : set->recording.samples) {
        for (int axis = 0; axis < 3; ++axis) {
            const double counts = sample.specificForce[axis] / step;
            CHECK(std::abs(counts - std::round(counts)) < 1e-6);
            greatest = std::max(greatest, std::abs(sample.specificForce[axis]));
        }
    }
    CHECK(greatest <= 16 * standardGravity + 1e-9);
    CHECK(greatest >= 15.9 * standardGravity); // the bar was dropped
}

TEST_CASE("2048 counts of class A are one g, and 16384 counts of its gyroscope 1000 degrees a second")
{
    // 2048 LSB/g and 16.384 LSB/dps; class B: 70 mdps/LSB, so the same count means another rate.
    CHECK(2048 * findPart("A")->accelerometerStep * 1e-3 == Approx(1.0));
    CHECK(16384 * findPart("A")->gyroscopeStep * 1e-3 == Approx(1000.0));
    CHECK(16384 * findPart("B")->gyroscopeStep * 1e-3 == Approx(1146.88));
    CHECK(16384 * findPart("old")->gyroscopeStep * 1e-3 == Approx(999.02).epsilon(1e-5));
}

TEST_CASE("The same seed gives the same bytes, another seed other ones")
{
    const SetPlan plan;
    const SensorPlan sensor;
    const auto bytes = [&](std::uint64_t seed) {
        const auto set = simulateSet(plan, sensor, seed);
        REQUIRE(set);
        return recordingCsv(set->recording, plan.lift, 100) + truthCsv(set->truth);
    };
    CHECK(bytes(1) == bytes(1));
    CHECK(bytes(1) != bytes(2));
}

TEST_CASE("The movement does not depend on the sensor that records it")
{
    const SetPlan plan;
    SensorPlan sensor;
    const auto first = simulateSet(plan, sensor, 4);
    sensor.part = "E";
    sensor.rate = 100;
    const auto second = simulateSet(plan, sensor, 4);
    REQUIRE(first);
    REQUIRE(second);
    CHECK(truthCsv(first->truth) == truthCsv(second->truth));
}

TEST_CASE("A skewed clock stretches the recording and its truth alike")
{
    const SetPlan plan;
    SensorPlan sensor;
    const auto straight = simulateSet(plan, sensor, 4);
    sensor.clockSkew = 300e-6;
    sensor.startTime = 100;
    const auto skewed = simulateSet(plan, sensor, 4);
    REQUIRE(straight);
    REQUIRE(skewed);
    CHECK(skewed->truth[4].bar.peakTime - 100 == Approx(straight->truth[4].bar.peakTime * 1.0003).epsilon(1e-12));
}

TEST_CASE("A lossy radio loses, doubles and swaps packets, the recording keeps its order")
{
    const SetPlan plan;
    SensorPlan sensor;
    sensor.lossShare = 0.05;
    sensor.doubledShare = 0.05;
    sensor.swappedShare = 0.05;
    const auto set = simulateSet(plan, sensor, 4);
    REQUIRE(set);
    std::set<std::uint32_t> seen;
    int doubled = 0;
    int swapped = 0;
    std::size_t received = 0;
    std::uint32_t before = 0;
    for (const auto& packet : set->packets) {
        doubled += seen.insert(packet.counter).second ? 0 : 1;
        swapped += packet.counter < before ? 1 : 0;
        before = packet.counter;
    }
    CHECK(doubled > 0);
    CHECK(swapped > 0);
    for (const auto counter : seen) {
        const auto packet = std::find_if(set->packets.begin(), set->packets.end(),
                                         [&](const Packet& each) { return each.counter == counter; });
        received += packet->samples.size();
    }
    CHECK(received == set->recording.samples.size());
    CHECK(set->motion.velocity.size() == set->recording.samples.size());
    bool gap = false;
    for (std::size_t i = 1; i < set->recording.samples.size(); ++i) {
        const double step = set->recording.samples[i].time - set->recording.samples[i - 1].time;
        REQUIRE(step > 0);
        gap = gap || step > 0.04;
    }
    CHECK(gap);
}

TEST_CASE("A sensor without gyroscope says so and reads no rate")
{
    const SetPlan plan;
    SensorPlan sensor;
    sensor.hasGyroscope = false;
    const auto set = simulateSet(plan, sensor, 4);
    REQUIRE(set);
    CHECK_FALSE(set->recording.hasGyroscope);
    CHECK(set->recording.samples[500].angularRate.norm() == 0);
    CHECK(recordingCsv(set->recording, "half-squat", 0).find("gyr_x") == std::string::npos);
}
