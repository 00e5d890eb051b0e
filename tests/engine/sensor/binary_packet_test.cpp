// Known bytes to known numbers, worked out by hand.
#include <catch2/catch.hpp>

#include "tests/engine/sensor/decoder_helper.hpp"
#include "tests/engine/sensor/map_forms.hpp"

using namespace fleetrung;
using namespace fleetrung::sensor;
using namespace fleetrung::sensor::forms;

namespace
{

/// Three readings of one type, scale 1.
RawSample readOne(NumberType type, ByteOrder order, const Bytes& bytes)
{
    PacketDecoder decoder(binary({}, readings(type, order, 3, 1, 1)));
    const auto samples = decodeAll(decoder, {bytes});
    REQUIRE(samples.size() == 1);
    return samples.front();
}

void checkForce(const RawSample& sample, double x, double y, double z)
{
    CHECK(sample.specificForce[0] == x);
    CHECK(sample.specificForce[1] == y);
    CHECK(sample.specificForce[2] == z);
    CHECK(std::isnan(sample.angularRate[0]));
}

} // namespace

TEST_CASE("Whole-byte numbers are read in both byte orders", "[sensor][decoder]")
{
    using enum NumberType;
    const auto little = ByteOrder::Little, big = ByteOrder::Big;
    checkForce(readOne(Int8, little, {0x7F, 0x80, 0xFF}), 127, -128, -1);
    checkForce(readOne(UInt8, big, {0x7F, 0x80, 0xFF}), 127, 128, 255);
    checkForce(readOne(Int16, little, {0x01, 0x02, 0xFF, 0xFF, 0x00, 0x80}), 513, -1, -32768);
    checkForce(readOne(Int16, big, {0x01, 0x02, 0xFF, 0xFF, 0x80, 0x00}), 258, -1, -32768);
    checkForce(readOne(UInt16, big, {0x01, 0x02, 0xFF, 0xFF, 0x80, 0x00}), 258, 65535, 32768);
    checkForce(readOne(Int24, little, {1, 2, 3, 0xFF, 0xFF, 0xFF, 0, 0, 0x80}), 197121, -1, -8388608);
    checkForce(readOne(Int24, big, {1, 2, 3, 0xFF, 0xFF, 0xFF, 0x80, 0, 0}), 66051, -1, -8388608);
    checkForce(readOne(UInt24, big, {1, 2, 3, 0xFF, 0xFF, 0xFF, 0x80, 0, 0}), 66051, 16777215, 8388608);
    checkForce(readOne(Int32, little, {1, 2, 3, 4, 0xFF, 0xFF, 0xFF, 0xFF, 0, 0, 0, 0x80}), 67305985, -1,
               -2147483648.0);
    checkForce(readOne(UInt32, big, {1, 2, 3, 4, 0xFF, 0xFF, 0xFF, 0xFF, 0x80, 0, 0, 0}), 16909060, 4294967295.0,
               2147483648.0);
}

// IEEE 754: 0x3C00 = 1, 0xC000 = -2, 0x7BFF = 65504 (largest half), 0x0001 = 2^-24 (smallest); 0x3F800000 = 1,
// 0xC0490FDB = -pi as a float.
TEST_CASE("Floating-point numbers of two and four bytes are read in both byte orders", "[sensor][decoder]")
{
    using enum NumberType;
    checkForce(readOne(Float16, ByteOrder::Little, {0x00, 0x3C, 0x00, 0xC0, 0xFF, 0x7B}), 1, -2, 65504);
    checkForce(readOne(Float16, ByteOrder::Big, {0x3C, 0x00, 0x00, 0x01, 0x80, 0x00}), 1, std::ldexp(1.0, -24), 0);
    checkForce(readOne(Float32, ByteOrder::Little, {0, 0, 0x80, 0x3F, 0xDB, 0x0F, 0x49, 0xC0, 0, 0, 0, 0}), 1,
               -3.1415927410125732, 0);
    checkForce(readOne(Float32, ByteOrder::Big, {0x3F, 0x80, 0, 0, 0xC0, 0x49, 0x0F, 0xDB, 0, 0, 0, 0}), 1,
               -3.1415927410125732, 0);
}

