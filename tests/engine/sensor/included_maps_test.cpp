// The maps that come with the program.
#include <catch2/catch.hpp>

#include <set>

#include "demo/sensor/packet_encoder.hpp"
#include "engine/sensor/map_files.hpp"
#include "tests/engine/sensor/decoder_helper.hpp"
#include "tests/engine/sensor/map_forms.hpp"

using namespace fleetrung;
using namespace fleetrung::sensor;
using namespace fleetrung::sensor::forms;

namespace
{

/// 2 s at rest, then 2 s of swinging: up to half a g and 3 rad/s.
std::vector<motion::Sample> restAndSwing(double rate)
{
    std::vector<motion::Sample> samples;
    for (int i = 0; i < static_cast<int>(4 * rate); ++i) {
        const double time = i / rate;
        const double swing = std::max(0.0, time - 2) > 0 ? std::sin(9 * time) : 0.0;
        samples.push_back({time,
                           {3.2 + 4 * swing, -2.1 + 0.02 * std::sin(50 * time), 9.03 + swing},
                           {0.02 + 3 * swing, -0.01, 0.5 * swing}});
    }
    return samples;
}

} // namespace

TEST_CASE("Every map file of the program is read, says its own name, and says the same written again", "[sensor][map]")
{
    REQUIRE(mapFiles().size() >= 8);
    std::set<std::string> names;
    for (const auto& file : mapFiles()) {
        CAPTURE(file.name);
        const auto map = parseSensorMap(file.text);
        if (!map)
            FAIL(describe(map.error()));
        CHECK(map->key == file.name);
        CHECK(names.insert(map->name).second);
        const auto again = parseSensorMap(sensorMapText(*map));
        REQUIRE(again);
        CHECK(again->streams == map->streams);
        CHECK(again->original == parseJson(file.text));
    }
    CHECK(includedMaps().size() == mapFiles().size());
}

TEST_CASE("A few seconds of packets tell which of the included maps is the right one", "[sensor][map]")
{
    const double rate = GENERATE(50.0, 200.0);
    const auto samples = restAndSwing(rate);
    for (const auto& truth : includedMaps()) {
        const int payload = truth.key == "int16-several" ? 244 : 20;
        auto packets = demo::PacketEncoder(truth, truth.streams.front().text ? payload : 244).encode(samples);
        packets.erase(packets.begin() + static_cast<long>(packets.size() / 3)); // one is lost
        std::string best;
        double bestFit = 0, second = 0;
        for (const auto& map : includedMaps()) {
            const double fit = fitOf(map, packets);
            CHECK(fit >= 0);
            CHECK(fit <= 1);
            if (fit > bestFit) {
                second = bestFit;
                bestFit = fit;
                best = map.key;
            } else {
                second = std::max(second, fit);
            }
        }
        CAPTURE(truth.key, rate, bestFit, second);
        CHECK(best == truth.key);
        CHECK(bestFit > 0.85);
    }
}

TEST_CASE("Packets of no included map fit none of them", "[sensor][map]")
{
    std::vector<RawPacket> packets;
    for (int i = 0; i < 400; ++i) {
        RawPacket packet{0, i * 10'000'000LL, {}};
        for (int j = 0; j < 14; ++j)
            packet.bytes.push_back(static_cast<std::uint8_t>((i * 131 + j * 57 + i * j) % 251));
        packets.push_back(packet);
    }
    for (const auto& map : includedMaps()) {
        CAPTURE(map.key);
        CHECK(fitOf(map, packets) < 0.2);
        CHECK(fitOf(map, {}) == 0);
    }
}

TEST_CASE("Packets of every length from 0 to 512 through every included map do no harm", "[sensor][decoder]")
{
    for (const auto& map : includedMaps()) {
        PacketDecoder decoder(map);
        std::int64_t packets = 0;
        for (const std::uint8_t fill : {0x00, 0xFF, 0x2C, 0x0A, 0x35, 0x80})
            for (std::size_t length = 0; length <= 512; ++length) {
                Bytes bytes(length, fill);
                for (std::size_t i = 0; i < length; i += 3)
                    bytes[i] = static_cast<std::uint8_t>(i * 37 + length);
                const auto samples = decoder.decode(0, bytes, ++packets * 1'000'000);
                for (const auto& sample : samples)
                    REQUIRE(std::isfinite(sample.specificForce[0]));
            }
        CHECK(decoder.counts(0).packets == packets);
        CHECK(decoder.counts(0).badInAll() > 0);
    }
}
