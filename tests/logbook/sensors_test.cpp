// Sensors and maps the device knows.
#include "logbook_helper.hpp"

#include "engine/motion/calibration.hpp"
#include "engine/sensor/sensor_map.hpp"

using namespace fleetrung;
using namespace fleetrung::logbook;
using namespace fleetrung::logbook::test;

namespace
{

store::Sensor barSensor()
{
    store::Sensor sensor;
    sensor.address = "C0:FF:EE:00:00:01";
    sensor.name = "Platform 2";
    sensor.map = sensor::sensorMapText(sensor::includedMaps().front());
    return sensor;
}

} // namespace

TEST_CASE("a sensor kept twice is one row, and one that was forgotten comes back with what is new")
{
    const Folder folder;
    auto logbook = openLogbook(folder);
    const auto id = good(logbook.keepSensor(barSensor()));
    auto again = barSensor();
    again.name = "Platform 3";
    again.placement = "shoe";
    CHECK(good(logbook.keepSensor(again)) == id);
    REQUIRE(good(logbook.sensors()).size() == 1);
    CHECK(good(logbook.sensors())[0].name == "Platform 3");

    good(logbook.forgetSensor(id));
    CHECK(good(logbook.sensors()).empty());
    motion::Calibration calibration;
    calibration.offset.x() = 0.1;
    again.calibration = motion::calibrationText(calibration);
    again.lastUsedUtcSeconds = 1764590400;
    CHECK(good(logbook.keepSensor(again)) == id);
    auto found = good(logbook.sensors()).at(0);
    CHECK(found.calibration == again.calibration);
    CHECK(found.lastUsedUtcSeconds == 1764590400);
    CHECK(found.placement == "shoe");
    found.name = "Platform 1";
    good(logbook.changeSensor(found));
    good(logbook.forgetSensor(id));
    good(logbook.restoreSensor(id));
    CHECK(good(logbook.sensors()).at(0).name == "Platform 1");
    CHECK(good(logbook.verify()).empty());
}

TEST_CASE("a sensor that could not be read again is refused, and nothing is kept of it")
{
    const Folder folder;
    auto logbook = openLogbook(folder);
    auto nameless = barSensor(), unreadable = barSensor(), elsewhere = barSensor(), wrong = barSensor();
    nameless.address.clear();
    unreadable.map = "{}";
    elsewhere.placement = "dog";
    wrong.calibration = R"({"scale":[0,1,1]})";
    for (const auto& sensor : {nameless, unreadable, elsewhere, wrong})
        CHECK_FALSE(logbook.keepSensor(sensor));
    CHECK(good(logbook.sensors()).empty());
}

TEST_CASE("a sensor map is kept under its key, replaced by a newer one, and forgotten")
{
    const Folder folder;
    auto logbook = openLogbook(folder);
    auto map = sensor::includedMaps().front();
    map.key = "garage";
    map.name = "Garage sensor";
    const auto id = good(logbook.keepSensorMap(sensor::sensorMapText(map)));
    map.name = "Garage sensor, new firmware";
    CHECK(good(logbook.keepSensorMap(sensor::sensorMapText(map))) == id);
    const auto maps = good(logbook.sensorMaps());
    REQUIRE(maps.size() == 1);
    CHECK(maps[0].key == "garage");
    CHECK(maps[0].name == map.name);
    CHECK(good(sensor::parseSensorMap(maps[0].text)).name == map.name);
    CHECK(codeOf(logbook.keepSensorMap("{\"key\": 3}")) == Code::InvalidInput);
    good(logbook.forgetSensorMap(id));
    CHECK(good(logbook.sensorMaps()).empty());
}
