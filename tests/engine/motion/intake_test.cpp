#include "engine/motion/intake.hpp"

#include <catch2/catch.hpp>

#include <cmath>
#include <random>

using namespace fleetrung;
using namespace fleetrung::motion;

namespace
{

constexpr double period = 0.005;

/// A sample whose readings tell which one it is.
Sample numbered(int i, double time)
{
    return {time, {std::sin(0.1 * i), std::cos(0.07 * i), 9.8 + 0.001 * i}, {0.01 * i, 0, 0}};
}

std::vector<Sample> numberedTo(int count)
{
    std::vector<Sample> samples;
    for (int i = 0; i < count; ++i)
        samples.push_back(numbered(i, i * period));
    return samples;
}

std::vector<Sample> part(const std::vector<Sample>& all, int from, int to)
{
    return {all.begin() + from, all.begin() + to};
}

void append(std::vector<Sample>& all, const std::vector<Sample>& more)
{
    all.insert(all.end(), more.begin(), more.end());
}

/// The samples are exactly the numbered ones, in order.
void checkWhole(const std::vector<Sample>& samples, int count)
{
    REQUIRE(samples.size() == static_cast<std::size_t>(count));
    for (int i = 0; i < count; ++i) {
        const auto& sample = samples[static_cast<std::size_t>(i)];
        REQUIRE(sample.time == Approx(i * period).margin(1e-9));
        REQUIRE(sample.specificForce == numbered(i, 0).specificForce);
    }
}

Ordered ordered(std::vector<Sample> received)
{
    auto result = putInOrder(std::move(received));
    if (!result)
        FAIL(describe(result.error()));
    return std::move(*result);
}

/// Held still and level, with a fixed pattern for noise.
Recording still(int count, double rate)
{
    Recording recording;
    for (int i = 0; i < count; ++i) {
        const auto noise = [i](double step) { return 0.02 * std::sin(i * i * step); };
        recording.samples.push_back(
            {i / rate, {noise(1.7), noise(2.3), 9.8 + noise(2.9)}, {noise(1.1), noise(3.1), noise(0.7)}});
    }
    return recording;
}

} // namespace

TEST_CASE("samples in order are left as they are and nothing is told", "[intake]")
{
    const auto result = ordered(numberedTo(100));
    checkWhole(result.samples, 100);
    CHECK(result.findings.empty());
}

TEST_CASE("a packet that comes twice is dropped once and counted", "[intake]")
{
    const auto all = numberedTo(60);
    auto received = part(all, 0, 30);
    append(received, part(all, 20, 30));
    append(received, part(all, 30, 60));
    const auto result = ordered(received);
    checkWhole(result.samples, 60);
    REQUIRE(result.findings.size() == 1);
    CHECK(result.findings[0].fault == Fault::Doubled);
    CHECK(result.findings[0].quality == Quality::A);
    CHECK(result.findings[0].message.substr(0, 3) == "10 ");
    CHECK(result.findings[0].from == Approx(20 * period));
    CHECK(result.findings[0].to == Approx(29 * period));
}

TEST_CASE("a late packet is put back, be it the first, a middle one, several packets late, or of one sample",
          "[intake]")
{
    const int size = GENERATE(1, 10);
    const int late = GENERATE(0, 2, 3);
    const int by = GENERATE(1, 4);
    CAPTURE(size, late, by);
    const auto all = numberedTo(100);
    std::vector<Sample> received;
    for (int packet = 0; packet < 100 / size; ++packet) {
        if (packet == late)
            continue;
        append(received, part(all, packet * size, (packet + 1) * size));
        if (packet == late + by)
            append(received, part(all, late * size, (late + 1) * size));
    }
    const auto result = ordered(received);
    checkWhole(result.samples, 100);
    REQUIRE(result.findings.size() == 1);
    CHECK(result.findings[0].fault == Fault::Late);
}

TEST_CASE("a clock that steps back goes on by one period, whatever the step", "[intake]")
{
    const double step = GENERATE(-0.0125, -0.1, -0.25, -1.0, -500.0);
    CAPTURE(step);
    auto received = numberedTo(400);
    for (std::size_t i = 200; i < 400; ++i)
        received[i].time += step;
    const auto result = ordered(received);
    checkWhole(result.samples, 400);
    REQUIRE(result.findings.size() == 1);
    CHECK(result.findings[0].fault == Fault::ClockStep);
    CHECK(result.findings[0].quality == Quality::B);
    CHECK(result.findings[0].place == "clock");
    CHECK(result.findings[0].from == Approx(199 * period));
}

