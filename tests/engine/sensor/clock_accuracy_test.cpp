// What a radio does to the instants of samples, and what is left of it in the time to peak velocity: simulated sets
// over a simulated radio, against the same samples at their true instants.
#include <algorithm>
#include <cmath>
#include <iostream>
#include <random>
#include <vector>

#include <catch2/catch.hpp>

#include "demo/sensor/packet_encoder.hpp"
#include "demo/simulator/simulator.hpp"
#include "engine/reps/analyse.hpp"
#include "engine/sensor/stream.hpp"
#include "tests/engine/sensor/map_forms.hpp"

using namespace fleetrung;
using namespace fleetrung::sensor;
using namespace fleetrung::sensor::forms;

namespace
{

constexpr std::int64_t zero = 5'000'000'000; // ns
constexpr double stallLength = 0.5;          // s
constexpr double mostOff = 2e-3;             // s, the project's own limit (design)

/// A radio: packets wait for the next connection event, now and then a moment longer, and the phone stalls.
class AirTime
{
public:
    AirTime(std::uint64_t seed, double stallsFrom, double duration) : random_(seed)
    {
        interval = std::uniform_real_distribution(0.005, 0.060)(random_);
        skew = std::uniform_real_distribution(-300e-6, 300e-6)(random_);
        phase_ = std::uniform_real_distribution(0.0, interval)(random_);
        lateness_ = std::exponential_distribution(1 / std::uniform_real_distribution(0.1e-3, 2e-3)(random_));
        const int count = std::uniform_int_distribution(0, 3)(random_);
        for (int i = 0; i < count; ++i)
            stalls.push_back(std::uniform_real_distribution(stallsFrom, duration)(random_));
    }

    /// [s] of the phone, for a packet that was complete at `sent` of the sensor's clock.
    double arrivalOf(double sent)
    {
        const double ready = sent * (1 + skew);
        double arrival = std::ceil((ready - phase_) / interval) * interval + phase_;
        arrival += lateness_(random_);
        for (const double stall : stalls)
            if (arrival > stall && arrival < stall + stallLength)
                arrival = stall + stallLength;
        last_ = std::max(last_ + 1e-6, arrival);
        return last_;
    }

