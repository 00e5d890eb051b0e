// Bluetooth Low Energy sensors: found, connected, kept connected, streamed. One object for the program, made and called
// on the interface's thread; scanning, links and decoding live on a thread of their own. No Qt Bluetooth type shows
// here.
//
// States are few: a link is searching, connecting, streaming or lost until it is released. Whatever fails is said as a
// Trouble with what to do about it, and a kept sensor is tried again with back-off (1, 2, 4 ... 30 s) until released.
// Never pairs unless the sensor demands it. Leaving the program ends every link.
#pragma once

#include <cstdint>
#include <functional>
#include <memory>
#include <optional>
#include <vector>

#include <QObject>
#include <QString>
#include <QStringList>

#include "engine/sensor/packet.hpp"
#include "engine/sensor/stream.hpp"
#include "engine/sensor/teach.hpp"
#include "mobile/ble/permission.hpp"
#include "mobile/ble/timing.hpp"

namespace fleetrung::ble
{

/// One device that advertises. Every one is shown, named or not: nothing is hidden behind a switch.
struct FoundSensor {
    QString address;      ///< MAC address, or where the system hides it its own identifier for the device
    QString name;         ///< empty where it advertises none
    int signal = 0;       ///< dBm; 0: not told
    QStringList services; ///< UUIDs, 36 characters, that it advertises
};

/// A sensor the program knows: what it needs to connect and read it.
struct KnownSensor {
    QString address;
    QString name;
    sensor::SensorMap map;
    motion::Calibration calibration;
};

/// What the sensor says of itself; empty or none where it does not.
struct SensorInfo {
    std::optional<int> battery; ///< percent
    std::optional<int> mtu;     ///< bytes; not told by every system
    QString manufacturer, model, firmware, hardware, serial;
};

/// What went wrong, each with its own advice (troubleText).
enum class TroubleKind : std::uint8_t {
    BluetoothOff,
    NoAdapter,
    NotAllowed,  ///< the user has not given leave
    NotFound,    ///< not seen while searching
    Refused,     ///< it did not accept the connection
    Dropped,     ///< the link was lost
    WrongSensor, ///< connected, but it lacks the characteristics of its map
    BondStale,   ///< it demands pairing and the pairing kept here is no longer good
    Silent,      ///< connected and subscribed, and nothing comes
    Unreadable,  ///< packets come that the map cannot read
    TooSlow      ///< the link cannot carry the sensor's rate
};
struct Trouble {
    TroubleKind kind;
    QString text; ///< what happened and what to do, one or two sentences
};
[[nodiscard]] QString troubleText(TroubleKind kind, const QString& sensorName);

class Radio : public QObject
{
    Q_OBJECT

public:
    explicit Radio(std::unique_ptr<Permission> permission, QObject* parent = nullptr);
    Radio(std::unique_ptr<Permission> permission, const Timing& timing, QObject* parent = nullptr);
    ~Radio() override; ///< ends scan and links; waits until they are ended

    /// Asks for leave first where the system wants it. Goes on until stopScan; a found sensor is told again when its
    /// signal or name changes.
    void scan();
    void stopScan();

    /// Connects and keeps connected, from now on, until released. Again with another map or calibration: taken over
    /// without a new connection where the characteristics stay the same.
    void keep(const KnownSensor& sensor);
    void release(const QString& address);
    /// At once, instead of waiting for the back-off.
    void tryNow(const QString& address);

    /// Connects to a sensor without a map, and subscribes to all that notifies: signals `learning`, `raw`.
    void listen(const QString& address);
    void stopListening();

    /// Makes the source of one set of a kept sensor: to be called, started and stopped on the live set's thread.
    /// Starting freezes the sensor's clock, stopping releases it. Several at once are fine. Empty where the sensor is
    /// not kept.
    [[nodiscard]] std::function<std::unique_ptr<sensor::SampleSource>()> sourceOf(const QString& address);

    /// ns of the clock that arrivals are on.
    [[nodiscard]] static std::int64_t now();

signals:
    void found(const fleetrung::ble::FoundSensor& sensor);
    void scanningChanged(bool scanning);
    void stateChanged(const QString& address, fleetrung::sensor::LinkState state);
    void health(const QString& address, const fleetrung::sensor::Health& health); ///< once a second while connected
    void info(const QString& address, const fleetrung::ble::SensorInfo& info);
    void trouble(const QString& address, const fleetrung::ble::Trouble& trouble); ///< address empty: of the radio
    void troubleOver(const QString& address);
    /// The gyroscope's bias was found anew while the sensor lay still.
    void rezeroed(const QString& address, const fleetrung::motion::Calibration& calibration);
    /// Samples of a kept sensor outside of sets, for calibration pages: about every 100 ms.
    void samples(const QString& address, const std::vector<fleetrung::motion::Sample>& uncalibrated);
    void learning(const QString& address, const std::vector<fleetrung::sensor::Notifier>& notifiers);
    void raw(const QString& address, const std::vector<fleetrung::sensor::RawPacket>& packets); ///< about every 100 ms

private:
    class Engine;
    std::unique_ptr<Engine> engine_;
};

} // namespace fleetrung::ble