TEST_CASE("a clock that steps forward leaves a gap", "[intake]")
{
    Recording recording = still(400, 200);
    for (std::size_t i = 200; i < 400; ++i)
        recording.samples[i].time += 3;
    const auto screening = screen(recording);
    REQUIRE(screening);
    CHECK(screening->quality == Quality::B);
    REQUIRE(screening->gaps.size() == 1);
    CHECK(screening->gaps[0].from == Approx(199 * 0.005));
    CHECK(screening->gaps[0].to == Approx(200 * 0.005 + 3));
    REQUIRE(screening->findings.size() == 1);
    CHECK(screening->findings[0].message.find("stepped forward") != std::string::npos);
}

TEST_CASE("a stamp that jitters past its neighbour is sorted in, it is no step", "[intake]")
{
    auto received = numberedTo(100);
    received[50].time = received[49].time - 0.001;
    const auto result = ordered(received);
    CHECK(result.samples.size() == 100);
    REQUIRE(result.findings.size() == 1);
    CHECK(result.findings[0].fault == Fault::Late);
    CHECK(result.samples.back().time == Approx(99 * period));
}

TEST_CASE("samples that contradict each other, and a clock that runs back again and again, are refused", "[intake]")
{
    auto received = numberedTo(100);
    SECTION("one time, two readings")
    {
        received[50] = numbered(1000, received[49].time);
        const auto result = putInOrder(received, [](std::size_t i) { return "row " + std::string(i, '+'); });
        REQUIRE_FALSE(result);
        CHECK(result.error().code == Code::InvalidInput);
        CHECK(result.error().place == "row " + std::string(50, '+'));
    }
    SECTION("reversed")
    {
        received = numberedTo(2000);
        std::reverse(received.begin(), received.end());
        CHECK(putInOrder(received).error().message.find("sort") != std::string::npos);
    }
    SECTION("a time that is no number")
    {
        received[50].time = std::nan("");
        CHECK(putInOrder(received).error().place == "sample 50");
    }
}

TEST_CASE("whatever comes is refused, or comes out with times that increase and no sample made up", "[intake]")
{
    constexpr unsigned seed = 71;
    CAPTURE(seed);
    std::mt19937 random(seed);
    const auto below = [&](std::size_t count) { return random() % count; };
    int accepted = 0;
    for (int round = 0; round < 3000; ++round) {
        auto received = numberedTo(static_cast<int>(20 + below(300)));
        for (std::size_t change = below(8); change > 0; --change) {
            const auto from = static_cast<std::ptrdiff_t>(below(received.size() - 15));
            const auto length = static_cast<std::ptrdiff_t>(1 + below(12));
            const auto first = received.begin() + from;
            if (const auto what = below(5); what == 0)
                received.insert(received.begin() + static_cast<std::ptrdiff_t>(below(received.size())),
                                received[static_cast<std::size_t>(from)]);
            else if (what == 1)
                std::reverse(first, first + length);
            else if (what == 2)
                std::rotate(first, first + length / 2, first + length);
            else if (what == 3)
                std::for_each(first, received.end(),
                              [shift = 0.01 * (double(below(100)) - 50)](Sample& each) { each.time += shift; });
            else if (received.size() > 40)
                received.erase(first, first + length);
        }
        const auto result = putInOrder(received);
        if (!result)
            continue;
        ++accepted;
        REQUIRE(result->samples.size() <= received.size());
        for (std::size_t i = 1; i < result->samples.size(); ++i)
            REQUIRE(result->samples[i].time > result->samples[i - 1].time);
    }
    CHECK(accepted > 500);
}

TEST_CASE("gaps up to 60 ms are bridged, longer ones listed", "[intake]")
{
    const int missing = GENERATE(1, 11, 12, 60);
    auto recording = still(600, 200);
    recording.samples.erase(recording.samples.begin() + 300, recording.samples.begin() + 300 + missing);
    const auto screening = screen(recording);
    REQUIRE(screening);
    const bool isLong = (missing + 1) * 0.005 > 0.0601;
    CHECK(screening->quality == (isLong ? Quality::B : Quality::A));
    CHECK(screening->gaps.size() == (isLong ? 1U : 0U));
    REQUIRE(screening->findings.size() == 1);
    CHECK(screening->findings[0].fault == Fault::Gap);
    CHECK(screening->rate == Approx(200));
}

TEST_CASE("25 to 100 samples a second are class B, fewer than 25 are refused, also where stamps jitter", "[intake]")
{
    for (const double rate : {25.0, 60.0, 100.0, 500.0, 2000.0}) {
        auto recording = still(static_cast<int>(4 * rate), rate);
        for (std::size_t i = 0; i < recording.samples.size(); ++i)
            recording.samples[i].time += 0.3 / rate * std::sin(static_cast<double>(i * i));
        const auto screening = screen(recording);
        CAPTURE(rate);
        REQUIRE(screening);
        CHECK(screening->quality == (rate < 100 ? Quality::B : Quality::A));
        CHECK(screening->rate == Approx(rate).epsilon(0.02));
    }
    const auto slow = screen(still(60, 20));
    REQUIRE_FALSE(slow);
    CHECK(slow.error().code == Code::NotAvailable);
    CHECK(slow.error().message.find("20.0 samples a second") != std::string::npos);
    CHECK(screen(still(6000, 5000)).error().message.find("unit of time") != std::string::npos);
}

