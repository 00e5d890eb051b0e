// Any text as a sensor map: read or refused by name; what is read says the same when it is written and read again.
#include <string_view>

#include "engine/sensor/link_capacity.hpp"
#include "engine/sensor/packet_decoder.hpp"
#include "engine/sensor/sensor_map.hpp"
#include "tests/fuzz/byte_source.hpp"

using namespace fleetrung;

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    const std::string_view text(reinterpret_cast<const char*>(data), size);
    const auto map = sensor::parseSensorMap(text);
    if (!map) {
        fuzz::require(!map.error().message.empty());
        return 0;
    }
    fuzz::require(!sensor::checkSensorMap(*map));
    const auto written = sensor::sensorMapText(*map);
    const auto again = sensor::parseSensorMap(written);
    fuzz::require(again && again->streams == map->streams && again->start == map->start && again->stop == map->stop);
    fuzz::require(sensor::sensorMapText(*again) == written);
    sensor::PacketDecoder decoder(*map);
    for (std::size_t i = 0; i < map->streams.size(); ++i)
        (void)decoder.decode(i, {data, std::min<std::size_t>(size, 512)}, 0);
    (void)sensor::planLink(*map, {}, 200);
    return 0;
}
