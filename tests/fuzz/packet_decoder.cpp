// Any packets through any map, sound or not: no sample that is not finite, counters that only grow, counts that add up.
#include <cmath>

#include "engine/sensor/packet_decoder.hpp"
#include "tests/fuzz/byte_source.hpp"

using namespace fleetrung;
using namespace fleetrung::sensor;
using fuzz::ByteSource;

namespace
{

double scaleFrom(ByteSource& in)
{
    constexpr double scales[] = {1, -1, 9.80665, 1e-3, 1e-6, 0.5, 1.0 / 32768, 0, 1e300, -1e-300};
    return scales[in.below(std::size(scales))];
}

std::vector<Field> fieldsFrom(ByteSource& in, int most)
{
    std::vector<Field> fields;
    for (int i = in.below(most + 1); i > 0; --i) {
        Field field;
        field.channel = static_cast<Channel>(in.below(10));
        field.type = static_cast<NumberType>(in.below(12));
        field.order = in.flag() ? ByteOrder::Big : ByteOrder::Little;
        field.bit = static_cast<int>(in.word(2) % 4200) - 8;
        field.offset = in.flag() ? -static_cast<double>(in.byte()) : 0;
        field.scale = scaleFrom(in);
        fields.push_back(field);
    }
    return fields;
}

StreamForm streamFrom(ByteSource& in)
{
    StreamForm form;
    form.text = in.flag();
    if (form.text) {
        form.lines.separator = static_cast<char>(in.byte());
        const auto prefix = in.bytes(static_cast<std::size_t>(in.below(4)));
        form.lines.prefix.assign(prefix.begin(), prefix.end());
        const bool byKey = in.flag();
        for (int i = in.below(9); i > 0; --i) {
            TextColumn column;
            column.channel = static_cast<Channel>(in.below(10));
            column.column = in.below(12);
            column.key = byKey ? std::string(1, static_cast<char>('a' + in.below(10))) : std::string();
            column.scale = scaleFrom(in);
            form.lines.columns.push_back(column);
        }
    } else {
        form.binary.mark = in.bytes(static_cast<std::size_t>(in.below(4)));
        form.binary.stream = in.flag();
        form.binary.length = static_cast<int>(in.word(2) % 600) - 4;
        form.binary.packetFields = fieldsFrom(in, 4);
        form.binary.samples = in.below(40) - 1;
        form.binary.firstBit = static_cast<int>(in.word(2) % 4200) - 8;
        form.binary.sampleBits = static_cast<int>(in.word(2) % 4200) - 8;
        form.binary.sampleFields = fieldsFrom(in, 8);
    }
    form.counts = in.flag() ? Counts::Packets : Counts::Samples;
    form.stampOf = in.flag() ? StampOf::Last : StampOf::First;
    form.counterWrap = in.flag() ? static_cast<std::int64_t>(in.word(4)) - 8 : 0;
    form.stampWrap = in.flag() ? in.word(2) * 0.01 - 1 : 0;
    return form;
}

SensorMap mapFrom(ByteSource& in)
{
    const auto& included = includedMaps();
    const auto choice = static_cast<std::size_t>(in.byte());
    if (choice < included.size())
        return included[choice];
    SensorMap map;
    for (int i = 1 + in.below(2); i > 0; --i)
        map.streams.push_back(streamFrom(in));
    return map;
}

std::vector<RawPacket> packetsFrom(ByteSource& in)
{
    std::vector<RawPacket> packets;
    std::int64_t arrival = 0;
    while (!in.empty() && packets.size() < 256) {
        const int kind = in.below(8);
        RawPacket packet;
        packet.source = kind == 7 ? 1 : 0;
        arrival += kind == 6 ? in.word(4) * 16 : 10'000'000;
        packet.arrival = arrival;
        packet.bytes = kind == 5 && !packets.empty() ? packets.back().bytes : in.bytes(in.word(2) % 520);
        packets.push_back(std::move(packet));
    }
    return packets;
}

bool finiteOrNone(const std::array<double, 3>& values)
{
    return std::none_of(values.begin(), values.end(), [](double value) { return std::isinf(value); });
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    ByteSource in(data, size);
    const auto map = mapFrom(in);
    const auto packets = packetsFrom(in);
    PacketDecoder decoder(map);
    std::vector<std::int64_t> samples(map.streams.size()), last(map.streams.size(), -1);
    for (std::size_t i = 0; i < packets.size(); ++i) {
        const auto& packet = packets[i];
        if (i % 64 == 63) {
            decoder.restart();
            last.assign(last.size(), -1);
        }
        for (const auto& sample : decoder.decode(packet.source, packet.bytes, packet.arrival)) {
            fuzz::require(finiteOrNone(sample.specificForce) && finiteOrNone(sample.angularRate));
            fuzz::require(!std::isinf(sample.stamp) && sample.index < sample.count);
            fuzz::require(sample.arrival == packet.arrival);
            ++samples[packet.source];
            if (sample.counter >= 0) {
                fuzz::require(sample.counter > last[packet.source]);
                last[packet.source] = sample.counter;
            }
        }
    }
    for (std::size_t i = 0; i < map.streams.size(); ++i) {
        const auto& counts = decoder.counts(i);
        fuzz::require(counts.samples == samples[i] && counts.lost >= 0 && counts.doubled >= 0);
    }
    const double fit = fitOf(map, packets);
    fuzz::require(fit >= 0 && fit <= 1);
    (void)checkSensorMap(map);
    return 0;
}
