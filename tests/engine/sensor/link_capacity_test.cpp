// Sources of the values: interval from 7.5 ms (https://interrupt.memfault.com/blog/ble-throughput-primer); 4 packets in
// one interval is an old figure of one kind of phone, up to 6 elsewhere (lairdconnect.com, FAQ "what factors affect BLE
// throughput"); MTU 23 and 3 bytes beside the value: Core Specification, from memory. The products are worked out by
// hand: 20 x 4 / 0.030 = 2666.7.
#include <catch2/catch.hpp>

#include "engine/sensor/link_capacity.hpp"
#include "tests/engine/sensor/map_forms.hpp"

using namespace fleetrung;
using namespace fleetrung::sensor;
using namespace fleetrung::sensor::forms;

namespace
{

/// 6 x int16 and a uint32 counter: 16 bytes a sample.
SensorMap frames(int samples = 1)
{
    return binary({counter(NumberType::UInt32)}, readings(NumberType::Int16, ByteOrder::Little, 6, 1, 1), samples);
}

} // namespace

TEST_CASE("Bytes a second that a link carries", "[sensor][link]")
{
    CHECK(bytesPerSecond({23, 0.0075, 1}) == Approx(2666.7).margin(0.05));
    CHECK(bytesPerSecond({23, 0.015, 4}) == Approx(5333.3).margin(0.05));
    CHECK(bytesPerSecond({23, 0.030, 4}) == Approx(2666.7).margin(0.05));
    CHECK(bytesPerSecond({185, 0.015, 4}) == Approx(48533).margin(0.5));
    CHECK(bytesPerSecond({247, 0.0075, 6}) == Approx(195200).margin(0.5));
    CHECK(bytesPerSecond({23, 0, 4}) == 0);
}

TEST_CASE("200 Hz in frames of 16 bytes need 3200 bytes a second: too much at 30 ms, not at 15 ms", "[sensor][link]")
{
    const auto slow = planLink(frames(), {23, 0.030, 4}, 200);
    CHECK(slow.bytesNeeded == Approx(3200));
    CHECK(slow.bytesCarried == Approx(2666.7).margin(0.05));
    CHECK_FALSE(slow.fits);
    CHECK(slow.highestRate == Approx(133.3).margin(0.1));
    REQUIRE(slow.warnings.size() == 1);
    CHECK_THAT(slow.warnings[0], Catch::Contains("Set the sensor to 133 Hz or less") && Catch::Contains("3200 bytes") &&
                                     Catch::Contains("larger packets"));

    const auto fast = planLink(frames(), {23, 0.015, 4}, 200);
    CHECK(fast.fits);
    CHECK(fast.warnings.empty());
}

TEST_CASE("A packet that is not full takes its place all the same", "[sensor][link]")
{
    // 200 packets of 16 bytes a second do not go into 133, although 247 bytes would fit into each.
    const auto single = planLink(frames(), {247, 0.030, 4}, 200);
    CHECK_FALSE(single.fits);
    REQUIRE(single.warnings.size() == 1);
    CHECK_THAT(single.warnings[0], Catch::Contains("several samples in a packet"));
    CHECK(planLink(frames(10), {247, 0.030, 4}, 200).fits);
    CHECK(planLink(frames(0), {247, 0.030, 4}, 1000).fits); // 20 samples a packet
}

TEST_CASE("A packet larger than a notification is named with the MTU it needs", "[sensor][link]")
{
    const auto plan = planLink(frames(4), {23, 0.015, 4}, 50);
    CHECK_FALSE(plan.fits);
    CHECK(plan.highestRate == 0);
    REQUIRE(plan.warnings.size() == 1);
    CHECK_THAT(plan.warnings[0],
               Catch::Contains("52 bytes") && Catch::Contains("carries 20") && Catch::Contains("MTU of 55"));
}

TEST_CASE("A link that is nearly full is warned of", "[sensor][link]")
{
    const auto plan = planLink(frames(), {23, 0.020, 4}, 190);
    CHECK(plan.fits);
    REQUIRE(plan.warnings.size() == 1);
    CHECK_THAT(plan.warnings[0], Catch::Contains("95 %") && Catch::Contains("160 Hz"));
}

TEST_CASE("The map's own rate is taken where none is given, and lines are estimated", "[sensor][link]")
{
    auto map = frames();
    CHECK(planLink(map, {}).packetsNeeded == 0);
    CHECK(planLink(map, {}).fits);
    map.streams.front().rate = 200;
    CHECK_FALSE(planLink(map, {}).fits);

    using enum Channel;
    const auto text = lines({AccelerometerX, AccelerometerY, AccelerometerZ, GyroscopeX, GyroscopeY, GyroscopeZ}, 1, 1);
    CHECK_FALSE(planLink(text, {23, 0.030, 4}, 100).fits); // some 49 characters a line
    CHECK(planLink(text, {185, 0.030, 4}, 100).fits);
}
