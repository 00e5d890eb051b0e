#include "engine/sensor/packet_stamps.hpp"

#include <algorithm>
#include <cmath>

namespace fleetrung::sensor
{
namespace
{

constexpr double firstStep = 0.01; // s, before anything is known
constexpr double likeStep = 0.2;   // relative: beyond it samples were lost
constexpr double stepWeight = 0.05;
constexpr int staysAfter = 8; // packets

} // namespace

PacketStamps::PacketStamps(double rate) : step_(rate > 0 ? 1 / rate : firstStep), known_(rate > 0) {}

void PacketStamps::restart()
{
    last_ = std::numeric_limits<double>::quiet_NaN();
    received_ = 0;
}

void PacketStamps::fill(std::span<RawSample> packet)
{
    const auto stamped =
        std::find_if(packet.begin(), packet.end(), [](const RawSample& sample) { return !std::isnan(sample.stamp); });
    if (stamped != packet.end()) {
        learn(*stamped, static_cast<std::size_t>(stamped - packet.begin()));
        for (auto& sample : packet)
            if (std::isnan(sample.stamp))
                sample.stamp = stamped->stamp + (sample.index - stamped->index) * step_;
    }
    received_ += static_cast<std::int64_t>(packet.size());
}

/// By the counter where there is one: it knows what was lost.
void PacketStamps::learn(const RawSample& stamped, std::size_t number)
{
    const auto count = stamped.counter >= 0 ? stamped.counter : received_ + static_cast<std::int64_t>(number);
    const auto samples = count - lastNumber_;
    const double step = (stamped.stamp - last_) / static_cast<double>(samples);
    lastNumber_ = count;
    last_ = stamped.stamp;
    if (!(step > 0) || samples <= 0)
        return;
    if (known_ && std::abs(step - step_) < likeStep * step_) {
        step_ += stepWeight * (step - step_);
        others_ = 0;
    } else if (!known_ || ++others_ > staysAfter) {
        step_ = step;
        known_ = true;
        others_ = 0;
    }
}

} // namespace fleetrung::sensor
