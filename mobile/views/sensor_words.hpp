// Sensors in words: where one is worn, how its link stands, how strongly it is heard, and how well its stream comes in.
#pragma once

#include <optional>
#include <string>

#include <QList>
#include <QString>
#include <QStringList>
#include <QVariantMap>

#include "engine/sensor/sample_source.hpp"
#include "engine/sensor/stream.hpp"
#include "mobile/views/units.hpp"

namespace fleetrung::views
{

/// Where a sensor is worn; the keys are those of the store.
enum class SensorPlace { Bar, Shoe, Waist };
inline constexpr int sensorPlaces = 3;
[[nodiscard]] std::string placeKey(SensorPlace place);
[[nodiscard]] SensorPlace placeOf(const std::string& key); ///< Bar where it is none of ours
[[nodiscard]] QString placeText(SensorPlace place);        ///< "On the bar"
[[nodiscard]] QString placeName(SensorPlace place);        ///< "Bar sensor"
[[nodiscard]] QStringList placeChoices();                  ///< "Bar", "Shoe", "Waist"

[[nodiscard]] QString linkText(sensor::LinkState state);

/// 0 (not told) to 4. Starting values of this project: a phone in the hand hears a sensor at arm's length at about
/// -50 dBm, across a room at about -80 dBm.
[[nodiscard]] int signalBars(int dBm);
[[nodiscard]] QString signalText(int bars);

/// The end of an address, enough to tell two sensors without a name apart.
[[nodiscard]] QString addressEnd(const QString& address);

/// What stands of a streaming sensor besides its samples.
struct SensorFacts {
    sensor::Health health;
    std::optional<int> battery;        ///< percent
    std::optional<double> sinceZeroed; ///< s since the gyroscope's bias was found last
    bool hasGyroscope = true;
};

/// Rows of name, value, allowed and mark (0 as it should be, 1 not, 2 for show). The limits are those under which the
/// numbers of class A hold: a rate of 100 Hz or what the sensor promises, lateness up to 60 ms, stalls up to 500 ms.
[[nodiscard]] QList<QVariantMap> healthRows(const SensorFacts& facts, const Units& units);
/// Rate, battery and loss in a line: "200 Hz · battery 82 % · 0.4 % lost".
[[nodiscard]] QString healthLine(const SensorFacts& facts, const Units& units);
[[nodiscard]] QString agoText(double seconds); ///< "just now", "2 min ago"

} // namespace fleetrung::views
