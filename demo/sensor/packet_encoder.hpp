// The other direction of a sensor map: samples to the notifications that a sensor of that map would send. Invented
// sensors only; tests and the simulated sensor share it.
#pragma once

#include <cstdint>
#include <span>
#include <vector>

#include "engine/motion/sample.hpp"
#include "engine/sensor/packet.hpp"
#include "engine/sensor/sensor_map.hpp"

namespace fleetrung::demo
{

/// Encodes a recording by a map, packet by packet. Readings are rounded to counts and clipped at the end of the type's
/// range. Counter and stamp go on from call to call.
class PacketEncoder
{
public:
    explicit PacketEncoder(const sensor::SensorMap& map, int payload = 244); ///< bytes a notification may hold

    /// All packets that these samples complete, in order; `RawPacket::arrival` is the sensor time of the packet's last
    /// sample [ns]: the radio adds its lateness. A last packet that is not full waits for the next call.
    std::vector<sensor::RawPacket> encode(std::span<const motion::Sample> samples);
    /// Samples that never leave the sensor: the counter goes on.
    void skip(std::size_t samples);
    /// Switched off and on: counter and stamp begin anew.
    void restart();

private:
    sensor::SensorMap map_;
    int payload_;
    std::vector<motion::Sample> waiting_;
    std::int64_t samples_ = 0, packets_ = 0;
    double first_ = 0;
    bool begun_ = false;
};

} // namespace fleetrung::demo
