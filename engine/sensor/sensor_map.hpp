// A sensor map: how the bytes of one kind of sensor become samples. A JSON file that anybody can write, check against
// the published schema (sensor_map.schema.json), import and hand on; `teach.hpp` makes one for a sensor nobody
// described.
//
// Units after scaling: m/s2, rad/s, s. In the file a field names its unit ("g", "m/s2", "deg/s", "rad/s", "s", "ms",
// "us", "count"); `Field::scale` holds the product, SI units per count. value = (raw + offset) x scale.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "engine/base/error.hpp"
#include "engine/base/json.hpp"
#include "engine/motion/sample.hpp"

namespace fleetrung::sensor
{

/// What a field says. StampDelta: time of this sample after the packet's stamp (base time + deltas). Count: how many
/// samples this packet holds.
enum class Channel : std::uint8_t {
    AccelerometerX,
    AccelerometerY,
    AccelerometerZ,
    GyroscopeX,
    GyroscopeY,
    GyroscopeZ,
    Counter,
    Stamp,
    StampDelta,
    Count
};

enum class NumberType : std::uint8_t {
    Int8,
    UInt8,
    Int12, ///< bit-packed
    UInt12,
    Int16,
    UInt16,
    Int24,
    UInt24,
    Int32,
    UInt32,
    Float16,
    Float32
};
[[nodiscard]] int bitsOf(NumberType type);

/// Of a field of whole bytes the order of its bytes. Of a bit-packed one where its bits lie: Little = bit 0 of byte 0
/// comes first, Big = bit 7 of byte 0 comes first.
enum class ByteOrder : std::uint8_t { Little, Big };

struct Field {
    Channel channel = Channel::AccelerometerX;
    NumberType type = NumberType::Int16;
    ByteOrder order = ByteOrder::Little;
    int bit = 0;       ///< offset in bits: from the packet's start, or of a sample field from its sample's start
    double offset = 0; ///< counts, added before scaling
    double scale = 1;  ///< SI units per count; never zero

    bool operator==(const Field&) const = default;
};

/// What the counter counts, and which sample of a packet the packet's stamp or counter belongs to. A counter's scale is
/// 1 / (what it grows by in one step); its offset is of no account.
enum class Counts : std::uint8_t { Samples, Packets };
enum class StampOf : std::uint8_t { First, Last };

/// Binary packets. The packet is `packetFields` (once), then `samples` samples of `sampleBits` each from `firstBit` on.
/// Counter and stamp may stand in either; accelerometer and gyroscope in sampleFields (a packet with one sample is a
/// packet with samples = 1).
struct BinaryForm {
    std::vector<std::uint8_t> mark; ///< bytes the packet begins with; a packet with others is not ours: ignored
    bool stream = false;            ///< packets of fixed length lie back to back in a byte stream, each begun by `mark`
    int length = 0;                 ///< bytes of a packet; 0: any that holds whole samples
    std::vector<Field> packetFields;
    int samples = 1; ///< 0: as many whole ones as the packet holds (or as Channel::Count says)
    int firstBit = 0;
    int sampleBits = 0;
    std::vector<Field> sampleFields;

    bool operator==(const BinaryForm&) const = default;
};

/// Lines of text, each ended by \n or \r\n, over any cut into notifications. One line, one sample.
struct TextColumn {
    Channel channel = Channel::AccelerometerX;
    int column = 0;  ///< 0-based, of lines of values
    std::string key; ///< of lines of key=value; empty where columns count
    double offset = 0, scale = 1;

    bool operator==(const TextColumn&) const = default;
};
struct TextForm {
    char separator = ',';
    std::string prefix; ///< lines that begin otherwise are not ours: ignored
    std::vector<TextColumn> columns;

    bool operator==(const TextForm&) const = default;
};

/// One characteristic that notifies.
struct StreamForm {
    std::string service;        ///< UUID as in gatt.hpp: 36 lower-case characters
    std::string characteristic; ///< likewise
    bool text = false;          ///< which of the two forms holds
    BinaryForm binary;
    TextForm lines;
    Counts counts = Counts::Samples;
    std::int64_t counterWrap = 0; ///< counter values (times scale) before it begins at 0 again; 0: by its type
    double stampWrap = 0;         ///< s, likewise; 0: by its type and scale
    StampOf stampOf = StampOf::First;
    double rate = 0; ///< samples per second as the sensor's maker says; 0: not known, found from the stream

    bool operator==(const StreamForm&) const = default;
};

struct CharacteristicWrite {
    std::string service, characteristic; ///< UUIDs
    std::vector<std::uint8_t> bytes;
    bool withResponse = true;

    bool operator==(const CharacteristicWrite&) const = default;
};

/// One or two streams; with two, one carries the accelerometer and the other the gyroscope (merged by time).
// NOLINTNEXTLINE(bugprone-exception-escape): the JSON library checks itself when it is moved
struct SensorMap {
    std::string key;  ///< lower-case letters, digits, hyphens
    std::string name; ///< for people
    std::vector<CharacteristicWrite> start, stop;
    std::vector<StreamForm> streams;
    motion::SensorTraits traits;
    Json original; ///< the document it was read from: what this version does not know is kept when it is written

    [[nodiscard]] bool hasGyroscope() const;
};

/// 1 MB; a larger document is refused before it is read.
inline constexpr std::size_t largestMapBytes = std::size_t{1} << 20U;

/// What a schema cannot say, of a map from wherever: the first problem, or nothing.
[[nodiscard]] std::optional<Error> checkSensorMap(const SensorMap& map);
/// Checked against the schema, then for what a schema cannot say: overlapping fields, offsets out of range (a packet
/// has 512 bytes at most), zero or infinite scales, a channel twice or missing, two streams of one characteristic. One
/// error names the place ("streams[0].sampleFields[2].scale") and the cause. Duplicate keys are refused.
[[nodiscard]] Expected<SensorMap> parseSensorMap(std::string_view json);
[[nodiscard]] std::string sensorMapText(const SensorMap& map);
/// The published JSON Schema (draft 7).
[[nodiscard]] std::string_view sensorMapSchema();
/// The maps that come with the program: plain forms under neutral names.
[[nodiscard]] const std::vector<SensorMap>& includedMaps();

} // namespace fleetrung::sensor
