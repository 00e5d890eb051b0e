// What a real sensor and a real radio do wrong: measured where it can be, refused by name where it cannot, never a
// number as if nothing had happened. The truth is the simulator's.
#include <catch2/catch.hpp>

#include <cstdio>
#include <filesystem>
#include <iostream>
#include <memory>

#include "demo/simulator/simulator.hpp"
#include "engine/motion/intake.hpp"
#include "engine/motion/recording_csv.hpp"
#include "engine/reps/analyse.hpp"

using namespace fleetrung;
using motion::Fault;
using motion::Quality;
using simulator::SensorPlan;
using simulator::SetPlan;
using simulator::SimulatedSet;

namespace
{

constexpr std::uint64_t seed = 9204;

SimulatedSet simulated(const SetPlan& plan, const SensorPlan& sensor, std::uint64_t setSeed)
{
    auto set = simulator::simulateSet(plan, sensor, setSeed);
    if (!set)
        FAIL(describe(set.error()));
    return std::move(*set);
}

reps::SetAnalysis analysed(const motion::Recording& recording, const SetPlan& plan)
{
    auto analysis = reps::analyseSet(recording, *reps::findLift(plan.lift));
    if (!analysis)
        FAIL(describe(analysis.error()));
    return std::move(*analysis);
}

bool names(const std::vector<motion::Finding>& findings, Fault fault, Quality quality)
{
    return std::any_of(findings.begin(), findings.end(), [&](const motion::Finding& finding) {
        return finding.fault == fault && finding.quality == quality;
    });
}

/// What became of the true repetitions.
struct Outcome {
    int truths = 0, measured = 0, refused = 0, lost = 0, invented = 0;
    double worstMean = 0, worstRange = 0; // m/s, m, among the measured

    void add(const SimulatedSet& set, const reps::SetAnalysis& analysis)
    {
        std::size_t matched = 0;
        for (const auto& truth : set.truth) {
            ++truths;
            const double peak = truth.sensor.peakTime;
            const auto rep =
                std::find_if(analysis.repetitions.begin(), analysis.repetitions.end(), [&](const reps::Repetition& r) {
                    return r.concentricStart <= peak && peak <= r.concentricEnd;
                });
            if (rep != analysis.repetitions.end()) {
                ++measured;
                ++matched;
                worstMean = std::max(worstMean, std::abs(rep->meanVelocity.value - truth.sensor.meanVelocity));
                worstRange = std::max(worstRange, std::abs(rep->range.value - truth.sensor.range));
                continue;
            }
            const bool named =
                std::any_of(analysis.refused.begin(), analysis.refused.end(), [&](const reps::RefusedRepetition& r) {
                    return r.concentricStart < truth.sensor.concentricEnd &&
                           truth.sensor.concentricStart < r.concentricEnd;
                });
            ++(named ? refused : lost);
        }
        invented += static_cast<int>(analysis.repetitions.size() - matched);
    }
};

std::ostream& operator<<(std::ostream& out, const Outcome& outcome)
{
    return out << outcome.truths << " repetitions: " << outcome.measured << " measured, " << outcome.refused
               << " refused by name, " << outcome.lost << " lost, " << outcome.invented
               << " invented; worst mean velocity " << outcome.worstMean << " m/s, range " << outcome.worstRange
               << " m\n";
}

// Without lifts that set the bar down hard: a blow between two samples is the estimator's trouble, not the radio's.
const std::vector<std::string_view> someLifts{"full-squat", "half-squat", "bench-press", "quarter-squat", "hinge"};

} // namespace

TEST_CASE("With up to ten percent of the packets lost each repetition is measured, or refused for its gap",
          "[reps][faults]")
{
    for (const double loss : {0.01, 0.05, 0.10}) {
        Outcome outcome;
        int flagged = 0;
        for (std::uint64_t i = 0; i < 30; ++i) {
            SetPlan plan;
            plan.lift = someLifts[i % someLifts.size()];
            SensorPlan sensor;
            sensor.lossShare = loss;
            sensor.randomMounting = true;
            const auto set = simulated(plan, sensor, seed + i);
            const auto analysis = analysed(set.recording, plan);
            flagged += names(analysis.findings, Fault::Gap, Quality::A) ? 1 : 0;
            for (const auto& refused : analysis.refused)
                CHECK(refused.fault == Fault::Gap);
            outcome.add(set, analysis);
        }
        std::cout << "loss " << loss << ", seeds from " << seed << ": " << outcome;
        CAPTURE(loss, seed);
        CHECK(flagged >= 25);                       // a set may be lucky
        CHECK(50 * outcome.lost <= outcome.truths); // a gap beside the phase can bend the motion after it
        CHECK(outcome.invented == 0);
        CHECK(outcome.measured > outcome.truths / 2);
    }
}

