#include "engine/sensor/binary_reader.hpp"

#include <algorithm>
#include <cmath>

#include "engine/sensor/bits.hpp"
#include "engine/sensor/readings.hpp"

namespace fleetrung::sensor
{
namespace
{

constexpr int packetBitsAtMost = longestPacket * 8;

bool isInside(const Field& field)
{
    return field.bit >= 0 && field.bit < packetBitsAtMost;
}

} // namespace

BinaryReader::BinaryReader(const BinaryForm& form) : form_(form), sane_(isSane())
{
    if (!sane_)
        return;
    packetBits_ = static_cast<int>(form.mark.size()) * 8;
    for (const auto& field : form.packetFields) {
        packetBits_ = std::max(packetBits_, field.bit + bitsOf(field.type));
        if (field.channel == Channel::Count)
            count_ = field;
    }
    const int bits = form.length > 0 ? form.length * 8 : packetBitsAtMost;
    const auto room = static_cast<std::size_t>(std::max(0, bits - form.firstBit) / form.sampleBits);
    mostSamples_ = form.samples > 0 && !count_ ? std::min(room, static_cast<std::size_t>(form.samples)) : room;
}

/// A map that nobody checked must do no harm either.
bool BinaryReader::isSane() const
{
    const auto fitsSample = [&](const Field& field) {
        return isInside(field) && field.bit + bitsOf(field.type) <= form_.sampleBits;
    };
    return form_.mark.size() <= longestPacket && form_.length >= 0 && form_.length <= longestPacket &&
           form_.samples >= 0 && form_.samples <= packetBitsAtMost / 8 && form_.firstBit >= 0 &&
           form_.firstBit < packetBitsAtMost && form_.sampleBits >= 8 && form_.sampleBits <= packetBitsAtMost &&
           std::all_of(form_.packetFields.begin(), form_.packetFields.end(), isInside) &&
           std::all_of(form_.sampleFields.begin(), form_.sampleFields.end(), fitsSample);
}

std::optional<BadPacket> BinaryReader::read(std::span<const std::uint8_t> bytes, std::span<RawSample> samples,
                                            Ticks& packet, std::span<Ticks> each, std::size_t& size) const
{
    if (const auto bad = howMany(bytes, size))
        return bad;
    RawSample common = emptySample();
    packet = Ticks{};
    for (const auto& field : form_.packetFields)
        if (!take(bytes, field.bit, field, common, packet))
            return BadPacket::NotANumber;
    for (std::size_t i = 0; i < size; ++i) {
        const int begin = form_.firstBit + static_cast<int>(i) * form_.sampleBits;
        samples[i] = common;
        each[i] = Ticks{};
        for (const auto& field : form_.sampleFields)
            if (!take(bytes, begin + field.bit, field, samples[i], each[i]))
                return BadPacket::NotANumber;
    }
    return std::nullopt;
}

std::optional<BadPacket> BinaryReader::howMany(std::span<const std::uint8_t> bytes, std::size_t& size) const
{
    if (!sane_ || bytes.size() > longestPacket)
        return BadPacket::WrongLength;
    const auto common = std::min(bytes.size(), form_.mark.size());
    if (!std::equal(bytes.begin(), bytes.begin() + static_cast<std::ptrdiff_t>(common), form_.mark.begin()))
        return BadPacket::NotOurs;
    const int bits = static_cast<int>(bytes.size()) * 8;
    if (form_.length > 0 && bits != form_.length * 8)
        return bits < form_.length * 8 ? BadPacket::TooShort : BadPacket::WrongLength;
    if (bits < packetBits_)
        return BadPacket::TooShort;
    const int room = std::max(0, bits - form_.firstBit);
    const int whole = room / form_.sampleBits;
    int wanted = form_.samples > 0 ? form_.samples : whole;
    if (count_) {
        const auto said = wholeAt(bytes, count_->bit, *count_);
        if (said <= 0)
            return BadPacket::Empty;
        wanted = static_cast<int>(std::min<std::int64_t>(said, packetBitsAtMost));
    } else if (form_.samples == 0 && form_.length == 0 && room - whole * form_.sampleBits >= 8) {
        return bits < form_.firstBit + form_.sampleBits ? BadPacket::TooShort : BadPacket::WrongLength;
    }
    if (wanted < 1 || wanted > whole)
        return BadPacket::TooShort;
    size = static_cast<std::size_t>(wanted);
    return std::nullopt;
}

/// False where it is no finite number.
bool BinaryReader::take(std::span<const std::uint8_t> bytes, int bit, const Field& field, RawSample& sample,
                        Ticks& ticks)
{
    switch (field.channel) {
    case Channel::Count:
        return true;
    case Channel::Counter:
        ticks.counter = isFloat(field.type) ? counterCounts(countsAt(bytes, bit, field)) : wholeAt(bytes, bit, field);
        return ticks.counter.has_value();
    case Channel::Stamp:
        ticks.stamp = isFloat(field.type)
                          ? stampNanoseconds((countsAt(bytes, bit, field) + field.offset) * std::abs(field.scale))
                          : wholeAt(bytes, bit, field);
        return ticks.stamp.has_value();
    default:
        return takeReading(field.channel, (countsAt(bytes, bit, field) + field.offset) * field.scale, sample, ticks);
    }
}

PacketFinder::PacketFinder(const BinaryForm& form)
    : mark_(form.mark), length_(static_cast<std::size_t>(std::clamp(form.length, 1, longestPacket)))
{
    mark_.resize(std::min(mark_.size(), length_));
}

void PacketFinder::restart()
{
    size_ = used_ = 0;
    inStep_ = false;
}

std::optional<std::span<const std::uint8_t>> PacketFinder::next(std::span<const std::uint8_t>& bytes,
                                                                std::int64_t& skipped)
{
    drop(used_);
    used_ = 0;
    while (true) {
        const auto taken = std::min(bytes.size(), held_.size() - size_);
        std::copy_n(bytes.begin(), taken, held_.begin() + static_cast<std::ptrdiff_t>(size_));
        size_ += taken;
        bytes = bytes.subspan(taken);
        std::size_t at = 0;
        // What of the next mark is there already must be right: a packet spliced where a notification was lost is none.
        if (inStep_ && size_ >= length_ && !(markAt(0) && markAt(length_))) {
            inStep_ = false;
            ++skipped;
        }
        // Out of step a mark counts only where another follows a packet's length behind it.
        while (!inStep_ && at + length_ + mark_.size() <= size_) {
            inStep_ = markAt(at) && markAt(at + length_);
            at += inStep_ ? 0 : 1;
        }
        drop(at);
        if (inStep_ && size_ >= length_) {
            used_ = length_;
            return std::span<const std::uint8_t>(held_).first(length_);
        }
        if (bytes.empty())
            return std::nullopt;
    }
}

bool PacketFinder::markAt(std::size_t position) const
{
    const auto there = std::min(mark_.size(), size_ - position);
    return std::equal(mark_.begin(), mark_.begin() + static_cast<std::ptrdiff_t>(there),
                      held_.begin() + static_cast<std::ptrdiff_t>(position));
}

void PacketFinder::drop(std::size_t bytes)
{
    std::copy(held_.begin() + static_cast<std::ptrdiff_t>(bytes), held_.begin() + static_cast<std::ptrdiff_t>(size_),
              held_.begin());
    size_ -= bytes;
}

} // namespace fleetrung::sensor