// 12 bits a reading. From bit 0 of byte 0: 0x123 = 23 .1, 0x456 = 6. 45 -> bytes 23 61 45. From bit 7 of byte 0 the
// digits stand as they are written: 12 34 56.
TEST_CASE("Twelve-bit numbers are unpacked from either end of the byte", "[sensor][decoder]")
{
    using enum NumberType;
    checkForce(readOne(Int12, ByteOrder::Little, {0x23, 0x61, 0x45, 0xFF, 0x0F}), 0x123, 0x456, -1);
    checkForce(readOne(Int12, ByteOrder::Big, {0x12, 0x34, 0x56, 0x80, 0x00}), 0x123, 0x456, -2048);
    checkForce(readOne(UInt12, ByteOrder::Big, {0x12, 0x34, 0x56, 0xFF, 0xF0}), 0x123, 0x456, 4095);
}

TEST_CASE("Offset and scale turn counts into units", "[sensor][decoder]")
{
    auto fields = readings(NumberType::UInt16, ByteOrder::Little, 6, gravity / 2048, 0.0625 * degree);
    for (auto& field : fields)
        field.offset = -32768;
    PacketDecoder decoder(binary({}, fields));
    const auto samples = decodeAll(decoder, {{0, 0x88, 0, 0x78, 0, 0x80, 0x10, 0x80, 0, 0x80, 0, 0x80}});
    REQUIRE(samples.size() == 1);
    CHECK(samples[0].specificForce[0] == Approx(gravity));
    CHECK(samples[0].specificForce[1] == Approx(-gravity));
    CHECK(samples[0].specificForce[2] == 0);
    CHECK(samples[0].angularRate[0] == Approx(degree));
}

TEST_CASE("Several samples of a packet come in order with their place, counter and stamp", "[sensor][decoder]")
{
    auto sample = readings(NumberType::Int8, ByteOrder::Little, 3, 1, 1);
    sample.push_back({Channel::StampDelta, NumberType::UInt8, ByteOrder::Little, 24, 0, 1e-3});
    PacketDecoder decoder(binary({counter(NumberType::UInt8), stamp(NumberType::UInt16, 1e-3, 8)}, sample, 0));
    const auto samples = decodeAll(decoder, {{9, 0xE8, 3, 1, 2, 3, 0, 4, 5, 6, 5}, {11, 0xF2, 3, 7, 8, 9, 1}});
    REQUIRE(samples.size() == 3);
    CHECK(samples[0].counter == 0);
    CHECK(samples[1].counter == 1);
    CHECK(samples[2].counter == 2);
    CHECK(samples[0].stamp == Approx(1.000));
    CHECK(samples[1].stamp == Approx(1.005));
    CHECK(samples[2].stamp == Approx(1.011));
    CHECK(samples[1].index == 1);
    CHECK(samples[1].count == 2);
    CHECK(samples[1].specificForce[2] == 6);
    CHECK(samples[1].arrival == 10'000'000);
    CHECK(samples[2].arrival == 20'000'000);
}

TEST_CASE("The packet says itself how many samples it holds", "[sensor][decoder]")
{
    PacketDecoder decoder(binary({{Channel::Count, NumberType::UInt8, ByteOrder::Little, 0, 0, 1}},
                                 readings(NumberType::Int8, ByteOrder::Little, 3, 1, 1), 0));
    CHECK(decodeAll(decoder, {{2, 1, 1, 1, 2, 2, 2, 0, 0, 0}}).size() == 2);
    CHECK(decodeAll(decoder, {{0, 1, 1, 1}}).empty());
    CHECK(bad(decoder, BadPacket::Empty) == 1);
    CHECK(decodeAll(decoder, {{9, 1, 1, 1}}).empty());
    CHECK(bad(decoder, BadPacket::TooShort) == 1);
}

