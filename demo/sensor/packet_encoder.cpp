#include "demo/sensor/packet_encoder.hpp"

#include <algorithm>
#include <cmath>

#include "demo/sensor/bit_writer.hpp"
#include "engine/base/numbers.hpp"

namespace fleetrung::demo
{
namespace
{

using sensor::Channel;
using sensor::Field;

bool isRunning(Channel channel)
{
    return channel == Channel::Counter || channel == Channel::Stamp;
}

std::int64_t nanoseconds(double seconds)
{
    return static_cast<std::int64_t>(std::llround(seconds * 1e9));
}

/// Firmware prints counts whole, and units with decimals enough for its resolution (0.0005 m/s2 or rad/s).
int decimalsOf(double scale)
{
    const double size = std::abs(scale);
    return size < 0.01 ? 0 : std::clamp(static_cast<int>(std::ceil(std::log10(size / 0.0005))), 0, 9);
}

double wrapped(double value, double wrap)
{
    return wrap > 0 ? value - wrap * std::floor(value / wrap) : value;
}

} // namespace

PacketEncoder::PacketEncoder(const sensor::SensorMap& map, int payload)
{
    for (const auto& form : map.streams) {
        outlets_.push_back({outlets_.size(), form, std::max(payload, 1), {}, {}});
    }
}

std::vector<sensor::RawPacket> PacketEncoder::encode(std::span<const motion::Sample> samples)
{
    std::vector<sensor::RawPacket> packets;
    for (const auto& sample : samples) {
        for (auto& outlet : outlets_) {
            outlet.add(sample, packets);
        }
    }
    return packets;
}

void PacketEncoder::skip(std::size_t samples)
{
    for (auto& outlet : outlets_) {
        outlet.samples += static_cast<std::int64_t>(samples);
        outlet.packets += static_cast<std::int64_t>(samples / outlet.samplesAPacket());
    }
}

void PacketEncoder::restart()
{
    for (auto& outlet : outlets_) {
        outlet = Outlet{outlet.source, outlet.form, outlet.payload, {}, {}};
    }
}

void PacketEncoder::Outlet::add(const motion::Sample& sample, std::vector<sensor::RawPacket>& out)
{
    if (!begun) {
        first = sample.time;
        begun = true;
    }
    waiting.push_back(sample);
    if (waiting.size() == samplesAPacket()) {
        send(out);
        samples += static_cast<std::int64_t>(waiting.size());
        ++packets;
        waiting.clear();
    }
}

void PacketEncoder::Outlet::send(std::vector<sensor::RawPacket>& out)
{
    const auto arrival = nanoseconds(waiting.back().time);
    if (form.text) {
        const auto text = line();
        bytes.insert(bytes.end(), text.begin(), text.end());
        sendBytes(arrival, out);
    } else if (form.binary.stream) {
        const auto packet = binaryPacket();
        bytes.insert(bytes.end(), packet.begin(), packet.end());
        sendBytes(arrival, out);
    } else {
        out.push_back({source, arrival, binaryPacket()});
    }
}

void PacketEncoder::Outlet::sendBytes(std::int64_t arrival, std::vector<sensor::RawPacket>& out)
{
    const auto size = static_cast<std::ptrdiff_t>(payload);
    while (static_cast<std::ptrdiff_t>(bytes.size()) >= size) {
        out.push_back({source, arrival, {bytes.begin(), bytes.begin() + size}});
        bytes.erase(bytes.begin(), bytes.begin() + size);
    }
}

std::size_t PacketEncoder::Outlet::samplesAPacket() const
{
    if (form.text) {
        return 1;
    }
    const auto& binary = form.binary;
    if (binary.samples > 0) {
        return static_cast<std::size_t>(binary.samples);
    }
    const int room = (binary.length > 0 ? binary.length : payload) * 8 - binary.firstBit;
    return static_cast<std::size_t>(std::max(1, room / std::max(1, binary.sampleBits)));
}

std::vector<std::uint8_t> PacketEncoder::Outlet::binaryPacket() const
{
    const auto& binary = form.binary;
    int bits = binary.firstBit + binary.sampleBits * static_cast<int>(waiting.size());
    for (const auto& field : binary.packetFields) {
        bits = std::max(bits, field.bit + bitsOf(field.type));
    }
    std::vector<std::uint8_t> packet(static_cast<std::size_t>(binary.length > 0 ? binary.length : (bits + 7) / 8));
    std::copy_n(binary.mark.begin(), std::min(binary.mark.size(), packet.size()), packet.begin());

    const auto write = [&](const Field& field, int bit, std::size_t index) {
        const double counts = valueOf(field.channel, index) / field.scale - field.offset;
        (isRunning(field.channel) ? writeRunning : writeReading)(packet, field, bit, counts);
    };
    const auto ofPacket = form.stampOf == sensor::StampOf::First ? 0 : waiting.size() - 1;
    for (const auto& field : binary.packetFields) {
        write(field, field.bit, ofPacket);
    }
    for (std::size_t i = 0; i < waiting.size(); ++i) {
        for (const auto& field : binary.sampleFields) {
            write(field, binary.firstBit + static_cast<int>(i) * binary.sampleBits + field.bit, i);
        }
    }
    return packet;
}

std::string PacketEncoder::Outlet::line() const
{
    const auto& lines = form.lines;
    const auto numberOf = [&](const sensor::TextColumn& column) {
        const double counts = valueOf(column.channel, 0) / column.scale - column.offset;
        return fixedText(counts, column.channel == Channel::Counter ? 0 : decimalsOf(column.scale));
    };
    std::vector<std::string> cells;
    for (const auto& column : lines.columns) {
        if (!column.key.empty()) {
            cells.push_back(column.key + "=" + numberOf(column));
            continue;
        }
        const auto place = static_cast<std::size_t>(std::max(0, column.column));
        cells.resize(std::max(cells.size(), place + 1), "0");
        cells[place] = numberOf(column);
    }
    auto text = lines.prefix;
    for (std::size_t i = 0; i < cells.size(); ++i) {
        text += (i > 0 ? std::string(1, lines.separator) : std::string()) + cells[i];
    }
    return text + "\n";
}

double PacketEncoder::Outlet::counterOf(std::size_t index) const
{
    const double count = static_cast<double>(
        form.counts == sensor::Counts::Packets ? packets : samples + static_cast<std::int64_t>(index));
    return wrapped(count, static_cast<double>(form.counterWrap));
}

double PacketEncoder::Outlet::stampOf(std::size_t index) const
{
    return wrapped(waiting[index].time - first, form.stampWrap);
}

double PacketEncoder::Outlet::valueOf(Channel channel, std::size_t index) const
{
    const auto& sample = waiting[index];
    switch (channel) {
    case Channel::AccelerometerX:
    case Channel::AccelerometerY:
    case Channel::AccelerometerZ:
        return sample.specificForce[static_cast<int>(channel) - static_cast<int>(Channel::AccelerometerX)];
    case Channel::GyroscopeX:
    case Channel::GyroscopeY:
    case Channel::GyroscopeZ:
        return sample.angularRate[static_cast<int>(channel) - static_cast<int>(Channel::GyroscopeX)];
    case Channel::Counter:
        return counterOf(index);
    case Channel::Stamp:
        return stampOf(index);
    case Channel::StampDelta:
        return sample.time - waiting[form.stampOf == sensor::StampOf::First ? 0 : waiting.size() - 1].time;
    case Channel::Count:
        return static_cast<double>(waiting.size());
    }
    return 0;
}

} // namespace fleetrung::demo
