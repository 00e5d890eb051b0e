#include "demo/sensor/bluez/plain_map.hpp"

#include <numbers>

namespace fleetrung::demo
{

sensor::SensorMap plainMap()
{
    using sensor::Channel;
    using sensor::NumberType;
    const std::string service = "3f5a0001-61c4-4c1e-9b0d-7d2e8c64a510";
    const std::string data = "3f5a0002-61c4-4c1e-9b0d-7d2e8c64a510";
    const std::string orders = "3f5a0003-61c4-4c1e-9b0d-7d2e8c64a510";
    sensor::SensorMap map;
    map.key = "plain-counts";
    map.name = "Plain counts";
    map.start = {{service, orders, {1}, true}};
    map.stop = {{service, orders, {0}, true}};
    auto& stream = map.streams.emplace_back();
    stream.service = service;
    stream.characteristic = data;
    stream.rate = 100;
    stream.binary.length = 14;
    stream.binary.packetFields = {{Channel::Counter, NumberType::UInt16}};
    stream.binary.firstBit = 16;
    stream.binary.sampleBits = 96;
    const double force = 9.80665 / 2048;
    const double turning = std::numbers::pi / 180 / 16;
    for (int axis = 0; axis < 6; ++axis) {
        auto& field = stream.binary.sampleFields.emplace_back();
        field.channel = static_cast<Channel>(axis);
        field.bit = 16 * axis;
        field.scale = axis < 3 ? force : turning;
    }
    return map;
}

} // namespace fleetrung::demo
