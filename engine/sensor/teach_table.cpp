#include "engine/sensor/teach_table.hpp"

#include <algorithm>
#include <cmath>

#include "engine/sensor/bits.hpp"

namespace fleetrung::sensor::teaching
{
namespace
{

// Limits that keep any recording to seconds of work: three minutes of a fast sensor stay far below.
constexpr std::size_t mostPackets = 200'000;
constexpr std::size_t mostBytes = std::size_t{4} << 20U;
constexpr std::size_t longestPacket = 512;
constexpr std::size_t mostNotifiers = 16;
constexpr double smoothing = 0.4; // s on either side

double seconds(std::int64_t nanoseconds)
{
    return static_cast<double>(nanoseconds) * 1e-9;
}

/// The radio bunches records and delivers them late: a straight line through the neighbours, at each of them.
std::vector<double> smoothed(const std::vector<double>& arrival, double interval)
{
    const auto count = static_cast<std::ptrdiff_t>(arrival.size());
    const auto reach =
        std::clamp<std::ptrdiff_t>(static_cast<std::ptrdiff_t>(smoothing / std::max(interval, 1e-4)), 4, 400);
    std::vector<double> sum(arrival.size() + 1), product(arrival.size() + 1);
    for (std::size_t i = 0; i < arrival.size(); ++i) {
        sum[i + 1] = sum[i] + arrival[i];
        product[i + 1] = product[i] + arrival[i] * static_cast<double>(i);
    }
    std::vector<double> time(arrival.size());
    for (std::ptrdiff_t i = 0; i < count; ++i) {
        const auto from = std::max<std::ptrdiff_t>(0, i - reach);
        const auto to = std::min(count, i + reach + 1);
        const auto n = static_cast<double>(to - from);
        const double middle = static_cast<double>(from + to - 1) / 2;
        const auto place = [&](const std::vector<double>& sums) {
            return sums[static_cast<std::size_t>(to)] - sums[static_cast<std::size_t>(from)];
        };
        const double total = place(sum);
        const double scatter = n * (n * n - 1) / 12;
        const double slope = scatter > 0 ? (place(product) - middle * total) / scatter : 0;
        time[static_cast<std::size_t>(i)] = total / n + slope * (static_cast<double>(i) - middle);
    }
    for (std::size_t i = 1; i < time.size(); ++i) {
        time[i] = std::max(time[i], time[i - 1] + 1e-6);
    }
    return time;
}

} // namespace

double Table::at(std::size_t record, const Place& place) const
{
    if (isText()) {
        return cells[record * width + static_cast<std::size_t>(place.bit)];
    }
    const std::span<const std::uint8_t> packet(bytes.data() + record * width, width);
    return countsAt(packet, place.bit, {Channel::AccelerometerX, place.type, place.order, 0, 0, 1});
}

double Table::interval() const
{
    return size() > 1 ? (arrival.back() - arrival.front()) / static_cast<double>(size() - 1) : 0;
}

double Notifications::arrivalOf(std::size_t packet) const
{
    return seconds(packets[packet]->arrival - zero);
}

double Notifications::meanBytes() const
{
    double sum = 0;
    for (const auto* packet : packets) {
        sum += static_cast<double>(packet->bytes.size());
    }
    return sum / static_cast<double>(packets.size());
}

bool Notifications::areText() const
{
    std::size_t printable = 0, all = 0, ends = 0;
    for (const auto* packet : packets) {
        for (const auto byte : packet->bytes) {
            printable += (byte >= 0x20 && byte < 0x7F) || byte == '\n' || byte == '\r' || byte == '\t' ? 1 : 0;
            ends += byte == '\n' ? 1 : 0;
            ++all;
        }
        if (all > 20'000) {
            break;
        }
    }
    return ends > 3 && static_cast<double>(printable) > 0.97 * static_cast<double>(all);
}

std::vector<Table> tablesOf(const TeachRecording& recording)
{
    std::vector<Notifications> notifiers(std::min(recording.notifiers.size(), mostNotifiers));
    std::size_t packets = 0, bytes = 0;
    for (const auto& packet : recording.packets) {
        bytes += packet.bytes.size();
        if (++packets > mostPackets || bytes > mostBytes) {
            break;
        }
        if (packet.source < notifiers.size() && !packet.bytes.empty() && packet.bytes.size() <= longestPacket) {
            notifiers[packet.source].packets.push_back(&packet);
        }
    }
    std::vector<Table> tables;
    for (std::size_t i = 0; i < notifiers.size(); ++i) {
        auto& notifications = notifiers[i];
        notifications.notifier = i;
        notifications.zero = recording.packets.front().arrival;
        if (notifications.packets.size() < fewestRecords) {
            continue;
        }
        for (auto read : {notifications.areText() ? lineTables : packetTables,
                          notifications.areText() ? packetTables : byteStreamTables}) {
            for (auto& table : read(notifications)) {
                table.time = smoothed(table.arrival, table.interval());
                tables.push_back(std::move(table));
            }
        }
    }
    return tables;
}

std::vector<PlaceGroup> placesOf(const Table& table)
{
    using enum NumberType;
    if (table.isText()) {
        PlaceGroup cells;
        for (int cell = 0; cell < table.room(); ++cell) {
            cells.push_back({Float32, ByteOrder::Little, cell});
        }
        return {cells};
    }
    std::vector<PlaceGroup> groups;
    for (const auto type :
         {Int8, UInt8, Int16, UInt16, Int24, UInt24, Int32, UInt32, Float16, Float32, Int12, UInt12}) {
        for (const auto order : {ByteOrder::Little, ByteOrder::Big}) {
            if (bitsOf(type) == 8 && order == ByteOrder::Big) {
                continue;
            }
            PlaceGroup group;
            const int step = bitsOf(type) == 12 ? 4 : 8;
            for (Place place{type, order, 0}; table.holds(place); place.bit += step) {
                group.push_back(place);
            }
            groups.push_back(std::move(group));
        }
    }
    return groups;
}

} // namespace fleetrung::sensor::teaching
