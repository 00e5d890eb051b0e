// Counters and time stamps that wrap, made into numbers that only grow; what came twice, late or out of nowhere is told
// apart from what was lost. Private to engine/sensor.
#pragma once

#include <cstdint>

namespace fleetrung::sensor
{

/// Follows: take it. Late: it came before (or belongs before what came). Leap: so far ahead that it is not believed
/// until the next one agrees: a packet of garbage must not move the counter by years.
enum class Verdict : std::uint8_t { Follows, Late, Leap };

/// Counts steps (samples or packets). A counter that begins anew without a word is taken on from where it stood.
class RunningCounter
{
public:
    /// `wrap`: values of the raw counter before it begins at 0 again. `perStep`: raw counts of one step.
    RunningCounter(std::int64_t wrap, std::int64_t perStep);

    struct Seen {
        Verdict verdict = Verdict::Follows;
        std::int64_t first = 0; ///< the step's number, from 0
        std::int64_t lost = 0;  ///< steps between the last and this
    };
    /// A packet of `steps` steps whose first one says `raw`.
    Seen see(std::int64_t raw, std::int64_t steps, std::int64_t arrival);
    void restart() { *this = RunningCounter(wrap_, perStep_); }
    [[nodiscard]] std::int64_t perStep() const { return perStep_; }

private:
    [[nodiscard]] bool agreesWithArrivals(std::int64_t ahead, std::int64_t arrival) const;

    std::int64_t wrap_, perStep_;
    std::int64_t expected_ = 0; ///< raw
    std::int64_t suspect_ = 0;  ///< raw: what would follow the leap
    std::int64_t next_ = 0;     ///< steps
    std::int64_t firstArrival_ = 0, lastArrival_ = 0;
    bool begun_ = false, suspected_ = false;
};

/// Seconds of the sensor's clock.
class RunningStamp
{
public:
    RunningStamp(std::int64_t wrap, double secondsPerCount);

    struct Seen {
        Verdict verdict = Verdict::Follows;
        double seconds = 0;
        bool same = false; ///< as the one before
    };
    Seen see(std::int64_t raw, std::int64_t arrival);
    void restart() { *this = RunningStamp(wrap_, secondsPerCount_); }

private:
    std::int64_t wrap_;
    double secondsPerCount_;
    std::int64_t last_ = 0, suspect_ = 0; ///< raw
    double seconds_ = 0;
    std::int64_t lastArrival_ = 0;
    bool begun_ = false, suspected_ = false;
};

} // namespace fleetrung::sensor
