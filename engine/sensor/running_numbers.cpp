#include "engine/sensor/running_numbers.hpp"

#include <algorithm>

namespace fleetrung::sensor
{
namespace
{

// Starting values of this project: a radio repeats at most what lies in its queues, and a link that lost thousands of
// samples in a row would have been torn down.
constexpr std::int64_t lateSteps = 256;
constexpr std::int64_t leapSteps = 2000;
constexpr std::int64_t agreeingSteps = 64; ///< how closely the next one must follow a leap to confirm it
constexpr double mostLost = 1e9;
constexpr double lateSeconds = 2, leapSeconds = 2;
constexpr double nanosecond = 1e-9;

std::int64_t remainder(std::int64_t value, std::int64_t wrap)
{
    const auto rest = value % wrap;
    return rest < 0 ? rest + wrap : rest;
}

} // namespace

RunningCounter::RunningCounter(std::int64_t wrap, std::int64_t perStep)
    : wrap_(std::max<std::int64_t>(wrap, 1)), perStep_(std::max<std::int64_t>(perStep, 1))
{
}

RunningCounter::Seen RunningCounter::see(std::int64_t raw, std::int64_t steps, std::int64_t arrival)
{
    raw = remainder(raw, wrap_);
    if (!begun_) {
        begun_ = true;
        expected_ = raw;
        firstArrival_ = lastArrival_ = arrival;
    }
    const auto ahead = remainder(raw - expected_, wrap_);
    if (ahead >= wrap_ - std::min(wrap_ / 4, lateSteps * perStep_))
        return {Verdict::Late, 0, 0};
    auto lost = (ahead + perStep_ / 2) / perStep_;
    const auto following = remainder(raw + steps * perStep_, wrap_);
    if (lost > leapSteps) {
        if (!suspected_ || remainder(raw - suspect_, wrap_) > agreeingSteps * perStep_) {
            suspected_ = true;
            suspect_ = following;
            return {Verdict::Leap, 0, 0};
        }
        if (!agreesWithArrivals(lost, arrival))
            lost = 0;
    }
    suspected_ = false;
    expected_ = following;
    lastArrival_ = arrival;
    const auto first = next_ + lost;
    next_ = first + steps;
    return {Verdict::Follows, first, lost};
}

bool RunningCounter::agreesWithArrivals(std::int64_t ahead, std::int64_t arrival) const
{
    const double before = static_cast<double>(lastArrival_ - firstArrival_) * nanosecond;
    const double since = static_cast<double>(arrival - lastArrival_) * nanosecond;
    if (before < 1)
        return false;
    const double expected = static_cast<double>(next_) / before * since;
    const auto said = static_cast<double>(ahead);
    return said > expected / 2 && said < expected * 2 && said < mostLost;
}

RunningStamp::RunningStamp(std::int64_t wrap, double secondsPerCount)
    : wrap_(std::max<std::int64_t>(wrap, 1)), secondsPerCount_(secondsPerCount)
{
}

RunningStamp::Seen RunningStamp::see(std::int64_t raw, std::int64_t arrival)
{
    raw = remainder(raw, wrap_);
    if (!begun_) {
        begun_ = true;
        last_ = raw;
        lastArrival_ = arrival;
        seconds_ = static_cast<double>(raw) * secondsPerCount_;
    }
    const auto secondsOf = [&](std::int64_t counts) { return static_cast<double>(counts) * secondsPerCount_; };
    const auto ahead = remainder(raw - last_, wrap_);
    const double late = std::min(secondsOf(wrap_) / 4, lateSeconds);
    if (ahead > 0 && secondsOf(wrap_ - ahead) <= late)
        return {Verdict::Late, 0, false};
    const double elapsed = std::max(0.0, static_cast<double>(arrival - lastArrival_) * nanosecond);
    double step = secondsOf(ahead);
    if (step > leapSeconds + 2 * elapsed) {
        if (!suspected_ || secondsOf(remainder(raw - suspect_, wrap_)) > leapSeconds) {
            suspected_ = true;
            suspect_ = raw;
            return {Verdict::Leap, 0, false};
        }
        step = elapsed; // the sensor's clock began anew
    }
    suspected_ = false;
    last_ = raw;
    lastArrival_ = arrival;
    seconds_ += step;
    return {Verdict::Follows, seconds_, ahead == 0};
}

} // namespace fleetrung::sensor
