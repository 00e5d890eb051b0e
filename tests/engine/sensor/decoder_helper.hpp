// Bytes in, samples out, for the tests of decoding.
#pragma once

#include <string_view>
#include <vector>

#include "engine/sensor/packet_decoder.hpp"

namespace fleetrung::sensor::forms
{

using Bytes = std::vector<std::uint8_t>;

inline Bytes bytesOf(std::string_view text)
{
    return {text.begin(), text.end()};
}

inline std::vector<RawSample> decodeAll(PacketDecoder& decoder, const std::vector<Bytes>& packets)
{
    std::vector<RawSample> all;
    std::int64_t arrival = 0;
    for (const auto& packet : packets) {
        const auto fresh = decoder.decode(0, packet, arrival += 10'000'000);
        all.insert(all.end(), fresh.begin(), fresh.end());
    }
    return all;
}

inline std::int64_t bad(const PacketDecoder& decoder, BadPacket kind)
{
    return decoder.counts(0).bad.at(static_cast<std::size_t>(kind));
}

} // namespace fleetrung::sensor::forms
