#include "tests/teach/layout.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

namespace fleetrung::tests
{
namespace
{

using namespace sensor;
using simulator::Random;

constexpr double gravity = 9.80665;
constexpr double degree = std::numbers::pi / 180;

template <class T, std::size_t n> T oneOf(Random& random, const std::array<T, n>& choices)
{
    return choices.at(static_cast<std::size_t>(random.below(static_cast<int>(n))));
}

/// How readings of one triad are written.
struct Writing {
    NumberType type;
    ByteOrder order;
    double offset, scale;
};

NumberType anyType(Random& random)
{
    const double draw = random.uniform();
    using enum NumberType;
    return draw < 0.5    ? Int16
           : draw < 0.58 ? UInt16
           : draw < 0.66 ? Int12
           : draw < 0.70 ? UInt12
           : draw < 0.76 ? Int24
           : draw < 0.82 ? Int32
           : draw < 0.90 ? Float32
           : draw < 0.95 ? Float16
                         : Int8;
}

double offsetOf(NumberType type)
{
    return type == NumberType::UInt16 ? -32768 : type == NumberType::UInt12 ? -2048 : 0;
}

/// Counts per gravity: data-sheet steps, whole units, and any.
double accelerometerScale(Random& random, NumberType type)
{
    using enum NumberType;
    switch (type) {
    case Int8:
        return gravity / oneOf(random, std::array{32.0, 50.0});
    case Int12:
    case UInt12:
        return gravity / oneOf(random, std::array{128.0, 256.0, 512.0});
    case Int24:
        return gravity / oneOf(random, std::array{262144.0, 100000.0, random.uniform(50000, 900000)});
    case Int32:
        return gravity / oneOf(random, std::array{1e6, 65536.0, 1e5, random.uniform(1e4, 1e8)});
    case Float16:
        return oneOf(random, std::array{1.0, gravity});
    case Float32:
        return oneOf(random, std::array{1.0, gravity, gravity / 1000});
    default:
        return oneOf(random, std::array{gravity / 2048, gravity / 4096, gravity / 8192, gravity / 16384, gravity / 1000,
                                        gravity * 0.488e-3, 0.01, gravity / random.uniform(900, 14000)});
    }
}

double gyroscopeScale(Random& random, NumberType type)
{
    using enum NumberType;
    switch (type) {
    case Int8:
        return degree * 4;
    case Int12:
    case UInt12:
        return degree / oneOf(random, std::array{1.0, 2.0, 4.0});
    case Int24:
        return degree / oneOf(random, std::array{1000.0, random.uniform(300, 5000)});
    case Int32:
        return degree / oneOf(random, std::array{1000.0, 1e6, random.uniform(300, 1e6)});
    case Float16:
    case Float32:
        return oneOf(random, std::array{1.0, degree});
    default:
        return oneOf(random, std::array{degree / 16.4, degree / 32.8, degree / 65.5, degree * 0.07, degree * 0.0175,
                                        degree / 10, 0.001, degree / random.uniform(8, 60)});
    }
}

Writing writingOf(Random& random, NumberType type, bool accelerometer)
{
    const auto order = random.chance(0.7) ? ByteOrder::Little : ByteOrder::Big;
    return {type, bitsOf(type) == 8 ? ByteOrder::Little : order, offsetOf(type),
            accelerometer ? accelerometerScale(random, type) : gyroscopeScale(random, type)};
}

/// Axes in any order, each either way round: the frame that is sent may be left-handed.
struct Axes {
    std::array<int, 3> axis{0, 1, 2};
    std::array<double, 3> sign{1, 1, 1};
};

Axes anyAxes(Random& random)
{
    Axes axes;
    if (random.chance(0.4)) {
        return axes;
    }
    std::swap(axes.axis[0], axes.axis.at(static_cast<std::size_t>(random.below(3))));
    std::swap(axes.axis[1], axes.axis.at(static_cast<std::size_t>(1 + random.below(2))));
    for (auto& sign : axes.sign) {
        sign = random.chance(0.5) ? 1 : -1;
    }
    return axes;
}

Channel channelOf(Channel first, int axis)
{
    return static_cast<Channel>(static_cast<int>(first) + axis);
}

/// Puts fields one after the other.
class Packing
{
public:
    int bit = 0;
    std::vector<Field> fields;