TEST_CASE("A burst of 300 ms before the first repetition is flagged and does no harm", "[reps][faults]")
{
    Outcome outcome;
    for (std::uint64_t i = 0; i < 20; ++i) {
        SetPlan plan;
        plan.lift = someLifts[i % someLifts.size()];
        SensorPlan sensor;
        sensor.randomMounting = true;
        sensor.faults.burstLoss = 0.3;
        sensor.faults.burstAt = 0.9;
        const auto set = simulated(plan, sensor, seed + i);
        const auto analysis = analysed(set.recording, plan);
        CHECK(analysis.quality == Quality::B);
        REQUIRE(names(analysis.findings, Fault::Gap, Quality::B));
        CHECK(analysis.findings.front().from == Approx(0.9).margin(0.011));
        CHECK(analysis.findings.front().to == Approx(1.2).margin(0.011));
        CHECK(analysis.refused.empty());
        outcome.add(set, analysis);
    }
    std::cout << "burst outside, seeds from " << seed << ": " << outcome;
    CHECK(outcome.measured == outcome.truths);
    CHECK(outcome.invented == 0);
    CHECK(outcome.worstMean < 0.05);
}

TEST_CASE("A burst of 300 ms inside a concentric phase refuses that repetition by name and no other", "[reps][faults]")
{
    Outcome outcome;
    for (std::uint64_t i = 0; i < 20; ++i) {
        SetPlan plan;
        plan.lift = someLifts[i % someLifts.size()];
        SensorPlan sensor;
        sensor.randomMounting = true;
        sensor.faults.burstLoss = 0.3;
        sensor.faults.burstRepetition = static_cast<int>(i % 5);
        const auto set = simulated(plan, sensor, seed + i);
        const auto analysis = analysed(set.recording, plan);
        CAPTURE(seed + i, plan.lift);
        REQUIRE(analysis.refused.size() == 1);
        CHECK(analysis.refused[0].fault == Fault::Gap);
        CHECK(analysis.quality == Quality::B);
        outcome.add(set, analysis);
    }
    std::cout << "burst inside, seeds from " << seed << ": " << outcome;
    CHECK(outcome.refused == 20);
    CHECK(outcome.measured == outcome.truths - 20);
    CHECK(outcome.invented == 0);
}

TEST_CASE("Doubled and late packets change nothing, bit for bit", "[reps][faults]")
{
    for (const double rate : {50.0, 200.0, 1000.0, 2000.0}) {
        SetPlan plan;
        SensorPlan sensor;
        sensor.rate = rate;
        sensor.doubledShare = 0.1;
        sensor.swappedShare = 0.1;
        const auto set = simulated(plan, sensor, seed);
        auto ordered = motion::putInOrder(set.received);
        REQUIRE(ordered);
        CHECK(names(ordered->findings, Fault::Doubled, Quality::A));
        CHECK(names(ordered->findings, Fault::Late, Quality::A));
        REQUIRE(ordered->samples.size() == set.recording.samples.size());
        for (std::size_t i = 0; i < ordered->samples.size(); ++i) {
            REQUIRE(ordered->samples[i].time == set.recording.samples[i].time);
            REQUIRE(ordered->samples[i].specificForce == set.recording.samples[i].specificForce);
        }
    }
}

