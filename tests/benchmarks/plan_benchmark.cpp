// A season of 300 days with two peaks, seven ladders and blocks: laid, laid anew, and its turns counted.
#include <string>

#include <benchmark/benchmark.h>

#include "engine/season/plan.hpp"

namespace fleetrung::benchmarks
{
namespace
{

season::SeasonSetup twoPeaks()
{
    season::SeasonSetup setup;
    setup.start = *parseDate("2026-10-05");
    setup.competitions = {{*parseDate("2027-02-20"), "Indoor", season::Priority::A, true},
                          {*parseDate("2027-07-31"), "Outdoor", season::Priority::A, true}};
    setup.trainingDays = setup.sprintDays = {1, 3, 5};
    setup.boxHeights = season::boxesOf({10, 15, 20, 25, 30, 35, 40, 45});
    setup.equipment = {"bar", "rack", "pins", "blocks"};
    for (const auto& ladder : season::standardSeasonData().ladders)
        setup.ladders.push_back(ladder.key);
    setup.blocks = {{season::Block::Kind::Illness, *parseDate("2026-11-02"), *parseDate("2026-11-09"), "", ""},
                    {season::Block::Kind::Injury, *parseDate("2027-03-15"), *parseDate("2027-04-04"), "knee", ""},
                    {season::Block::Kind::Exam, *parseDate("2027-06-01"), *parseDate("2027-06-14"), "", ""}};
    return setup;
}

void replanned(benchmark::State& state)
{
    const auto setup = twoPeaks();
    const auto states = season::startStates(*season::planSeason(setup));
    const auto today = *parseDate("2026-10-20");
    for (auto _ : state)
        benchmark::DoNotOptimize(season::replanSeason(setup, states, today));
}
BENCHMARK(replanned)->Name("a season of 300 days laid anew")->Unit(benchmark::kMillisecond);

void turns(benchmark::State& state)
{
    const auto plan = *season::planSeason(twoPeaks());
    for (auto _ : state)
        benchmark::DoNotOptimize(season::turnsOf(plan));
}
BENCHMARK(turns)->Name("turns of every day of it")->Unit(benchmark::kMillisecond);

} // namespace
} // namespace fleetrung::benchmarks

BENCHMARK_MAIN();
