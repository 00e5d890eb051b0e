// Bytes to samples by a sensor map. Pure, one object a link; memory is asked for in the constructor only. Any bytes of
// any length (0-512 and more) are safe: what cannot be decoded is counted by cause and skipped.
#pragma once

#include <array>
#include <cstddef>
#include <cstdint>
#include <memory>
#include <span>
#include <string_view>

#include "engine/sensor/packet.hpp"
#include "engine/sensor/sensor_map.hpp"

namespace fleetrung::sensor
{

/// Why a packet or line gave no sample. Leap: its counter or stamp is so far ahead that it was not believed (the next
/// one may confirm it). NotOurs (another mark or prefix) is no fault.
enum class BadPacket : std::uint8_t {
    Empty,
    TooShort,
    WrongLength, ///< also a line of another number of values than those before, and bytes between two packets
    NotANumber,
    LineTooLong,
    MissingColumn,
    Leap,
    NotOurs
};
inline constexpr std::size_t badPacketKinds = 8;
/// "too short", "wrong length", ... for health and logs.
[[nodiscard]] std::string_view badPacketName(BadPacket kind);

struct PacketCounts {
    std::int64_t packets = 0; ///< notifications handed in
    std::int64_t samples = 0;
    std::int64_t lost = 0;    ///< samples that the counter says are missing (without a counter: 0)
    std::int64_t doubled = 0; ///< packets that came again or late; left out
    std::array<std::int64_t, badPacketKinds> bad{};

    [[nodiscard]] std::int64_t badInAll() const; ///< without NotOurs
};

class PacketDecoder
{
public:
    explicit PacketDecoder(const SensorMap& map);
    ~PacketDecoder();
    PacketDecoder(PacketDecoder&&) noexcept;
    PacketDecoder& operator=(PacketDecoder&&) noexcept;

    /// The samples of one notification of stream `stream`, in order; valid until the next call. Empty where there are
    /// none. Of lines of text what comes before the first line's end (after start and restart) is left out: it may be
    /// the end of a line, and half a number is a number too.
    std::span<const RawSample> decode(std::size_t stream, std::span<const std::uint8_t> bytes, std::int64_t arrival);
    /// The link came back: counters and stamps may begin anew, half a line is forgotten.
    void restart();

    [[nodiscard]] const PacketCounts& counts(std::size_t stream) const;

private:
    struct Stream;
    std::vector<Stream> streams_;
};

/// How well a map fits packets that came (a few seconds, the sensor at rest at some time): 0 (not at all) to 1. The
/// share of packets that decode, and whether gravity comes out. Chooses among maps of the same characteristics.
[[nodiscard]] double fitOf(const SensorMap& map, std::span<const RawPacket> packets);

} // namespace fleetrung::sensor
