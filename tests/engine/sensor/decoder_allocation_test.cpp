// What decoding asks of memory.
#include <catch2/catch.hpp>

#include <iostream>

#include "demo/sensor/packet_encoder.hpp"
#include "tests/benchmarks/allocations.hpp"
#include "tests/engine/sensor/decoder_helper.hpp"
#include "tests/engine/sensor/random_map.hpp"

using namespace fleetrung;
using namespace fleetrung::sensor;
using namespace fleetrung::sensor::forms;

TEST_CASE("Decoding asks for no memory, whatever the map and the bytes", "[sensor][decoder]")
{
    if (!benchmarks::allocationsAreCounted()) {
        std::cout << "skipped: allocations are not counted in this build\n";
        return;
    }
    const std::uint64_t seed = 77;
    CAPTURE(seed);
    RandomMap random(seed);
    std::mt19937_64 noise(seed);
    auto maps = includedMaps();
    for (int i = 0; i < 60; ++i)
        maps.push_back(random.make());
    std::int64_t decoded = 0;
    for (const auto& map : maps) {
        std::vector<motion::Sample> samples;
        for (int i = 0; i < 400; ++i)
            samples.push_back({i * 0.005, {0.1 * i, -3, 9.8}, {0.001 * i, 0, 0}});
        auto packets = demo::PacketEncoder(map).encode(samples);
        for (std::size_t i = 0; i < 200; ++i) { // and garbage between
            RawPacket packet{i % map.streams.size(), 0, Bytes(noise() % 600)};
            for (auto& byte : packet.bytes)
                byte = static_cast<std::uint8_t>(noise());
            packets.insert(packets.begin() + static_cast<long>(noise() % packets.size()), packet);
        }
        PacketDecoder decoder(map);
        const std::size_t before = benchmarks::allocations();
        for (std::size_t i = 0; i < packets.size(); ++i) {
            if (i == packets.size() / 2)
                decoder.restart();
            decoded += static_cast<std::int64_t>(
                decoder.decode(packets[i].source, packets[i].bytes, packets[i].arrival).size());
        }
        const std::size_t asked = benchmarks::allocations() - before;
        CAPTURE(sensorMapText(map));
        CHECK(asked == 0);
    }
    CHECK(decoded > 10'000);
}
