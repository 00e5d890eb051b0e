// The map of the simulated sensor where none is given.
#pragma once

#include "engine/sensor/sensor_map.hpp"

namespace fleetrung::demo
{

/// One sample a packet: a 16-bit counter, then three accelerometer (1/2048 g) and three gyroscope (1/16 degree/s)
/// counts, all int16 little-endian; 100 Hz; begins on the byte 1 and stops on the byte 0, written to a second
/// characteristic.
[[nodiscard]] sensor::SensorMap plainMap();

} // namespace fleetrung::demo
