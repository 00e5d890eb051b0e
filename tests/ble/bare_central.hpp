// A central with nothing of ours in it: Qt Bluetooth as it is, to see what the simulated sensor looks like from there.
#pragma once

#include <functional>
#include <memory>
#include <vector>

#include <QBluetoothDeviceDiscoveryAgent>
#include <QLowEnergyController>
#include <QLowEnergyService>

namespace fleetrung::ble
{

/// Runs the event loop until `holds` or `milliseconds` are over; what holds then.
bool waitUntil(const std::function<bool()>& holds, int milliseconds = 5000);

class BareCentral
{
public:
    BareCentral();
    ~BareCentral();

    /// Searches until that address is heard, or the time is over.
    bool find(const QString& address, int milliseconds = 4000);
    void searchFor(int milliseconds);
    [[nodiscard]] QList<QBluetoothDeviceInfo> heard() const { return agent_.discoveredDevices(); }

    bool connectTo(const QString& address, int milliseconds = 5000); ///< true once services are known
    QLowEnergyService* open(const QString& uuid); ///< a service with its details; null where it has none
    /// Collects the notifications of one characteristic in `received`.
    bool subscribe(const QString& service, const QString& characteristic);
    void write(const QString& service, const QString& characteristic, const QByteArray& bytes);
    QByteArray read(const QString& service, const QString& characteristic);
    void disconnectFrom();

    [[nodiscard]] QLowEnergyController* controller() { return controller_.get(); }

    std::vector<QByteArray> received;
    int serviceErrors = 0;

private:
    QBluetoothDeviceDiscoveryAgent agent_;
    std::unique_ptr<QLowEnergyController> controller_;
    std::vector<std::unique_ptr<QLowEnergyService>> services_;
};

} // namespace fleetrung::ble
