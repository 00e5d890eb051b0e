// org.bluez.Device1: one thing that advertises. Neighbours are devices with nothing behind them; a sensor (sensor.hpp)
// gives its device attributes. Error names are those of BlueZ 5.66, src/error.h and src/device.c [memory].
#pragma once

#include <functional>
#include <memory>

#include <QObject>
#include <QTimer>

#include "demo/sensor/bluez/gatt_objects.hpp"
#include "demo/sensor/bluez/link_faults.hpp"

namespace fleetrung::demo
{

class Adapter;

struct Identity {
    QString address; ///< "C0:.."
    QString name;    ///< empty: it advertises none
    QStringList services;
    int signal = -60; ///< dBm
};

/// What a device tells its owner.
struct DeviceEvents {
    std::function<void(bool up)> link = [](bool) {};
    std::function<void(const QString&, const QString&, const QByteArray&)> written = [](auto&, auto&, auto&) {};
};

class Device : public QObject, public Object
{
public:
    static constexpr int advertisingPeriod = 200; ///< ms

    Device(ObjectTree& tree, const Adapter& adapter, Identity identity, const std::vector<ServiceLayout>& services,
           DeviceEvents events = {});

    [[nodiscard]] const Identity& identity() const { return identity_; }
    [[nodiscard]] Counts& counts() { return counts_; }
    [[nodiscard]] LinkFaults& faults() { return faults_; }
    [[nodiscard]] GattObjects& attributes() { return attributes_; }
    [[nodiscard]] bool connected() const { return connected_; }

    void advertise(); ///< it is heard once more, if it advertises
    void searchEnded();
    void drop(); ///< the link is lost
    void vanish();
    void comeBack() { present_ = true; }
    void forget(); ///< as the system forgets it: bond, attributes and object
    void connectedFromBefore();
    void clientLeft(const QString& client);

    [[nodiscard]] Interfaces interfaces() const override;
    bool call(const QDBusMessage& message) override;

private:
    void connectCall(const QDBusMessage& message);
    void finishConnect(const QDBusMessage& message);
    void pair(const QDBusMessage& message);
    void setConnected(bool on);
    void setResolved();

    const Adapter& adapter_;
    Identity identity_;
    DeviceEvents events_;
    Counts counts_;
    LinkFaults faults_;
    GattHost host_;
    GattObjects attributes_;
    QTimer resolving_, fading_;
    bool present_ = true, connected_ = false, resolved_ = false, connecting_ = false;
    bool paired_ = false;
    bool kept_ = false;  ///< connected once: the system no longer forgets it by itself
    bool heard_ = false; ///< in this search
    unsigned heardTimes_ = 0;
};

} // namespace fleetrung::demo
