#include "engine/sensor/stream.hpp"

#include <algorithm>
#include <cmath>
#include <optional>
#include <vector>

#include "engine/sensor/gyroscope_merge.hpp"
#include "engine/sensor/packet_stamps.hpp"
#include "engine/sensor/stream_health.hpp"

namespace fleetrung::sensor
{
namespace
{

constexpr std::size_t room = 4096; // samples that one notification can bring or set free

bool carries(const StreamForm& form, Channel channel)
{
    const auto is = [channel](const auto& field) { return field.channel == channel; };
    return std::any_of(form.binary.sampleFields.begin(), form.binary.sampleFields.end(), is) ||
           std::any_of(form.binary.packetFields.begin(), form.binary.packetFields.end(), is) ||
           std::any_of(form.lines.columns.begin(), form.lines.columns.end(), is);
}

/// A gyroscope alone on its characteristic.
bool isGyroscope(const StreamForm& form)
{
    return !carries(form, Channel::AccelerometerX) && !carries(form, Channel::AccelerometerY) &&
           !carries(form, Channel::AccelerometerZ);
}

Eigen::Vector3d vectorOf(const std::array<double, 3>& values)
{
    return {values[0], values[1], values[2]};
}

} // namespace

struct Stream::State {
    /// One characteristic.
    struct Lane {
        Lane(const StreamForm& form, std::int64_t zero)
            : gyroscope(isGyroscope(form)), stamps(form.rate), clock(form.rate, zero), rate(form.rate)
        {
        }
        bool gyroscope;
        PacketStamps stamps;
        motion::StreamClock clock;
        double rate;
        std::int64_t lostBefore = 0;
    };

    State(const SensorMap& map, const motion::Calibration& is, std::int64_t at)
        : decoder(map), calibration(is), rezero(is.gyroscopeBias), zero(at), twoStreams(map.streams.size() > 1),
          hasGyroscope(map.hasGyroscope())
    {
        if (!is.sixFaces && is.gyroscopeBias.isZero(0))
            rezero = motion::Rezero();
        lanes.reserve(map.streams.size());
        for (const auto& form : map.streams)
            lanes.emplace_back(form, zero);
        packet.reserve(room);
        ready.reserve(room);
    }

    void noteBad();
    void take(std::size_t stream, std::int64_t arrival);
    void takePacket(std::size_t stream, std::span<RawSample> samples);
    void takeSample(std::size_t stream, const RawSample& raw, bool endsPacket);
    void emit(motion::Sample sample, const motion::Receipt& receipt);
    [[nodiscard]] std::size_t accelerometer() const { return twoStreams && lanes[0].gyroscope ? 1 : 0; }
    [[nodiscard]] std::int64_t lostOf(std::size_t stream) const
    {
        return decoder.counts(stream).lost + lanes[stream].clock.lost();
    }

