// The plain map's characteristics, and what tests do with them again and again.
#pragma once

#include "demo/sensor/bluez/plain_map.hpp"
#include "engine/sensor/gatt.hpp"
#include "tests/ble/bare_central.hpp"
#include "tests/ble/bench_test.hpp"

namespace fleetrung::ble
{

inline const sensor::SensorMap plain = demo::plainMap();
inline const QString service = QString::fromStdString(plain.streams.front().service);
inline const QString data = QString::fromStdString(plain.streams.front().characteristic);
inline const QString orders = QString::fromStdString(plain.start.front().characteristic);

/// Connects to a sensor of the plain map, subscribes and starts it.
inline void stream(BareCentral& central, const QString& address = barSensor)
{
    REQUIRE(central.find(address));
    REQUIRE(central.connectTo(address));
    REQUIRE(central.subscribe(service, data));
    central.write(service, orders, QByteArray(1, '\1'));
}

/// Waits for so many more notifications.
inline bool more(BareCentral& central, std::size_t count, int milliseconds = 5000)
{
    const auto wanted = central.received.size() + count;
    return waitUntil([&] { return central.received.size() >= wanted; }, milliseconds);
}

/// The counter in front of a packet of the plain map.
inline int counterOf(const QByteArray& packet)
{
    return static_cast<unsigned char>(packet[0]) + 256 * static_cast<unsigned char>(packet[1]);
}

} // namespace fleetrung::ble
