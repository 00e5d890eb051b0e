#include "mobile/views/replay_source.hpp"

#include <algorithm>
#include <limits>
#include <utility>

namespace fleetrung::views
{
namespace
{

constexpr int tick = 20;                // ms between two looks at the clock
constexpr std::size_t mostAtOnce = 400; // samples a look, so that stop() is heard even at full speed

} // namespace

ReplaySource::ReplaySource(motion::Recording recording, std::string name, double speed)
    : recording_(std::move(recording)), name_(std::move(name)), speed_(speed), timer_(this)
{
    connect(&timer_, &QTimer::timeout, this, &ReplaySource::play);
}

void ReplaySource::start(sensor::SourceEvents events)
{
    events_ = std::move(events);
    next_ = 0;
    since_.start();
    timer_.start(speed_ > 0 ? tick : 0);
    events_.stateChanged(sensor::LinkState::Streaming);
}

void ReplaySource::stop()
{
    timer_.stop();
    events_ = {};
}

void ReplaySource::play()
{
    const auto& samples = recording_.samples;
    const double until = speed_ > 0 && !samples.empty()
                             ? samples.front().time + speed_ * static_cast<double>(since_.nsecsElapsed()) * 1e-9
                             : std::numeric_limits<double>::infinity();
    for (std::size_t sent = 0; sent < mostAtOnce && next_ < samples.size() && samples[next_].time <= until; ++sent) {
        const auto receipt = next_ < recording_.receipts.size() ? recording_.receipts[next_] : motion::Receipt{};
        events_.sample(samples[next_++], receipt);
    }
    if (next_ < samples.size())
        return;
    timer_.stop();
    const auto ended = std::exchange(events_, {});
    ended.stateChanged(sensor::LinkState::Idle);
}

} // namespace fleetrung::views
