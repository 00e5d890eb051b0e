// The whole simulated air: one adapter, the sensors, their neighbours.
#pragma once

#include <memory>
#include <vector>

#include <QDBusServiceWatcher>

#include "demo/sensor/bluez/adapter.hpp"
#include "demo/sensor/bluez/sensor.hpp"

namespace fleetrung::demo
{

class Simulation : public QObject
{
public:
    explicit Simulation(QDBusConnection bus);

    Sensor& addSensor(SensorPlan plan, std::unique_ptr<Movement> movement);
    /// Things that advertise and are no sensor: without name, without services, far away.
    void addNeighbours();

    [[nodiscard]] Adapter& adapter() { return adapter_; }
    /// Null where there is none of that number (from 0).
    [[nodiscard]] Sensor* sensor(std::size_t number);

private:
    ObjectTree tree_;
    Managers managers_;
    std::vector<Device*> devices_;
    Adapter adapter_;
    std::vector<std::unique_ptr<Sensor>> sensors_;
    std::vector<std::unique_ptr<Device>> neighbours_;
    QDBusServiceWatcher clients_;
};

} // namespace fleetrung::demo
