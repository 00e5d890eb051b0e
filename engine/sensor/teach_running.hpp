// Counters and time stamps of a table: numbers that go up by the same step from packet to packet. Private to
// engine/sensor.
#pragma once

#include <optional>
#include <vector>

#include "engine/sensor/teach_faces.hpp"

namespace fleetrung::sensor::teaching
{

struct Running {
    Place place;
    bool perSample = false; ///< stands in every sample; else once a packet
    double step = 0;        ///< counts from packet to packet, where none is lost
    double wrap = 0;        ///< counts after which it begins at 0 again; 0: never, or by its type
    double tick = 0;        ///< s a count, by the arrivals
    double unevenness = 0;  ///< of the steps, relative (rms)
    double steady = 0;      ///< share of the steps that are whole ones
    int kept = 0;           ///< steps that were seen
    int lost = 0;           ///< packets it says are missing
};

struct RunningNumbers {
    std::optional<Running> counter, stamp;
};

/// `triads` of this table; may be empty. Where it is a counter its step is 1 (of packets) or the samples of a packet.
[[nodiscard]] RunningNumbers findRunning(const Table& table, const std::vector<Triad>& triads);

/// Times of the records by its counter or stamps, where it has some: they know of no bunching and no loss.
void retime(Table& table);

/// Packets a second that the sensor sends, from arrivals alone: also where some were lost.
struct PacketRate {
    double rate = 0;
    double lossShare = 0;
};
[[nodiscard]] PacketRate packetRateOf(const Table& table);

} // namespace fleetrung::sensor::teaching