    double interval = 0, skew = 0;
    std::vector<double> stalls;

private:
    std::mt19937_64 random_;
    std::exponential_distribution<> lateness_;
    double phase_ = 0, last_ = 0;
};

enum class Form { Stamps, Counter, Arrivals };
enum class Beat { Any, InStep }; ///< of packets and connection events; in step: nearly one a packet

struct Conditions {
    Form form = Form::Stamps;
    Beat beat = Beat::Any;
    int youngest = 5, oldest = 30; ///< s of streaming before the set
    double mostLost = 0.02;        ///< share of packets
    double rate = 0;               ///< Hz; 0: 100, 200, 300 and 400 in turn
};

SensorMap mapOf(Form form, double rate, int samplesAPacket = 4)
{
    const auto fields = readings(NumberType::Int16, ByteOrder::Little, 6, gravity / 2048, degree / 16);
    std::vector<Field> header;
    if (form == Form::Stamps)
        header = {stamp(NumberType::UInt32, 1e-6)};
    else if (form == Form::Counter)
        header = {counter(NumberType::UInt16)};
    auto map = binary(header, fields, samplesAPacket);
    map.streams.front().rate = rate;
    return map;
}

struct Played {
    motion::Recording disturbed, undisturbed;
};

/// What is drawn of a sensor and its use.
struct Use {
    double connectedBefore; ///< s of streaming before the set
    double lossShare;       ///< of packets
    int samplesAPacket;
};

Use drawUse(const Conditions& conditions, std::uint64_t seed)
{
    static constexpr int sizes[] = {1, 2, 4, 8};
    std::mt19937_64 random(seed);
    Use use{};
    use.connectedBefore = std::uniform_int_distribution(conditions.youngest, conditions.oldest)(random);
    use.lossShare = conditions.mostLost * std::uniform_real_distribution(0.0, 1.0)(random);
    use.samplesAPacket = sizes[std::uniform_int_distribution(0, 3)(random)];
    return use;
}

/// The set after so much rest, as the sensor's clock tells it.
std::vector<motion::Sample> withRestBefore(const motion::Recording& set, double rate, double rest)
{
    std::vector<motion::Sample> samples;
    for (int i = 0; i < static_cast<int>(rest * rate); ++i) {
        auto still = set.samples[static_cast<std::size_t>(i) % static_cast<std::size_t>(rate)]; // a second of it
        still.time = i / rate;
        samples.push_back(still);
    }
    const double shift = rest - set.samples.front().time;
    for (auto sample : set.samples) {
        sample.time += shift;
        samples.push_back(sample);
    }
    return samples;
}

/// A set over that radio, as the program takes it in: the clock runs before, and is frozen while the set lasts.
Played play(const Conditions& conditions, const motion::Recording& set, double rate, std::uint64_t seed)
{
    const Use use = drawUse(conditions, seed + 1);
    const auto samples = withRestBefore(set, rate, use.connectedBefore);
    const auto map = mapOf(conditions.form, rate, use.samplesAPacket);
    demo::PacketEncoder encoder(map);
    AirTime air(seed, use.connectedBefore, samples.back().time);
    std::mt19937_64 random(seed + 2);
    if (conditions.beat == Beat::InStep)
        air.interval = use.samplesAPacket / rate * std::uniform_real_distribution(0.985, 1.015)(random);
    Stream stream(map, {}, zero);
    Played played;
    played.disturbed = played.undisturbed = set;
    played.disturbed.samples.clear();
    played.undisturbed.samples.clear();
    std::size_t sent = 0;
    bool inSet = false;
    for (const auto& packet : encoder.encode(samples)) {
        std::size_t index = sent;
        sent += static_cast<std::size_t>(use.samplesAPacket);
        const auto arrival =
            zero + static_cast<std::int64_t>(1e9 * air.arrivalOf(1e-9 * static_cast<double>(packet.arrival)));
        if (std::uniform_real_distribution(0.0, 1.0)(random) < use.lossShare)
            continue;
        if (!inSet && samples[index].time >= use.connectedBefore) {
            stream.setBegins();
            inSet = true;
        }
        for (const auto& fresh : stream.add(packet.source, packet.bytes, arrival)) {
            if (inSet) {
                played.disturbed.samples.push_back(fresh.sample);
                played.undisturbed.samples.push_back(fresh.sample);
                played.undisturbed.samples.back().time = samples[index].time;
            }
            ++index;
        }
    }
    stream.setEnds();
    return played;
}

struct Tally {
    std::vector<double> differences; // s
    int sets = 0, unlike = 0;        // other number of repetitions
    std::uint64_t worstSeed = 0;
};

Tally compare(const Conditions& conditions, int sets, std::uint64_t firstSeed)
{
    static constexpr const char* lifts[] = {"half-squat", "quarter-squat", "parallel-squat", "bench-press"};
    static constexpr double rates[] = {100, 200, 300, 400};
    Tally tally;
    double worst = 0;
    for (int i = 0; i < sets; ++i) {
        const std::uint64_t seed = firstSeed + static_cast<std::uint64_t>(i);
        const double rate = conditions.rate > 0 ? conditions.rate : rates[i % 4];
        const auto* lift = reps::findLift(lifts[i / 4 % 4]);
        REQUIRE(lift != nullptr);
        simulator::SetPlan plan;
        plan.lift = lifts[i / 4 % 4];
        plan.repetitions = 3;
        simulator::SensorPlan sensor;
        sensor.rate = rate;
        const auto set = simulator::simulateSet(plan, sensor, seed);
        REQUIRE(set);
        const auto played = play(conditions, set->recording, rate, seed);
        const auto disturbed = reps::analyseSet(played.disturbed, *lift);
        const auto undisturbed = reps::analyseSet(played.undisturbed, *lift);
        REQUIRE(undisturbed);
        ++tally.sets;
        if (!disturbed || disturbed->repetitions.size() != undisturbed->repetitions.size()) {
            ++tally.unlike;
            std::cout << "seed " << seed << ": other repetitions\n";
            continue;
        }
        for (std::size_t k = 0; k < disturbed->repetitions.size(); ++k) {
            const double difference = std::abs(disturbed->repetitions[k].timeToPeakVelocity.value -
                                               undisturbed->repetitions[k].timeToPeakVelocity.value);
            tally.differences.push_back(difference);
            if (difference > worst) {
                worst = difference;
                tally.worstSeed = seed;
            }
        }
    }
    std::sort(tally.differences.begin(), tally.differences.end());
    return tally;
}

void say(const char* name, const Tally& tally)
{
    const auto& all = tally.differences;
    std::cout << name << ": " << tally.sets << " sets, " << all.size() << " repetitions, " << tally.unlike
              << " sets unlike; TPV differs by median " << 1e3 * all[all.size() / 2] << " ms, 95th percentile "
              << 1e3 * all[all.size() * 95 / 100] << " ms, "
              << 100.0 * static_cast<double>(all.end() - std::upper_bound(all.begin(), all.end(), mostOff)) /
                     static_cast<double>(all.size())
              << " % by more than 2 ms, worst " << 1e3 * all.back() << " ms (seed " << tally.worstSeed << ")\n";
}

void check(const char* name, const Conditions& conditions, int sets, std::uint64_t seed)
{
    const auto tally = compare(conditions, sets, seed);
    say(name, tally);
    CAPTURE(name, seed, tally.worstSeed);
    CHECK(tally.unlike == 0);
    CHECK(tally.differences.back() <= mostOff);
}

} // namespace

// Seeds are printed with the worst case.
TEST_CASE(
    "Skew, bunching and stalls of the phone leave the time to peak velocity within 2 ms of the undisturbed capture")
{
    check("stamps", {.form = Form::Stamps}, 160, 1001);
    check("counter", {.form = Form::Counter}, 160, 2001);
    check("arrivals", {.form = Form::Arrivals, .mostLost = 0}, 160, 3001);
    check("stamps, in step with the radio", {.form = Form::Stamps, .beat = Beat::InStep, .oldest = 10}, 160, 4001);
}

