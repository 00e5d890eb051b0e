// Numbers out of bytes: any type at any bit. Private to engine/sensor.
#pragma once

#include <bit>
#include <cmath>
#include <cstdint>
#include <limits>
#include <span>

#include "engine/sensor/sensor_map.hpp"

namespace fleetrung::sensor
{

[[nodiscard]] inline bool isFloat(NumberType type)
{
    return type == NumberType::Float16 || type == NumberType::Float32;
}

[[nodiscard]] inline bool isSigned(NumberType type)
{
    return type == NumberType::Int8 || type == NumberType::Int12 || type == NumberType::Int16 ||
           type == NumberType::Int24 || type == NumberType::Int32;
}

/// `count` (at most 32) bits from `bit` on. Little: bit 0 of byte 0 is the first and the number's lowest; Big: bit 7 of
/// byte 0 is the first and the number's highest. With whole bytes these are the two byte orders.
/// The bytes must hold them.
[[nodiscard]] inline std::uint32_t bitsAt(std::span<const std::uint8_t> bytes, int bit, int count, ByteOrder order)
{
    const auto begin = static_cast<std::size_t>(bit / 8);
    const int shift = bit % 8;
    const int touched = (shift + count + 7) / 8; // at most 5
    std::uint64_t all = 0;
    for (int i = 0; i < touched; ++i) {
        const std::uint64_t byte = bytes[begin + static_cast<std::size_t>(i)];
        all = order == ByteOrder::Little ? all | byte << static_cast<unsigned>(8 * i) : all << 8U | byte;
    }
    all >>= static_cast<unsigned>(order == ByteOrder::Little ? shift : 8 * touched - shift - count);
    return static_cast<std::uint32_t>(all & ((std::uint64_t{1} << static_cast<unsigned>(count)) - 1));
}

/// IEEE 754 binary16: 1 sign bit, 5 of exponent (bias 15), 10 of fraction.
[[nodiscard]] inline double halfValue(std::uint32_t half)
{
    const int exponent = static_cast<int>(half >> 10U & 0x1FU);
    const auto fraction = static_cast<double>(half & 0x3FFU);
    double size = 0;
    if (exponent == 31)
        size = fraction == 0 ? std::numeric_limits<double>::infinity() : std::numeric_limits<double>::quiet_NaN();
    else
        size = exponent == 0 ? std::ldexp(fraction, -24) : std::ldexp(fraction + 1024, exponent - 25);
    return (half & 0x8000U) != 0 ? -size : size;
}

/// Of whole-number types.
[[nodiscard]] inline std::int64_t wholeAt(std::span<const std::uint8_t> bytes, int bit, const Field& field)
{
    const int count = bitsOf(field.type);
    const auto raw = static_cast<std::int64_t>(bitsAt(bytes, bit, count, field.order));
    const auto signBit = std::int64_t{1} << static_cast<unsigned>(count - 1);
    return isSigned(field.type) && (raw & signBit) != 0 ? raw - 2 * signBit : raw;
}

/// As it stands in the packet, without offset and scale; NaN and infinite ones as they are.
[[nodiscard]] inline double countsAt(std::span<const std::uint8_t> bytes, int bit, const Field& field)
{
    if (field.type == NumberType::Float32)
        return static_cast<double>(std::bit_cast<float>(bitsAt(bytes, bit, 32, field.order)));
    if (field.type == NumberType::Float16)
        return halfValue(bitsAt(bytes, bit, 16, field.order));
    return static_cast<double>(wholeAt(bytes, bit, field));
}

} // namespace fleetrung::sensor
