// Random sound maps of every form. The seed is the caller's to print.
#pragma once

#include <random>

#include "tests/engine/sensor/decoder_helper.hpp"
#include "tests/engine/sensor/map_forms.hpp"

namespace fleetrung::sensor::forms
{

class RandomMap
{
public:
    explicit RandomMap(std::uint64_t seed) : random_(seed) {}

    SensorMap make()
    {
        SensorMap map;
        map.key = "random-" + std::to_string(below(1000));
        map.name = "Random \"map\" \xc3\xa9 " + std::to_string(below(1000));
        const bool gyroscope = chance(0.7);
        if (gyroscope && chance(0.3)) {
            map.streams.push_back(stream(0, 3, 1));
            map.streams.push_back(stream(3, 3, 2));
        } else {
            map.streams.push_back(stream(0, gyroscope ? 6 : 3, 1));
        }
        for (std::size_t i = below(3); i > 0; --i)
            map.start.push_back({uuid(7), uuid(8), bytes(1 + below(20)), chance(0.5)});
        if (chance(0.3))
            map.stop.push_back({uuid(7), uuid(8), bytes(1), chance(0.5)});
        if (chance(0.5))
            map.traits.accelerometerRange = 16 * gravity;
        return map;
    }

private:
    std::size_t below(std::size_t end) { return std::uniform_int_distribution<std::size_t>(0, end - 1)(random_); }
    bool chance(double share) { return std::bernoulli_distribution(share)(random_); }
    double between(double low, double high) { return std::uniform_real_distribution<double>(low, high)(random_); }
    Bytes bytes(std::size_t size)
    {
        Bytes all(size);
        for (auto& byte : all)
            byte = static_cast<std::uint8_t>(below(256));
        return all;
    }
    static std::string uuid(int number) { return "0000fff" + std::to_string(number) + "-0000-1000-8000-00805f9b34fb"; }

    StreamForm stream(int firstAxis, int axes, int number)
    {
        StreamForm form;
        form.service = uuid(0);
        form.characteristic = uuid(number);
        form.text = chance(0.3);
        if (form.text)
            form.lines = lines(firstAxis, axes);
        else
            form.binary = binary(firstAxis, axes);
        const bool ownCounter = std::any_of(form.binary.sampleFields.begin(), form.binary.sampleFields.end(),
                                            [](const auto& field) { return field.channel == Channel::Counter; });
        form.counts = !form.text && !ownCounter && chance(0.5) ? Counts::Packets : Counts::Samples;
        form.stampOf = chance(0.5) ? StampOf::First : StampOf::Last;
        form.rate = chance(0.5) ? 0 : std::round(between(25, 1000));
        return form;
    }

    NumberType readingType()
    {
        using enum NumberType;
        // Wide enough for 20 m/s2 and 6 rad/s in the steps of scaleOf().
        constexpr NumberType types[] = {Int8,  UInt8,  Int12, UInt12, Int16,   UInt16,
                                        Int24, UInt24, Int32, UInt32, Float16, Float32};
        return types[below(std::size(types))];
    }

    /// So that +-24 units are within the type's range.
    Field reading(Channel channel, NumberType type, ByteOrder order, int bit)
    {
        Field field{channel, type, order, bit, 0, 1};
        if (type == NumberType::Float16 || type == NumberType::Float32)
            return field;
        const double range = std::ldexp(1.0, bitsOf(type));
        const bool isSigned = static_cast<int>(type) % 2 == 0;
        field.offset = isSigned ? 0 : -range / 2;
        field.scale = (chance(0.3) ? -1 : 1) * 48 * between(1, 1.3) / range;
        return field;
    }

    BinaryForm binary(int firstAxis, int axes)
    {
        BinaryForm form;
        form.mark = bytes(below(3));
        int bit = static_cast<int>(form.mark.size()) * 8;
        const auto order = chance(0.5) ? ByteOrder::Little : ByteOrder::Big;
        const auto gap = [&] { return 8 * static_cast<int>(chance(0.2) ? below(3) : 0); };
        const bool many = chance(0.5);
        const int samples = many ? static_cast<int>(1 + below(8)) : 1;
        const bool packetStamp = chance(0.4);
        bit += gap();
        if (chance(0.5)) {
            constexpr NumberType types[] = {NumberType::UInt8, NumberType::UInt16, NumberType::UInt24,
                                            NumberType::UInt32};
            form.packetFields.push_back({Channel::Counter, types[below(4)], order, bit, 0, 1});
            bit += bitsOf(form.packetFields.back().type) + gap();
        }
        if (packetStamp) {
            form.packetFields.push_back({Channel::Stamp, chance(0.5) ? NumberType::UInt32 : NumberType::UInt24, order,
                                         bit, 0, chance(0.5) ? 1e-3 : 1.0 / 32768});
            bit += bitsOf(form.packetFields.back().type) + gap();
        }
        const bool count = many && chance(0.3);
        if (count) {
            form.packetFields.push_back({Channel::Count, NumberType::UInt8, order, bit, 0, 1});
            bit += 8 + gap();
        }
        form.firstBit = bit;
        const auto type = readingType();
        int at = gap();
        for (int i = 0; i < axes; ++i) {
            form.sampleFields.push_back(reading(axis(firstAxis + i), type, order, at));
            at += bitsOf(type) + (bitsOf(type) % 8 == 0 ? gap() : 0);
        }
        if (packetStamp && chance(0.5)) {
            form.sampleFields.push_back({Channel::StampDelta, NumberType::Int16, order, at, 0, 1e-3});
            at += 16;
        }
        form.sampleBits = chance(0.5) ? (at + 7) / 8 * 8 : at;
        form.samples = count ? 0 : samples;
        form.length = (form.firstBit + samples * form.sampleBits + 7) / 8 + gap() / 8;
        if (!form.mark.empty() && chance(0.2))
            form.stream = true;
        else if (!count && chance(0.3))
            form.length = 0;
        return form;
    }

    TextForm lines(int firstAxis, int axes)
    {
        TextForm form;
        constexpr char separators[] = {',', ';', '\t', ' '};
        form.separator = separators[below(4)];
        form.prefix = chance(0.2) ? "M:" : "";
        const bool byKey = chance(0.4);
        std::vector<Channel> channels;
        if (chance(0.4))
            channels.push_back(Channel::Counter);
        if (chance(0.4))
            channels.push_back(Channel::Stamp);
        for (int i = 0; i < axes; ++i)
            channels.push_back(axis(firstAxis + i));
        int column = static_cast<int>(below(2));
        for (const auto channel : channels) {
            TextColumn one;
            one.channel = channel;
            one.scale = channel == Channel::Counter ? 1 : channel == Channel::Stamp ? 1e-3 : chance(0.5) ? 1 : 9.80665;
            one.offset = channel < Channel::Counter && chance(0.2) ? between(-1, 1) : 0;
            if (byKey)
                one.key = "k" + std::to_string(column);
            else
                one.column = column;
            column += 1 + static_cast<int>(chance(0.2) ? 1 : 0);
            form.columns.push_back(one);
        }
        return form;
    }

    std::mt19937_64 random_;
};

} // namespace fleetrung::sensor::forms
