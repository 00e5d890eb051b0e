#include "engine/sensor/stream_health.hpp"

#include <algorithm>
#include <cmath>
#include <limits>

namespace fleetrung::sensor
{
namespace
{

constexpr std::int64_t second = 1'000'000'000; // ns
constexpr double nanosecond = 1e-9;
constexpr double shortestLateness = 1e-4; // s, the first class
constexpr double growth = 1.2;            // of the classes: the last begins at 9.7 s
constexpr double percentile = 0.95;

double latenessOf(std::size_t index)
{
    return shortestLateness * std::pow(growth, static_cast<double>(index));
}

} // namespace

StreamHealth::Block& StreamHealth::blockOf(std::int64_t arrival)
{
    const auto number = std::max<std::int64_t>((arrival - first_) / second, 0);
    Block& block = blocks_[static_cast<std::size_t>(number) % blocks_.size()];
    if (block.second != number) {
        block = {};
        block.second = number;
    }
    return block;
}

void StreamHealth::notification(std::int64_t arrival, int samples, std::int64_t lost)
{
    if (first_ < 0)
        first_ = arrival;
    Block& block = blockOf(arrival);
    if (last_ >= 0 && !afterGap_)
        block.longest = std::max(block.longest, arrival - last_);
    afterGap_ = false;
    block.samples += samples;
    block.lost += lost;
    samples_ += samples;
    last_ = arrival;
}

void StreamHealth::late(double seconds)
{
    if (last_ < 0)
        return;
    const double index = seconds > shortestLateness ? std::log(seconds / shortestLateness) / std::log(growth) : 0;
    auto& times = blockOf(last_).lateness[std::min(static_cast<std::size_t>(index), classes - 1)];
    if (times < std::numeric_limits<std::uint16_t>::max())
        ++times;
}

void StreamHealth::gap()
{
    ++gaps_;
    afterGap_ = true;
}

Health StreamHealth::at(std::int64_t now, double expectedRate) const
{
    Health health;
    health.expectedRate = expectedRate;
    health.samples = samples_;
    health.gaps = gaps_;
    if (last_ < 0)
        return health;
    health.silence = static_cast<double>(std::max<std::int64_t>(now - last_, 0)) * nanosecond;
    const auto current = std::max<std::int64_t>((now - first_) / second, 0);
    const auto oldest = std::max<std::int64_t>(current - static_cast<std::int64_t>(kept), 0);
    std::int64_t samples = 0, lost = 0, longest = 0, packets = 0;
    std::array<std::int64_t, classes> lateness{};
    for (const Block& block : blocks_) {
        if (block.second < oldest || block.second > current)
            continue;
        samples += block.samples;
        lost += block.lost;
        longest = std::max(longest, block.longest);
        for (std::size_t i = 0; i < classes; ++i) {
            lateness[i] += block.lateness[i];
            packets += block.lateness[i];
        }
    }
    const double time = static_cast<double>(now - first_ - oldest * second) * nanosecond;
    health.rate = time > 0 ? static_cast<double>(samples) / time : 0;
    health.lossShare = samples + lost > 0 ? static_cast<double>(lost) / static_cast<double>(samples + lost) : 0;
    health.longestStall = static_cast<double>(longest) * nanosecond;
    std::int64_t below = 0;
    for (std::size_t i = 0; i < classes && packets > 0; ++i) {
        below += lateness[i];
        if (static_cast<double>(below) >= percentile * static_cast<double>(packets)) {
            health.jitter = latenessOf(i);
            break;
        }
    }
    return health;
}

} // namespace fleetrung::sensor