TEST_CASE("A clock that is 300 ppm fast or slow stays class A and loses nothing", "[reps][faults]")
{
    const double skew = GENERATE(-300e-6, 300e-6);
    Outcome outcome;
    for (std::uint64_t i = 0; i < 10; ++i) {
        SetPlan plan;
        plan.lift = someLifts[i % someLifts.size()];
        SensorPlan sensor;
        sensor.clockSkew = skew;
        const auto set = simulated(plan, sensor, seed + i);
        const auto analysis = analysed(set.recording, plan);
        CHECK(analysis.quality == Quality::A);
        CHECK(analysis.findings.empty());
        outcome.add(set, analysis);
    }
    std::cout << "clock skew " << skew << ", seeds from " << seed << ": " << outcome;
    CHECK(outcome.measured == outcome.truths);
    CHECK(outcome.invented == 0);
    CHECK(outcome.worstMean < 0.03);
}

TEST_CASE("A clock that steps back goes on by one period, one that steps forward leaves a gap; both are named",
          "[reps][faults]")
{
    const double step = GENERATE(-20.0, -2.0, -0.3, 0.3, 1.5);
    CAPTURE(step);
    for (std::uint64_t i = 0; i < 5; ++i) {
        SetPlan plan;
        SensorPlan sensor;
        sensor.lossShare = i % 2 == 0 ? 0 : 0.01;
        sensor.swappedShare = 0.03;
        sensor.faults.clockStep = step;
        sensor.faults.clockStepAt = 1.0; // the bar is held still
        const auto set = simulated(plan, sensor, seed + i);
        auto ordered = motion::putInOrder(set.received);
        REQUIRE(ordered);
        REQUIRE(ordered->samples.size() == set.recording.samples.size());
        CHECK(names(ordered->findings, Fault::ClockStep, Quality::B) == (step < 0));
        const double shift = ordered->samples.back().time - set.recording.samples.back().time;
        CHECK(shift == Approx(step > 0 ? step : 0.0).margin(0.06));
        const auto analysis = analysed({std::move(ordered->samples), true, set.recording.sensor}, plan);
        CHECK((analysis.quality == Quality::B || step < 0));
        CHECK(analysis.repetitions.size() + analysis.refused.size() == set.truth.size());
    }
}

TEST_CASE("From 25 to 2000 samples a second every repetition is found; below 100 it is class B", "[reps][faults]")
{
    for (const double rate : {25.0, 50.0, 100.0, 200.0, 400.0, 1000.0, 2000.0}) {
        Outcome outcome;
        for (std::uint64_t i = 0; i < 10; ++i) {
            SetPlan plan;
            plan.lift = someLifts[i % someLifts.size()];
            SensorPlan sensor;
            sensor.rate = rate;
            sensor.randomMounting = true;
            sensor.timingJitter = 0.1 / rate;
            const auto set = simulated(plan, sensor, seed + i);
            const auto analysis = analysed(set.recording, plan);
            CHECK(analysis.quality == (rate < 100 ? Quality::B : Quality::A));
            CHECK(names(analysis.findings, Fault::LowRate, Quality::B) == (rate < 100));
            outcome.add(set, analysis);
        }
        std::cout << rate << " Hz, seeds from " << seed << ": " << outcome;
        CAPTURE(rate, seed);
        CHECK(outcome.measured == outcome.truths);
        CHECK(outcome.invented == 0);
    }
}

TEST_CASE("Ranges of 2 to 32 g: what is clipped is flagged, and refused where the concentric phase is",
          "[reps][faults]")
{
    for (const double range : {2.0, 4.0, 8.0, 16.0, 32.0}) {
        Outcome outcome;
        int flagged = 0;
        for (std::uint64_t i = 0; i < 20; ++i) {
            SetPlan plan;
            plan.lift = i % 2 == 0 ? "hang-power-clean" : "floor-power-clean";
            plan.repetitions = 3;
            plan.speed = i % 4 < 2 ? 1.0 : 1.7;
            SensorPlan sensor;
            sensor.accelerometerRange = range;
            sensor.randomMounting = i % 3 == 0;
            const auto set = simulated(plan, sensor, seed + i);
            const auto analysis = analysed(set.recording, plan);
            for (const auto& refused : analysis.refused)
                CHECK(refused.fault == Fault::Clipped);
            const bool clipped = names(analysis.findings, Fault::Clipped, Quality::B);
            CHECK((analysis.quality == Quality::B) == clipped);
            flagged += clipped ? 1 : 0;
            outcome.add(set, analysis);
        }
        std::cout << "+-" << range << " g, seeds from " << seed << ", " << flagged
                  << " of 20 sets clipped: " << outcome;
        CAPTURE(range, seed);
        CHECK((range < 4 || outcome.lost == 0)); // 20 ms and more at the end of the range bend the motion around
        CHECK(outcome.invented == 0);
        CHECK((range > 2 || outcome.refused > 0));
        CHECK((range < 32 || (flagged == 0 && outcome.measured == outcome.truths)));
    }
}

