#include <array>
#include <cmath>
#include <random>
#include <vector>

#include <catch2/catch.hpp>

#include "engine/strength/load_velocity.hpp"

using namespace fleetrung;
using namespace fleetrung::strength;

TEST_CASE("Four loads give the line, its ends, and the load at the velocity of 1RM", "[strength]")
{
    // Values computed from the least squares line through these points.
    const std::array<LoadVelocityPoint, 4> points{{{60, 1.00}, {80, 0.80}, {100, 0.62}, {120, 0.45}}};
    const auto profile = fitLoadVelocity(points, 0.30);
    REQUIRE(profile);
    CHECK(profile->slope == Approx(-0.00915).margin(1e-6));
    CHECK(profile->velocityAtZero == Approx(1.541).margin(1e-6));
    CHECK(profile->loadAtZero == Approx(168.415).margin(1e-3));
    CHECK(profile->estimatedMaximum == Approx(135.628).margin(1e-3));
    CHECK(profile->standardError > 0.5);
    CHECK(profile->standardError < 5);
    // Fieller's interval by numpy 1.24.2: tests/reference/make_statistics.py.
    CHECK(profile->maximumLow.value() == Approx(130.41980382556608).margin(1e-5));
    CHECK(profile->maximumHigh.value() == Approx(142.01225132918063).margin(1e-5));
}

TEST_CASE("One load lifted without intent bends the least squares line, not the robust one", "[strength]")
{
    const std::vector<LoadVelocityPoint> sound{{60, 1.00}, {70, 0.90},  {80, 0.81},
                                               {90, 0.71}, {100, 0.62}, {110, 0.52}};
    auto lazy = sound;
    lazy[1].velocity = 0.60;
    const double whole = fitLoadVelocity(sound, 0.30)->estimatedMaximum;
    CHECK(std::abs(fitLoadVelocity(lazy, 0.30)->estimatedMaximum - whole) > 8);
    CHECK(std::abs(fitLoadVelocity(lazy, 0.30, LineMethod::Robust)->estimatedMaximum - whole) < 2);
}

TEST_CASE("Two loads give a maximum without an interval", "[strength]")
{
    const std::vector<LoadVelocityPoint> points{{80, 0.80}, {110, 0.55}};
    for (const auto method : {LineMethod::LeastSquares, LineMethod::Robust}) {
        const auto profile = fitLoadVelocity(points, 0.30, method);
        REQUIRE(profile);
        CHECK(profile->estimatedMaximum == Approx(140));
        CHECK_FALSE(profile->maximumLow);
    }
}

TEST_CASE("Where the scatter hides the slope the maximum has no interval", "[strength]")
{
    const std::vector<LoadVelocityPoint> points{{80, 0.80}, {90, 0.60}, {100, 0.79}};
    const auto profile = fitLoadVelocity(points, 0.30);
    REQUIRE(profile);
    CHECK_FALSE(profile->maximumLow);
}

TEST_CASE("95 percent intervals hold the true maximum in 95 of 100 sessions", "[strength][property]")
{
    constexpr unsigned seed = 20261126;
    CAPTURE(seed);
    std::mt19937 random(seed);
    std::normal_distribution<double> noise(0, 0.02); // m/s
    constexpr int sessions = 2000;
    int held = 0, told = 0;
    for (int i = 0; i < sessions; ++i) {
        std::vector<LoadVelocityPoint> points;
        for (const double load : {60.0, 75.0, 90.0, 105.0, 120.0})
            points.push_back({load, 1.541 - 0.00915 * load + noise(random)});
        const auto profile = fitLoadVelocity(points, 0.30);
        REQUIRE(profile);
        if (!profile->maximumLow)
            continue;
        ++told;
        held += *profile->maximumLow <= 135.628 && 135.628 <= *profile->maximumHigh ? 1 : 0;
    }
    CHECK(told > sessions * 99 / 100);
    CHECK(static_cast<double>(held) / told == Approx(0.95).margin(0.02));
}

TEST_CASE("A season's sessions share one slope, and a session with one load tells a maximum too", "[strength]")
{
    const std::vector<std::vector<LoadVelocityPoint>> sessions{
        {{60, 0.98}, {80, 0.80}, {100, 0.63}}, {{65, 0.97}, {85, 0.80}, {105, 0.59}}, {}, {{110, 0.57}}};
    const auto pooled = poolLoadVelocity(sessions, 0.30);
    REQUIRE(pooled);
    // Least squares with one column a session by numpy 1.24.2: tests/reference/make_statistics.py.
    CHECK(pooled->slope == Approx(-0.009125).margin(1e-9));
    CHECK(pooled->slopeError == Approx(0.0003254270698294441).margin(1e-9));
    CHECK(pooled->residualDeviation == Approx(0.01301708279317778).margin(1e-9));
    CHECK(pooled->sessions.at(0).estimatedMaximum == Approx(135.15981735159843).margin(1e-6));
    CHECK(pooled->sessions.at(0).standardError == Approx(2.132631601955936).margin(1e-6));
    CHECK(pooled->sessions.at(1).estimatedMaximum == Approx(138.33333333333363).margin(1e-6));
    CHECK(pooled->sessions.at(2).points == 0);
    CHECK(pooled->sessions.at(3).estimatedMaximum == Approx(139.5890410958906).margin(1e-6));
    CHECK(pooled->sessions.at(3).standardError == Approx(1.7744070889525856).margin(1e-6));
}

TEST_CASE("Sessions that do not carry a shared line are refused with what is missing", "[strength][error]")
{
    const std::vector<std::vector<LoadVelocityPoint>> single{{{100, 0.62}}, {{110, 0.57}}};
    CHECK(poolLoadVelocity(single, 0.30).error().code == Code::NotAvailable);
    const std::vector<std::vector<LoadVelocityPoint>> few{{{60, 0.98}, {80, 0.80}}, {{110, 0.57}}};
    CHECK(poolLoadVelocity(few, 0.30).error().code == Code::NotAvailable);
    const std::vector<std::vector<LoadVelocityPoint>> wrong{{{60, 0.98}, {80, -0.80}}, {{110, 0.57}, {120, 0.5}}};
    CHECK(poolLoadVelocity(wrong, 0.30).error().code == Code::InvalidInput);
    CHECK(poolLoadVelocity({}, 0.30).error().code == Code::NotAvailable);
}

TEST_CASE("A maximum is not guessed from loads too close together or from velocities that do not fall", "[strength]")
{
    const std::array<LoadVelocityPoint, 2> close{{{100, 0.62}, {105, 0.60}}};
    CHECK(fitLoadVelocity(close, 0.3).error().code == Code::NotAvailable);
    const std::array<LoadVelocityPoint, 2> rising{{{100, 0.62}, {130, 0.64}}};
    CHECK(fitLoadVelocity(rising, 0.3).error().code == Code::NotAvailable);
    const std::array<LoadVelocityPoint, 2> still{{{100, 0.0}, {130, 0.64}}};
    CHECK(fitLoadVelocity(still, 0.3).error().code == Code::InvalidInput);
}

TEST_CASE("Published velocities at 1RM: a half squat ends faster than a full one", "[strength][published]")
{
    // Conceicao et al. 2016, J Sports Sci 34(12):1099-1106: 0.29 +- 0.05 full, 0.33 +- 0.05 half.
    CHECK(velocityAtMaximum("full-squat")->velocity == 0.29);
    CHECK(velocityAtMaximum("half-squat")->velocity == 0.33);
    CHECK_FALSE(velocityAtMaximum("floor-clean"));
}
