#include "engine/sensor/packet_decoder.hpp"

#include <algorithm>
#include <array>

#include "engine/sensor/binary_reader.hpp"
#include "engine/sensor/sequence.hpp"
#include "engine/sensor/text_reader.hpp"

namespace fleetrung::sensor
{
namespace
{

/// A line that gives a sample has at least a digit and its end.
constexpr std::size_t mostLines = longestPacket / 2;

/// Of one notification: less than two packets' bytes may have waited for it.
std::size_t mostPackets(const BinaryForm& form)
{
    return form.stream ? static_cast<std::size_t>(longestPacket / std::clamp(form.length, 1, longestPacket) + 2) : 1;
}

} // namespace

struct PacketDecoder::Stream {
    explicit Stream(const StreamForm& form)
        : text(form.text), bytesInARow(form.binary.stream), sequence(form), binary(form.binary), finder(form.binary),
          lines(form.lines)
    {
        const auto inPacket = text ? 1 : std::max<std::size_t>(binary.mostSamples(), 1);
        each.resize(inPacket);
        samples.resize(text ? mostLines : inPacket * mostPackets(form.binary));
    }

    void note(BadPacket kind, std::int64_t times = 1) { counts.bad.at(static_cast<std::size_t>(kind)) += times; }
    /// Puts the samples of one packet or line behind those that are there.
    void place(std::size_t size, std::int64_t arrival, bool again);
    void readPacket(std::span<const std::uint8_t> bytes, std::int64_t arrival);
    void readStream(std::span<const std::uint8_t> bytes, std::int64_t arrival);
    void readLines(std::span<const std::uint8_t> bytes, std::int64_t arrival);
    void restart();

    bool text, bytesInARow;
    Sequence sequence;
    BinaryReader binary;
    PacketFinder finder;
    TextReader lines;
    LineFinder lineFinder;
    PacketCounts counts;
    Ticks packet;
    std::vector<Ticks> each;
    std::vector<RawSample> samples;
    std::size_t ready = 0;
    std::array<std::uint8_t, longestPacket> before{}; ///< the packet before
    std::size_t beforeSize = 0;
};

void PacketDecoder::Stream::place(std::size_t size, std::int64_t arrival, bool again)
{
    const auto fresh = std::span(samples).subspan(ready, size);
    for (std::size_t i = 0; i < size; ++i) {
        fresh[i].arrival = arrival;
        fresh[i].index = static_cast<std::uint16_t>(i);
        fresh[i].count = static_cast<std::uint16_t>(size);
    }
    ready += sequence.place(fresh, packet, std::span(each).first(size), again, counts);
}

void PacketDecoder::Stream::readPacket(std::span<const std::uint8_t> bytes, std::int64_t arrival)
{
    std::size_t size = 0;
    if (const auto bad = binary.read(bytes, std::span(samples).subspan(ready), packet, each, size)) {
        note(*bad);
        return;
    }
    const bool again = std::equal(bytes.begin(), bytes.end(), before.begin(),
                                  before.begin() + static_cast<std::ptrdiff_t>(beforeSize));
    std::copy(bytes.begin(), bytes.end(), before.begin());
    beforeSize = bytes.size();
    place(size, arrival, again);
}

void PacketDecoder::Stream::readStream(std::span<const std::uint8_t> bytes, std::int64_t arrival)
{
    std::int64_t skipped = 0;
    while (const auto found = finder.next(bytes, skipped))
        readPacket(*found, arrival);
    note(BadPacket::WrongLength, skipped);
}

void PacketDecoder::Stream::readLines(std::span<const std::uint8_t> bytes, std::int64_t arrival)
{
    std::int64_t tooLong = 0;
    while (const auto line = lineFinder.next(bytes, tooLong)) {
        if (ready == samples.size())
            break;
        const auto bad = lines.read(*line, samples[ready], each.front());
        if (bad)
            note(*bad);
        else
            place(1, arrival, false);
    }
    note(BadPacket::LineTooLong, tooLong);
}

void PacketDecoder::Stream::restart()
{
    sequence.restart();
    finder.restart();
    lines.restart();
    lineFinder.restart();
    beforeSize = 0;
}

PacketDecoder::PacketDecoder(const SensorMap& map)
{
    streams_.reserve(map.streams.size());
    for (const auto& form : map.streams)
        streams_.emplace_back(form);
}

PacketDecoder::~PacketDecoder() = default;
PacketDecoder::PacketDecoder(PacketDecoder&&) noexcept = default;
PacketDecoder& PacketDecoder::operator=(PacketDecoder&&) noexcept = default;

std::span<const RawSample> PacketDecoder::decode(std::size_t stream, std::span<const std::uint8_t> bytes,
                                                 std::int64_t arrival)
{
    if (stream >= streams_.size())
        return {};
    auto& to = streams_[stream];
    ++to.counts.packets;
    to.ready = 0;
    if (bytes.empty())
        to.note(BadPacket::Empty);
    else if (bytes.size() > longestPacket)
        to.note(BadPacket::WrongLength);
    else if (to.text)
        to.readLines(bytes, arrival);
    else if (to.bytesInARow)
        to.readStream(bytes, arrival);
    else
        to.readPacket(bytes, arrival);
    to.counts.samples += static_cast<std::int64_t>(to.ready);
    return std::span(to.samples).first(to.ready);
}

void PacketDecoder::restart()
{
    for (auto& stream : streams_)
        stream.restart();
}

const PacketCounts& PacketDecoder::counts(std::size_t stream) const
{
    return streams_[stream].counts;
}

} // namespace fleetrung::sensor
