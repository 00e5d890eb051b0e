// What every test against the simulated sensor begins with.
#pragma once

#include <memory>

#include <catch2/catch.hpp>

#include "demo/sensor/bluez/bench.hpp"

namespace fleetrung::ble
{

const demo::PrivateBus& privateBus();

inline const QString barSensor = QStringLiteral("C2:00:00:00:00:01");
inline const QString shoeSensor = QStringLiteral("C2:00:00:00:00:02");

/// A bench with these options; null, and said so, where the machine has no dbus-daemon.
inline std::unique_ptr<demo::SensorBench> startBench(const QStringList& options = {})
{
    if (!privateBus().running()) {
        WARN("skipped: no dbus-daemon on this machine (Debian package dbus)");
        return nullptr;
    }
    auto bench = std::make_unique<demo::SensorBench>(FLEETRUNG_SENSOR, privateBus(), options);
    INFO(bench->complaint().toStdString());
    REQUIRE(bench->ready());
    return bench;
}

} // namespace fleetrung::ble
