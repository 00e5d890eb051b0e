// The simulated sensor as Qt Bluetooth sees it, with nothing of ours between.
#include "tests/ble/bare_central.hpp"
#include "tests/ble/bench_test.hpp"

#include "demo/sensor/bluez/plain_map.hpp"

namespace fleetrung::ble
{
namespace
{

const auto map = demo::plainMap();
const QString service = QString::fromStdString(map.streams.front().service);
const QString data = QString::fromStdString(map.streams.front().characteristic);
const QString orders = QString::fromStdString(map.start.front().characteristic);

/// Connects, subscribes and starts.
void stream(BareCentral& central)
{
    REQUIRE(central.find(barSensor));
    REQUIRE(central.connectTo(barSensor));
    REQUIRE(central.subscribe(service, data));
    central.write(service, orders, QByteArray(1, '\1'));
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
    REQUIRE(waitUntil([&] { return central.received.size() >= 100; }));
    central.disconnectFrom();
    const auto sent = bench->sent(data);
    REQUIRE(central.received.size() <= static_cast<std::size_t>(sent.size()));
    for (std::size_t i = 0; i < central.received.size(); ++i) {
        REQUIRE(central.received[i] == sent[static_cast<qsizetype>(i)]);
    }
}

} // namespace fleetrung::ble
