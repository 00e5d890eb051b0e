// The radio and the simulated sensor side by side, for tests: what the radio tells is kept, and waiting is for
// something to happen, never for a fixed time.
#pragma once

#include <functional>
#include <map>
#include <memory>
#include <optional>
#include <vector>

#include "demo/sensor/bluez/bench.hpp"
#include "engine/sensor/sample_source.hpp"
#include "mobile/ble/radio.hpp"

namespace fleetrung::ble
{

inline const QString barSensor = QStringLiteral("C2:00:00:00:00:01");
inline const QString shoeSensor = QStringLiteral("C2:00:00:00:00:02");

/// Made in main.
demo::PrivateBus*& theBus();

/// Runs the event loop until it holds, or the time [ms] is over; whether it holds then.
bool waitUntil(const std::function<bool()>& holds, int milliseconds = 10000);

/// As the radio's, but for people who do not wait.
[[nodiscard]] Timing shortTiming();

[[nodiscard]] KnownSensor known(const QString& address = barSensor);

/// The simulated sensor with these options.
class Air : public demo::SensorBench
{
public:
    explicit Air(const QStringList& options = {});
};

/// What the radio told.
struct Told {
    std::vector<std::pair<QString, sensor::LinkState>> states;
    std::map<QString, sensor::LinkState> state;
    std::vector<std::pair<QString, Trouble>> troubles;
    std::map<QString, TroubleKind> trouble; ///< not over
    std::map<QString, FoundSensor> found;
    std::map<QString, SensorInfo> info;
    std::map<QString, sensor::Health> health;
    std::map<QString, std::vector<motion::Sample>> samples;
    std::vector<sensor::Notifier> notifiers;
    std::vector<sensor::RawPacket> raw;
    bool scanning = false;

    [[nodiscard]] bool streaming(const QString& address = barSensor) const;
    [[nodiscard]] bool hasTold(TroubleKind kind) const;
    [[nodiscard]] bool inTrouble(TroubleKind kind, const QString& address = barSensor) const;
};

/// A radio, and what it tells.
class Watched
{
public:
    explicit Watched(const Timing& timing = shortTiming(), std::unique_ptr<Permission> permission = devicePermission());

    Told told;
    Radio radio; ///< the last member: it ends before what it tells to
};

/// A running set of one sensor, on this thread.
class RunningSet
{
public:
    explicit RunningSet(Radio& radio, const QString& address = barSensor);
    ~RunningSet();

    std::vector<motion::Sample> samples;
    std::vector<motion::Receipt> receipts;
    std::vector<sensor::LinkState> states;
    std::function<void(const motion::Sample&)> onSample = [](const motion::Sample&) {};

    [[nodiscard]] sensor::SampleSource& source() { return *source_; }
    /// Every sample later than the one before.
    [[nodiscard]] bool inOrder() const;

private:
    std::unique_ptr<sensor::SampleSource> source_;
};

} // namespace fleetrung::ble
