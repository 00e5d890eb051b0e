// The text of sensor_map.schema.json and of maps/*.json, put into the library when it is built. Private to
// engine/sensor and its tests.
#pragma once

#include <span>
#include <string_view>

namespace fleetrung::sensor
{

struct MapFile {
    std::string_view name; ///< without .json
    std::string_view text;
};

[[nodiscard]] std::span<const MapFile> mapFiles();

} // namespace fleetrung::sensor
