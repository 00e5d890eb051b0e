// By which sensor map do the bytes of a sensor make sense?
#pragma once

#include <vector>

#include "engine/sensor/packet.hpp"
#include "engine/sensor/sensor_map.hpp"
#include "engine/sensor/teach.hpp"

namespace fleetrung::views
{

/// The sensor notifies on all that the map reads.
[[nodiscard]] bool applies(const sensor::SensorMap& map, const std::vector<sensor::Notifier>& notifiers);
/// sensor::fitOf for packets whose source is the notifier; 0 where the map does not apply.
[[nodiscard]] double fitOf(const sensor::SensorMap& map, const std::vector<sensor::Notifier>& notifiers,
                           const std::vector<sensor::RawPacket>& packets);

} // namespace fleetrung::views