TEST_CASE("Without a gyroscope repetitions are found and flagged", "[reps][faults]")
{
    Outcome outcome;
    for (std::uint64_t i = 0; i < 20; ++i) {
        SetPlan plan;
        plan.lift = someLifts[i % someLifts.size()];
        SensorPlan sensor;
        sensor.hasGyroscope = false;
        const auto set = simulated(plan, sensor, seed + i);
        const auto analysis = analysed(set.recording, plan);
        CHECK(analysis.quality == Quality::B);
        CHECK(names(analysis.findings, Fault::NoGyroscope, Quality::B));
        outcome.add(set, analysis);
    }
    std::cout << "no gyroscope, seeds from " << seed << ": " << outcome;
    CHECK(outcome.measured == outcome.truths);
    CHECK(outcome.invented == 0);
}

TEST_CASE("A stuck axis is refused, and its sensor and axis named", "[reps][faults]")
{
    const int axis = GENERATE(0, 1, 2, 3, 4, 5);
    const std::string sensorName = axis < 3 ? "accelerometer " : "gyroscope ";
    const std::string name = sensorName + "xyz"[axis % 3];
    for (const double from : {0.0, 4.0})
        for (std::uint64_t i = 0; i < 12; ++i) {
            SetPlan plan;
            plan.lift = someLifts[i % someLifts.size()];
            SensorPlan sensor;
            // The counts of class C at 100 Hz hide the noise of its gyroscope: an axis that sees little tells nothing.
            sensor.part = i % 3 == 0 ? "A" : i % 3 == 1 && i % 2 == 1 && from == 0 ? "C" : "E";
            sensor.rate = i % 2 == 0 ? 100 : 400;
            sensor.randomMounting = i % 4 < 2;
            sensor.faults.stuckAxis = axis;
            sensor.faults.stuckFrom = from;
            const auto set = simulated(plan, sensor, seed + i);
            const auto analysis = reps::analyseSet(set.recording, *reps::findLift(plan.lift));
            CAPTURE(seed + i, plan.lift, name, from);
            REQUIRE_FALSE(analysis);
            CHECK(analysis.error().code == Code::NotAvailable);
            CHECK(analysis.error().place == name);
        }
}

TEST_CASE("A gyroscope that turns the wrong way is refused, and its axes named, where the bar turns in all of them",
          "[reps][faults]")
{
    const unsigned pattern = GENERATE(1U, 2U, 4U, 7U);
    std::string name;
    for (unsigned axis = 0; axis < 3; ++axis)
        if ((pattern >> axis) & 1U)
            name += (name.empty() ? "gyroscope " : ", ") + std::string(1, "xyz"[axis]);
    int refused = 0;
    int named = 0;
    for (std::uint64_t i = 0; i < 20; ++i) {
        SetPlan plan;
        plan.lift = someLifts[i % someLifts.size()];
        SensorPlan sensor;
        sensor.wobble = 0.6;
        // The bar's own axis lies aslant to the sensor's, so that each of them turns.
        sensor.mounting = Eigen::AngleAxisd(0.9, Eigen::Vector3d(1, 0.4, -1).normalized());
        for (unsigned axis = 0; axis < 3; ++axis)
            sensor.faults.swappedSign[axis] = ((pattern >> axis) & 1U) != 0;
        const auto set = simulated(plan, sensor, seed + i);
        const auto analysis = reps::analyseSet(set.recording, *reps::findLift(plan.lift));
        CAPTURE(seed + i, plan.lift, name);
        if (analysis)
            continue;
        ++refused;
        CHECK(analysis.error().code == Code::NotAvailable);
        named += analysis.error().place == name ? 1 : 0;
    }
    std::cout << name << " swapped, seeds from " << seed << ": " << refused << " of 20 refused, " << named
              << " with this name\n";
    CHECK(refused == 20);
    CHECK(named >= 18);
}

