// The words of a map's file, beside what they mean. Private to engine/sensor.
#pragma once

#include <algorithm>
#include <array>
#include <optional>
#include <string_view>
#include <utility>

#include "engine/sensor/sensor_map.hpp"

namespace fleetrung::sensor
{

template <class T> using Word = std::pair<std::string_view, T>;

inline constexpr auto channelWords = std::to_array<Word<Channel>>({
    {"accelerometerX", Channel::AccelerometerX},
    {"accelerometerY", Channel::AccelerometerY},
    {"accelerometerZ", Channel::AccelerometerZ},
    {"gyroscopeX", Channel::GyroscopeX},
    {"gyroscopeY", Channel::GyroscopeY},
    {"gyroscopeZ", Channel::GyroscopeZ},
    {"counter", Channel::Counter},
    {"stamp", Channel::Stamp},
    {"stampDelta", Channel::StampDelta},
    {"count", Channel::Count},
});

inline constexpr auto typeWords = std::to_array<Word<NumberType>>({
    {"int8", NumberType::Int8},
    {"uint8", NumberType::UInt8},
    {"int12", NumberType::Int12},
    {"uint12", NumberType::UInt12},
    {"int16", NumberType::Int16},
    {"uint16", NumberType::UInt16},
    {"int24", NumberType::Int24},
    {"uint24", NumberType::UInt24},
    {"int32", NumberType::Int32},
    {"uint32", NumberType::UInt32},
    {"float16", NumberType::Float16},
    {"float32", NumberType::Float32},
});

inline constexpr auto orderWords =
    std::to_array<Word<ByteOrder>>({{"little", ByteOrder::Little}, {"big", ByteOrder::Big}});
inline constexpr auto countsWords =
    std::to_array<Word<Counts>>({{"samples", Counts::Samples}, {"packets", Counts::Packets}});
inline constexpr auto stampOfWords = std::to_array<Word<StampOf>>({{"first", StampOf::First}, {"last", StampOf::Last}});

inline constexpr auto traitWords = std::to_array<Word<double motion::SensorTraits::*>>({
    {"accelerometerNoise", &motion::SensorTraits::accelerometerNoise},
    {"gyroscopeNoise", &motion::SensorTraits::gyroscopeNoise},
    {"accelerometerBias", &motion::SensorTraits::accelerometerBias},
    {"gyroscopeBias", &motion::SensorTraits::gyroscopeBias},
    {"accelerometerScaleError", &motion::SensorTraits::accelerometerScaleError},
    {"gyroscopeScaleError", &motion::SensorTraits::gyroscopeScaleError},
    {"accelerometerRange", &motion::SensorTraits::accelerometerRange},
    {"gyroscopeRange", &motion::SensorTraits::gyroscopeRange},
});

/// What a unit measures, and its size in SI units (standard gravity: CGPM 1901).
enum class Quantity : std::uint8_t { Force, Turning, Time, Number };
struct Unit {
    Quantity quantity;
    double size;
};
inline constexpr double degreeInRadians = 3.14159265358979323846 / 180;
/// The first unit of a quantity is the SI unit.
inline constexpr auto unitWords = std::to_array<Word<Unit>>({
    {"m/s2", {Quantity::Force, 1}},
    {"g", {Quantity::Force, 9.80665}},
    {"rad/s", {Quantity::Turning, 1}},
    {"deg/s", {Quantity::Turning, degreeInRadians}},
    {"s", {Quantity::Time, 1}},
    {"ms", {Quantity::Time, 1e-3}},
    {"us", {Quantity::Time, 1e-6}},
    {"count", {Quantity::Number, 1}},
});

[[nodiscard]] constexpr Quantity quantityOf(Channel channel)
{
    if (channel <= Channel::AccelerometerZ)
        return Quantity::Force;
    if (channel <= Channel::GyroscopeZ)
        return Quantity::Turning;
    return channel == Channel::Stamp || channel == Channel::StampDelta ? Quantity::Time : Quantity::Number;
}

template <class T, std::size_t size>
[[nodiscard]] std::optional<T> meaningOf(const std::array<Word<T>, size>& words, std::string_view word)
{
    const auto found = std::find_if(words.begin(), words.end(), [&](const auto& entry) { return entry.first == word; });
    return found == words.end() ? std::nullopt : std::optional(found->second);
}

template <class T, std::size_t size>
[[nodiscard]] std::string_view wordOf(const std::array<Word<T>, size>& words, T meaning)
{
    const auto found =
        std::find_if(words.begin(), words.end(), [&](const auto& entry) { return entry.second == meaning; });
    return found == words.end() ? std::string_view{} : found->first;
}

} // namespace fleetrung::sensor
