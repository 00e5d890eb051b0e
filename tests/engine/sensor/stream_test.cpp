#include <cmath>
#include <vector>

#include <catch2/catch.hpp>

#include "demo/sensor/packet_encoder.hpp"
#include "engine/sensor/stream.hpp"
#include "tests/benchmarks/allocations.hpp"
#include "tests/engine/sensor/map_forms.hpp"

using namespace fleetrung;
using namespace fleetrung::sensor;
using namespace fleetrung::sensor::forms;

namespace
{

constexpr std::int64_t zero = 5'000'000'000; // ns
constexpr double rate = 200;                 // Hz

/// Turns to and fro about the vertical axis and moves along it.
std::vector<motion::Sample> swinging(double seconds)
{
    std::vector<motion::Sample> samples;
    for (int i = 0; i < static_cast<int>(seconds * rate); ++i) {
        const double t = i / rate;
        samples.push_back({t, {0, 0, gravity + 2 * std::sin(3 * t)}, {0, 0, std::sin(2 * t)}});
    }
    return samples;
}

const auto accelerometer = readings(NumberType::Int16, ByteOrder::Little, 3, gravity / 2048, 0);
const auto both = readings(NumberType::Int16, ByteOrder::Little, 6, gravity / 2048, degree / 16.4);

SensorMap withRate(SensorMap map)
{
    for (auto& form : map.streams)
        form.rate = rate;
    return map;
}

/// The accelerometer on one characteristic, the gyroscope on another; both carry stamps, counters, or neither.
SensorMap twoStreams(const std::vector<Field>& header)
{
    auto map = binary(header, accelerometer, 5);
    auto turning = binary(header, readings(NumberType::Int16, ByteOrder::Little, 3, degree / 16.4, 0), 4);
    for (std::size_t i = 0; i < 3; ++i)
        turning.streams.front().binary.sampleFields[i].channel = axis(3 + static_cast<int>(i));
    turning.streams.front().characteristic = "6e400004-b5a3-f393-e0a9-e50e24dcca9e";
    map.streams.push_back(turning.streams.front());
    return withRate(map);
}

/// What `map`'s sensor would send of the samples, through a radio that is `late` behind, into a stream.
std::vector<StreamSample> streamed(Stream& stream, const SensorMap& map, std::span<const motion::Sample> samples,
                                   double late = 0.004)
{
    demo::PacketEncoder encoder(map);
    std::vector<StreamSample> all;
    for (const auto& packet : encoder.encode(samples)) {
        const auto arrival = zero + packet.arrival + static_cast<std::int64_t>(late * 1e9);
        const auto fresh = stream.add(packet.source, packet.bytes, arrival);
        all.insert(all.end(), fresh.begin(), fresh.end());
    }
    return all;
}

void checkGrows(std::span<const StreamSample> samples)
{
    int steps = 0;
    for (std::size_t i = 1; i < samples.size(); ++i)
        steps += samples[i].sample.time > samples[i - 1].sample.time ? 0 : 1;
    CHECK(steps == 0);
}

} // namespace

TEST_CASE("A stream gives every sample once, at the sensor's instant and with its readings")
{
    const std::vector<std::vector<Field>> headers{{}, {counter(NumberType::UInt16)}, {stamp(NumberType::UInt32, 1e-6)}};
    const auto samples = swinging(20);
    for (const auto& header : headers) {
        CAPTURE(header.size(), header.empty() ? -1 : static_cast<int>(header[0].channel));
        const auto map = withRate(binary(header, both, 10));
        Stream stream(map, {}, zero);
        const auto all = streamed(stream, map, samples);
        REQUIRE(all.size() == samples.size());
        checkGrows(all);
        double worst = 0, worstForce = 0;
        for (std::size_t i = 0; i < all.size(); ++i) {
            worst = std::max(worst, std::abs(all[i].sample.time - samples[i].time - 0.004));
            worstForce = std::max(worstForce, (all[i].sample.specificForce - samples[i].specificForce).norm());
        }
        CHECK(worst < 0.5e-3);
        CHECK(worstForce < gravity / 2048);
        CHECK(stream.health(all.back().receipt.arrival).rate == Approx(rate).epsilon(0.02));
    }
}

TEST_CASE("Accelerometer and gyroscope of two characteristics come out as one, the gyroscope at the other's instants")
{
    const auto samples = swinging(10);
    const std::vector<std::vector<Field>> headers{{counter(NumberType::UInt16)}, {stamp(NumberType::UInt32, 1e-6)}};
    for (const auto& header : headers) {
        const auto map = twoStreams(header);
        Stream stream(map, {}, zero);
        const auto all = streamed(stream, map, samples);
        REQUIRE(all.size() > samples.size() - 20);
        checkGrows(all);
        double worst = 0;
        for (const auto& one : all)
            if (one.sample.time > 2)
                worst = std::max(worst, std::abs(one.sample.angularRate.z() - std::sin(2 * (one.sample.time - 0.004))));
        // Of counters the two clocks are found apart: 3 ms of a turn that changes by 2 rad/s2.
        CHECK(worst < 0.007);
    }
}

TEST_CASE("A sensor without gyroscope turns by zero")
{
    const auto map = withRate(binary({}, accelerometer, 10));
    Stream stream(map, {}, zero);
    for (const auto& one : streamed(stream, map, swinging(1)))
        REQUIRE(one.sample.angularRate.isZero(0));
}

