#include <array>
#include <numeric>

#include "engine/sensor/packet_decoder.hpp"

namespace fleetrung::sensor
{

std::string_view badPacketName(BadPacket kind)
{
    constexpr std::array<std::string_view, badPacketKinds> names{"empty",         "too short",      "wrong length",
                                                                 "not a number",  "line too long",  "missing column",
                                                                 "counter leaps", "not of this map"};
    return names.at(static_cast<std::size_t>(kind));
}

std::int64_t PacketCounts::badInAll() const
{
    return std::accumulate(bad.begin(), bad.end(), std::int64_t{0}) -
           bad.at(static_cast<std::size_t>(BadPacket::NotOurs));
}

} // namespace fleetrung::sensor
