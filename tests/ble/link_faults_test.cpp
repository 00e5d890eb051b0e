// Faults of the link on command: what they do to a bare central.
#include <QDBusMessage>
#include <QDBusObjectPath>

#include "tests/ble/streaming.hpp"

namespace fleetrung::ble
{

TEST_CASE("a link is lost on command, again and again")
{
    const auto bench = startBench();
    if (!bench) {
        return;
    }
    BareCentral central;
    stream(central);
    REQUIRE(more(central, 5));
    const auto lost = [&] { return central.controller()->state() == QLowEnergyController::UnconnectedState; };
    REQUIRE((*bench)("drop") == "ok");
    CHECK(waitUntil(lost));
    CHECK(bench->count("linksLost") == 1);
    REQUIRE((*bench)("drop 3 0.3") == "ok");
    for (int time = 0; time < 3; ++time) {
        REQUIRE(central.connectTo(barSensor));
        CHECK(waitUntil(lost));
    }
    CHECK(bench->count("linksLost") == 4);
    REQUIRE(central.connectTo(barSensor));
    CHECK_FALSE(waitUntil(lost, 600));
}

TEST_CASE("a sensor refuses the next connections, or all")
{
    const auto bench = startBench({"--do", "refuse 2"});
    if (!bench) {
        return;
    }
    BareCentral central;
    REQUIRE(central.find(barSensor));
    CHECK_FALSE(central.connectTo(barSensor));
    CHECK_FALSE(central.connectTo(barSensor));
    CHECK(central.connectTo(barSensor));
    central.disconnectFrom();
    REQUIRE((*bench)("refuse all") == "ok");
    CHECK_FALSE(central.connectTo(barSensor));
    REQUIRE((*bench)("refuse none") == "ok");
    CHECK(central.connectTo(barSensor));
    CHECK(bench->count("connectCalls") == 5);
    CHECK(bench->count("connections") == 2);
}

TEST_CASE("a sensor vanishes and comes back")
{
    const auto bench = startBench({"--do", "vanish", "--do", "out-of-reach 0.2"});
    if (!bench) {
        return;
    }
    BareCentral central;
    CHECK_FALSE(central.find(barSensor, 700));
    REQUIRE((*bench)("return") == "ok");
    CHECK(central.find(barSensor));
    REQUIRE(central.connectTo(barSensor));
    REQUIRE((*bench)("vanish") == "ok");
    CHECK(waitUntil([&] { return central.controller()->state() == QLowEnergyController::UnconnectedState; }));
    CHECK_FALSE(central.connectTo(barSensor));
    REQUIRE((*bench)("return") == "ok");
    CHECK(central.connectTo(barSensor));
}

TEST_CASE("services that are known late are waited for")
{
    const auto bench = startBench({"--do", "slow 1"});
    if (!bench) {
        return;
    }
    BareCentral central;
    REQUIRE(central.find(barSensor));
    CHECK(central.connectTo(barSensor));
    REQUIRE((*bench)("slow 3600") == "ok");
    central.disconnectFrom();
    CHECK_FALSE(central.connectTo(barSensor, 500));
    CHECK(bench->count("connections") == 2);
}

TEST_CASE("a sensor that demands pairing gives nothing before it")
{
    const auto bench = startBench({"--do", "pairing demanded"});
    if (!bench) {
        return;
    }
    BareCentral central;
    REQUIRE(central.find(barSensor));
    REQUIRE(central.connectTo(barSensor));
    CHECK_FALSE(central.subscribe(service, data));
    CHECK(central.serviceErrors == 1);
    const auto pair = QDBusMessage::createMethodCall("org.bluez", "/org/bluez/hci0/dev_C2_00_00_00_00_01",
                                                     "org.bluez.Device1", "Pair");
    CHECK(QDBusConnection::systemBus().call(pair).type() == QDBusMessage::ReplyMessage);
    CHECK(central.subscribe(service, data));
    CHECK(bench->count("pairCalls") == 1);
}

TEST_CASE("where pairing fails the link is lost with it")
{
    const auto bench = startBench({"--do", "pairing fails"});
    if (!bench) {
        return;
    }
    BareCentral central;
    stream(central);
    REQUIRE(more(central, 5));
    const auto pair = QDBusMessage::createMethodCall("org.bluez", "/org/bluez/hci0/dev_C2_00_00_00_00_01",
                                                     "org.bluez.Device1", "Pair");
    CHECK(QDBusConnection::systemBus().call(pair).errorName() == "org.bluez.Error.AuthenticationFailed");
    CHECK(waitUntil([&] { return central.controller()->state() == QLowEnergyController::UnconnectedState; }));
}

TEST_CASE("a stale bond ends every connection until the system forgets the sensor")
{
    const auto bench = startBench({"--do", "stale-bond on"});
    if (!bench) {
        return;
    }
    BareCentral central;
    REQUIRE(central.find(barSensor));
    CHECK_FALSE(central.connectTo(barSensor));
    CHECK_FALSE(central.connectTo(barSensor));
    auto forget = QDBusMessage::createMethodCall("org.bluez", "/org/bluez/hci0", "org.bluez.Adapter1", "RemoveDevice");
    forget << QVariant::fromValue(QDBusObjectPath("/org/bluez/hci0/dev_C2_00_00_00_00_01"));
    CHECK(QDBusConnection::systemBus().call(forget).type() == QDBusMessage::ReplyMessage);
    REQUIRE(central.find(barSensor));
    CHECK(central.connectTo(barSensor));
}

TEST_CASE("an adapter that is switched off or pulled out ends links, and comes back")
{
    const auto bench = startBench();
    if (!bench) {
        return;
    }
    const auto [off, on] = GENERATE(std::pair("power off", "power on"), std::pair("adapter out", "adapter in"));
    CAPTURE(off);
    BareCentral central;
    REQUIRE(central.find(barSensor));
    REQUIRE(central.connectTo(barSensor));
    REQUIRE((*bench)(off) == "ok");
    CHECK(waitUntil([&] { return central.controller()->state() == QLowEnergyController::UnconnectedState; }));
    CHECK_FALSE(central.connectTo(barSensor));
    REQUIRE((*bench)(on) == "ok");
    CHECK(central.find(barSensor));
    CHECK(central.connectTo(barSensor));
}

TEST_CASE("a command that is none is refused and says what is wanted")
{
    const auto bench = startBench();
    if (!bench) {
        return;
    }
    auto& tell = *bench;
    CHECK(tell("fly").startsWith("error: no such command"));
    CHECK(tell("lose 2").startsWith("error: lose wants a number from 0 to 1"));
    CHECK(tell("drop soon 1").startsWith("error: drop wants a number"));
    CHECK(tell("power maybe").startsWith("error: power wants one of off, on"));
    CHECK(tell("second drop").startsWith("error: there is no such sensor"));
    CHECK(tell("move face +x").startsWith("error: face +x"));
    CHECK(tell("").startsWith("error"));
    CHECK(tell("second").startsWith("error"));
    CHECK(tell("help").contains("until-reconnect"));
}

} // namespace fleetrung::ble
