#include "mobile/ble/stream_feed.hpp"

#include <algorithm>
#include <limits>
#include <utility>

#include "engine/sensor/gatt.hpp"
#include "engine/sensor/link_capacity.hpp"

namespace fleetrung::ble
{
namespace
{

constexpr int checksBeforeUnreadable = 3;
constexpr double intervalAskedFor = 0.015; // s
constexpr double commonInterval = 0.030;   // s
constexpr double muchLoss = 0.02;

/// As the sensor sent it: the inverse of Calibration::apply.
motion::Sample uncalibrated(const motion::Sample& sample, const motion::Calibration& calibration)
{
    return {sample.time, (sample.specificForce + calibration.offset).cwiseQuotient(calibration.scale),
            sample.angularRate + calibration.gyroscopeBias};
}

} // namespace

StreamFeed::StreamFeed(const KnownSensor& sensor, std::int64_t zero, const Timing& timing, Events events)
    : map_(sensor.map), calibration_(sensor.calibration), zero_(zero), timing_(timing), events_(std::move(events)),
      stream_(sensor.map, sensor.calibration, zero), lastTime_(-std::numeric_limits<double>::infinity())
{
}

void StreamFeed::take(const KnownSensor& sensor)
{
    calibration_ = sensor.calibration;
    if (map_.streams == sensor.map.streams)
        return stream_.calibrate(calibration_);
    map_ = sensor.map;
    stream_ = sensor::Stream(map_, calibration_, zero_);
    samplesChecked_ = 0;
    if (!sets_.empty())
        stream_.setBegins();
}

void StreamFeed::attach(std::shared_ptr<Port> port)
{
    if (sets_.empty())
        stream_.setBegins();
    forPages_.clear();
    port->setBattery(info_.battery.value_or(-1));
    port->setFit(stream_.fit());
    port->setState(state_);
    sets_.push_back(std::move(port));
}

void StreamFeed::detach(const std::shared_ptr<Port>& port)
{
    if (std::erase(sets_, port) > 0 && sets_.empty())
        stream_.setEnds();
}

void StreamFeed::packet(std::size_t source, std::span<const std::uint8_t> bytes, std::int64_t arrival)
{
    ++packets_;
    longest_ = std::max(longest_, static_cast<int>(bytes.size()));
    auto samples = stream_.add(source, bytes, arrival);
    // After another map was taken over its clock begins anew: time still only goes on.
    while (!samples.empty() && samples.front().sample.time <= lastTime_)
        samples = samples.subspan(1);
    if (samples.empty())
        return;
    lastTime_ = samples.back().sample.time;
    if (sets_.empty())
        toPages(samples, arrival);
    else
        toSets(samples);
}

void StreamFeed::toSets(std::span<const sensor::StreamSample> samples)
{
    const auto fit = stream_.fit();
    for (const auto& port : sets_) {
        for (const auto& sample : samples)
            port->push(sample);
        port->setFit(fit);
        port->wake();
    }
}

void StreamFeed::toPages(std::span<const sensor::StreamSample> samples, std::int64_t arrival)
{
    for (const auto& sample : samples)
        forPages_.push_back(uncalibrated(sample.sample, stream_.calibration()));
    if (arrival - lastTelling_ < std::chrono::nanoseconds(timing_.batch).count())
        return;
    lastTelling_ = arrival;
    events_.samples(std::exchange(forPages_, {}));
}

void StreamFeed::state(sensor::LinkState state)
{
    state_ = state;
    for (const auto& port : sets_)
        port->setState(state);
}

void StreamFeed::info(const SensorInfo& info)
{
    info_ = info;
    for (const auto& port : sets_)
        port->setBattery(info_.battery.value_or(-1));
}

void StreamFeed::lost()
{
    stream_.linkLost();
    unread_ = 0;
}

std::optional<TroubleKind> StreamFeed::check(std::int64_t now)
{
    const auto health = stream_.health(now);
    events_.health(health);
    if (const auto& bias = stream_.calibration().gyroscopeBias; bias != calibration_.gyroscopeBias) {
        calibration_ = stream_.calibration();
        events_.rezeroed(calibration_);
    }
    if (unreadable(health))
        return TroubleKind::Unreadable;
    if (tooSlow(health))
        return TroubleKind::TooSlow;
    return std::nullopt;
}

/// Where the link cannot carry the rate even at the interval that was asked for; or not at a common one, and samples do
/// get lost.
bool StreamFeed::tooSlow(const sensor::Health& health) const
{
    const int mtu = info_.mtu.value_or(std::max(sensor::gatt::defaultMtu, longest_ + sensor::gatt::notificationHeader));
    const auto carries = [&](double interval) {
        return sensor::planLink(map_, {.mtu = mtu, .interval = interval}, health.expectedRate).fits;
    };
    return !carries(intervalAskedFor) || (health.lossShare > muchLoss && !carries(commonInterval));
}

bool StreamFeed::unreadable(const sensor::Health& health)
{
    const bool came = packets_ > std::exchange(packetsChecked_, packets_);
    const bool read = health.samples > std::exchange(samplesChecked_, health.samples);
    if (read)
        unread_ = 0;
    else if (came)
        ++unread_;
    return unread_ >= checksBeforeUnreadable;
}

} // namespace fleetrung::ble
