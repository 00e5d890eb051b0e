// One connection to one sensor, from asking for it to its end. Never used again after that: a retry is a new
// connection, so that no handler of an old one can hear anything. Lives on the radio's thread.
//
// connect -> discover services -> their characteristics -> subscribe -> start writes -> streaming; then, while it
// streams, battery and device information, which may fail or stay unanswered without harm.
//
// Pairs only when a subscription or write that is needed was refused on a link that is up, and the sensor is not
// paired: the Qt of the day does not tell the reason, and a sensor that demands pairing refuses just these. Never
// otherwise.
#pragma once

#include <functional>
#include <memory>
#include <span>
#include <vector>

#include <QBluetoothLocalDevice>
#include <QBluetoothUuid>
#include <QLowEnergyCharacteristic>
#include <QLowEnergyController>
#include <QLowEnergyService>
#include <QObject>
#include <QTimer>

#include "mobile/ble/link_steps.hpp"
#include "mobile/ble/radio.hpp"
#include "mobile/ble/timing.hpp"

namespace fleetrung::ble
{

/// What to connect to, and what to do there.
struct ConnectionPlan {
    QString address, name;
    std::vector<sensor::Notifier> streams; ///< empty: everything that notifies
    std::vector<sensor::CharacteristicWrite> start, stop;

    [[nodiscard]] bool sameAs(const ConnectionPlan& other) const; ///< the same connection serves
};

/// Whether the system keeps a pairing with it. Only asked, never removed: pairings are the user's.
[[nodiscard]] bool isPaired(const QString& address);

class Connection : public QObject
{
public:
    struct Events {
        std::function<void(const std::vector<sensor::Notifier>&)> streaming;
        std::function<void(std::size_t, std::span<const std::uint8_t>, std::int64_t arrival)> packet;
        std::function<void(const SensorInfo&)> info;
        std::function<void(TroubleKind)> ended; ///< the last call, never from inside one of ours
    };

    Connection(ConnectionPlan plan, const Timing& timing, Events events);
    ~Connection() override;

    void open();
    /// Unsubscribes, subscribes and writes the start bytes again.
    void resubscribe();
    /// Stop writes, then disconnects; `ended` follows with this kind.
    void close(TroubleKind kind);

private:
    struct Source {
        QLowEnergyService* service;
        QLowEnergyCharacteristic characteristic;
    };
    enum class Phase { Connecting, Discovering, Subscribing, Streaming, Closing, Ended };

    void watchController();
    void onController(QLowEnergyController::Error error);
    void onServices();
    void discoverNext();
    bool addService(const QBluetoothUuid& uuid, std::function<void()> discovered);
    [[nodiscard]] QLowEnergyService* serviceOf(const QBluetoothUuid& uuid) const;
    [[nodiscard]] bool findSources();
    [[nodiscard]] bool findWrites() const;
    void subscribeNext(std::size_t index);
    void startWrites(std::size_t index);
    void onRefused();
    void onStreaming();
    void onPacket(const QLowEnergyService* service, const QLowEnergyCharacteristic& characteristic,
                  const QByteArray& bytes);

    void readInformation();
    void readBattery();
    void readText(const QBluetoothUuid& characteristic, QString SensorInfo::*where);
    void tellBattery(const QByteArray& value);

    void write(const sensor::CharacteristicWrite& write, LinkSteps::Done done);
    void disconnectNow();
    void end(TroubleKind kind);

    ConnectionPlan plan_;
    Timing timing_;
    Events events_;
    Phase phase_ = Phase::Connecting;
    TroubleKind why_ = TroubleKind::NotFound; ///< what its end will mean
    LinkSteps steps_;
    QTimer deadline_, batteryTimer_;
    std::unique_ptr<QLowEnergyController> controller_;
    std::vector<std::unique_ptr<QLowEnergyService>> services_;
    std::unique_ptr<QBluetoothLocalDevice> pairing_; ///< once asked for
    std::vector<QBluetoothUuid> toDiscover_;
    std::vector<Source> sources_;
    std::vector<Source> subscribed_; ///< the sources, and the battery where it tells by itself
    SensorInfo info_;
};

} // namespace fleetrung::ble
