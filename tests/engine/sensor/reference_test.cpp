// Packets that Python packed (tests/reference/make_packets.py) are decoded to the numbers that went in.
#include <catch2/catch.hpp>

#include <fstream>
#include <iterator>

#include "engine/sensor/hexadecimal.hpp"
#include "tests/engine/sensor/decoder_helper.hpp"

using namespace fleetrung;
using namespace fleetrung::sensor;
using namespace fleetrung::sensor::forms;

TEST_CASE("Packets packed by Python give the numbers that went in", "[sensor][decoder][reference]")
{
    std::ifstream file(FLEETRUNG_SOURCE "/tests/reference/packets.json");
    const std::string text{std::istreambuf_iterator<char>(file), {}};
    const auto cases = parseJson(text);
    REQUIRE(cases);
    REQUIRE(cases->size() == 24); // twelve types in two orders
    for (const auto& one : *cases) {
        CAPTURE(one["map"]["key"].get<std::string>());
        const auto map = parseSensorMap(jsonText(one["map"]));
        if (!map)
            FAIL(describe(map.error()));
        PacketDecoder decoder(*map);
        std::vector<Bytes> packets;
        for (const auto& packet : one["packets"])
            packets.push_back(*parseHexadecimal(packet.get<std::string>()));
        const auto samples = decodeAll(decoder, packets);
        const auto& expected = one["samples"];
        REQUIRE(samples.size() == expected.size());
        for (std::size_t i = 0; i < samples.size(); ++i) {
            CAPTURE(i);
            CHECK(samples[i].counter == expected[i]["counter"].get<std::int64_t>());
            if (expected[i]["stamp"].is_null())
                CHECK(std::isnan(samples[i].stamp));
            else
                CHECK(samples[i].stamp == Approx(expected[i]["stamp"].get<double>()).epsilon(0).margin(1e-9));
            for (std::size_t axis = 0; axis < 3; ++axis) {
                CHECK(samples[i].specificForce[axis] == expected[i]["values"][axis].get<double>());
                CHECK(samples[i].angularRate[axis] == expected[i]["values"][axis + 3].get<double>());
            }
        }
    }
}
