// Instants of streamed samples: from the sensor's counter or stamps, else from arrivals, on the phone's clock.
//
// What the radio does: notifications are bunched (5-60 ms) and held up (stalls of 500 ms and more) but never early, so
// the lower envelope of (arrival - sensor time) is the true line; the sensor's clock is off by up to 300 ppm. The map
// phone time = offset + pace x sensor time is fitted to that envelope; while a set runs it is frozen, so that intervals
// within the set are the sensor's own; between sets it follows.
// Without stamps a link younger than 10 s whose packets come within 1.5 % of the interval of connection events, or of a
// multiple, may leave the pace wrong by up to 1 %: a slow beat looks like a slow clock.
// Without counter and stamp the sensor time is the number of samples received times the period, and what was lost shows
// only as a step of the envelope by whole packets. Where packets keep step with the radio's connection events (or come
// slower than these), one that just misses its event makes the same step, so there nothing is counted; nor for packets
// shorter than 5 ms. What was found a second later is set right between sets only: within a set the gap would fall into
// another repetition, so there times stay early by it, and intervals that hold no loss stay right.
#pragma once

#include <cstdint>
#include <memory>
#include <string>

#include "engine/base/error.hpp"

namespace fleetrung::motion
{

/// One sample as it came, without its readings. Same meanings as sensor::RawSample.
struct Tick {
    std::int64_t counter = -1; ///< of samples, unwrapped; -1: none
    double stamp = 0;          ///< s of the sensor's clock; used where hasStamp
    bool hasStamp = false;
    std::int64_t arrival = 0; ///< ns
    int index = 0, count = 1; ///< place in its packet
};

/// How sensor time became phone time; kept with a capture as JSON text. What is counted are ticks: nanoseconds of the
/// stamp, samples of the counter, or samples received and lost, by `by`.
struct ClockFit {
    enum class By : std::uint8_t { Stamp, Counter, Arrival };
    By by = By::Arrival;
    double period = 0;            ///< s of the sensor's clock from tick to tick
    double offset = 0;            ///< s of phone time at tickZero
    double pace = 1;              ///< phone seconds per sensor second
    std::int64_t tickZero = 0;    ///< frozen: the line holds for every tick after this one
    double spread = 0;            ///< s, how far arrivals lie above the line (median)
    std::int64_t arrivalZero = 0; ///< ns: the arrival that is 0 s of phone time here

    /// s of phone time; for a Receipt's counter of a frozen set bit for bit the sample's time.
    [[nodiscard]] double timeOf(std::int64_t tick) const
    {
        return offset + pace * period * static_cast<double>(tick - tickZero);
    }
    bool operator==(const ClockFit&) const = default;
};
[[nodiscard]] std::string clockFitText(const ClockFit& fit);
[[nodiscard]] Expected<ClockFit> parseClockFit(const std::string& json);

class StreamClock
{
public:
    /// `nominalRate` 0: not known. `zero` is the arrival [ns] that is time 0: the same for all sensors of a phone.
    StreamClock(double nominalRate, std::int64_t zero);
    ~StreamClock();
    StreamClock(StreamClock&&) noexcept;
    StreamClock& operator=(StreamClock&&) noexcept;

    /// The instant of the sample [s of phone time], always after the one before; call in order of samples. Allocates
    /// nothing.
    double timeOf(const Tick& tick);
    /// A set begins: the map stays as it is. Where too little has come to know the pace to 0.1 % it settles first (0.5
    /// s at least), then stays.
    void freeze();
    /// The set is over: the map follows again, without a step back in time.
    void release();
    /// The link came back: counter and stamps may begin anew. Frozen or not, the offset is found anew; the pace stays.
    void restart();

    [[nodiscard]] ClockFit fit() const;
    /// Of the latest sample. After a restart ticks go on by what would have come meanwhile, so that one line holds.
    [[nodiscard]] std::int64_t tick() const;
    [[nodiscard]] double rate() const; ///< samples a second of phone time; 0 while not known
    /// Samples missing by steps of stamps, or of the envelope; where there is a counter it knows better: 0.
    [[nodiscard]] std::int64_t lost() const;

private:
    struct State;
    std::unique_ptr<State> state_;
};

} // namespace fleetrung::motion
