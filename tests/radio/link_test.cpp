#include <catch2/catch.hpp>

#include "tests/radio/radio_bench.hpp"

using namespace fleetrung;
using namespace fleetrung::ble;
using sensor::LinkState;

TEST_CASE("a kept sensor connects, streams, and tells who made it and how full its battery is")
{
    Air air;
    Watched w;
    w.radio.keep(known());
    REQUIRE(waitUntil([&] { return w.told.streaming(); }));
    REQUIRE(waitUntil([&] { return w.told.samples[barSensor].size() > 50; }));
    CHECK(waitUntil([&] { return w.told.info[barSensor].battery == 80; }));
    CHECK(waitUntil([&] { return w.told.info[barSensor].firmware == "1.0"; }));
    CHECK(w.told.info[barSensor].manufacturer == "Invented sensors");
    CHECK_FALSE(w.told.info[barSensor].mtu.has_value()); // Linux does not tell
    // It lies still: gravity, and nothing else.
    CHECK(w.told.samples[barSensor].back().specificForce.norm() == Approx(9.81).margin(0.3));

    air("battery 12");
    CHECK(waitUntil([&] { return w.told.info[barSensor].battery == 12; }));
    CHECK(waitUntil([&] { return w.told.health[barSensor].rate > 90; }));

    w.radio.release(barSensor);
    CHECK(waitUntil([&] { return w.told.state[barSensor] == LinkState::Idle; }));
    CHECK(air.count("disconnectCalls") == 1);
    CHECK(air.count("stopNotify") >= 1);
    CHECK(air.count("pairCalls") == 0);
}

// subsurface#1714: a saved sensor is forgotten after one failed connect.
TEST_CASE("a saved sensor that refuses to connect at first is kept and connects later without a tap")
{
    Air air({"--do", "refuse 3"});
    Watched w;
    w.radio.keep(known());
    REQUIRE(waitUntil([&] { return w.told.streaming(); }));
    CHECK(air.count("connectCalls") >= 4);
    CHECK(w.told.hasTold(TroubleKind::Refused));
    CHECK(waitUntil([&] { return w.told.trouble.empty(); }));
}

TEST_CASE("a saved sensor that is not there is told of as not in reach, and connects when it comes")
{
    Air air({"--do", "vanish", "--do", "out-of-reach 0.1"});
    Watched w;
    w.radio.keep(known());
    REQUIRE(waitUntil([&] { return w.told.inTrouble(TroubleKind::NotFound); }));
    CHECK(w.told.state[barSensor] != LinkState::Streaming);
    air("return");
    CHECK(waitUntil([&] { return w.told.streaming() && w.told.trouble.empty(); }));
}

// submersion#1029: a failed pairing throws away a working link. Never pair unless the sensor demands it.
TEST_CASE("a sensor that streams without pairing is never asked to pair")
{
    Air air({"--do", "pairing fails"});
    Watched w;
    w.radio.keep(known());
    REQUIRE(waitUntil([&] { return w.told.samples[barSensor].size() > 100; }));
    for (int i = 0; i < 3; ++i) {
        const auto connections = air.count("connections");
        air("drop");
        REQUIRE(waitUntil([&] { return air.count("connections") > connections && w.told.streaming(); }));
    }
    CHECK(air.count("pairCalls") == 0);
    CHECK(air.count("disconnectCalls") == 0);
}

TEST_CASE("a sensor that demands pairing is asked to pair once and streams")
{
    Air air({"--do", "pairing demanded"});
    Watched w;
    w.radio.keep(known());
    REQUIRE(waitUntil([&] { return w.told.samples[barSensor].size() > 20; }));
    CHECK(air.count("pairCalls") == 1);
    CHECK(air.count("connections") == 1);
}