    PacketDecoder decoder;
    std::vector<Lane> lanes;
    GyroscopeMerge merge;
    motion::Calibration calibration;
    motion::Rezero rezero;
    StreamHealth health;
    std::int64_t zero;
    bool twoStreams, hasGyroscope, inSet = false;
    std::vector<RawSample> packet;   ///< decoded, of one notification
    std::vector<StreamSample> ready; ///< answers
    double last = -std::numeric_limits<double>::infinity();
    std::array<std::int64_t, badPacketKinds> badBefore{};
    std::optional<BadPacket> lastBad;
};

void Stream::State::noteBad()
{
    for (std::size_t kind = 0; kind < badPacketKinds; ++kind) {
        std::int64_t all = 0;
        for (std::size_t i = 0; i < lanes.size(); ++i)
            all += decoder.counts(i).bad[kind];
        if (all > badBefore[kind] && kind != static_cast<std::size_t>(BadPacket::NotOurs))
            lastBad = static_cast<BadPacket>(kind);
        badBefore[kind] = all;
    }
}

/// What was decoded of one notification; it may hold several packets.
void Stream::State::take(std::size_t stream, std::int64_t arrival)
{
    if (stream == accelerometer()) {
        const auto lost = lostOf(stream);
        health.notification(arrival, static_cast<int>(packet.size()), lost - lanes[stream].lostBefore);
        lanes[stream].lostBefore = lost;
    }
    for (std::size_t from = 0; from < packet.size();) {
        std::size_t to = from + 1;
        while (to < packet.size() && packet[to].index > packet[to - 1].index)
            ++to;
        takePacket(stream, std::span(packet).subspan(from, to - from));
        from = to;
    }
}

void Stream::State::takePacket(std::size_t stream, std::span<RawSample> samples)
{
    lanes[stream].stamps.fill(samples);
    for (std::size_t i = 0; i < samples.size(); ++i)
        takeSample(stream, samples[i], i + 1 == samples.size());
    if (!twoStreams)
        return;
    while (const auto complete = merge.next())
        emit(complete->sample, complete->receipt);
}

void Stream::State::takeSample(std::size_t stream, const RawSample& raw, bool endsPacket)
{
    Lane& lane = lanes[stream];
    const bool stamped = !std::isnan(raw.stamp);
    motion::Tick tick{raw.counter, stamped ? raw.stamp : 0, stamped, raw.arrival, raw.index, raw.count};
    if (endsPacket)
        tick.count = tick.index + 1;
    const double time = lane.clock.timeOf(tick);
    const motion::Receipt receipt{lane.clock.tick(), raw.arrival};
    const double key = stamped ? raw.stamp : time;
    if (endsPacket && stream == accelerometer())
        health.late(static_cast<double>(raw.arrival - zero) * 1e-9 - time);
    if (twoStreams && lane.gyroscope)
        merge.addRate(key, vectorOf(raw.angularRate));
    else if (twoStreams)
        merge.addAcceleration({key, {time, vectorOf(raw.specificForce), Eigen::Vector3d::Zero()}, receipt});
    else
        emit({time, vectorOf(raw.specificForce), vectorOf(raw.angularRate)}, receipt);
}

void Stream::State::emit(motion::Sample sample, const motion::Receipt& receipt)
{
    if (!sample.specificForce.allFinite() || !(sample.time > last) || ready.size() == ready.capacity())
        return;
    last = sample.time;
    for (int axis = 0; axis < 3; ++axis)
        if (!std::isfinite(sample.angularRate[axis]))
            sample.angularRate[axis] = 0;
    if (hasGyroscope)
        if (const auto bias = rezero.add(sample); bias && !inSet)
            calibration.gyroscopeBias = *bias;
    auto calibrated = calibration.apply(sample);
    if (!hasGyroscope)
        calibrated.angularRate.setZero();
    ready.push_back({calibrated, receipt});
}

Stream::Stream(const SensorMap& map, const motion::Calibration& calibration, std::int64_t zero)
    : state_(std::make_unique<State>(map, calibration, zero))
{
}

Stream::~Stream() = default;
Stream::Stream(Stream&&) noexcept = default;
Stream& Stream::operator=(Stream&&) noexcept = default;

std::span<const StreamSample> Stream::add(std::size_t stream, std::span<const std::uint8_t> bytes, std::int64_t arrival)
{
    State& s = *state_;
    s.ready.clear();
    if (stream >= s.lanes.size())
        return {};
    const auto decoded = s.decoder.decode(stream, bytes, arrival);
    s.noteBad();
    s.packet.assign(decoded.begin(), decoded.begin() + static_cast<std::ptrdiff_t>(std::min(decoded.size(), room)));
    s.take(stream, arrival);
    return s.ready;
}

void Stream::setBegins()
{
    state_->inSet = true;
    for (auto& lane : state_->lanes)
        lane.clock.freeze();
}

void Stream::setEnds()
{
    state_->inSet = false;
    for (auto& lane : state_->lanes)
        lane.clock.release();
}

void Stream::linkLost()
{
    State& s = *state_;
    s.decoder.restart();
    s.merge.clear();
    s.health.gap();
    for (auto& lane : s.lanes) {
        lane.clock.restart();
        lane.stamps.restart();
    }
}

void Stream::calibrate(const motion::Calibration& calibration)
{
    state_->calibration = calibration;
    state_->rezero = motion::Rezero(calibration.gyroscopeBias);
}

Health Stream::health(std::int64_t now) const
{
    const State& s = *state_;
    if (s.lanes.empty())
        return {};
    const auto& lane = s.lanes[s.accelerometer()];
    Health health = s.health.at(now, lane.rate > 0 ? lane.rate : lane.clock.rate());
    for (std::size_t i = 0; i < s.lanes.size(); ++i)
        health.badPackets += s.decoder.counts(i).badInAll();
    health.lastBad = s.lastBad;
    return health;
}

motion::ClockFit Stream::fit() const
{
    return state_->lanes.empty() ? motion::ClockFit{} : state_->lanes[state_->accelerometer()].clock.fit();
}

const motion::Calibration& Stream::calibration() const
{
    return state_->calibration;
}

} // namespace fleetrung::sensor
