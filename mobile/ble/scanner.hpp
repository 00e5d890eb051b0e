// Looks for Bluetooth Low Energy devices as long as anybody wants it: the user's search, or links that wait for their
// sensor. Lives on the radio's thread.
#pragma once

#include <functional>
#include <map>
#include <memory>
#include <optional>
#include <set>

#include <QBluetoothDeviceDiscoveryAgent>
#include <QBluetoothDeviceInfo>
#include <QElapsedTimer>
#include <QObject>
#include <QTimer>

#include "mobile/ble/radio.hpp"
#include "mobile/ble/timing.hpp"

namespace fleetrung::ble
{

class Scanner : public QObject
{
public:
    struct Events {
        std::function<void(const FoundSensor&)> found; ///< while the user searches
        std::function<void(const QString&)> sighted;   ///< this address was heard just now
        std::function<void(bool)> userScan;            ///< the user's search began or ended
        std::function<void(TroubleKind)> trouble;      ///< why it cannot search; it keeps trying
        std::function<void()> troubleOver;
    };

    Scanner(const Timing& timing, Events events);
    ~Scanner() override;

    void userWants(bool scan);
    void linkWants(const QString& address, bool scan);
    [[nodiscard]] bool inTrouble() const { return trouble_.has_value(); }

private:
    struct Told {
        FoundSensor sensor;
        QElapsedTimer since;
    };

    void settle();
    void begin();
    void makeAgent();
    void onDevice(const QBluetoothDeviceInfo& device);
    void onError(QBluetoothDeviceDiscoveryAgent::Error error);
    void setTrouble(std::optional<TroubleKind> trouble);
    void setUserScan(bool running);

    Timing timing_;
    Events events_;
    std::unique_ptr<QBluetoothDeviceDiscoveryAgent> agent_;
    QTimer retry_, anew_;
    std::set<QString> links_;
    bool user_ = false, userScan_ = false, starting_ = false;
    std::optional<TroubleKind> trouble_;
    std::map<QString, Told> told_;
};

/// The address by which this system knows the device.
[[nodiscard]] QString addressOf(const QBluetoothDeviceInfo& device);
/// What a connection is asked for with.
[[nodiscard]] QBluetoothDeviceInfo deviceOf(const QString& address, const QString& name);

} // namespace fleetrung::ble