    void byteAlign() { bit = (bit + 7) / 8 * 8; }
    void put(Channel channel, const Writing& writing, double sign = 1)
    {
        fields.push_back({channel, writing.type, writing.order, bit, writing.offset, sign * writing.scale});
        bit += bitsOf(writing.type);
    }
    void triad(Channel first, const Writing& writing, const Axes& axes)
    {
        for (std::size_t i = 0; i < 3; ++i) {
            put(channelOf(first, axes.axis.at(i)), writing, axes.sign.at(i));
        }
        byteAlign();
    }
};

double anyRate(Random& random)
{
    return random.chance(0.6) ? oneOf(random, std::array{25.0, 50.0, 52.0, 62.5, 100.0, 104.0, 119.0, 125.0, 200.0,
                                                         208.0, 250.0, 400.0})
                              : random.uniform(25, 400);
}

void addCounter(Random& random, std::vector<Field>& fields, int& bit, StreamForm& form, double rate)
{
    using enum NumberType;
    const auto type = oneOf(random, std::array{UInt8, UInt8, UInt16, UInt16, UInt32});
    fields.push_back({Channel::Counter, type, random.chance(0.7) ? ByteOrder::Little : ByteOrder::Big, bit, 0, 1});
    bit += bitsOf(type);
    form.counts = random.chance(0.5) ? Counts::Samples : Counts::Packets;
    if (type == UInt8 && random.chance(0.2)) {
        form.counterWrap = 100;
    }
    if (type == UInt16 && random.chance(0.2)) {
        form.counterWrap = 1000;
    }
    (void)rate;
}

void addStamp(Random& random, std::vector<Field>& fields, int& bit, double secondsBetween)
{
    using enum NumberType;
    double tick = oneOf(random, std::array{1e-3, 1e-3, 1e-6, 1.0 / 32768});
    auto type = oneOf(random, std::array{UInt32, UInt32, UInt24, UInt16});
    if (tick > 0.5e-3 && secondsBetween < 2.1e-3) {
        tick = 1e-6; // milliseconds would not tell one sample from the next
    }
    if (type == UInt16 && secondsBetween * 8 > 65536 * tick) {
        type = UInt32;
    }
    fields.push_back({Channel::Stamp, type, random.chance(0.7) ? ByteOrder::Little : ByteOrder::Big, bit, 0, tick});
    bit += bitsOf(type);
}

/// A stream of packets with the triads asked for.
void fillBinary(Random& random, Layout& layout, StreamForm& form, std::vector<Distractor>& distractors,
                const std::vector<std::pair<Channel, NumberType>>& triads, bool byteStream)
{
    Packing sample;
    std::vector<Distractor> ofSample;
    const bool stampInSample = random.chance(0.1);
    if (random.chance(0.15)) {
        ofSample.push_back({Distractor::Kind::Temperature, sample.bit, 2, random.uniform(-3000, 3000), 0, 1});
        sample.bit += 16;
    }
    if (triads.size() == 2 && triads[0].second == triads[1].second && bitsOf(triads[0].second) != 12 &&
        random.chance(0.12)) {
        layout.words += " interleaved";
        const Writing writings[2] = {writingOf(random, triads[0].second, triads[0].first == Channel::AccelerometerX),
                                     writingOf(random, triads[1].second, triads[1].first == Channel::AccelerometerX)};
        const Axes axes[2] = {anyAxes(random), anyAxes(random)};
        for (std::size_t i = 0; i < 3; ++i) {
            for (std::size_t which = 0; which < 2; ++which) {
                sample.put(channelOf(triads[which].first, axes[which].axis.at(i)), writings[which],
                           axes[which].sign.at(i));
            }
        }
    } else {
        for (const auto& [first, type] : triads) {
            sample.triad(first, writingOf(random, type, first == Channel::AccelerometerX), anyAxes(random));
            if (random.chance(0.1)) {
                ofSample.push_back({Distractor::Kind::Noise, sample.bit, 1, 0, 0, 1});
                sample.bit += 8;
            }
        }
    }
    if (random.chance(0.15)) {
        for (int axis = 0; axis < 3; ++axis) {
            ofSample.push_back({Distractor::Kind::Magnetometer, sample.bit, 2, 0, axis, 1});
            sample.bit += 16;
        }
        layout.words += " magnetometer";
    }
    const bool hasStamp = random.chance(0.5);
    if (hasStamp && stampInSample) {
        addStamp(random, sample.fields, sample.bit, 1 / layout.rate);
    }

    auto& binary = form.binary;
    binary.sampleFields = sample.fields;
    binary.sampleBits = sample.bit;
    const int most = std::min(12, (byteStream ? 40 : 236) * 8 / sample.bit);
    binary.samples = random.chance(0.45) ? 1 : 1 + random.below(std::max(1, most));
    binary.samples = std::max(1, std::min(binary.samples, static_cast<int>(layout.rate / 2.5)));

    int bit = 0;
    const auto other = [&](Distractor::Kind kind, int bytes, double value) {
        distractors.push_back({kind, bit, bytes, value, 0, 0});
        bit += 8 * bytes;
    };
    if (byteStream) {
        binary.stream = true;
        binary.mark = {0xAA, 0x55};
        bit = 16;
    } else {
        const int constants = random.below(3);
        for (int i = 0; i < constants; ++i) {
            other(Distractor::Kind::Constant, 1, random.below(256));
        }
    }
    if (random.chance(0.6)) {
        addCounter(random, binary.packetFields, bit, form, layout.rate);
    }
    if (hasStamp && !stampInSample) {
        addStamp(random, binary.packetFields, bit, binary.samples / layout.rate);
    }
    if (random.chance(0.2)) {
        other(Distractor::Kind::Battery, 1, random.uniform(30, 100));
    }
    binary.firstBit = bit;
    bit += binary.samples * sample.bit;
    for (auto distractor : ofSample) {
        distractor.bit += binary.firstBit;
        distractor.stride = sample.bit;
        distractors.push_back(distractor);
    }
    if (random.chance(0.15)) {
        other(Distractor::Kind::Temperature, 2, random.uniform(-3000, 3000));
    }
    if (random.chance(0.3)) {
        other(Distractor::Kind::Checksum, 1, 0);
    }
    binary.length = bit / 8;
    form.stampOf = random.chance(0.5) ? StampOf::First : StampOf::Last;
}

void fillLines(Random& random, StreamForm& form, std::vector<Distractor>& distractors, bool gyroscope)
{
    form.text = true;
    auto& lines = form.lines;
    const bool keys = random.chance(0.3);
    lines.separator = oneOf(random, std::array{',', ',', ';', ' ', '\t'});
    lines.prefix = random.chance(0.3) ? (lines.separator == ',' ? "M," : "$") : "";
    int column = 0;
    const auto put = [&](Channel channel, double scale, const char* key) {
        lines.columns.push_back({channel, column++, keys ? key : "", 0, scale});
    };
    const auto triad = [&](Channel first, double scale, std::array<const char*, 3> names) {
        const auto axes = anyAxes(random);
        for (std::size_t i = 0; i < 3; ++i) {
            put(channelOf(first, axes.axis.at(i)), axes.sign.at(i) * scale, names.at(i));
        }
    };
    if (random.chance(0.4)) {
        put(Channel::Counter, 1, "n");
        form.counterWrap = random.chance(0.5) ? 256 : 0;
    }
    if (random.chance(0.5)) {
        put(Channel::Stamp, oneOf(random, std::array{1e-3, 1e-6, 1.0}), "t");
    }
    if (!keys && random.chance(0.3)) {
        distractors.push_back({Distractor::Kind::Temperature, column++, 0, random.uniform(10, 30), 0, 0});
    }
    triad(Channel::AccelerometerX, oneOf(random, std::array{1.0, gravity, gravity / 1000, gravity / 4096}),
          {"ax", "ay", "az"});
    if (gyroscope) {
        triad(Channel::GyroscopeX, oneOf(random, std::array{1.0, degree, degree / 16.4}), {"gx", "gy", "gz"});
    }
    if (!keys && random.chance(0.3)) {
        distractors.push_back({Distractor::Kind::Battery, column++, 0, random.uniform(30, 100), 0, 0});
    }
}

StreamForm streamOf(int number)
{
    StreamForm form;
    form.service = "0000ff00-0000-1000-8000-00805f9b34fb";
    form.characteristic = "0000ff0" + std::string(1, static_cast<char>('1' + number)) + "-0000-1000-8000-00805f9b34fb";
    return form;
}

} // namespace

Layout randomLayout(Random& random)
{
    Layout layout;
    layout.rate = anyRate(random);
    layout.loss = random.chance(0.3) ? 0 : random.uniform(0, 0.03);
    layout.interval = random.uniform(0.005, 0.060);
    layout.battery = random.chance(0.5);
    layout.anyMounting = random.chance(0.15);
    layout.part = std::string(oneOf(random, std::array{"A", "B", "C", "D", "E"}));
    const bool gyroscope = random.chance(0.8);
    auto& map = layout.map;
    map.key = map.name = "random";
    map.streams.push_back(streamOf(0));
    layout.distractors.emplace_back();
    const double kind = random.uniform();
    if (kind < 0.14) {
        layout.words += " lines";
        layout.rate = std::min(layout.rate, 200.0);
        layout.payload = oneOf(random, std::array{20, 61, 182, 244});
        layout.wholeLines = random.chance(0.5);
        fillLines(random, map.streams[0], layout.distractors[0], gyroscope);
        return layout;
    }
    const auto type = anyType(random);
    const auto second = random.chance(0.2) ? anyType(random) : type;
    std::pair accelerometer{Channel::AccelerometerX, type}, turning{Channel::GyroscopeX, second};
    const bool byteStream = kind < 0.24;
    if (byteStream) {
        layout.words += " byte stream";
        layout.payload = oneOf(random, std::array{20, 61, 182, 244});
    }
    if (gyroscope && !byteStream && random.chance(0.14)) {
        layout.words += " separate";
        map.streams.push_back(streamOf(1));
        layout.distractors.emplace_back();
        fillBinary(random, layout, map.streams[0], layout.distractors[0], {accelerometer}, false);
        fillBinary(random, layout, map.streams[1], layout.distractors[1], {turning}, false);
        return layout;
    }
    std::vector<std::pair<Channel, NumberType>> triads{accelerometer};
    if (gyroscope) {
        triads.insert(random.chance(0.6) ? triads.end() : triads.begin(), turning);
    }
    fillBinary(random, layout, map.streams[0], layout.distractors[0], triads, byteStream);
    return layout;
}

} // namespace fleetrung::tests
