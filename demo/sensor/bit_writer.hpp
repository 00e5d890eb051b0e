// One number into the bits of a packet.
#pragma once

#include <cstdint>
#include <span>

#include "engine/sensor/sensor_map.hpp"

namespace fleetrung::demo
{

/// A reading as the counts of a type: rounded and clipped at the end of its range; of floats the value itself.
/// What lies outside the packet is left out.
void writeReading(std::span<std::uint8_t> packet, const sensor::Field& field, int bit, double counts);

/// A number that only goes up (counter, time stamp): whole, and from its type's end it begins at 0 again.
void writeRunning(std::span<std::uint8_t> packet, const sensor::Field& field, int bit, double counts);

} // namespace fleetrung::demo
