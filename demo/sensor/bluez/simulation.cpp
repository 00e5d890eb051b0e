#include "demo/sensor/bluez/simulation.hpp"

#include "engine/sensor/gatt.hpp"

namespace fleetrung::demo
{

Simulation::Simulation(QDBusConnection bus)
    : tree_(bus), managers_(tree_), adapter_(tree_, devices_),
      clients_("*", bus, QDBusServiceWatcher::WatchForUnregistration)
{
    managers_.show();
    adapter_.show();
    // The daemon of a real system watches its clients: who leaves the bus neither searches nor listens any more. The
    // link itself stays up.
    connect(&clients_, &QDBusServiceWatcher::serviceUnregistered, this, [this](const QString& client) {
        adapter_.clientLeft(client);
        for (auto* device : devices_) {
            device->clientLeft(client);
        }
    });
}

Sensor& Simulation::addSensor(SensorPlan plan, std::unique_ptr<Movement> movement)
{
    auto& made =
        *sensors_.emplace_back(std::make_unique<Sensor>(tree_, adapter_, std::move(plan), std::move(movement)));
    devices_.push_back(&made.device());
    return made;
}

void Simulation::addNeighbours()
{
    const auto battery = QString::fromStdString(sensor::gatt::uuidOf(sensor::gatt::batteryService));
    for (const Identity& identity :
         {Identity{"4A:10:20:30:40:01", "", {}, -88}, Identity{"4A:10:20:30:40:02", "", {battery}, -71},
          Identity{"4A:10:20:30:40:03", "Kitchen scale", {}, -79},
          Identity{"4A:10:20:30:40:04", "Door", {battery}, -93}}) {
        devices_.push_back(
            neighbours_.emplace_back(std::make_unique<Device>(tree_, adapter_, identity, std::vector<ServiceLayout>{}))
                .get());
    }
}

Sensor* Simulation::sensor(std::size_t number)
{
    return number < sensors_.size() ? sensors_[number].get() : nullptr;
}

} // namespace fleetrung::demo
