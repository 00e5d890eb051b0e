#include <algorithm>
#include <array>
#include <bit>
#include <cmath>
#include <map>
#include <tuple>

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
constexpr double mostOfIt = 0.9;                        // of a stream that packets of one length make up
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

using Bytes = std::vector<std::uint8_t>;

struct Beat {
    std::size_t period = 0;
    Bytes mark;
    double support = 0; ///< share of the periods at whose begin the mark stands
};

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

/// Marks of one or two bytes that come once a period and hardly anywhere else, the best ones first.
std::vector<Beat> beatsOf(const Bytes& stream, std::size_t length)
{
    const auto parts = piecesOf(stream);
    const auto markAt = [&](const Bytes& bytes, std::size_t i) {
        return length == 1 ? std::size_t{bytes[i]} : std::size_t{bytes[i]} << 8U | bytes[i + 1];
    };
    const std::size_t marks = length == 1 ? 256 : 65'536;
    std::vector<int> all(marks);
    std::size_t count = 0;
    for (const auto& bytes : parts) {
        count += bytes.size();
        for (std::size_t i = 0; i + length <= bytes.size(); ++i) {
            ++all[markAt(bytes, i)];
        }
    }
    constexpr double least = 0.7, most = 1.7; // times a period that a mark comes
    std::vector<std::size_t> often;
    for (std::size_t mark = 0; mark < marks; ++mark) {
        if (all[mark] * longestPeriod >= least * static_cast<double>(count)) {
            often.push_back(mark);
        }
    }
    std::vector<Beat> beats;
    std::vector<int> repeated(marks);
    double best = 0;
    for (std::size_t period = shortestPeriod; period <= longestPeriod && period * 4 < count; ++period) {
        for (const auto mark : often) {
            repeated[mark] = 0;
        }
        for (const auto& bytes : parts) {
            for (std::size_t i = 0; i + period + length <= bytes.size(); ++i) {
                const auto mark = markAt(bytes, i);
                repeated[mark] += mark == markAt(bytes, i + period) ? 1 : 0;
            }
        }
        const double periods = static_cast<double>(count) / static_cast<double>(period);
        for (const auto mark : often) {
            if (all[mark] > most * periods || all[mark] < least * periods) {
                continue;
            }
            const double support = std::min(1.0, repeated[mark] / periods);
            const auto low = static_cast<std::uint8_t>(mark & 0xFFU), high = static_cast<std::uint8_t>(mark >> 8U);
            beats.push_back({period, length == 1 ? Bytes{low} : Bytes{high, low}, support});
            best = std::max(best, support);
        }
    }
    std::erase_if(beats, [&](const Beat& beat) { return beat.support < 0.5 || beat.support < 0.7 * best; });
    std::stable_sort(beats.begin(), beats.end(),
                     [](const Beat& left, const Beat& right) { return left.support > right.support; });
    beats.resize(std::min(beats.size(), triedBeats));
    return beats;
}

/// A mark is made to be told from numbers: its bits change often (common practice, no source), where the high byte of a
/// slow number changes little.
int changesOf(const Bytes& mark)
{
    int changes = 0;
    for (const auto byte : mark) {
        changes += std::popcount(static_cast<unsigned>((byte ^ byte >> 1U) & 0x7FU));
    }
    return changes;
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
        table.count.push_back(static_cast<double>(i));
        i += period;
    }
    table.share = static_cast<double>(table.bytes.size()) / static_cast<double>(stream.bytes.size());
    return table;
}

/// Bytes of a face or two repeat as well as a mark does, but not through all of the teaching: the beat that cuts most
/// of the stream into packets is the one, of equals the shortest, of these the likeliest mark.
std::pair<Beat, Table> bestBeat(const Stream& stream, std::size_t length)
{
    constexpr double asMuch = 0.02;
    Beat beat;
    Table table;
    for (const auto& tried : beatsOf(stream.bytes, length)) {
        auto cut = packetsOfBeat(stream, tried.period, tried.mark);
        const bool alike = cut.share > table.share - asMuch;
        const bool better = cut.share > table.share + asMuch || (alike && tried.period < beat.period) ||
                            (alike && tried.period == beat.period && changesOf(tried.mark) > changesOf(beat.mark));
        if (beat.period == 0 || better) {
            beat = tried;
            table = std::move(cut);
        }
    }
    return {beat, table};
}

/// Where packets are no longer a period apart, a notification is missing.
void countLost(Table& table, double missing)
{
    const auto period = static_cast<double>(table.width);
    double before = table.count.front(), now = 0;
    for (auto& count : table.count) {
        const double step = count - before;
        now += step == 0 || step == period ? step / period : std::max(1.0, std::round((step + missing) / period));
        before = count;
        count = now;
    }
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
    auto [beat, table] = bestBeat(stream, 2);
    if (table.share < mostOfIt) {
        std::tie(beat, table) = bestBeat(stream, 1);
    }
    if (beat.period == 0 || table.size() < fewestRecords) {
        return {};
    }
    if (beat.mark.size() == 1) {
        // Bytes that stay the same around it belong to the mark; the packet begins with the first of them.
        Bytes mark;
        for (std::size_t i = earlierBegin(table); i > 0; --i) {
            mark.push_back(table.bytes[table.width - i]);
        }
        mark.push_back(beat.mark.front());
        beat.mark = mark.size() == 1 ? commonBegin(table) : mark;
        beat.mark.resize(std::min<std::size_t>(beat.mark.size(), 2));
        table = packetsOfBeat(stream, beat.period, beat.mark);
    }
    table.notifier = notifications.notifier;
    if (table.size() < fewestRecords) {
        return {};
    }
    countLost(table, notifications.meanBytes());
    return {std::move(table)};
}

} // namespace fleetrung::sensor::teaching
