// Sensors and sensor maps that this device knows.
#include <algorithm>
#include <array>

#include "engine/motion/calibration.hpp"
#include "engine/sensor/sensor_map.hpp"
#include "mobile/logbook/failure.hpp"
#include "mobile/logbook/logbook.hpp"

namespace fleetrung::logbook
{
namespace
{

constexpr std::array<std::string_view, 3> placements{"bar", "shoe", "waist"};

Expected<void> check(const store::Sensor& sensor)
{
    if (sensor.address.empty())
        return fail(Code::InvalidArgument, "address", "a sensor needs the address at which it was found");
    if (std::ranges::find(placements, std::string_view(sensor.placement)) == placements.end())
        return fail(Code::InvalidArgument, "placement", "choose bar, shoe or waist");
    if (const auto map = sensor::parseSensorMap(sensor.map); !map)
        return failure(map);
    if (sensor.calibration.empty())
        return {};
    return outcome(motion::parseCalibration(sensor.calibration));
}

/// Inserts the row, or makes the one of that id like it and takes its mark off.
template <class R> Expected<Identifier> keep(store::Store& store, const R& row)
{
    const auto kept = store.inTransaction([&]() -> Expected<void> {
        const auto added = store.insert(row);
        if (!added || *added)
            return outcome(added);
        if (auto changed = store.update(row); !changed)
            return changed;
        const auto there = store.template find<R>(row.id);
        return there && there->deleted ? store.template setDeleted<R>(row.id, false) : outcome(there);
    });
    if (!kept)
        return failure(kept);
    return row.id;
}

} // namespace

Expected<std::vector<store::Sensor>> Logbook::sensors() const
{
    return store_->list<store::Sensor>();
}

Expected<Identifier> Logbook::keepSensor(store::Sensor sensor)
{
    if (auto checked = check(sensor); !checked)
        return failure(checked);
    sensor.id = hashIdentifier(std::array<std::string_view, 2>{"sensor", sensor.address});
    return keep(*store_, sensor);
}

Expected<void> Logbook::changeSensor(const store::Sensor& sensor)
{
    if (auto checked = check(sensor); !checked)
        return checked;
    return store_->update(sensor);
}

Expected<void> Logbook::forgetSensor(const Identifier& id)
{
    return store_->setDeleted<store::Sensor>(id, true);
}

Expected<void> Logbook::restoreSensor(const Identifier& id)
{
    return store_->setDeleted<store::Sensor>(id, false);
}

Expected<std::vector<store::SensorMap>> Logbook::sensorMaps() const
{
    return store_->list<store::SensorMap>();
}

Expected<Identifier> Logbook::keepSensorMap(const std::string& text)
{
    const auto map = sensor::parseSensorMap(text);
    if (!map)
        return failure(map);
    store::SensorMap row;
    row.id = hashIdentifier(std::array<std::string_view, 2>{"sensor-map", map->key});
    row.key = map->key;
    row.name = map->name;
    row.text = text;
    return keep(*store_, row);
}

Expected<void> Logbook::forgetSensorMap(const Identifier& id)
{
    return store_->setDeleted<store::SensorMap>(id, true);
}

} // namespace fleetrung::logbook
