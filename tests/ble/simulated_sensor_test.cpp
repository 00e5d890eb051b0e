// The simulated sensor as Qt Bluetooth sees it, with nothing of ours between: what it is without faults.
#include <algorithm>
#include <set>

#include <QDBusArgument>
#include <QDBusMessage>
#include <QFile>

#include "demo/sensor/bluez/gatt_layout.hpp"
#include "demo/sensor/bluez/movement.hpp"
#include "demo/sensor/packet_encoder.hpp"
#include "tests/ble/streaming.hpp"

namespace fleetrung::ble
{
namespace
{

/// What an encoder makes of the set that the sensor plays, without the counter in front.
std::vector<QByteArray> encodedSet(const demo::LiftPlan& lift)
{
    auto set = demo::simulatedSet(lift, true);
    REQUIRE(set);
    std::vector<QByteArray> packets;
    for (const auto& packet : demo::PacketEncoder(plain).encode(set->recording.samples)) {
        packets.push_back(demo::bytesOf(packet.bytes).mid(2));
    }
    return packets;
}

} // namespace

TEST_CASE("the simulated sensor is found, connected and streams what it sent")
{
    const auto bench = startBench();
    if (!bench) {
        return;
    }
    BareCentral central;
    stream(central);
    REQUIRE(more(central, 100));
    central.disconnectFrom();
    const auto sent = bench->sent(data);
    REQUIRE(central.received.size() <= static_cast<std::size_t>(sent.size()));
    for (std::size_t i = 0; i < central.received.size(); ++i) {
        REQUIRE(central.received[i] == sent[static_cast<qsizetype>(i)]);
    }
    CHECK(bench->count("connectCalls") == 1);
    CHECK(bench->count("connections") == 1);
    CHECK(bench->count("startNotify") == 1);
    CHECK(bench->count("writes") == 1);
    CHECK(bench->count("disconnectCalls") == 1);
    CHECK(bench->count("pairCalls") == 0);
    CHECK(bench->count("linksLost") == 0);
    CHECK(bench->count("notifications") == sent.size());
}

TEST_CASE("a set comes over the air byte for byte as the encoder makes it")
{
    demo::LiftPlan lift;
    lift.repetitions = 1;
    const auto bench = startBench({"--pause", "-1", "--repetitions", "1"});
    if (!bench) {
        return;
    }
    const auto encoded = encodedSet(lift);
    BareCentral central;
    stream(central);
    REQUIRE(more(central, 20));
    REQUIRE((*bench)("move go") == "ok");
    REQUIRE(more(central, encoded.size() + 100, 20000));
    std::vector<QByteArray> readings;
    for (std::size_t i = 0; i < central.received.size(); ++i) {
        REQUIRE((i == 0 || counterOf(central.received[i]) == (counterOf(central.received[i - 1]) + 1) % 65536));
        readings.push_back(central.received[i].mid(2));
    }
    CHECK(std::search(readings.begin(), readings.end(), encoded.begin(), encoded.end()) != readings.end());
}

TEST_CASE("it streams from the start write to the stop write")
{
    const auto bench = startBench();
    if (!bench) {
        return;
    }
    BareCentral central;
    REQUIRE(central.find(barSensor));
    REQUIRE(central.connectTo(barSensor));
    REQUIRE(central.subscribe(service, data));
    CHECK_FALSE(more(central, 1, 300));
    central.write(service, orders, QByteArray(1, '\7'));
    CHECK_FALSE(more(central, 1, 300));
    central.write(service, orders, QByteArray(1, '\1'));
    CHECK(more(central, 10));
    central.write(service, orders, QByteArray(1, '\0'));
    more(central, 1000, 100); // what was on its way
    CHECK_FALSE(more(central, 1, 300));
}

TEST_CASE("others advertise beside it, some without a name and some without services")
{
    const auto bench = startBench();
    if (!bench) {
        return;
    }
    BareCentral central;
    central.searchFor(1000);
    std::set<QString> addresses;
    bool bare = false;
    for (const auto& device : central.heard()) {
        addresses.insert(device.address().toString());
        bare = bare || device.serviceUuids().isEmpty();
        CHECK(device.rssi() < 0);
    }
    CHECK(addresses.count(barSensor) == 1);
    CHECK(addresses.size() == 5);
    CHECK(bare);
}

TEST_CASE("bar and shoe stream at once")
{
    QTemporaryDir folder;
    QFile file(folder.filePath("map.json"));
    REQUIRE(file.open(QIODevice::WriteOnly));
    file.write(QByteArray::fromStdString(sensor::sensorMapText(plain)));
    file.close();
    const auto bench = startBench({"--second", file.fileName()});
    if (!bench) {
        return;
    }
    BareCentral bar;
    BareCentral shoe;
    stream(bar);
    stream(shoe, shoeSensor);
    CHECK(more(bar, 50));
    CHECK(more(shoe, 50));
    CHECK(bench->count("connections", 0) == 1);
    CHECK(bench->count("connections", 1) == 1);
    CHECK(bar.received != shoe.received);
}

TEST_CASE("who leaves the bus no longer listens, and the link stays up")
{
    const auto bench = startBench();
    if (!bench) {
        return;
    }
    BareCentral central;
    stream(central);
    const auto path = "/org/bluez/hci0/dev_C2_00_00_00_00_01/service0010/char0011";
    const auto call = [&](const char* method, const QDBusConnection& bus) {
        return bus.call(QDBusMessage::createMethodCall("org.bluez", path, "org.bluez.GattCharacteristic1", method))
            .type();
    };
    const auto notifying = [&] {
        auto get = QDBusMessage::createMethodCall("org.bluez", path, "org.freedesktop.DBus.Properties", "Get");
        get << "org.bluez.GattCharacteristic1"
            << "Notifying";
        return QDBusConnection::systemBus().call(get).arguments().value(0).value<QDBusVariant>().variant().toBool();
    };
    REQUIRE(call("StartNotify", QDBusConnection::connectToBus(privateBus().address(), "other")) ==
            QDBusMessage::ReplyMessage);
    REQUIRE(call("StopNotify", QDBusConnection::systemBus()) == QDBusMessage::ReplyMessage);
    CHECK(notifying()); // for the other one
    QDBusConnection::disconnectFromBus("other");
    CHECK(waitUntil([&] { return !notifying(); }));
    CHECK(bench->count("linksLost") == 0);
    CHECK(central.controller()->state() == QLowEnergyController::DiscoveredState);
}

TEST_CASE("a link that is still up from before streams again without another connection")
{
    const auto bench = startBench({"--connected-before"});
    if (!bench) {
        return;
    }
    BareCentral central;
    REQUIRE(central.connectTo(barSensor));
    REQUIRE(central.subscribe(service, data));
    central.write(service, orders, QByteArray(1, '\1'));
    CHECK(more(central, 20));
    CHECK(bench->count("connectCalls") == 0);
}

TEST_CASE("battery and device information are read, and a battery that sinks is told")
{
    const auto bench = startBench();
    if (!bench) {
        return;
    }
    using namespace sensor::gatt;
    const auto uuid = [](std::uint16_t number) { return QString::fromStdString(uuidOf(number)); };
    BareCentral central;
    REQUIRE(central.find(barSensor));
    REQUIRE(central.connectTo(barSensor));
    CHECK(central.read(uuid(deviceInformation), uuid(modelNumber)) == "plain-counts");
    CHECK(central.read(uuid(batteryService), uuid(batteryLevel)) == QByteArray(1, 80));
    REQUIRE(central.subscribe(uuid(batteryService), uuid(batteryLevel)));
    REQUIRE((*bench)("battery 12") == "ok");
    REQUIRE(more(central, 1));
    CHECK(central.received.back() == QByteArray(1, 12));
    CHECK(central.read(uuid(batteryService), uuid(batteryLevel)) == QByteArray(1, 12));
}

TEST_CASE("a map that cannot be read is named when the sensor starts")
{
    if (!privateBus().running()) {
        WARN("skipped: no dbus-daemon on this machine (Debian package dbus)");
        return;
    }
    demo::SensorBench bench(FLEETRUNG_SENSOR, privateBus(), {"--map", "no-such-map.json"});
    CHECK_FALSE(bench.ready());
    CHECK(bench.complaint().contains("no-such-map.json"));
}

} // namespace fleetrung::ble
