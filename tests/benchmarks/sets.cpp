#include "tests/benchmarks/sets.hpp"

#include <stdexcept>

#include "tests/accuracy/situation.hpp"

namespace fleetrung::benchmarks
{

TimedSet fortySeconds(std::uint64_t number)
{
    const auto lifts = accuracy::judgedLifts();
    const auto* lift = lifts[number % lifts.size()];
    constexpr std::array<std::string_view, 5> parts{"A", "B", "C", "D", "E"};
    simulator::SetPlan plan;
    plan.lift = lift->key;
    plan.repetitions = 6;
    plan.loadShare = 0.55 + 0.05 * static_cast<double>(number % 7);
    plan.topPause = 1.5;
    plan.rackWork = number % 2 == 0;
    plan.stillAfter = setSeconds; // more than enough: cut below
    simulator::SensorPlan sensor;
    sensor.part = parts[number % parts.size()];
    sensor.rate = setRate;
    sensor.randomMounting = true;
    sensor.wobble = 0.3;
    auto set = simulator::simulateSet(plan, sensor, number + 1);
    if (!set)
        throw std::runtime_error(describe(set.error()));
    auto& samples = set->recording.samples;
    const auto wanted = static_cast<std::size_t>(setSeconds * setRate);
    if (set->truth.back().sensor.concentricEnd > 2 * setSeconds || samples.size() < wanted)
        throw std::runtime_error("a set does not fit");
    samples.erase(samples.begin() + static_cast<std::ptrdiff_t>(wanted), samples.end());
    return {lift, std::move(set->recording)};
}

} // namespace fleetrung::benchmarks
