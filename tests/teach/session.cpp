#include "tests/teach/session.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "demo/sensor/packet_encoder.hpp"
#include "demo/simulator/sensor_plan.hpp"
#include "engine/base/numbers.hpp"

namespace fleetrung::tests
{
namespace
{

using Eigen::Vector3d;
using sensor::RawPacket;
using simulator::Random;

constexpr double gravity = 9.80665;
constexpr double degree = std::numbers::pi / 180;

Vector3d normals(Random& random, double mean, double deviation)
{
    return {random.normal(mean, deviation), random.normal(mean, deviation), random.normal(mean, deviation)};
}

double seconds(std::int64_t nanoseconds)
{
    return static_cast<double>(nanoseconds) * 1e-9;
}

/// What else a packet says at that time.
double valueOf(const Distractor& distractor, double time, const Vector3d& field, Random& random)
{
    switch (distractor.kind) {
    case Distractor::Kind::Constant:
        return distractor.value;
    case Distractor::Kind::Temperature:
        return distractor.value + 2 * time + random.normal(0, distractor.bytes > 0 ? 3 : 0.05);
    case Distractor::Kind::Battery:
        return std::floor(distractor.value - time / 60);
    case Distractor::Kind::Magnetometer:
        return field[distractor.axis] + random.normal(0, 4);
    case Distractor::Kind::Noise:
        return random.below(256);
    case Distractor::Kind::Checksum:
        return 0;
    }
    return 0;
}

void writeBytes(std::vector<std::uint8_t>& packet, int bit, int bytes, double value)
{
    const auto whole = static_cast<std::int64_t>(std::llround(value));
    for (int i = 0; i < bytes; ++i) {
        packet.at(static_cast<std::size_t>(bit / 8 + i)) =
            static_cast<std::uint8_t>(static_cast<std::uint64_t>(whole) >> static_cast<unsigned>(8 * i));
    }
}

void distract(std::vector<std::uint8_t>& packet, const std::vector<Distractor>& distractors, int samples, double time,
              const Vector3d& field, Random& random)
{
    for (const auto& distractor : distractors) {
        for (int i = 0; i < (distractor.stride > 0 ? samples : 1); ++i) {
            writeBytes(packet, distractor.bit + i * distractor.stride, distractor.bytes,
                       valueOf(distractor, time, field, random));
        }
    }
    for (const auto& distractor : distractors) {
        if (distractor.kind == Distractor::Kind::Checksum) {
            int sum = 0;
            for (const auto byte : packet) {
                sum += byte;
            }
            writeBytes(packet, distractor.bit, 1, sum & 0xFF);
        }
    }
}

/// Lines with the other columns filled in.
std::vector<RawPacket> linesOf(const std::vector<RawPacket>& bytes, const sensor::TextForm& form,
                               const std::vector<Distractor>& distractors, Random& random)
{
    std::vector<RawPacket> lines;
    std::string line;
    for (const auto& packet : bytes) {
        const auto c = static_cast<char>(packet.bytes.front());
        line += c;
        if (c != '\n') {
            continue;
        }
        for (const auto& distractor : distractors) {
            const auto text = fixedText(valueOf(distractor, seconds(packet.arrival), Vector3d::Zero(), random), 1);
            std::size_t from = form.prefix.size();
            int cell = 0;
            for (; cell < distractor.bit && line.find(form.separator, from) != std::string::npos; ++cell) {
                from = line.find(form.separator, from) + 1;
            }
            if (cell < distractor.bit) {
                line.insert(line.size() - 1, form.separator + text); // behind the last
            } else {
                line.replace(from, line.find_first_of(std::string(1, form.separator) + "\n", from) - from, text);
            }
        }
        lines.push_back({packet.source, packet.arrival, {line.begin(), line.end()}});
        line.clear();
    }
    return lines;
}

/// Cut at the payload, joined with what follows or each for itself.
std::vector<RawPacket> cut(const std::vector<RawPacket>& packets, std::size_t payload, bool joined)
{
    std::vector<RawPacket> notifications;
    std::vector<std::uint8_t> bytes;
    const auto flush = [&](const RawPacket& packet, std::size_t size) {
        const auto end = bytes.begin() + static_cast<std::ptrdiff_t>(size);
        notifications.push_back({packet.source, packet.arrival, {bytes.begin(), end}});
        bytes.erase(bytes.begin(), end);
    };
    for (const auto& packet : packets) {
        bytes.insert(bytes.end(), packet.bytes.begin(), packet.bytes.end());
        while (bytes.size() >= payload) {
            flush(packet, payload);
        }
        if (!joined && !bytes.empty()) {
            flush(packet, bytes.size());
        }
    }
    return notifications;
}

} // namespace

Device::Device(const Layout& layout, Random& random) : layout_(layout), random_(random)
{
    const auto& part = *simulator::findPart(layout.part);
    const double bandwidth = std::sqrt(layout.rate / 2);
    accelerometerNoise_ = part.accelerometerNoise * 1e-6 * gravity * bandwidth;
    gyroscopeNoise_ = part.gyroscopeNoise * 1e-3 * degree * bandwidth;
    accelerometerGain_ = normals(random, 1, part.accelerometerScaleError);
    gyroscopeGain_ = normals(random, 1, part.gyroscopeScaleError);
    accelerometerBias_ = normals(random, 0, part.accelerometerBias * 1e-3 * gravity);
    gyroscopeBias_ = normals(random, 0, part.gyroscopeBias * degree);
    skew_ = random.uniform(-100e-6, 100e-6);
    const double aslant = layout.anyMounting ? random.uniform(0, std::numbers::pi) : 1 * degree * random.normal();
    mounting_ = Eigen::AngleAxisd(aslant, normals(random, 0, 1).normalized()).toRotationMatrix();
    field_ = 400 * normals(random, 0, 1).normalized();
}

std::vector<motion::Sample> Device::samplesOf(const Hand& hand)
{
    std::vector<motion::Sample> samples;
    const double begin = random_.uniform(0, 1 / layout_.rate);
    for (std::size_t i = 0; begin + static_cast<double>(i) / layout_.rate < hand.end(); ++i) {
        const double stamp = static_cast<double>(i) / layout_.rate; // of the sensor's own clock
        const auto [force, rate] = hand.feel(begin + stamp * (1 + skew_), gravity);
        const Vector3d forceHere = mounting_.transpose() * force, rateHere = mounting_.transpose() * rate;
        samples.push_back(
            {stamp,
             accelerometerGain_.cwiseProduct(forceHere) + accelerometerBias_ + normals(random_, 0, accelerometerNoise_),
             gyroscopeGain_.cwiseProduct(rateHere) + gyroscopeBias_ + normals(random_, 0, gyroscopeNoise_)});
    }
    return samples;
}

std::vector<RawPacket> Device::sent(const std::vector<motion::Sample>& samples)
{
    auto whole = layout_.map;
    for (auto& stream : whole.streams) {
        stream.binary.stream = false;
    }
    demo::PacketEncoder encoder(whole, layout_.map.streams.front().text ? 1 : 512);
    encoder.skip(static_cast<std::size_t>(random_.below(100'000))); // switched on a while ago
    auto packets = encoder.encode(samples);
    for (std::size_t stream = 0; stream < whole.streams.size(); ++stream) {
        const auto& form = layout_.map.streams[stream];
        const auto& distractors = layout_.distractors[stream];
        if (form.text) {
            packets = linesOf(packets, form.lines, distractors, random_);
            return cut(packets, static_cast<std::size_t>(layout_.payload), !layout_.wholeLines);
        }
        for (auto& packet : packets) {
            if (packet.source == stream) {
                const double time = seconds(packet.arrival);
                const auto at = static_cast<std::size_t>(std::max(0.0, time * layout_.rate));
                const Vector3d up = samples[std::min(at, samples.size() - 1)].specificForce / gravity;
                // A field that turns with the sensor, in some way of its own.
                const Vector3d field = field_ + 200 * up.cross(field_.normalized()) + 300 * up;
                distract(packet.bytes, distractors, form.binary.samples, time, field, random_);
            }
        }
        if (form.binary.stream) {
            return cut(packets, static_cast<std::size_t>(layout_.payload), true);
        }
    }
    return packets;
}

/// Some are lost, the others leave at the radio's next event.
std::vector<RawPacket> Device::arrived(std::vector<RawPacket> packets, double end)
{
    std::vector<RawPacket> here;
    double last = 0;
    for (auto& packet : packets) {
        const double sentAt = seconds(packet.arrival) * (1 + skew_) + 0.002;
        double event = std::ceil(sentAt / layout_.interval) * layout_.interval;
        if (random_.chance(0.02)) {
            event += layout_.interval; // an event that the phone missed
        }
        last = std::max(last + 2e-4, event + random_.uniform(0, 1e-3));
        if (random_.chance(layout_.loss)) {
            continue;
        }
        packet.arrival = static_cast<std::int64_t>(last * 1e9) + 5'000'000'000;
        here.push_back(std::move(packet));
    }
    for (double time = 1; layout_.battery && time < end; time += 10) {
        here.push_back({layout_.map.streams.size(), static_cast<std::int64_t>(time * 1e9) + 5'000'000'000, {87}});
    }
    std::stable_sort(here.begin(), here.end(),
                     [](const RawPacket& a, const RawPacket& b) { return a.arrival < b.arrival; });
    return here;
}

std::vector<RawPacket> Device::record(const Hand& hand)
{
    return arrived(sent(samplesOf(hand)), hand.end());
}

std::vector<sensor::Notifier> Device::notifiers() const
{
    std::vector<sensor::Notifier> notifiers;
    for (const auto& stream : layout_.map.streams) {
        notifiers.push_back({stream.service, stream.characteristic});
    }
    if (layout_.battery) {
        notifiers.push_back({"0000180f-0000-1000-8000-00805f9b34fb", "00002a19-0000-1000-8000-00805f9b34fb"});
    }
    return notifiers;
}

sensor::TeachRecording recordTeaching(Device& device, const Hand& hand, double raiseHeight)
{
    sensor::TeachRecording recording;
    recording.notifiers = device.notifiers();
    recording.packets = device.record(hand);
    recording.raiseHeight = raiseHeight;
    for (const auto& span : hand.spans()) {
        recording.spans.push_back({span.step, static_cast<std::int64_t>(span.from * 1e9) + 5'000'000'000,
                                   static_cast<std::int64_t>(span.to * 1e9) + 5'000'000'000});
    }
    return recording;
}

} // namespace fleetrung::tests
