// One sensor's stream from notification to sample: decoding, merging of two characteristics, clock, calibration,
// health. Radio and tests go through this one class; it reads no clock (arrivals come in). A stored capture holds what
// it made, times, receipts and clock fit, and is streamed again from there (SampleSource).
#pragma once

#include <memory>
#include <span>
#include <string>

#include "engine/motion/calibration.hpp"
#include "engine/motion/stream_clock.hpp"
#include "engine/sensor/packet_decoder.hpp"
#include "engine/sensor/sample_source.hpp"

namespace fleetrung::sensor
{

/// How well the stream comes in; over the last 10 s but for the totals.
struct Health {
    double rate = 0;          ///< samples per second
    double expectedRate = 0;  ///< of the map, else of the clock's fit; 0 while not known
    double lossShare = 0;     ///< of samples, by the counter; without one by steps of the clock
    double jitter = 0;        ///< s, 95th percentile of the arrivals' lateness
    double longestStall = 0;  ///< s between two notifications
    double silence = 0;       ///< s since the last notification
    std::int64_t samples = 0; ///< since the start
    std::int64_t badPackets = 0;
    std::optional<BadPacket> lastBad;
    int gaps = 0; ///< times the link was lost since the start
};

/// A sample and how it came.
struct StreamSample {
    motion::Sample sample; ///< time: s of phone time (ClockFit), strictly increasing; calibrated
    motion::Receipt receipt;
};

class Stream
{
public:
    /// `zero`: the arrival [ns] that is time 0.
    Stream(const SensorMap& map, const motion::Calibration& calibration, std::int64_t zero);
    ~Stream();
    Stream(Stream&&) noexcept;
    Stream& operator=(Stream&&) noexcept;

    /// Samples that became ready with this notification; valid until the next call. Allocates nothing.
    std::span<const StreamSample> add(std::size_t stream, std::span<const std::uint8_t> bytes, std::int64_t arrival);

    void setBegins(); ///< freezes the clock
    void setEnds();
    void linkLost(); ///< counters may begin anew; counts a gap
    void calibrate(const motion::Calibration& calibration);

    [[nodiscard]] Health health(std::int64_t now) const;
    [[nodiscard]] motion::ClockFit fit() const;
    [[nodiscard]] const motion::Calibration& calibration() const; ///< with the gyroscope's latest bias

private:
    struct State;
    std::unique_ptr<State> state_;
};

} // namespace fleetrung::sensor