TEST_CASE("Clean sets of every lift, part, rate, mounting and wobble are never refused", "[reps][faults]")
{
    int sets = 0;
    for (std::uint64_t i = 0; i < 6; ++i)
        for (const auto& lift : reps::allLifts())
            for (const std::string_view part : {"A", "B", "C", "E", "old", "perfect"}) {
                if (lift.key == "free")
                    continue;
                const std::uint64_t setSeed = seed + static_cast<std::uint64_t>(++sets);
                SetPlan plan;
                plan.lift = lift.key;
                plan.repetitions = 1 + static_cast<int>(setSeed % 4);
                plan.rackWork = setSeed % 3 == 0;
                plan.living = setSeed % 5 != 0;
                plan.sway = plan.living ? 1 : 0;
                plan.topPause = 0.4 * static_cast<double>(setSeed % 4);
                SensorPlan sensor;
                sensor.part = part;
                sensor.rate = std::array{25.0, 50.0, 100.0, 200.0, 400.0}[setSeed / 7 % 5];
                sensor.wobble = 0.1 * static_cast<double>(setSeed % 8);
                sensor.randomMounting = setSeed % 2 == 0;
                const auto set = simulated(plan, sensor, setSeed);
                const auto screening = motion::screen(set.recording);
                CAPTURE(setSeed, lift.key, part, sensor.rate, sensor.wobble);
                if (!screening)
                    FAIL_CHECK(describe(screening.error()));
            }
    std::cout << sets << " clean sets screened, seeds from " << seed << '\n';
    CHECK(sets >= 500);
}

namespace
{

std::string unpacked(const std::filesystem::path& path)
{
    const std::unique_ptr<FILE, int (*)(FILE*)> pipe(popen(("gzip -dc '" + path.string() + "'").c_str(), "r"), pclose);
    std::string text;
    std::array<char, 65536> buffer{};
    for (std::size_t got = 0; pipe && (got = fread(buffer.data(), 1, buffer.size(), pipe.get())) > 0;)
        text.append(buffer.data(), got);
    return text;
}

} // namespace

// Data: Laidig, Caruso, Cereatti, Seel 2021, doi:10.3390/data6070072 (CC BY 4.0).
TEST_CASE("Real recordings of a hand-moved sensor are clean; with an axis stuck they are not", "[reps][faults]")
{
    const std::filesystem::path folder = FLEETRUNG_DATA "/imu-optical-translation";
    if (!std::filesystem::exists(folder)) {
        WARN("skipped: " << folder << " is not here");
        return;
    }
    const motion::ColumnMap columns{{"time_s", "t_s"},       {"acc_x_mps2", "acc_x"},  {"acc_y_mps2", "acc_y"},
                                    {"acc_z_mps2", "acc_z"}, {"gyr_x_radps", "gyr_x"}, {"gyr_y_radps", "gyr_y"},
                                    {"gyr_z_radps", "gyr_z"}};
    int recordings = 0;
    for (const auto& file : std::filesystem::directory_iterator(folder)) {
        if (!file.path().string().ends_with(".csv.gz"))
            continue;
        ++recordings;
        CAPTURE(file.path().filename());
        const auto imported = motion::importRecording(unpacked(file.path()), columns);
        REQUIRE(imported);
        const auto screening = motion::screen(imported->recording);
        REQUIRE(screening);
        CHECK(screening->quality == Quality::A);
        CHECK(screening->rate == Approx(2000.0 / 7).epsilon(1e-4)); // SOURCE.md of the recordings
        for (int axis = 0; axis < 6; ++axis) {
            auto stuck = imported->recording;
            for (auto& sample : stuck.samples)
                (axis < 3 ? sample.specificForce[axis] : sample.angularRate[axis - 3]) =
                    axis < 3 ? stuck.samples[0].specificForce[axis] : stuck.samples[0].angularRate[axis - 3];
            const auto refused = motion::screen(stuck);
            REQUIRE_FALSE(refused);
            CHECK(refused.error().place == std::string(axis < 3 ? "accelerometer " : "gyroscope ") + "xyz"[axis % 3]);
        }
    }
    CHECK(recordings == 7);
}