TEST_CASE("clipping is found at the range that the sensor states, or at a full scale where readings stay", "[intake]")
{
    auto recording = still(600, 200);
    for (std::size_t i = 300; i < 303; ++i)
        recording.samples[i].specificForce.y() = -4 * 9.80665;
    SECTION("stated")
    {
        recording.sensor.accelerometerRange = 4 * 9.80665;
    }
    SECTION("not stated") {}
    const auto screening = screen(recording);
    REQUIRE(screening);
    CHECK(screening->quality == Quality::B);
    REQUIRE(screening->clipped.size() == 1);
    CHECK(screening->clipped[0].from == Approx(299.5 * 0.005));
    CHECK(screening->clipped[0].to == Approx(302.5 * 0.005));
    REQUIRE(screening->findings.size() == 1);
    CHECK(screening->findings[0].place == "accelerometer y");
    CHECK(sharedTime(screening->clipped, 0, 300 * 0.005) == Approx(0.0025));
}

TEST_CASE("a hard blow that stays nowhere is not taken for clipping where no range is stated", "[intake]")
{
    auto recording = still(600, 200);
    recording.samples[300].specificForce.y() = 39.2;
    recording.samples[301].specificForce.y() = -39.2;
    CHECK(screen(recording)->quality == Quality::A);
}

TEST_CASE("without a gyroscope the class is B", "[intake]")
{
    auto recording = still(600, 200);
    recording.hasGyroscope = false;
    for (auto& sample : recording.samples)
        sample.angularRate.setZero();
    const auto screening = screen(recording);
    REQUIRE(screening);
    CHECK(screening->quality == Quality::B);
    CHECK(screening->findings.front().fault == Fault::NoGyroscope);
}

TEST_CASE("an axis that keeps its reading while the others tremble is named", "[intake]")
{
    const int axis = GENERATE(0, 1, 2, 3, 4, 5);
    auto recording = still(600, 200);
    for (auto& sample : recording.samples)
        (axis < 3 ? sample.specificForce[axis] : sample.angularRate[axis - 3]) = 0.5;
    const auto refused = screen(recording);
    REQUIRE_FALSE(refused);
    CHECK(refused.error().place == (axis < 3 ? "accelerometer " : "gyroscope ") + std::string(1, "xyz"[axis % 3]));
}

TEST_CASE("axes that keep their reading because nothing reaches them are not stuck", "[intake]")
{
    auto recording = still(800, 200);
    const auto level = [](Sample& sample) { // a force plate, or a level sensor without noise
        sample.specificForce.x() = sample.specificForce.y() = 0;
        sample.angularRate.setZero();
    };
    SECTION("a noisy vertical axis") {}
    SECTION("a smooth vertical axis")
    {
        for (auto& sample : recording.samples)
            sample.specificForce.z() = 9.8 + 3 * std::sin(4 * sample.time);
    }
    std::for_each(recording.samples.begin(), recording.samples.end(), level);
    const auto screening = screen(recording);
    REQUIRE(screening);
    CHECK(screening->quality == Quality::A);
}

TEST_CASE("a noiseless sensor that turns about one axis has an axis that keeps its reading, and is not stuck",
          "[intake]")
{
    auto recording = still(800, 200);
    for (auto& sample : recording.samples) {
        const double angle = 0.4 * std::sin(3 * sample.time);
        sample.specificForce = {9.8 * std::sin(angle), 0, 9.8 * std::cos(angle)};
        sample.angularRate = {0, -1.2 * std::cos(3 * sample.time), 0};
    }
    const auto right = screen(recording);
    REQUIRE(right);
    for (auto& sample : recording.samples)
        sample.angularRate *= -1;
    const auto wrong = screen(recording);
    REQUIRE_FALSE(wrong);
    CHECK(wrong.error().place == "gyroscope y");
    for (auto& sample : recording.samples)
        sample.angularRate.setZero();
    CHECK(screen(recording).error().place == "gyroscope");
}

TEST_CASE("readings that are no numbers and times that do not increase are refused with their sample", "[intake]")
{
    auto recording = still(100, 200);
    SECTION("no number")
    {
        recording.samples[42].angularRate.y() = std::nan("");
    }
    SECTION("infinite")
    {
        recording.samples[42].specificForce.z() = std::numeric_limits<double>::infinity();
    }
    SECTION("time")
    {
        recording.samples[42].time = recording.samples[41].time;
    }
    CHECK(screen(recording).error().place == "sample 42");
    CHECK(screen(recording).error().code == Code::InvalidInput);
}
