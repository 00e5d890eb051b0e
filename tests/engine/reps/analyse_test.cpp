#include <catch2/catch.hpp>

#include <Eigen/Geometry>

#include "closed_form.hpp"
#include "engine/reps/analyse.hpp"

using namespace fleetrung;
using namespace fleetrung::tests;
using fleetrung::reps::analyseSet;
using fleetrung::reps::findLift;

namespace
{

std::vector<Stretch> squats(int repetitions, double range, double topPause)
{
    std::vector<Stretch> stretches{stillness(1.5)};
    for (int i = 0; i < repetitions; ++i) {
        stretches.push_back(minimumJerk(-range, 0.9));
        stretches.push_back(minimumJerk(range, 0.7));
        if (topPause > 0)
            stretches.push_back(stillness(topPause));
    }
    stretches.push_back(stillness(1.5));
    return stretches;
}

} // namespace

// Source: closed form of the minimum-jerk stroke: mean D/T, peak 1.875 D/T at T/2. D = 0.5 m, T = 0.7 s.
TEST_CASE("A minimum-jerk repetition has the mean and peak velocity of its closed form", "[reps][closed-form]")
{
    const double rate = GENERATE(100.0, 200.0, 400.0);
    CAPTURE(rate);
    const auto recording = recordingOf(
        {stillness(1.5), minimumJerk(-0.5, 1.0), stillness(0.6), minimumJerk(0.5, 0.7), stillness(1.5)}, rate);
    const auto analysis = analyseSet(recording, *findLift("full-squat"));
    REQUIRE(analysis);
    REQUIRE(analysis->repetitions.size() == 1);
    const auto& rep = analysis->repetitions.front();
    CHECK(rep.meanVelocity.value == Approx(0.714286).epsilon(0.01));
    CHECK(rep.peakVelocity.value == Approx(1.339286).epsilon(0.01));
    CHECK(rep.range.value == Approx(0.5).margin(0.005));
    CHECK(rep.timeToPeakVelocity.value == Approx(0.35).margin(0.015));
    CHECK(rep.peakTime == Approx(1.5 + 1.0 + 0.6 + 0.35).margin(0.002));
    REQUIRE(rep.eccentricPeakVelocity);
    CHECK(rep.eccentricPeakVelocity->value == Approx(-0.9375).epsilon(0.01));
}

// Source: closed form; peak velocity of a minimum-jerk stroke is proportional to distance at equal time.
TEST_CASE("Half the range in the same time is half the velocity", "[reps][closed-form]")
{
    const auto full = analyseSet(recordingOf(squats(3, 0.50, 0.8), 200), *findLift("full-squat"));
    const auto half = analyseSet(recordingOf(squats(3, 0.25, 0.8), 200), *findLift("half-squat"));
    REQUIRE(full);
    REQUIRE(half);
    REQUIRE(full->repetitions.size() == 3);
    REQUIRE(half->repetitions.size() == 3);
    CHECK(half->repetitions[1].peakVelocity.value ==
          Approx(0.5 * full->repetitions[1].peakVelocity.value).epsilon(0.01));
    CHECK(half->repetitions[1].range.value < full->repetitions[1].range.value);
}

TEST_CASE("A slow, even descent is not taken for standing still", "[reps][property]")
{
    const double speed = GENERATE(0.05, 0.1, 0.2, 0.3);
    const double range = std::min(0.45, 3 * speed); // for three seconds at most
    CAPTURE(speed);
    // Let down evenly: into motion in 0.2 s, even, out of motion in 0.2 s.
    const double ramp = 0.2;
    const double even = range / speed - ramp;
    const auto speedUp = Stretch{ramp, [=](double) { return -speed / ramp; }};
    const auto slowDown = Stretch{ramp, [=](double) { return speed / ramp; }};
    const auto recording = recordingOf(
        {stillness(2.0), speedUp, stillness(even), slowDown, stillness(0.4), minimumJerk(range, 0.8), stillness(2.0)},
        200);
    const auto analysis = analyseSet(recording, *findLift(range < 0.3 ? "quarter-squat" : "parallel-squat"));
    REQUIRE(analysis);
    REQUIRE(analysis->repetitions.size() == 1);
    const auto& rep = analysis->repetitions.front();
    CHECK(rep.peakVelocity.value == Approx(1.875 * range / 0.8).margin(0.02));
    CHECK(rep.range.value == Approx(range).margin(0.02));
    CHECK(rep.eccentricPeakVelocity->value == Approx(-speed).margin(0.02));
}

