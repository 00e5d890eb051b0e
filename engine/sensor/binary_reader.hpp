// One binary packet to readings, and a byte stream to packets. Private to engine/sensor.
#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <span>

#include "engine/sensor/packet_decoder.hpp"
#include "engine/sensor/sequence.hpp"

namespace fleetrung::sensor
{

/// An attribute's value is at most 512 bytes (Bluetooth Core Specification, Vol 3 Part F 3.2.9).
inline constexpr int longestPacket = 512;

class BinaryReader
{
public:
    explicit BinaryReader(const BinaryForm& form);

    [[nodiscard]] std::size_t mostSamples() const { return mostSamples_; }
    /// Readings, counters and stamps of one packet, from the front of the spans (of `mostSamples`); or why not.
    std::optional<BadPacket> read(std::span<const std::uint8_t> bytes, std::span<RawSample> samples, Ticks& packet,
                                  std::span<Ticks> each, std::size_t& size) const;

private:
    [[nodiscard]] bool isSane() const;
    std::optional<BadPacket> howMany(std::span<const std::uint8_t> bytes, std::size_t& size) const;
    static bool take(std::span<const std::uint8_t> bytes, int bit, const Field& field, RawSample& sample, Ticks& ticks);

    BinaryForm form_;
    int packetBits_ = 0; ///< that every packet needs for its mark and packetFields
    std::optional<Field> count_;
    std::size_t mostSamples_ = 0;
    bool sane_;
};

/// Finds the packets of fixed length in a byte stream by their mark, over any cut into notifications.
class PacketFinder
{
public:
    explicit PacketFinder(const BinaryForm& form);

    /// The next packet; none: all bytes are used up. `skipped` grows where bytes had to be passed over after the
    /// stream had been in step.
    std::optional<std::span<const std::uint8_t>> next(std::span<const std::uint8_t>& bytes, std::int64_t& skipped);
    void restart();

private:
    /// What is held from there on (`position` <= size_) is the mark, or begins it.
    [[nodiscard]] bool markAt(std::size_t position) const;
    void drop(std::size_t bytes);

    std::vector<std::uint8_t> mark_;
    std::size_t length_;
    std::array<std::uint8_t, std::size_t{2} * longestPacket> held_{};
    std::size_t size_ = 0, used_ = 0; ///< held, and of these handed out last time
    bool inStep_ = false;
};

} // namespace fleetrung::sensor
