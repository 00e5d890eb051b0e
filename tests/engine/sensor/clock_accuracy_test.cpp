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
constexpr double connectedBefore = 30;       // s of streaming before the set
constexpr double stallLength = 0.5;          // s

/// A radio: packets wait for the next connection event, now and then a moment longer, and the phone stalls.
class AirTime
{
public:
    AirTime(std::uint64_t seed, double duration) : random_(seed)
    {
        interval = std::uniform_real_distribution(0.005, 0.060)(random_);
        skew = std::uniform_real_distribution(-300e-6, 300e-6)(random_);
        phase_ = std::uniform_real_distribution(0.0, interval)(random_);
        const int count = std::uniform_int_distribution(0, 3)(random_);
        for (int i = 0; i < count; ++i)
            stalls.push_back(std::uniform_real_distribution(connectedBefore, duration)(random_));
    }

    /// [s] of the phone, for a packet that was complete at `sent` of the sensor's clock.
    double arrivalOf(double sent)
    {
        const double ready = sent * (1 + skew);
        double arrival = std::ceil((ready - phase_) / interval) * interval + phase_;
        arrival += std::exponential_distribution(1 / 0.5e-3)(random_);
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
    double phase_ = 0, last_ = 0;
};

enum class Form { Stamps, Counter, Arrivals };

SensorMap mapOf(Form form, double rate)
{
    const auto fields = readings(NumberType::Int16, ByteOrder::Little, 6, gravity / 2048, degree / 16);
    std::vector<Field> header;
    if (form == Form::Stamps)
        header = {stamp(NumberType::UInt32, 1e-6)};
    else if (form == Form::Counter)
        header = {counter(NumberType::UInt16)};
    auto map = binary(header, fields, 4);
    map.streams.front().rate = rate;
    return map;
}

struct Played {
    motion::Recording disturbed, undisturbed;
    double interval = 0, skew = 0;
    std::size_t stalls = 0;
};

/// A set over that radio, as the program takes it in: the clock runs before, and is frozen while the set lasts.
Played play(Form form, const motion::Recording& set, double rate, std::uint64_t seed, double lossShare)
{
    std::vector<motion::Sample> samples;
    const auto before = static_cast<int>(connectedBefore * rate);
    for (int i = 0; i < before; ++i) {
        auto still = set.samples[static_cast<std::size_t>(i) % static_cast<std::size_t>(rate)]; // a second of rest
        still.time = i / rate;
        samples.push_back(still);
    }
    const double shift = connectedBefore - set.samples.front().time;
    for (auto sample : set.samples) {
        sample.time += shift;
        samples.push_back(sample);
    }

    const auto map = mapOf(form, rate);
    demo::PacketEncoder encoder(map);
    AirTime air(seed, samples.back().time);
    std::mt19937_64 random(seed + 1);
    Stream stream(map, {}, zero);
    Played played;
    played.disturbed = played.undisturbed = set;
    played.disturbed.samples.clear();
    played.undisturbed.samples.clear();
    played.interval = air.interval;
    played.skew = air.skew;
    played.stalls = air.stalls.size();
    std::size_t sent = 0;
    bool inSet = false;
    for (const auto& packet : encoder.encode(samples)) {
        const std::size_t first = sent;
        sent += 4;
        const bool lost = std::uniform_real_distribution(0.0, 1.0)(random) < lossShare;
        const auto arrival =
            zero + static_cast<std::int64_t>(1e9 * air.arrivalOf(1e-9 * static_cast<double>(packet.arrival)));
        if (lost)
            continue;
        if (!inSet && samples[first].time >= connectedBefore) {
            stream.setBegins();
            inSet = true;
        }
        std::size_t index = first;
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

Tally compare(Form form, int sets, std::uint64_t firstSeed)
{
    static constexpr const char* lifts[] = {"half-squat", "quarter-squat", "parallel-squat"};
    static constexpr double rates[] = {100, 200, 400};
    Tally tally;
    double worst = 0;
    for (int i = 0; i < sets; ++i) {
        const std::uint64_t seed = firstSeed + static_cast<std::uint64_t>(i);
        const double rate = rates[i % 3];
        const auto* lift = reps::findLift(lifts[i / 3 % 3]);
        REQUIRE(lift != nullptr);
        simulator::SetPlan plan;
        plan.lift = lifts[i / 3 % 3];
        plan.repetitions = 3;
        simulator::SensorPlan sensor;
        sensor.rate = rate;
        const auto set = simulator::simulateSet(plan, sensor, seed);
        REQUIRE(set);
        const double loss = form == Form::Arrivals ? 0 : 0.01;
        const auto played = play(form, set->recording, rate, seed, loss);
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

void say(const char* form, const Tally& tally)
{
    const auto& all = tally.differences;
    std::cout << form << ": " << tally.sets << " sets, " << all.size() << " repetitions, " << tally.unlike
              << " sets unlike; TPV differs by median " << 1e3 * all[all.size() / 2] << " ms, 95th percentile "
              << 1e3 * all[all.size() * 95 / 100] << " ms, worst " << 1e3 * all.back() << " ms (seed "
              << tally.worstSeed << ")\n";
}

void check(const char* name, Form form, int sets, std::uint64_t seed)
{
    const auto tally = compare(form, sets, seed);
    say(name, tally);
    CAPTURE(name, seed, tally.worstSeed);
    CHECK(tally.unlike == 0);
    CHECK(tally.differences.back() <= 2e-3);
}

} // namespace

// The 2 ms are the project's own limit (design). Seeds are printed with the worst case.
TEST_CASE(
    "Skew, bunching and stalls of the phone leave the time to peak velocity within 2 ms of the undisturbed capture")
{
    check("stamps", Form::Stamps, 100, 1001);
    check("counter", Form::Counter, 100, 2001);
    check("arrivals", Form::Arrivals, 100, 3001);
}

namespace
{

/// Packets of one 100 Hz stream without counter and stamp, some of them lost.
struct Lossy {
    Stream stream{mapOf(Form::Arrivals, 100), {}, zero};
    std::vector<std::pair<double, double>> times; ///< s: given out, true
};

Lossy lossyStream(std::uint64_t seed, const std::vector<int>& lostPackets, bool stalls)
{
    Lossy lossy;
    std::vector<motion::Sample> samples;
    for (int i = 0; i < 6000; ++i)
        samples.push_back({i / 100.0, {0, 0, gravity}, Eigen::Vector3d::Zero()});
    demo::PacketEncoder encoder(mapOf(Form::Arrivals, 100));
    AirTime air(seed, 60);
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
    for (std::uint64_t seed = 1; seed <= 10; ++seed) {
        CAPTURE(seed);
        auto lossy = lossyStream(seed, {1000, 1200, 1201, 1400}, false); // four samples each, at 40, 48 and 56 s
        CHECK(lossy.stream.health(zero + 60'000'000'000).lossShare > 0);
        CHECK(lossy.stream.health(zero + 60'000'000'000).lossShare < 0.02);
        double worst = 0;
        for (const auto& [given, real] : lossy.times)
            if (real > 58)
                worst = std::max(worst, std::abs(given - real));
        CHECK(worst < 0.025); // of the bunching; 0.16 s were lost
    }
}

TEST_CASE("Without counter and stamp nothing is missed where nothing was lost, whatever stalls")
{
    for (std::uint64_t seed = 1; seed <= 20; ++seed) {
        CAPTURE(seed);
        auto lossy = lossyStream(seed, {}, true);
        CHECK(lossy.stream.health(zero + 60'000'000'000).lossShare == 0);
    }
}
