// Counters and stamps that wrap, are lost, come twice or begin anew.
#include <catch2/catch.hpp>

#include "tests/engine/sensor/decoder_helper.hpp"
#include "tests/engine/sensor/map_forms.hpp"

using namespace fleetrung;
using namespace fleetrung::sensor;
using namespace fleetrung::sensor::forms;

namespace
{

const auto reading = readings(NumberType::Int8, ByteOrder::Little, 3, 1, 1);

/// A sensor with one number in front of `samples` samples a packet, 100 packets per second.
class Sensor
{
public:
    Sensor(const Field& number, int samples = 1, Counts counts = Counts::Samples)
        : map_(binary({number}, reading, samples)), bits_(bitsOf(number.type)), samples_(samples)
    {
        map_.streams.front().counts = counts;
    }
    SensorMap& map() { return map_; }
    void begin() { decoder_.emplace(map_); }

    std::vector<RawSample> send(std::uint64_t number)
    {
        Bytes packet;
        for (int i = 0; i < bits_ / 8; ++i)
            packet.push_back(static_cast<std::uint8_t>(number >> static_cast<unsigned>(8 * i)));
        packet.resize(packet.size() + static_cast<std::size_t>(3 * samples_), 1);
        const auto fresh = decoder_->decode(0, packet, arrival_ += 10'000'000);
        return {fresh.begin(), fresh.end()};
    }
    void pass(double seconds) { arrival_ += static_cast<std::int64_t>(seconds * 1e9); }
    PacketDecoder& decoder() { return *decoder_; }
    [[nodiscard]] const PacketCounts& counts() const { return decoder_->counts(0); }

private:
    SensorMap map_;
    int bits_, samples_;
    std::optional<PacketDecoder> decoder_;
    std::int64_t arrival_ = 0;
};

} // namespace

TEST_CASE("A counter that wraps by its type or earlier only grows, and begins at 0", "[sensor][counter]")
{
    const auto [type, wrap] = GENERATE(table<NumberType, std::uint64_t>({{NumberType::UInt8, 0},
                                                                         {NumberType::UInt8, 100},
                                                                         {NumberType::Int8, 0},
                                                                         {NumberType::UInt16, 0},
                                                                         {NumberType::UInt16, 1000},
                                                                         {NumberType::UInt32, 0}}));
    Sensor sensor(counter(type));
    sensor.map().streams.front().counterWrap = static_cast<std::int64_t>(wrap);
    sensor.begin();
    const auto end = wrap > 0 ? wrap : std::uint64_t{1} << static_cast<unsigned>(bitsOf(type));
    std::int64_t expected = 0;
    for (std::uint64_t i = 0; i < 700; ++i) {
        const auto samples = sensor.send((end - 350 % end + i) % end);
        REQUIRE(samples.size() == 1);
        CHECK(samples[0].counter == expected++);
    }
    CHECK(sensor.counts().lost == 0);
    CHECK(sensor.counts().doubled == 0);
}

TEST_CASE("What a counter of samples or of packets skips is counted as lost", "[sensor][counter]")
{
    SECTION("samples")
    {
        Sensor sensor(counter(NumberType::UInt8), 4);
        sensor.begin();
        CHECK(sensor.send(250)[3].counter == 3);
        CHECK(sensor.send(6)[0].counter == 12); // 254 .. 5 never came
        CHECK(sensor.counts().lost == 8);
    }
    SECTION("packets")
    {
        Sensor sensor(counter(NumberType::UInt8), 4, Counts::Packets);
        sensor.begin();
        CHECK(sensor.send(254)[3].counter == 3);
        CHECK(sensor.send(255)[0].counter == 4);
        CHECK(sensor.send(2)[0].counter == 16); // packets 0 and 1 never came
        CHECK(sensor.counts().lost == 8);
    }
    SECTION("the number of the packet's last sample")
    {
        Sensor sensor(counter(NumberType::UInt8), 4);
        sensor.map().streams.front().stampOf = StampOf::Last;
        sensor.begin();
        CHECK(sensor.send(1)[0].counter == 0); // began before 0
        CHECK(sensor.send(5)[3].counter == 7);
        CHECK(sensor.counts().lost == 0);
    }
    SECTION("a counter that grows by two a sample")
    {
        auto number = counter(NumberType::UInt8);
        number.scale = 0.5;
        Sensor sensor(number);
        sensor.begin();
        CHECK(sensor.send(252)[0].counter == 0);
        CHECK(sensor.send(254)[0].counter == 1);
        CHECK(sensor.send(4)[0].counter == 4);
        CHECK(sensor.counts().lost == 2);
    }
}

