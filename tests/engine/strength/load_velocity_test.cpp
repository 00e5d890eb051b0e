#include <array>

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
