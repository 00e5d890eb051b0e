// Maps of every form, for the tests of decoding. Invented.
#pragma once

#include <initializer_list>
#include <string>
#include <vector>

#include "engine/sensor/sensor_map.hpp"

namespace fleetrung::sensor::forms
{

inline constexpr double gravity = 9.80665; ///< m/s2, standard gravity (CGPM 1901)
inline constexpr double degree = 3.14159265358979323846 / 180;
inline const std::string service = "6e400001-b5a3-f393-e0a9-e50e24dcca9e";
inline const std::string characteristic = "6e400003-b5a3-f393-e0a9-e50e24dcca9e";

inline Channel axis(int index)
{
    return static_cast<Channel>(index);
}

/// `axes` readings in a row from `bit` on: 3 = accelerometer, 6 = gyroscope too.
inline std::vector<Field> readings(NumberType type, ByteOrder order, int axes, double accelerometer, double gyroscope,
                                   int bit = 0)
{
    std::vector<Field> fields;
    for (int i = 0; i < axes; ++i)
        fields.push_back({axis(i), type, order, bit + i * bitsOf(type), 0, i < 3 ? accelerometer : gyroscope});
    return fields;
}

/// Whole-byte packets of one or several samples, `header` before them.
inline SensorMap binary(std::vector<Field> header, std::vector<Field> sample, int samples = 1)
{
    StreamForm form;
    form.service = service;
    form.characteristic = characteristic;
    for (const auto& field : header)
        form.binary.firstBit = std::max(form.binary.firstBit, field.bit + bitsOf(field.type));
    for (const auto& field : sample)
        form.binary.sampleBits = std::max(form.binary.sampleBits, field.bit + bitsOf(field.type));
    form.binary.samples = samples;
    form.binary.packetFields = std::move(header);
    form.binary.sampleFields = std::move(sample);
    SensorMap map;
    map.key = "invented";
    map.name = "Invented";
    map.streams.push_back(std::move(form));
    return map;
}

inline Field counter(NumberType type, int bit = 0)
{
    return {Channel::Counter, type, ByteOrder::Little, bit, 0, 1};
}

inline Field stamp(NumberType type, double scale, int bit = 0)
{
    return {Channel::Stamp, type, ByteOrder::Little, bit, 0, scale};
}

/// Lines of values in the order of the channels.
inline SensorMap lines(std::initializer_list<Channel> channels, double accelerometer, double gyroscope,
                       const std::vector<std::string>& keys = {})
{
    auto map = binary({}, {});
    auto& form = map.streams.front();
    form.text = true;
    for (const auto channel : channels) {
        TextColumn column;
        column.channel = channel;
        column.column = keys.empty() ? static_cast<int>(form.lines.columns.size()) : 0;
        if (!keys.empty())
            column.key = keys[form.lines.columns.size()];
        if (channel < Channel::Counter)
            column.scale = channel < Channel::GyroscopeX ? accelerometer : gyroscope;
        if (channel == Channel::Stamp)
            column.scale = 1e-3;
        form.lines.columns.push_back(column);
    }
    return map;
}

} // namespace fleetrung::sensor::forms
