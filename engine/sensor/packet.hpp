// What comes off the air, before and after decoding.
#pragma once

#include <array>
#include <cstddef>
#include <cstdint>
#include <limits>
#include <span>
#include <vector>

namespace fleetrung::sensor
{

/// One notification as it came. `source` is the index of a stream of the map (teaching: of the notifier).
struct RawPacket {
    std::size_t source = 0;
    std::int64_t arrival = 0; ///< ns of a clock that never steps back
    std::vector<std::uint8_t> bytes;
};

/// One sample of one stream, in the sensor's own axes, scaled by the map, not calibrated. What the stream does not
/// carry is NaN.
struct RawSample {
    std::array<double, 3> specificForce; ///< m/s2
    std::array<double, 3> angularRate;   ///< rad/s
    std::int64_t counter = -1; ///< of samples, unwrapped, from 0 at the first packet after start or restart; -1: none
    double stamp = std::numeric_limits<double>::quiet_NaN(); ///< s of the sensor's clock, unwrapped; NaN: none
    std::int64_t arrival = 0;                                ///< ns, of its notification
    std::uint16_t index = 0, count = 1;                      ///< place in its packet, and samples of that packet
};

} // namespace fleetrung::sensor