TEST_CASE("Packets that come twice or late are left out and counted", "[sensor][counter]")
{
    Sensor sensor(counter(NumberType::UInt8), 2);
    sensor.begin();
    for (const std::uint64_t number : {0, 2, 2, 4, 6, 2, 4, 6, 8, 8, 10}) // twice, and a burst again
        sensor.send(number);
    CHECK(sensor.counts().doubled == 5);
    CHECK(sensor.counts().lost == 0);
    CHECK(sensor.counts().samples == 12);
}

TEST_CASE("One packet of garbage moves neither counter nor stamp", "[sensor][counter]")
{
    Sensor sensor(counter(NumberType::UInt32));
    sensor.begin();
    for (std::uint64_t i = 0; i < 100; ++i)
        sensor.send(i);
    CHECK(sensor.send(0xDEADBEEF).empty());
    CHECK(sensor.counts().bad[static_cast<std::size_t>(BadPacket::Leap)] == 1);
    CHECK(sensor.send(101)[0].counter == 101);
    CHECK(sensor.counts().lost == 1);
}

TEST_CASE("A long gap is believed where it agrees with the arrivals, and a counter begun anew goes on",
          "[sensor][counter]")
{
    Sensor sensor(counter(NumberType::UInt32));
    sensor.begin();
    for (std::uint64_t i = 0; i < 500; ++i)
        sensor.send(i);
    SECTION("30 s without a packet, 3000 samples")
    {
        sensor.pass(30);
        CHECK(sensor.send(3500).empty());
        CHECK(sensor.send(3501)[0].counter == 3501);
        CHECK(sensor.counts().lost == 3001);
    }
    SECTION("switched off and on without a word")
    {
        CHECK(sensor.send(0).empty());
        CHECK(sensor.send(1)[0].counter == 500);
        CHECK(sensor.send(2)[0].counter == 501);
        CHECK(sensor.counts().lost == 0);
    }
    SECTION("after the link came back")
    {
        sensor.decoder().restart();
        CHECK(sensor.send(70'000)[0].counter == 0);
        CHECK(sensor.send(70'001)[0].counter == 1);
        CHECK(sensor.counts().lost == 0);
    }
}

TEST_CASE("Time stamps that wrap only grow", "[sensor][stamp]")
{
    // 16 bits of 1/32768 s wrap every 2 s.
    Sensor sensor(stamp(NumberType::UInt16, 1.0 / 32768));
    sensor.begin();
    double first = 0;
    for (int i = 0; i < 2000; ++i) {
        const auto samples = sensor.send(static_cast<std::uint64_t>(60'000 + i * 328) % 65536);
        REQUIRE(samples.size() == 1);
        first = i == 0 ? samples[0].stamp : first;
        CHECK(samples[0].stamp - first == Approx(i * 328 / 32768.0).margin(1e-9));
    }
    CHECK(sensor.counts().doubled == 0);
}

TEST_CASE("Stamps in milliseconds that wrap where the map says so", "[sensor][stamp]")
{
    Sensor sensor(stamp(NumberType::UInt16, 1e-3));
    sensor.map().streams.front().stampWrap = 10;
    sensor.begin();
    for (int i = 0; i < 3000; ++i)
        CHECK(sensor.send(static_cast<std::uint64_t>(9'990 + i * 10) % 10'000)[0].stamp == Approx(9.99 + i * 0.01));
}

TEST_CASE("Without a counter the stamp tells what came twice, what is garbage and what began anew", "[sensor][stamp]")
{
    Sensor sensor(stamp(NumberType::UInt32, 1e-6));
    sensor.begin();
    for (std::uint64_t i = 0; i < 100; ++i)
        sensor.send(1'000'000 + i * 10'000);
    CHECK(sensor.send(1'990'000).empty()); // the very same packet
    CHECK(sensor.send(1'500'000).empty()); // one from before
    CHECK(sensor.counts().doubled == 2);
    CHECK(sensor.send(3'000'000'000).empty());
    CHECK(sensor.counts().bad[static_cast<std::size_t>(BadPacket::Leap)] == 1);
    CHECK(sensor.send(2'030'000)[0].stamp == Approx(2.03));
    // Switched off and on: its clock begins at 0, and the stamps go on by the arrivals.
    CHECK(sensor.send(4'200'000'000).empty());
    CHECK(sensor.send(4'200'010'000)[0].stamp == Approx(2.05));
    CHECK(sensor.send(4'200'020'000)[0].stamp == Approx(2.06));
}

TEST_CASE("Stamps that stand still for a sample are no doubles where the readings differ", "[sensor][stamp]")
{
    // 1000 samples per second, stamps in steps of 10 ms.
    const auto map = binary({stamp(NumberType::UInt16, 0.01)}, reading);
    PacketDecoder decoder(map);
    CHECK(decodeAll(decoder, {{5, 0, 1, 1, 1}, {5, 0, 1, 2, 1}, {5, 0, 1, 2, 1}, {6, 0, 1, 2, 1}}).size() == 3);
    CHECK(decoder.counts(0).doubled == 1);
}
