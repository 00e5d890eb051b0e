#include "demo/sensor/bit_writer.hpp"

#include <algorithm>
#include <bit>
#include <cmath>

namespace fleetrung::demo
{
namespace
{

using sensor::ByteOrder;
using sensor::Field;
using sensor::NumberType;

bool isFloat(NumberType type)
{
    return type == NumberType::Float16 || type == NumberType::Float32;
}

bool isSigned(NumberType type)
{
    return type == NumberType::Int8 || type == NumberType::Int12 || type == NumberType::Int16 ||
           type == NumberType::Int24 || type == NumberType::Int32;
}

/// IEEE 754 binary16, rounded to the nearest; what is too large becomes the largest finite one.
std::uint16_t halfBits(double value)
{
    const auto sign = static_cast<std::uint16_t>(std::signbit(value) ? 0x8000 : 0);
    const double size = std::min(std::abs(value), 65504.0);
    if (!(size > 0)) {
        return sign;
    }
    const int exponent = std::max(std::ilogb(size), -14); // below it: subnormal
    const auto steps = static_cast<int>(std::lround(std::ldexp(size, 10 - exponent)));
    // A mantissa rounded up to 2048 carries into the exponent by itself.
    return static_cast<std::uint16_t>(sign + (exponent + 14) * 1024 + steps);
}

std::uint32_t floatBits(NumberType type, double value)
{
    return type == NumberType::Float16 ? halfBits(value) : std::bit_cast<std::uint32_t>(static_cast<float>(value));
}

/// Little: bit 0 of byte 0 is the first, and the number's lowest. Big: bit 7 of byte 0 is the first, and its highest.
/// With whole bytes these are the two byte orders.
void place(std::span<std::uint8_t> packet, const Field& field, int bit, std::uint32_t value)
{
    const int bits = bitsOf(field.type);
    if (bit < 0 || bit + bits > static_cast<int>(packet.size()) * 8) {
        return;
    }
    for (int i = 0; i < bits; ++i) {
        const bool little = field.order == ByteOrder::Little;
        const int at = bit + (little ? i : bits - 1 - i);
        const auto mask = static_cast<std::uint8_t>(1U << static_cast<unsigned>(little ? at % 8 : 7 - at % 8));
        auto& byte = packet[static_cast<std::size_t>(at / 8)];
        byte = static_cast<std::uint8_t>((value >> static_cast<unsigned>(i)) & 1U ? byte | mask : byte & ~mask);
    }
}

} // namespace

void writeReading(std::span<std::uint8_t> packet, const Field& field, int bit, double counts)
{
    if (isFloat(field.type)) {
        place(packet, field, bit, floatBits(field.type, counts));
        return;
    }
    const double range = std::ldexp(1.0, bitsOf(field.type));
    const double least = isSigned(field.type) ? -range / 2 : 0;
    const double whole = std::clamp(std::round(counts), least, least + range - 1);
    place(packet, field, bit, static_cast<std::uint32_t>(static_cast<std::int64_t>(whole)));
}

void writeRunning(std::span<std::uint8_t> packet, const Field& field, int bit, double counts)
{
    place(packet, field, bit,
          isFloat(field.type) ? floatBits(field.type, counts)
                              : static_cast<std::uint32_t>(static_cast<std::int64_t>(std::floor(counts + 0.5))));
}

} // namespace fleetrung::demo
