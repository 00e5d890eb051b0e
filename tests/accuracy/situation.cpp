#include "tests/accuracy/situation.hpp"

#include <algorithm>
#include <array>
#include <cmath>

#include "demo/simulator/gestures.hpp"
#include "engine/motion/intake.hpp"

namespace fleetrung::accuracy
{
namespace
{

using simulator::Random;

int drawRepetitions(Random& random)
{
    const double kind = random.uniform();
    if (kind < 0.15)
        return 1;
    if (kind < 0.75)
        return 2 + random.below(5);
    return kind < 0.95 ? 7 + random.below(6) : 13 + random.below(18);
}

/// 0 = touch and go; long pauses are rarer than short ones.
double drawPause(Random& random, double touchAndGo, double longest)
{
    const double share = random.uniform();
    return random.chance(touchAndGo) ? 0.0 : 0.1 + (longest - 0.1) * share * share;
}

void drawEffort(simulator::SetPlan& plan, Random& random)
{
    const bool tired = random.chance(0.25);
    plan.loadShare = tired ? random.uniform(0.85, 0.90) : random.uniform(0.4, 0.9);
    plan.velocityLoss = tired ? random.uniform(0.20, 0.40) : random.uniform(0.0, 0.25);
}

void drawRange(simulator::SetPlan& plan, const reps::Lift& lift, Random& random)
{
    const double usual = simulator::findGesture(lift.key)->range;
    const double share = random.uniform(0.8, 1.2);
    const double box = random.uniform(0.10, 0.45);
    double range = lift.key == "step-up" ? box : share * usual;
    if (plan.repetitions >= 4 && random.chance(0.2)) {
        plan.partial.push_back(random.below(plan.repetitions));
        range = std::max(range, lift.minimumRange * 1.25 / 0.6); // even 60 % of it is a repetition of this lift
    }
    plan.range = range;
}

simulator::SetPlan drawPlan(const reps::Lift& lift, Random& random)
{
    simulator::SetPlan plan;
    plan.lift = lift.key;
    plan.repetitions = drawRepetitions(random);
    const double longest = plan.repetitions > 12 ? 1.0 : 5.0; // a set of 30 is not paused for minutes
    plan.topPause = drawPause(random, 0.35, longest);
    plan.bottomPause = drawPause(random, 0.55, longest);
    plan.tempo = random.chance(0.15) ? random.uniform(2.0, 4.0) : random.uniform(0.7, 2.0);
    drawEffort(plan, random);
    drawRange(plan, lift, random);
    plan.rackWork = random.chance(0.5);
    plan.stillBefore = random.chance(0.3) ? 0.5 : random.uniform(0.5, 3.0);
    plan.stillAfter = random.uniform(0.3, 2.0);
    return plan;
}

simulator::SensorPlan drawSensor(double rate, Random& random)
{
    constexpr std::array<std::string_view, 5> parts{"A", "B", "C", "D", "E"};
    simulator::SensorPlan sensor;
    sensor.part = parts[static_cast<std::size_t>(random.below(5))];
    sensor.rate = rate;
    sensor.randomMounting = true;
    sensor.wobble = random.chance(0.3) ? 0.0 : random.uniform(-0.7, 0.7);
    const double across = random.uniform(-0.03, 0.03);
    const double along = random.uniform(-1.0, 1.0); // anywhere on the bar
    const double above = random.uniform(-0.03, 0.03);
    sensor.lever = {across, along, above};
    sensor.clockSkew = random.uniform(-300e-6, 300e-6);
    sensor.startTime = random.uniform(0, 100);
    return sensor;
}

} // namespace

std::uint64_t mixed(std::uint64_t seed, std::uint64_t number)
{
    // SplitMix64, Steele, Lea and Flood 2014 (from memory).
    std::uint64_t z = seed + (number + 1) * 0x9E3779B97F4A7C15U;
    z = (z ^ (z >> 30U)) * 0xBF58476D1CE4E5B9U;
    z = (z ^ (z >> 27U)) * 0x94D049BB133111EBU;
    return z ^ (z >> 31U);
}

std::vector<const reps::Lift*> judgedLifts()
{
    std::vector<const reps::Lift*> lifts;
    for (const auto& lift : reps::allLifts())
        if (lift.metric != reps::EvidenceMetric::ContactTime && lift.key != "free" &&
            simulator::findGesture(lift.key) != nullptr)
            lifts.push_back(&lift);
    return lifts;
}

bool concerns(const Fault& fault, const reps::Lift& lift)
{
    using simulator::Kind;
    const auto kind = simulator::findGesture(lift.key)->kind;
    return !fault.fromSupportOnly || kind == Kind::Pull || kind == Kind::Clean;
}

Drawn draw(const Situation& situation)
{
    Random random(mixed(situation.seed, 1));
    Drawn drawn{drawPlan(*situation.lift, random), {}};
    drawn.sensor = drawSensor(situation.rate, random);
    Random faulty(mixed(situation.seed, 2));
    if (situation.fault->prepare != nullptr)
        situation.fault->prepare(drawn, faulty);
    return drawn;
}

Expected<simulator::SimulatedSet> simulate(const Situation& situation)
{
    const auto drawn = draw(situation);
    auto set = simulator::simulateSet(drawn.plan, drawn.sensor, mixed(situation.seed, 3));
    Random faulty(mixed(situation.seed, 4));
    if (set && situation.fault->damage != nullptr)
        situation.fault->damage(*set, faulty);
    if (set && situation.fault->asReceived) {
        auto ordered = motion::putInOrder(std::move(set->received));
        if (!ordered)
            return tl::unexpected<Error>(ordered.error());
        set->recording.samples = std::move(ordered->samples);
    }
    return set;
}

} // namespace fleetrung::accuracy
