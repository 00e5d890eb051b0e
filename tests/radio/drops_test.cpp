#include <algorithm>

#include <catch2/catch.hpp>

#include "demo/sensor/bluez/plain_map.hpp"
#include "tests/radio/radio_bench.hpp"

using namespace fleetrung;
using namespace fleetrung::ble;
using sensor::LinkState;

namespace
{

/// Counters of the plain map's packets, as they came out of the sensor: two bytes, little endian.
std::vector<int> countersOf(const QList<QByteArray>& packets)
{
    std::vector<int> counters;
    for (const auto& packet : packets)
        counters.push_back(static_cast<unsigned char>(packet[0]) | static_cast<unsigned char>(packet[1]) << 8);
    return counters;
}

} // namespace

// quick_blue#115: a reconnect leaves the old handlers alive, and every packet comes twice.
TEST_CASE("after reconnects every packet is taken once, and each link subscribes once")
{
    Air air({"--alone"});
    Watched w;
    w.radio.keep(known());
    REQUIRE(waitUntil([&] { return w.told.streaming(); }));
    RunningSet set(w.radio);
    for (int i = 0; i < 5; ++i) {
        const auto taken = set.samples.size();
        REQUIRE(waitUntil([&] { return set.samples.size() > taken + 20; }));
        air("drop");
        REQUIRE(waitUntil([&] { return w.told.state[barSensor] == LinkState::Lost; }));
        REQUIRE(waitUntil([&] { return w.told.streaming(); }));
    }
    const auto taken = set.samples.size();
    REQUIRE(waitUntil([&] { return set.samples.size() > taken + 20; }));
    CHECK(set.inOrder());
    CHECK(air.count("connections") == 6);
    CHECK(air.count("startNotify") == 2 * 6); // stream and battery
    // One packet of this map is one sample: no more came out than went in.
    const auto sent = countersOf(air.sent(QString::fromStdString(demo::plainMap().streams[0].characteristic)));
    CHECK(set.samples.size() <= sent.size());
    CHECK(set.samples.size() > sent.size() * 9 / 10); // the rest is what came before the set began
    CHECK(waitUntil([&] { return w.told.health[barSensor].gaps == 5; }));
}

TEST_CASE("two hundred lost links in a row while streaming end with a streaming link and no sample twice")
{
    Air air({"--alone", "--do", "slow 0", "--do", "connecting 0.005"});
    auto timing = shortTiming();
    timing.firstRetry = std::chrono::milliseconds(5);
    Watched w(timing);
    w.radio.keep(known());
    REQUIRE(waitUntil([&] { return w.told.streaming(); }));
    RunningSet set(w.radio);
    for (int i = 0; i < 200; ++i) {
        CAPTURE(i);
        const auto taken = set.samples.size();
        REQUIRE(waitUntil([&] { return set.samples.size() > taken; }));
        air("drop");
        // What was under way still comes in after the drop: only a new connection says that it is over.
        REQUIRE(waitUntil([&] { return air.count("connections") == i + 2; }));
    }
    const auto taken = set.samples.size();
    REQUIRE(waitUntil([&] { return set.samples.size() > taken + 50; }));
    CHECK(w.told.streaming());
    CHECK(set.inOrder());
    CHECK(air.count("linksLost") == 200);
    CHECK(air.count("connections") == 201);
    CHECK(set.samples.size() <= static_cast<std::size_t>(air.count("notifications")));
    CHECK(waitUntil([&] { return w.told.health[barSensor].gaps == 200; }));
    CHECK(set.source().clockFit().find("pace") != std::string::npos);
}
