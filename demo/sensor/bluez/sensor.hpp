// A simulated sensor: a device whose attributes stream a movement as its map says.
#pragma once

#include <memory>
#include <set>

#include <QElapsedTimer>

#include "demo/sensor/bluez/device.hpp"
#include "demo/sensor/bluez/movement.hpp"
#include "demo/sensor/bluez/packet_faults.hpp"
#include "demo/sensor/packet_encoder.hpp"

namespace fleetrung::demo
{

struct SensorPlan {
    Identity identity;
    sensor::SensorMap map;
    double rate = 100;      ///< samples per second
    double clockSkew = 0;   ///< relative: 100e-6 = the sensor's clock runs 100 ppm fast
    int payload = 244;      ///< bytes a notification may hold
    int battery = 80;       ///< percent
    std::uint64_t seed = 1; ///< of the packet faults
};

/// One notification as it went out.
struct SentPacket {
    QString characteristic;
    QByteArray bytes;
};

class Sensor : public QObject
{
public:
    Sensor(ObjectTree& tree, const Adapter& adapter, SensorPlan plan, std::unique_ptr<Movement> movement);

    [[nodiscard]] Device& device() { return device_; }
    [[nodiscard]] PacketFaults& packets() { return packets_; }
    [[nodiscard]] Movement& movement() { return *movement_; }
    void setBattery(int percent);
    void restart(); ///< as after switching it off and on: counter and stamp begin anew
    /// The latest notifications, at most `mostKept`.
    [[nodiscard]] const std::vector<SentPacket>& sent() const { return sent_; }

private:
    static constexpr std::size_t mostKept = 100000;

    void written(const QString& service, const QString& characteristic, const QByteArray& bytes);
    void linkChanged(bool up);
    void tick();
    [[nodiscard]] bool streaming();
    void deliver(const sensor::RawPacket& packet);

    SensorPlan plan_;
    std::unique_ptr<Movement> movement_;
    PacketEncoder encoder_;
    PacketFaults packets_;
    Device device_;
    QTimer ticker_;
    QElapsedTimer clock_;
    qint64 samples_ = 0;          ///< since it was made
    std::set<std::size_t> begun_; ///< start writes that have come
    std::vector<SentPacket> sent_;
};

} // namespace fleetrung::demo