// Where the 2 ms do not hold, for README: run by its name, it prints and promises nothing.
TEST_CASE("How far times are off at 50 Hz, in step with the radio, and where losses cannot be seen", "[.limits]")
{
    constexpr int sets = 400;
    const auto measure = [&](const char* name, const Conditions& conditions, std::uint64_t seed) {
        say(name, compare(conditions, sets, seed));
    };
    measure("stamps, 50 Hz", {.form = Form::Stamps, .rate = 50}, 10'001);
    measure("arrivals, 50 Hz", {.form = Form::Arrivals, .mostLost = 0, .rate = 50}, 11'001);
    for (const auto& [youngest, oldest] : {std::pair(5, 10), std::pair(10, 30), std::pair(30, 60)}) {
        std::cout << "link " << youngest << " to " << oldest << " s old: ";
        measure("counter, in step",
                {.form = Form::Counter, .beat = Beat::InStep, .youngest = youngest, .oldest = oldest}, 12'001);
        std::cout << "link " << youngest << " to " << oldest << " s old: ";
        measure("arrivals, in step",
                {.form = Form::Arrivals, .beat = Beat::InStep, .youngest = youngest, .oldest = oldest, .mostLost = 0},
                13'001);
    }
    measure("arrivals, up to 2 % lost", {.form = Form::Arrivals}, 14'001);
}

namespace
{

constexpr double minute = 60; // s

/// A minute of one 100 Hz stream, some packets of four samples lost, over a radio of that connection interval.
struct Lossy {
    Stream stream;
    std::vector<std::pair<double, double>> times; ///< s: given out, true

    [[nodiscard]] double lossShare() const
    {
        return stream.health(zero + static_cast<std::int64_t>(minute * 1e9)).lossShare;
    }
};

Lossy lossyStream(Form form, std::uint64_t seed, const std::vector<int>& lostPackets, double interval = 0,
                  bool stalls = false)
{
    Lossy lossy{Stream(mapOf(form, 100), {}, zero), {}};
    std::vector<motion::Sample> samples;
    for (int i = 0; i < static_cast<int>(minute * 100); ++i)
        samples.push_back({i / 100.0, {0, 0, gravity}, Eigen::Vector3d::Zero()});
    demo::PacketEncoder encoder(mapOf(form, 100));
    AirTime air(seed, 0, minute);
    if (interval > 0)
        air.interval = interval;
    if (!stalls)
        air.stalls.clear();
    int number = 0;
    for (const auto& packet : encoder.encode(samples)) {
        const double sent = 1e-9 * static_cast<double>(packet.arrival);
        const auto arrival = zero + static_cast<std::int64_t>(1e9 * air.arrivalOf(sent));
        if (std::find(lostPackets.begin(), lostPackets.end(), number++) != lostPackets.end())
            continue;
        const auto fresh = lossy.stream.add(packet.source, packet.bytes, arrival);
        lossy.times.emplace_back(fresh.back().sample.time, sent * (1 + air.skew));
    }
    return lossy;
}

} // namespace

TEST_CASE("Without counter and stamp a lost packet is missed within a second or two, and times are right after it")
{
    for (std::uint64_t seed = 1; seed <= 20; ++seed)
        for (const double interval : {0.032, 0.035, 0.045, 0.0525}) { // a packet lasts 0.04 s
            CAPTURE(seed, interval);
            const auto lossy = lossyStream(Form::Arrivals, seed, {900, 1000, 1001, 1400}, interval);
            CHECK(lossy.lossShare() ==
                  Approx(4 / 1050.0).epsilon(0.08)); // health tells of the last 10-11 s: one packet
            double worst = 0;
            for (const auto& [given, real] : lossy.times)
                if (real > 58)
                    worst = std::max(worst, std::abs(given - real));
            CHECK(worst < 0.025); // of the bunching; 0.16 s were lost
        }
}

TEST_CASE("Packets that keep step with the radio's beat are not taken for lost where they just miss one")
{
    for (std::uint64_t seed = 1; seed <= 10; ++seed)
        for (const double interval : {0.0100, 0.0199, 0.02, 0.0395, 0.0399, 0.04, 0.0401, 0.0405, 0.0595, 0.06}) {
            CAPTURE(seed, interval);
            CHECK(lossyStream(Form::Arrivals, seed, {}, interval).lossShare() == 0);
        }
}

TEST_CASE("Without counter and stamp nothing is missed where nothing was lost, whatever stalls")
{
    for (std::uint64_t seed = 1; seed <= 20; ++seed) {
        CAPTURE(seed);
        CHECK(lossyStream(Form::Arrivals, seed, {}, 0, true).lossShare() == 0);
    }
}

TEST_CASE("Stamps tell what is lost as a counter does")
{
    for (const auto form : {Form::Stamps, Form::Counter}) {
        CHECK(lossyStream(form, 1, {1300, 1400, 1401}, 0, true).lossShare() == Approx(12 / 1050.0).epsilon(0.08));
        CHECK(lossyStream(form, 2, {}, 0, true).lossShare() == 0);
    }
}
