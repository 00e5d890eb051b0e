// Services and characteristics that a sensor of a map has: those of the map, battery and device information.
#pragma once

#include <vector>

#include <QByteArray>
#include <QString>
#include <QStringList>

#include "engine/sensor/sensor_map.hpp"

namespace fleetrung::demo
{

struct CharacteristicLayout {
    QString uuid;
    QStringList flags; ///< "read", "write", "write-without-response", "notify"
    QByteArray value;

    [[nodiscard]] bool notifies() const { return flags.contains("notify"); }
};

struct ServiceLayout {
    QString uuid;
    std::vector<CharacteristicLayout> characteristics;
};

[[nodiscard]] std::vector<ServiceLayout> gattLayout(const sensor::SensorMap& map, int batteryPercent);

/// Bytes as D-Bus and Qt have them.
[[nodiscard]] QByteArray bytesOf(const std::vector<std::uint8_t>& bytes);

} // namespace fleetrung::demo