TEST_CASE("A bad packet is counted by its cause and skipped", "[sensor][decoder]")
{
    auto map = binary({}, readings(NumberType::Float32, ByteOrder::Little, 3, 1, 1));
    map.streams.front().binary.mark = {0xA5};
    map.streams.front().binary.length = 13;
    map.streams.front().binary.firstBit = 8;
    PacketDecoder decoder(map);
    const Bytes good{0xA5, 0, 0, 0x80, 0x3F, 0, 0, 0, 0, 0, 0, 0, 0};
    auto longer = good, infinite = good, other = good;
    longer.push_back(0);
    infinite[3] = 0x80;
    infinite[4] = 0x7F;
    other[0] = 0xA6;
    const auto samples = decodeAll(
        decoder, {good, {}, Bytes(good.begin(), good.end() - 1), longer, infinite, other, Bytes(600, 0xA5), good});
    CHECK(samples.size() == 2);
    CHECK(bad(decoder, BadPacket::Empty) == 1);
    CHECK(bad(decoder, BadPacket::TooShort) == 1);
    CHECK(bad(decoder, BadPacket::WrongLength) == 2);
    CHECK(bad(decoder, BadPacket::NotANumber) == 1);
    CHECK(bad(decoder, BadPacket::NotOurs) == 1);
    CHECK(decoder.counts(0).badInAll() == 5);
    CHECK(decoder.counts(0).packets == 8);
    CHECK(decoder.counts(0).samples == 2);
}

TEST_CASE("Packets in a byte stream are found over any cut, and again after bytes were lost", "[sensor][decoder]")
{
    auto map = binary({counter(NumberType::UInt8, 16)}, readings(NumberType::Int16, ByteOrder::Little, 3, 1, 1));
    auto& form = map.streams.front().binary;
    form.mark = {0x55, 0xAA};
    form.stream = true;
    form.length = 9;
    Bytes stream{1, 2, 3}; // the end of a packet that began before
    for (std::uint8_t i = 0; i < 50; ++i) {
        // Now and then a reading looks like the mark.
        const Bytes reading = i % 3 == 0 ? Bytes{0x55, 0xAA} : Bytes{7, 0};
        for (const auto& part : {Bytes{0x55, 0xAA, i}, reading, Bytes{i, 0, 1, 0}})
            stream.insert(stream.end(), part.begin(), part.end());
    }
    const std::size_t cut = GENERATE(1, 2, 7, 9, 20, 64, 453);
    CAPTURE(cut);
    std::vector<Bytes> packets;
    for (std::size_t i = 0; i < stream.size(); i += cut)
        packets.emplace_back(stream.begin() + static_cast<long>(i),
                             stream.begin() + static_cast<long>(std::min(i + cut, stream.size())));
    PacketDecoder whole(map);
    const auto samples = decodeAll(whole, packets);
    REQUIRE(samples.size() == 50);
    CHECK(whole.counts(0).badInAll() == 0);
    for (int i = 0; i < 50; ++i)
        CHECK(samples[static_cast<std::size_t>(i)].specificForce[1] == i);

    if (packets.size() < 8)
        return;
    packets.erase(packets.begin() + static_cast<long>(packets.size() / 2));
    PacketDecoder decoder(map);
    const auto rest = decodeAll(decoder, packets);
    CHECK(rest.size() + static_cast<std::size_t>(decoder.counts(0).lost) == 50);
    CHECK(decoder.counts(0).lost >= 1);
    CHECK(decoder.counts(0).lost <= static_cast<std::int64_t>(cut / 9 + 2));
    CHECK(bad(decoder, BadPacket::WrongLength) == (cut == 9 ? 0 : 1));
    for (const auto& sample : rest)
        CHECK(sample.specificForce[1] == static_cast<double>(sample.counter));
}
