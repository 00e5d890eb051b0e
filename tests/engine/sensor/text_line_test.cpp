// Lines of text over any cut into notifications.
#include <catch2/catch.hpp>

#include "tests/engine/sensor/decoder_helper.hpp"
#include "tests/engine/sensor/map_forms.hpp"

using namespace fleetrung;
using namespace fleetrung::sensor;
using namespace fleetrung::sensor::forms;
using enum Channel;

namespace
{

std::vector<Bytes> cutInto(std::string_view text, std::size_t size)
{
    std::vector<Bytes> packets;
    for (std::size_t i = 0; i < text.size(); i += size)
        packets.push_back(bytesOf(text.substr(i, size)));
    return packets;
}

const auto timed = lines({Stamp, AccelerometerX, AccelerometerY, AccelerometerZ}, gravity, degree);

} // namespace

TEST_CASE("Lines are decoded the same over any cut into notifications", "[sensor][decoder]")
{
    const std::string text = "half,of,a,line\n" // what was under way when it was switched on
                             "1000,0,0.5,-1\r\n1010, +1.5 ,2e-1,.25\n1020,0,0,1,\n\n1030,1,2,3\n";
    const std::size_t cut = GENERATE(1, 2, 3, 5, 8, 13, 20, 100);
    CAPTURE(cut);
    PacketDecoder decoder(timed);
    const auto samples = decodeAll(decoder, cutInto(text, cut));
    REQUIRE(samples.size() == 3);
    CHECK(samples[0].stamp == Approx(1));
    CHECK(samples[0].specificForce[0] == 0);
    CHECK(samples[0].specificForce[1] == Approx(gravity / 2));
    CHECK(samples[0].specificForce[2] == Approx(-gravity));
    CHECK(samples[1].specificForce[0] == Approx(1.5 * gravity));
    CHECK(samples[1].specificForce[1] == Approx(0.2 * gravity));
    CHECK(samples[2].stamp == Approx(1.03));
    CHECK(samples[2].counter == -1);
    CHECK(bad(decoder, BadPacket::WrongLength) == 1); // "1020,0,0,1," has five values
    CHECK(decoder.counts(0).badInAll() == 1);
}

TEST_CASE("Lines of key=value are read by their keys, whatever stands between", "[sensor][decoder]")
{
    auto map = lines({AccelerometerX, AccelerometerY, AccelerometerZ, Counter}, 1, 1, {"ax", "ay", "az", "n"});
    PacketDecoder decoder(map);
    const auto samples = decodeAll(decoder, cutInto("\nax=1,ay=2,az=3,n=7\nn=8, az = 3 , battery=80,ok,ay=2,ax=1\n"
                                                    "ax=1,ay=2,n=9\nax=1,ay=2,az=x,n=10\nax=1,ax=1,ay=2,az=3,n=11\n",
                                                    17));
    REQUIRE(samples.size() == 2);
    CHECK(samples[1].specificForce[0] == 1);
    CHECK(samples[1].specificForce[2] == 3);
    CHECK(samples[1].counter == 1);
    CHECK(bad(decoder, BadPacket::MissingColumn) == 1);
    CHECK(bad(decoder, BadPacket::NotANumber) == 1);
    CHECK(bad(decoder, BadPacket::WrongLength) == 1);
}

TEST_CASE("Bad lines are counted by their cause and skipped, and other lines are none of ours", "[sensor][decoder]")
{
    auto map = timed;
    map.streams.front().lines.prefix = "M ";
    PacketDecoder decoder(map);
    const std::string text = "\nM 1,1,2,3\nhello\nM 2,1,2\nM 3,1,two,3\nM 4,1,nan,3\nM 5,1,1e400,3\nM \nM " +
                             std::string(600, '1') + "\nM 6,1,2,3\nM 1e300,1,2,3\n";
    CHECK(decodeAll(decoder, cutInto(text, 20)).size() == 2);
    CHECK(bad(decoder, BadPacket::NotOurs) == 1);
    CHECK(bad(decoder, BadPacket::MissingColumn) == 1);
    CHECK(bad(decoder, BadPacket::NotANumber) == 4);
    CHECK(bad(decoder, BadPacket::LineTooLong) == 1);
    CHECK(bad(decoder, BadPacket::Empty) == 1);
    CHECK(decoder.counts(0).badInAll() == 7);
}

TEST_CASE("Where a notification is lost, two halves of lines make no sample", "[sensor][decoder]")
{
    const auto map = lines({AccelerometerX, AccelerometerY, AccelerometerZ}, 1, 1);
    std::string text = "\n";
    for (int i = 0; i < 200; ++i)
        text += "1.25,2.50,3.75\n";
    for (std::size_t lost = 1; lost < 100; ++lost) {
        auto packets = cutInto(text, 20);
        packets.erase(packets.begin() + static_cast<long>(lost));
        PacketDecoder decoder(map);
        const auto samples = decodeAll(decoder, packets);
        CAPTURE(lost, decoder.counts(0).bad);
        CHECK(samples.size() >= 197);
        // A cut inside one number cannot be seen where the number of values comes out right.
        std::size_t wrong = 0;
        for (const auto& sample : samples)
            wrong += sample.specificForce == std::array{1.25, 2.5, 3.75} ? 0U : 1U;
        CHECK(wrong <= 1);
    }
}

TEST_CASE("A sensor that begins to send another number of values is believed after three lines", "[sensor][decoder]")
{
    const auto map = lines({AccelerometerX, AccelerometerY, AccelerometerZ}, 1, 1);
    PacketDecoder decoder(map);
    CHECK(decodeAll(decoder, cutInto("\n1,2,3\n1,2,3,4\n1,2,3,4\n1,2,3,4\n1,2,3,4\n", 9)).size() == 3);
    CHECK(bad(decoder, BadPacket::WrongLength) == 2);
}

TEST_CASE("After the link came back half a line is forgotten", "[sensor][decoder]")
{
    const auto map = lines({AccelerometerX, AccelerometerY, AccelerometerZ}, 1, 1);
    PacketDecoder decoder(map);
    CHECK(decodeAll(decoder, {bytesOf("\n1,2,3\n4,5")}).size() == 1);
    decoder.restart();
    CHECK(decodeAll(decoder, {bytesOf("8,9\n"), bytesOf("1,2,3\n")}).size() == 1);
    CHECK(decoder.counts(0).badInAll() == 0);
}
