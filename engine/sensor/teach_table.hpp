// What came through one notifier as records of one shape, whatever carried them. Private to engine/sensor.
#pragma once

#include <array>
#include <cstddef>
#include <cstdint>
#include <string>
#include <vector>

#include "engine/sensor/teach.hpp"

namespace fleetrung::sensor::teaching
{

/// Where a number stands in a record. Of lines of text `bit` is the cell, and the type says nothing.
struct Place {
    NumberType type = NumberType::Int16;
    ByteOrder order = ByteOrder::Little;
    int bit = 0;

    bool operator==(const Place&) const = default;
};

enum class Carrier : std::uint8_t { Packets, ByteStream, Lines };

struct Table {
    std::size_t notifier = 0;
    Carrier carrier = Carrier::Packets;
    std::size_t width = 0;                 ///< bytes of a packet, or cells of a line
    std::vector<std::uint8_t> bytes;       ///< packets, one after the other
    std::vector<double> cells;             ///< lines, likewise; NaN where there is no number
    std::vector<double> arrival;           ///< s after the first packet of the recording
    std::vector<double> count;             ///< records sent until then, where breaks say how many were lost; else empty
    std::vector<double> time;              ///< s, likewise, with the radio's bunching smoothed away
    double share = 0;                      ///< of all that came through the notifier
    std::vector<std::uint8_t> mark;        ///< of a byte stream, or where other packets come through the same notifier
    bool onlyLength = true;                ///< packets: none of another length came
    std::vector<std::size_t> lengths = {}; ///< packets: all lengths that came
    char separator = ',';
    std::string prefix;
    std::vector<std::string> keys;

    [[nodiscard]] std::size_t size() const { return arrival.size(); }
    [[nodiscard]] bool isText() const { return carrier == Carrier::Lines; }
    /// In bits, or in cells.
    [[nodiscard]] int room() const { return static_cast<int>(isText() ? width : width * 8); }
    [[nodiscard]] int widthOf(const Place& place) const { return isText() ? 1 : bitsOf(place.type); }
    [[nodiscard]] bool holds(const Place& place) const
    {
        return place.bit >= 0 && place.bit + widthOf(place) <= room();
    }
    [[nodiscard]] double at(std::size_t record, const Place& place) const;
    /// Mean time from record to record [s].
    [[nodiscard]] double interval() const;
};

/// All tables that the recording may hold, the plainest reading of a notifier first. What came is cut off at a limit,
/// so that no recording takes longer than seconds.
[[nodiscard]] std::vector<Table> tablesOf(const TeachRecording& recording);

/// Places of one number type and byte order.
using PlaceGroup = std::vector<Place>;
[[nodiscard]] std::vector<PlaceGroup> placesOf(const Table& table);

/// The notifications of one notifier.
struct Notifications {
    std::size_t notifier = 0;
    std::vector<const RawPacket*> packets;
    std::int64_t zero = 0; ///< arrival of the recording's first packet [ns]

    [[nodiscard]] double arrivalOf(std::size_t packet) const;
    [[nodiscard]] double meanBytes() const;
    [[nodiscard]] bool areText() const;
};
[[nodiscard]] std::vector<Table> packetTables(const Notifications& notifications);
[[nodiscard]] std::vector<Table> byteStreamTables(const Notifications& notifications);
[[nodiscard]] std::vector<Table> lineTables(const Notifications& notifications);

inline constexpr std::size_t fewestRecords = 40; ///< of a table; fewer say nothing about motion

} // namespace fleetrung::sensor::teaching
