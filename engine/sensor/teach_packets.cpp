#include <algorithm>
#include <array>
#include <map>

#include "engine/sensor/teach_table.hpp"

namespace fleetrung::sensor::teaching
{
namespace
{

constexpr double oftenEnough = 0.15; // share of a length that may carry motion
constexpr int shortestPeriod = 5, longestPeriod = 256;
// Where the period of a stream is looked for: in pieces from all of the teaching, because bytes of gravity stay the
// same as long as one face is up.
constexpr std::size_t triedBeats = 24;
constexpr std::size_t pieces = 12, pieceLength = 4'096; // bytes

/// Bytes at the packets' begin that are always the same; two at most, more would be chance.
std::vector<std::uint8_t> commonBegin(const Table& table)
{
    std::vector<std::uint8_t> mark;
    for (std::size_t place = 0; place < std::min<std::size_t>(2, table.width); ++place) {
        for (std::size_t i = 1; i < table.size(); ++i) {
            if (table.bytes[i * table.width + place] != table.bytes[place]) {
                return mark;
            }
        }
        mark.push_back(table.bytes[place]);
    }
    return mark;
}

Table packetsOfLength(const Notifications& notifications, std::size_t length)
{
    Table table;
    table.notifier = notifications.notifier;
    table.width = length;
    for (std::size_t i = 0; i < notifications.packets.size(); ++i) {
        const auto& bytes = notifications.packets[i]->bytes;
        if (bytes.size() == length) {
            table.bytes.insert(table.bytes.end(), bytes.begin(), bytes.end());
            table.arrival.push_back(notifications.arrivalOf(i));
        }
    }
    table.share = static_cast<double>(table.size()) / static_cast<double>(notifications.packets.size());
    return table;
}

struct Stream {
    std::vector<std::uint8_t> bytes;
    std::vector<double> arrival; ///< of each byte's notification
};

Stream joined(const Notifications& notifications)
{
    Stream stream;
    for (std::size_t i = 0; i < notifications.packets.size(); ++i) {
        const auto& bytes = notifications.packets[i]->bytes;
        stream.bytes.insert(stream.bytes.end(), bytes.begin(), bytes.end());
        stream.arrival.insert(stream.arrival.end(), bytes.size(), notifications.arrivalOf(i));
    }
    return stream;
}

struct Beat {
    std::size_t period = 0;
    std::uint8_t byte = 0;
    double support = 0; ///< share of the periods at whose begin the byte stands
};

using Bytes = std::vector<std::uint8_t>;

std::vector<Bytes> piecesOf(const Bytes& bytes)
{
    if (bytes.size() <= pieces * pieceLength) {
        return {bytes};
    }
    std::vector<Bytes> all;
    for (std::size_t k = 0; k < pieces; ++k) {
        const auto from = bytes.begin() + static_cast<std::ptrdiff_t>(k * (bytes.size() - pieceLength) / (pieces - 1));
        all.emplace_back(from, from + static_cast<std::ptrdiff_t>(pieceLength));
    }
    return all;
}

/// Bytes that come once a period and hardly anywhere else, the best ones first.
std::vector<Beat> beatsOf(const Bytes& stream)
{
    const auto parts = piecesOf(stream);
    std::array<double, 256> all{};
    std::size_t count = 0;
    for (const auto& bytes : parts) {
        count += bytes.size();
        for (const auto byte : bytes) {
            ++all.at(byte);
        }
    }
    std::vector<Beat> beats;
    double best = 0;
    for (std::size_t period = shortestPeriod; period <= longestPeriod && period * 4 < count; ++period) {
        std::array<double, 256> repeated{};
        for (const auto& bytes : parts) {
            for (std::size_t i = 0; i + period < bytes.size(); ++i) {
                repeated.at(bytes[i]) += bytes[i] == bytes[i + period] ? 1 : 0;
            }
        }
        const double periods = static_cast<double>(count) / static_cast<double>(period);
        for (std::size_t byte = 0; byte < all.size(); ++byte) {
            if (all.at(byte) > 1.7 * periods || all.at(byte) < 0.7 * periods) {
                continue;
            }
            const double support = std::min(1.0, repeated.at(byte) / periods);
            beats.push_back({period, static_cast<std::uint8_t>(byte), support});
            best = std::max(best, support);
        }
    }
    std::erase_if(beats, [&](const Beat& beat) { return beat.support < 0.5 || beat.support < 0.7 * best; });
    std::stable_sort(beats.begin(), beats.end(),
                     [](const Beat& left, const Beat& right) { return left.support > right.support; });
    beats.resize(std::min(beats.size(), triedBeats));
    return beats;
}

Table packetsOfBeat(const Stream& stream, std::size_t period, const std::vector<std::uint8_t>& mark)
{
    Table table;
    table.carrier = Carrier::ByteStream;
    table.width = period;
    table.mark = mark;
    const auto markAt = [&](std::size_t i) {
        return i + mark.size() > stream.bytes.size() ||
               std::equal(mark.begin(), mark.end(), stream.bytes.begin() + static_cast<std::ptrdiff_t>(i));
    };
    std::size_t i = 0;
    while (i + period <= stream.bytes.size()) {
        if (!markAt(i) || !markAt(i + period)) {
            ++i;
            continue;
        }
        const auto begin = stream.bytes.begin() + static_cast<std::ptrdiff_t>(i);
        table.bytes.insert(table.bytes.end(), begin, begin + static_cast<std::ptrdiff_t>(period));
        table.arrival.push_back(stream.arrival[i + period - 1]);
        i += period;
    }
    table.share = static_cast<double>(table.bytes.size()) / static_cast<double>(stream.bytes.size());
    return table;
}

/// How many bytes before the packets' begin are always the same, and not zero: the mark begins there.
std::size_t earlierBegin(const Table& table)
{
    std::size_t earlier = 0;
    for (std::size_t back = 1; back < 4 && back < table.width; ++back) {
        const auto place = table.width - back;
        std::array<std::size_t, 256> seen{};
        for (std::size_t i = 0; i < table.size(); ++i) {
            ++seen.at(table.bytes[i * table.width + place]);
        }
        const auto most = std::max_element(seen.begin(), seen.end());
        if (most == seen.begin() || *most < table.size() * 95 / 100) {
            break;
        }
        earlier = back;
    }
    return earlier;
}

} // namespace

std::vector<Table> packetTables(const Notifications& notifications)
{
    std::map<std::size_t, std::size_t> counts;
    for (const auto* packet : notifications.packets) {
        ++counts[packet->bytes.size()];
    }
    std::vector<std::size_t> lengths;
    for (const auto& [length, count] : counts) {
        lengths.push_back(length);
    }
    std::vector<Table> tables;
    for (const auto& [length, count] : counts) {
        if (count < fewestRecords ||
            static_cast<double>(count) < oftenEnough * static_cast<double>(notifications.packets.size())) {
            continue;
        }
        tables.push_back(packetsOfLength(notifications, length));
        tables.back().onlyLength = counts.size() == 1;
        tables.back().lengths = lengths;
        if (!tables.back().onlyLength) {
            tables.back().mark = commonBegin(tables.back());
        }
    }
    std::stable_sort(tables.begin(), tables.end(), [](const Table& a, const Table& b) { return a.share > b.share; });
    return tables;
}

std::vector<Table> byteStreamTables(const Notifications& notifications)
{
    const auto stream = joined(notifications);
    // Bytes of a face or two repeat as well as a mark does, but not through all of the teaching: the beat that cuts
    // most of the stream into packets is the one, and of equals the shortest.
    constexpr double asMuch = 0.02;
    Beat beat;
    Table table;
    for (const auto& tried : beatsOf(stream.bytes)) {
        auto cut = packetsOfBeat(stream, tried.period, {tried.byte});
        const bool better =
            cut.share > table.share + asMuch || (cut.share > table.share - asMuch && tried.period < beat.period);
        if (beat.period == 0 || better) {
            beat = tried;
            table = std::move(cut);
        }
    }
    if (beat.period == 0 || table.size() < fewestRecords) {
        return {};
    }
    // Bytes that stay the same around the beat belong to the mark; the packet begins with the first of them.
    const auto earlier = earlierBegin(table);
    std::vector<std::uint8_t> mark;
    for (std::size_t i = earlier; i > 0; --i) {
        mark.push_back(table.bytes[table.width - i]);
    }
    mark.push_back(beat.byte);
    if (mark.size() == 1) {
        mark = commonBegin(table);
    }
    mark.resize(std::min<std::size_t>(mark.size(), 2));
    table = packetsOfBeat(stream, beat.period, mark);
    table.notifier = notifications.notifier;
    if (table.size() < fewestRecords) {
        return {};
    }
    return {std::move(table)};
}

} // namespace fleetrung::sensor::teaching
