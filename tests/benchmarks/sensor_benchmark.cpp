// Cost of decoding one sample, by the form of its packets.
#include <benchmark/benchmark.h>

#include "demo/sensor/packet_encoder.hpp"
#include "engine/sensor/packet_decoder.hpp"

using namespace fleetrung;

namespace
{

std::vector<motion::Sample> samples()
{
    std::vector<motion::Sample> all;
    for (int i = 0; i < 4000; ++i) {
        const double time = i / 200.0;
        all.push_back({time, {3 * std::sin(5 * time), -2.25, 9.5}, {std::sin(3 * time), 0.5, -1}});
    }
    return all;
}

void decode(benchmark::State& state, const sensor::SensorMap& map)
{
    const auto packets = demo::PacketEncoder(map).encode(samples());
    sensor::PacketDecoder decoder(map);
    std::int64_t decoded = 0;
    for (auto _ : state) {
        decoder.restart();
        for (const auto& packet : packets) {
            const auto fresh = decoder.decode(packet.source, packet.bytes, packet.arrival);
            benchmark::DoNotOptimize(fresh.data());
            decoded += static_cast<std::int64_t>(fresh.size());
        }
    }
    state.SetItemsProcessed(decoded);
    state.counters["per sample"] =
        benchmark::Counter(static_cast<double>(decoded), benchmark::Counter::kIsRate | benchmark::Counter::kInvert);
}

} // namespace

int main(int argc, char** argv)
{
    for (const auto& map : sensor::includedMaps())
        benchmark::RegisterBenchmark(map.key.c_str(), [&map](benchmark::State& state) { decode(state, map); });
    const auto text = sensor::sensorMapText(sensor::includedMaps().front());
    benchmark::RegisterBenchmark("read a map's file", [text](benchmark::State& state) {
        for (auto _ : state)
            benchmark::DoNotOptimize(sensor::parseSensorMap(text));
    });
    benchmark::Initialize(&argc, argv);
    benchmark::RunSpecifiedBenchmarks();
}
