#include "demo/sensor/bluez/sensor.hpp"

#include <cmath>

#include "engine/sensor/gatt.hpp"

namespace fleetrung::demo
{
namespace
{

bool isOf(const sensor::CharacteristicWrite& write, const QString& characteristic, const QByteArray& bytes)
{
    return QString::fromStdString(write.characteristic) == characteristic && bytesOf(write.bytes) == bytes;
}

} // namespace

Sensor::Sensor(ObjectTree& tree, const Adapter& adapter, SensorPlan plan, std::unique_ptr<Movement> movement)
    : plan_(std::move(plan)), movement_(std::move(movement)), encoder_(plan_.map, plan_.payload),
      packets_([this](const auto& packet) { deliver(packet); }, plan_.seed),
      device_(tree, adapter, plan_.identity, gattLayout(plan_.map, plan_.battery),
              {[this](bool up) { linkChanged(up); },
               [this](const auto& service, const auto& characteristic, const auto& bytes) {
                   written(service, characteristic, bytes);
               }})
{
    ticker_.setTimerType(Qt::PreciseTimer);
    connect(&ticker_, &QTimer::timeout, this, [this] { tick(); });
    ticker_.start(3);
    clock_.start();
}

/// It streams after the last start write of its map, and until a stop write or the end of the link.
void Sensor::written(const QString& /*service*/, const QString& characteristic, const QByteArray& bytes)
{
    for (std::size_t i = 0; i < plan_.map.start.size(); ++i) {
        if (isOf(plan_.map.start[i], characteristic, bytes)) {
            begun_.insert(i);
        }
    }
    for (const auto& write : plan_.map.stop) {
        if (isOf(write, characteristic, bytes)) {
            begun_.clear();
        }
    }
}

void Sensor::linkChanged(bool up)
{
    begun_.clear();
    packets_.linkChanged(up);
}

bool Sensor::streaming()
{
    return device_.connected() && begun_.size() == plan_.map.start.size();
}

void Sensor::tick()
{
    const double seconds = static_cast<double>(clock_.nsecsElapsed()) * 1e-9;
    const auto due = static_cast<qint64>(seconds * plan_.rate * (1 + plan_.clockSkew));
    std::vector<motion::Sample> samples;
    for (; samples_ < due; ++samples_) {
        samples.push_back(movement_->next());
        samples.back().time = static_cast<double>(samples_) / plan_.rate;
    }
    if (!streaming()) {
        encoder_.skip(samples.size());
        return;
    }
    for (auto& packet : encoder_.encode(samples)) {
        packets_.pass(std::move(packet));
    }
}

void Sensor::deliver(const sensor::RawPacket& packet)
{
    const auto& stream = plan_.map.streams.at(packet.source);
    auto* const attribute = device_.attributes().find(QString::fromStdString(stream.service),
                                                      QString::fromStdString(stream.characteristic));
    const auto bytes = bytesOf(packet.bytes);
    if (!device_.connected() || !attribute->hasListeners()) {
        return;
    }
    attribute->notify(bytes);
    ++device_.counts().notifications;
    if (sent_.size() == mostKept) {
        sent_.erase(sent_.begin(), sent_.begin() + mostKept / 2);
    }
    sent_.push_back({attribute->uuid(), bytes});
}

void Sensor::setBattery(int percent)
{
    namespace gatt = sensor::gatt;
    device_.attributes()
        .find(QString::fromStdString(gatt::uuidOf(gatt::batteryService)),
              QString::fromStdString(gatt::uuidOf(gatt::batteryLevel)))
        ->notify(QByteArray(1, static_cast<char>(percent)));
}

void Sensor::restart()
{
    device_.drop();
    encoder_.restart();
}

} // namespace fleetrung::demo
