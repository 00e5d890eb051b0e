// What one live sample and one final analysis cost. Timings never pass or fail.
#include <chrono>
#include <vector>

#include <benchmark/benchmark.h>

#include "engine/reps/analyse.hpp"
#include "engine/reps/live_set.hpp"
#include "tests/benchmarks/allocations.hpp"
#include "tests/benchmarks/sets.hpp"

namespace fleetrung::benchmarks
{
namespace
{

/// One of each lift.
const std::vector<TimedSet>& allSets()
{
    static const auto sets = [] {
        std::vector<TimedSet> made;
        for (std::uint64_t i = 0; i < 17; ++i)
            made.push_back(fortySeconds(i));
        return made;
    }();
    return sets;
}

void finalAnalysis(benchmark::State& state)
{
    const auto& sets = allSets();
    std::size_t next = 0, repetitions = 0;
    for (auto _ : state) {
        const auto& set = sets[next++ % sets.size()];
        const auto analysis = reps::analyseSet(set.recording, *set.lift);
        repetitions += analysis ? analysis->repetitions.size() : 0;
    }
    using benchmark::Counter;
    state.counters["x_real_time"] = Counter(setSeconds * static_cast<double>(next), Counter::kIsRate);
    state.counters["repetitions/s"] = Counter(static_cast<double>(repetitions), Counter::kIsRate);
}
BENCHMARK(finalAnalysis)
    ->Name("final analysis of 40 s at 200 Hz, all lifts in turn")
    ->Unit(benchmark::kMillisecond)
    ->MinTime(2);

/// Steady state: the first two seconds of each set are played before the clock runs.
void liveSample(benchmark::State& state)
{
    const auto& sets = allSets();
    constexpr auto warmUp = static_cast<std::size_t>(2 * setRate);
    std::size_t next = 0, samples = 0, requests = 0, announced = 0;
    for (auto _ : state) {
        const auto& set = sets[next++ % sets.size()];
        reps::LiveSet live(*set.lift, set.recording.sensor, set.recording.hasGyroscope);
        const auto& all = set.recording.samples;
        for (std::size_t i = 0; i < warmUp; ++i)
            announced += std::size(live.add(all[i]));
        const auto before = allocations();
        const auto begun = std::chrono::steady_clock::now();
        for (std::size_t i = warmUp; i < all.size(); ++i)
            announced += std::size(live.add(all[i]));
        const std::chrono::duration<double> taken = std::chrono::steady_clock::now() - begun;
        requests += allocations() - before;
        samples += all.size() - warmUp;
        state.SetIterationTime(taken.count());
    }
    benchmark::DoNotOptimize(announced);
    using benchmark::Counter;
    state.counters["s/sample"] = Counter(static_cast<double>(samples), Counter::kIsRate | Counter::kInvert);
    state.counters["allocations/sample"] = static_cast<double>(requests) / static_cast<double>(samples);
    state.counters["announced/set"] = static_cast<double>(announced) / static_cast<double>(next);
}
BENCHMARK(liveSample)
    ->Name("live set of 40 s at 200 Hz, after its first 2 s")
    ->Unit(benchmark::kMillisecond)
    ->UseManualTime()
    ->MinTime(2);

} // namespace
} // namespace fleetrung::benchmarks

BENCHMARK_MAIN();