TEST_CASE("The mounting of the sensor does not matter", "[reps][property]")
{
    auto recording = recordingOf(squats(4, 0.5, 0.5), 200);
    const auto upright = analyseSet(recording, *findLift("full-squat"));
    const Eigen::AngleAxisd mounting(2.1, Eigen::Vector3d(1, -2, 0.5).normalized());
    for (auto& sample : recording.samples)
        sample.specificForce = mounting.inverse() * sample.specificForce;
    const auto turned = analyseSet(recording, *findLift("full-squat"));
    REQUIRE(upright);
    REQUIRE(turned);
    REQUIRE(turned->repetitions.size() == upright->repetitions.size());
    for (std::size_t i = 0; i < turned->repetitions.size(); ++i)
        CHECK(turned->repetitions[i].peakVelocity.value ==
              Approx(upright->repetitions[i].peakVelocity.value).margin(0.002));
}

TEST_CASE("A bar that bounces off the pins is flagged, one that is turned round by the lifter is not",
          "[reps][closed-form]")
{
    // Let down to 1 m/s, turned to 1.2 m/s upwards within 40 ms (a half sine of 86 m/s2), braked to rest.
    const auto fall = Stretch{0.5, [](double) { return -2.0; }};
    const auto bounce =
        Stretch{0.04, [](double t) { return 2.2 * 1.5707963267948966 / 0.04 * std::sin(3.14159265358979 * t / 0.04); }};
    const auto rise = Stretch{0.45, [](double) { return -1.2 / 0.45; }};
    const auto bounced =
        analyseSet(recordingOf({stillness(1.5), fall, bounce, rise, stillness(1.5)}, 400), *findLift("half-squat"));
    const auto turned = analyseSet(recordingOf(squats(1, 0.3, 0.8), 400), *findLift("half-squat"));
    REQUIRE(bounced);
    REQUIRE(turned);
    REQUIRE(bounced->repetitions.size() == 1);
    REQUIRE(turned->repetitions.size() == 1);
    CHECK(reps::has(bounced->repetitions[0].flags, reps::Flag::Bounced));
    CHECK_FALSE(reps::has(turned->repetitions[0].flags, reps::Flag::Bounced));
}

TEST_CASE("A bar lying on the rack holds no repetition", "[reps]")
{
    const auto analysis = analyseSet(recordingOf({stillness(10)}, 200), *findLift("half-squat"));
    REQUIRE(analysis);
    CHECK(analysis->repetitions.empty());
    CHECK(analysis->summary.velocityLoss == 0);
}

TEST_CASE("A recording that cannot be judged is refused with its reason", "[reps][error]")
{
    const auto& lift = *findLift("half-squat");
    auto recording = recordingOf({stillness(2)}, 200);

    SECTION("too short")
    {
        recording.samples.resize(20);
        CHECK(analyseSet(recording, lift).error().code == Code::InvalidInput);
    }
    SECTION("time runs backwards")
    {
        recording.samples[100].time = recording.samples[99].time - 0.001;
        const auto analysis = analyseSet(recording, lift);
        CHECK(analysis.error().code == Code::InvalidInput);
        CHECK(analysis.error().place == "sample 100");
    }
    SECTION("too few samples a second")
    {
        CHECK(analyseSet(recordingOf({stillness(5)}, 10), lift).error().code == Code::NotAvailable);
    }
    SECTION("readings in g instead of m/s2")
    {
        for (auto& sample : recording.samples)
            sample.specificForce /= motion::standardGravity;
        CHECK(analyseSet(recording, lift).error().code == Code::NotAvailable);
    }
    SECTION("a reading is no number")
    {
        recording.samples[7].specificForce.x() = std::nan("");
        CHECK(analyseSet(recording, lift).error().place == "sample 7");
    }
}
