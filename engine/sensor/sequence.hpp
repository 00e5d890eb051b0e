// From the counter and stamp of a packet to those of each sample: unwrapped, with what was lost counted and what came
// twice left out. Private to engine/sensor.
#pragma once

#include <cstdint>
#include <limits>
#include <optional>
#include <span>

#include "engine/sensor/packet.hpp"
#include "engine/sensor/packet_decoder.hpp"
#include "engine/sensor/running_numbers.hpp"

namespace fleetrung::sensor
{

/// Raw counts of a packet, or of one of its samples.
struct Ticks {
    std::optional<std::int64_t> counter;
    std::optional<std::int64_t> stamp;
    double delta = std::numeric_limits<double>::quiet_NaN(); ///< s after the packet's stamp
};

/// The raw counter (nothing where it is no whole number of up to 53 bits).
[[nodiscard]] std::optional<std::int64_t> counterCounts(double counts);
/// The raw stamp of a type with decimals, in ns.
[[nodiscard]] std::optional<std::int64_t> stampNanoseconds(double seconds);

class Sequence
{
public:
    explicit Sequence(const StreamForm& form);

    /// Gives the samples of one packet their counters and stamps and moves those to keep to the front; how many.
    /// `again`: the packet has the very bytes of the one before.
    std::size_t place(std::span<RawSample> samples, const Ticks& packet, std::span<const Ticks> each, bool again,
                      PacketCounts& counts);
    void restart();

private:
    Verdict countPacket(std::span<RawSample> samples, const Ticks& packet, PacketCounts& counts);
    Verdict stampPacket(std::span<RawSample> samples, const Ticks& packet, std::span<const Ticks> each, bool again);
    Verdict placeSample(RawSample& sample, const Ticks& own, PacketCounts& counts);

    Counts counts_;
    StampOf stampOf_;
    RunningCounter counter_;
    RunningStamp stamp_;
    std::int64_t nextSample_ = 0, samplesOfLast_ = 0; ///< of a counter of packets
};

} // namespace fleetrung::sensor