// submersion#635: a stale bond blocks every later connect, and nobody says what to do.
TEST_CASE("a sensor that forgot its pairing is told of with how to forget it on this side")
{
    Air air({"--do", "stale-bond on"});
    Watched w;
    w.radio.keep(known());
    REQUIRE(waitUntil([&] { return w.told.inTrouble(TroubleKind::BondStale); }));
    CHECK(w.told.troubles.back().second.text.contains("forget"));
    CHECK(air.count("pairCalls") == 0);
    air("stale-bond off"); // the user forgot it in the system's settings
    CHECK(waitUntil([&] { return w.told.streaming() && w.told.trouble.empty(); }));
}

// dotnet-bluetooth-le#665: after a drop the sensor is not found again until the program is restarted.
TEST_CASE("a sensor that was away for a while is found again by itself")
{
    Air air({"--do", "out-of-reach 0.2"});
    Watched w;
    w.radio.keep(known());
    REQUIRE(waitUntil([&] { return w.told.samples[barSensor].size() > 20; }));
    air("vanish");
    REQUIRE(waitUntil([&] { return w.told.state[barSensor] == LinkState::Lost; }));
    CHECK(waitUntil([&] { return w.told.hasTold(TroubleKind::Dropped); }));
    REQUIRE(waitUntil([&] { return w.told.inTrouble(TroubleKind::NotFound); }));
    air("return");
    w.told.samples.clear();
    CHECK(waitUntil([&] { return w.told.streaming() && w.told.samples[barSensor].size() > 20; }));
    CHECK(w.told.trouble.empty());
    CHECK(w.told.health[barSensor].gaps == 1);
}

// cordova-plugin-ble-central#648, dotnet-bluetooth-le#271: the link stays up after the program is closed, and the next
// start gets no notifications.
TEST_CASE("the link ends with the program, and the next start streams again")
{
    Air air;
    for (int start = 1; start <= 2; ++start) {
        CAPTURE(start);
        Watched w;
        w.radio.keep(known());
        REQUIRE(waitUntil([&] { return w.told.samples[barSensor].size() > 20; }));
    } // here the program ends
    CHECK(air.count("disconnectCalls") == 2);
    CHECK(air.count("startNotify") - air.count("stopNotify") == 0);
}

TEST_CASE("a link that a killed program left up is taken over and streams")
{
    Air air({"--connected-before"});
    Watched w;
    w.radio.keep(known());
    CHECK(waitUntil([&] { return w.told.samples[barSensor].size() > 20; }));
}

TEST_CASE("a sensor that falls silent is asked again, then connected anew")
{
    Air air;
    Watched w;
    w.radio.keep(known());
    REQUIRE(waitUntil([&] { return w.told.samples[barSensor].size() > 20; }));
    air("silence until-reconnect");
    REQUIRE(waitUntil([&] { return w.told.inTrouble(TroubleKind::Silent); }));
    w.told.samples.clear();
    REQUIRE(waitUntil([&] { return w.told.samples[barSensor].size() > 20; }));
    CHECK(w.told.trouble.empty());
    CHECK(air.count("connections") == 2);
    CHECK(air.count("startNotify") > 2);
}

TEST_CASE("a device that is no sensor of this map is told of as the wrong one")
{
    Air air;
    Watched w;
    auto sensor = known();
    for (auto& stream : sensor.map.streams)
        stream.characteristic = "3f5a0009-61c4-4c1e-9b0d-7d2e8c64a510";
    w.radio.keep(sensor);
    REQUIRE(waitUntil([&] { return w.told.inTrouble(TroubleKind::WrongSensor); }));
    w.radio.keep(known()); // the user chooses another map
    CHECK(waitUntil([&] { return w.told.streaming() && w.told.trouble.empty(); }));
}

TEST_CASE("a sensor whose services take long to discover connects at the first try")
{
    Air air({"--do", "slow 2"});
    Watched w;
    w.radio.keep(known());
    CHECK(waitUntil([&] { return w.told.streaming(); }));
    CHECK(air.count("connectCalls") == 1);
}
