#include <catch2/catch.hpp>

#include <iomanip>
#include <iostream>
#include <numeric>

#include "demo/simulator/simulator.hpp"
#include "engine/reps/analyse.hpp"

using namespace fleetrung;
using simulator::SensorPlan;
using simulator::SetPlan;

namespace
{

constexpr std::uint64_t seed = 4071;

/// Errors against the simulator's truth, gathered over many sets.
struct Score {
    int repetitions = 0;
    int missed = 0;
    int invented = 0;
    double meanVelocity = 0, peakVelocity = 0, timeToPeak = 0, range = 0; // sums of squares

    [[nodiscard]] double rms(double sum) const { return std::sqrt(sum / std::max(1, repetitions - missed)); }
};

void compare(const SetPlan& plan, const SensorPlan& sensor, std::uint64_t setSeed, Score& score)
{
    const auto set = simulator::simulateSet(plan, sensor, setSeed);
    REQUIRE(set);
    const auto analysis = reps::analyseSet(set->recording, *reps::findLift(plan.lift));
    REQUIRE(analysis);
    std::vector<bool> matched(analysis->repetitions.size());
    for (const auto& truth : set->truth) {
        ++score.repetitions;
        std::size_t i = 0;
        const auto contains = [&](const reps::Repetition& rep) {
            return rep.concentricStart <= truth.sensor.peakTime && truth.sensor.peakTime <= rep.concentricEnd;
        };
        while (i < matched.size() && (matched[i] || !contains(analysis->repetitions[i])))
            ++i;
        if (i == matched.size()) {
            ++score.missed;
            continue;
        }
        matched[i] = true;
        const auto& rep = analysis->repetitions[i];
        const auto square = [](double x) { return x * x; };
        score.meanVelocity += square(rep.meanVelocity.value - truth.sensor.meanVelocity);
        score.peakVelocity += square(rep.peakVelocity.value - truth.sensor.peakVelocity);
        score.timeToPeak += square(rep.timeToPeakVelocity.value - truth.sensor.timeToPeakVelocity);
        score.range += square(rep.range.value - truth.sensor.range);
    }
    score.invented += static_cast<int>(std::count(matched.begin(), matched.end(), false));
}

/// Sets at both ends of what is usual: touch-and-go and paused, with and without rack work, three sensor classes.
Score scoreOf(std::string_view lift, double rate)
{
    Score score;
    std::uint64_t setSeed = seed;
    for (const double topPause : {0.0, 1.2})
        for (const double bottomPause : {0.0, 0.6})
            for (const bool rackWork : {false, true}) {
                ++setSeed;
                SetPlan plan;
                plan.lift = lift;
                plan.topPause = topPause;
                plan.bottomPause = bottomPause;
                plan.rackWork = rackWork;
                plan.loadShare = setSeed % 2 == 0 ? 0.6 : 0.75;
                SensorPlan sensor;
                sensor.rate = rate;
                sensor.randomMounting = true;
                sensor.part = setSeed % 3 == 0 ? "A" : setSeed % 3 == 1 ? "B" : "E";
                compare(plan, sensor, setSeed, score);
            }
    return score;
}

} // namespace

// The numbers a first analysis must keep on clean recordings; the truth is the simulator's closed form.
TEST_CASE("Every repetition of every lift is found, none invented, and measured well, at 100 to 400 Hz",
          "[reps][simulated]")
{
    CAPTURE(seed);
    std::cout
        << "lift                     rate  found/true invented  mean m/s  peak m/s  TPV ms  range mm (rms errors)\n";
    for (const auto& lift : reps::allLifts()) {
        if (lift.key == "free" || lift.metric == reps::EvidenceMetric::ContactTime)
            continue;
        for (const double rate : {100.0, 200.0, 400.0}) {
            const Score score = scoreOf(lift.key, rate);
            std::cout << std::left << std::setw(24) << lift.key << std::right << std::setw(5) << static_cast<int>(rate)
                      << std::setw(7) << score.repetitions - score.missed << '/' << score.repetitions << std::setw(9)
                      << score.invented << std::fixed << std::setprecision(4) << std::setw(11)
                      << score.rms(score.meanVelocity) << std::setw(10) << score.rms(score.peakVelocity)
                      << std::setprecision(1) << std::setw(8) << 1e3 * score.rms(score.timeToPeak) << std::setw(8)
                      << 1e3 * score.rms(score.range) << '\n'
                      << std::defaultfloat;
            CAPTURE(lift.key, rate);
            CHECK(score.missed == 0);
            CHECK(score.invented == 0);
            CHECK(score.rms(score.meanVelocity) <= 0.03);
            CHECK(score.rms(score.timeToPeak) <= 0.015);
            CHECK(score.rms(score.range) <= 0.03);
        }
    }
}

TEST_CASE("A set of 30 repetitions is counted", "[reps][simulated]")
{
    SetPlan plan;
    plan.lift = "quarter-squat";
    plan.repetitions = 30;
    plan.topPause = 0.2;
    Score score;
    compare(plan, SensorPlan{}, seed, score);
    CHECK(score.repetitions == 30);
    CHECK(score.missed == 0);
    CHECK(score.invented == 0);
}

TEST_CASE("Loading plates, walking out and re-racking without lifting gives no repetition", "[reps][simulated]")
{
    SetPlan plan;
    plan.lift = "full-squat";
    plan.repetitions = 0;
    plan.rackWork = true;
    Score score;
    compare(plan, SensorPlan{}, seed, score);
    CHECK(score.repetitions == 0);
    CHECK(score.invented == 0);
}

TEST_CASE("A partial repetition is kept and flagged as one", "[reps][simulated]")
{
    SetPlan plan;
    plan.lift = "full-squat";
    plan.partial = {2};
    const auto set = simulator::simulateSet(plan, SensorPlan{}, seed);
    REQUIRE(set);
    const auto analysis = reps::analyseSet(set->recording, *reps::findLift(plan.lift));
    REQUIRE(analysis);
    REQUIRE(analysis->repetitions.size() == 5);
    for (std::size_t i = 0; i < 5; ++i)
        CHECK(reps::has(analysis->repetitions[i].flags, reps::Flag::ShortRange) == (i == 2));
}

TEST_CASE("A clean from the hang dips from the hang, not from the shoulders, and a small first dip counts too",
          "[reps][simulated]")
{
    SetPlan plan;
    plan.lift = "hang-power-clean";
    plan.repetitions = 4;
    SensorPlan sensor;
    sensor.part = "C";
    sensor.rate = 100;
    for (std::uint64_t set = 0; set < 25; ++set) {
        CAPTURE(seed, set);
        const auto simulated = simulator::simulateSet(plan, sensor, seed + set);
        REQUIRE(simulated);
        const auto analysis = reps::analyseSet(simulated->recording, *reps::findLift(plan.lift));
        REQUIRE(analysis);
        REQUIRE(analysis->repetitions.size() == simulated->truth.size());
        for (const auto& rep : analysis->repetitions) {
            REQUIRE(rep.reversalTime);
            CHECK(rep.reversalTime->value < 0.6);
        }
    }
}

TEST_CASE("Drop jumps are not counted as repetitions: they are told by contact and flight", "[reps][error]")
{
    SetPlan plan;
    plan.lift = "drop-jump";
    const auto set = simulator::simulateSet(plan, SensorPlan{}, seed);
    REQUIRE(set);
    const auto analysis = reps::analyseSet(set->recording, *reps::findLift(plan.lift));
    REQUIRE_FALSE(analysis);
    CHECK(analysis.error().code == Code::NotAvailable);
}