TEST_CASE("Calibration is taken off every sample")
{
    motion::Calibration calibration;
    calibration.scale = {1.01, 1, 0.98};
    calibration.offset = {0.1, -0.2, 0.3};
    calibration.gyroscopeBias = {0.01, 0, -0.02};
    const auto map = withRate(binary({counter(NumberType::UInt16)}, both, 10));
    Stream plain(map, {}, zero), calibrated(map, calibration, zero);
    const auto samples = swinging(2);
    const auto before = streamed(plain, map, samples), after = streamed(calibrated, map, samples);
    REQUIRE(before.size() == after.size());
    for (std::size_t i = 0; i < before.size(); ++i)
        REQUIRE(calibration.apply(before[i].sample).specificForce == after[i].sample.specificForce);
}

TEST_CASE("In a set the times lie on one line, and the receipts give them back bit for bit")
{
    const std::vector<std::vector<Field>> headers{{}, {counter(NumberType::UInt16)}, {stamp(NumberType::UInt32, 1e-6)}};
    for (const auto& header : headers) {
        const auto map = withRate(binary(header, both, 10));
        Stream stream(map, {}, zero);
        demo::PacketEncoder encoder(map);
        const auto samples = swinging(40);
        int number = 0;
        for (const auto& packet : encoder.encode(samples)) {
            // Notifications wait for connection events 30 ms apart.
            const auto arrival = zero + (packet.arrival / 30'000'000 + 1) * 30'000'000;
            if (++number == 400)
                stream.setBegins();
            for (const auto& one : stream.add(packet.source, packet.bytes, arrival))
                if (number > 400)
                    REQUIRE(stream.fit().timeOf(one.receipt.counter) == one.sample.time);
        }
        const auto fit = motion::parseClockFit(motion::clockFitText(stream.fit()));
        REQUIRE(fit);
        CHECK(*fit == stream.fit());
    }
}

TEST_CASE("After a lost link times go on and the gap is counted")
{
    for (const bool begins : {true, false}) {
        const auto map = withRate(binary({counter(NumberType::UInt16)}, both, 10));
        Stream stream(map, {}, zero);
        demo::PacketEncoder encoder(map);
        const auto samples = swinging(20);
        std::vector<StreamSample> all;
        for (std::size_t i = 0; i < samples.size(); ++i) {
            if (i == 2000) {
                stream.linkLost();
                if (begins)
                    encoder.restart();
            }
            const bool away = i >= 2000 && i < 2400;
            for (const auto& packet : encoder.encode(std::span(samples).subspan(i, 1))) {
                if (away)
                    continue;
                const auto arrival = zero + static_cast<std::int64_t>(samples[i].time * 1e9) + 4'000'000;
                const auto fresh = stream.add(packet.source, packet.bytes, arrival);
                all.insert(all.end(), fresh.begin(), fresh.end());
            }
        }
        CHECK(all.size() == 3600);
        checkGrows(all);
        CHECK(all.back().sample.time == Approx(samples.back().time).margin(0.01));
        CHECK(all[2000].sample.time - all[1999].sample.time == Approx(401 / rate).margin(0.01));
        CHECK(stream.health(all.back().receipt.arrival).gaps == 1);
    }
}

TEST_CASE("Health tells rate, loss, stall and silence")
{
    const auto map = withRate(binary({counter(NumberType::UInt16)}, both, 10));
    Stream stream(map, {}, zero);
    demo::PacketEncoder encoder(map);
    std::int64_t arrival = 0;
    int number = 0;
    for (const auto& packet : encoder.encode(swinging(20))) {
        if (++number % 10 == 0)
            continue; // every tenth is lost
        arrival = zero + packet.arrival;
        stream.add(packet.source, packet.bytes, arrival);
    }
    stream.add(0, std::vector<std::uint8_t>{1, 2, 3}, arrival);
    const auto health = stream.health(arrival + 3'000'000'000);
    CHECK(health.lossShare == Approx(0.1).margin(0.02));
    CHECK(health.longestStall == Approx(0.1).margin(0.002));
    CHECK(health.silence == Approx(3));
    CHECK(health.expectedRate == rate);
    CHECK(health.badPackets == 1);
    CHECK(health.lastBad == BadPacket::TooShort);
    CHECK(health.samples == 3600);
}

TEST_CASE("A running stream asks for no memory")
{
    for (const auto& map : {twoStreams({counter(NumberType::UInt16)}), withRate(binary({}, both, 10))}) {
        Stream stream(map, {}, zero);
        demo::PacketEncoder encoder(map);
        const auto packets = encoder.encode(swinging(10));
        const auto before = benchmarks::allocations();
        for (const auto& packet : packets)
            stream.add(packet.source, packet.bytes, zero + packet.arrival);
        CHECK(benchmarks::allocations() == before);
    }
}

TEST_CASE("Any bytes are safe")
{
    const auto map = twoStreams({counter(NumberType::UInt16)});
    Stream stream(map, {}, zero);
    std::uint32_t state = 1;
    std::vector<std::uint8_t> bytes;
    double last = -1e9;
    for (int i = 0; i < 20000; ++i) {
        bytes.resize(state % 300);
        for (auto& byte : bytes) {
            state = state * 1664525U + 1013904223U;
            byte = static_cast<std::uint8_t>(state >> 24U);
        }
        state = state * 1664525U + 1013904223U;
        for (const auto& one : stream.add(state % 3, bytes, zero + i * 10'000'000LL)) {
            REQUIRE(one.sample.time > last);
            last = one.sample.time;
        }
    }
}
