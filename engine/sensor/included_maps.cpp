#include "engine/sensor/map_files.hpp"
#include "engine/sensor/sensor_map.hpp"

namespace fleetrung::sensor
{

const std::vector<SensorMap>& includedMaps()
{
    // Built once and never changed; a test reads every file, so none is missing here.
    static const std::vector<SensorMap> maps = [] {
        std::vector<SensorMap> all;
        for (const auto& file : mapFiles())
            if (auto map = parseSensorMap(file.text))
                all.push_back(*std::move(map));
        return all;
    }();
    return maps;
}

} // namespace fleetrung::sensor
