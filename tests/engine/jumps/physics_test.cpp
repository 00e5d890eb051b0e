#include <catch2/catch.hpp>

#include "engine/jumps/jump.hpp"
#include "engine/motion/gravity.hpp"

using namespace fleetrung::jumps;

namespace
{

constexpr double g = fleetrung::motion::standardGravity;

} // namespace

// h = g t^2 / 8 with g = 9.80665 m/s2, arithmetic.
TEST_CASE("Height follows from flight", "[jumps]")
{
    CHECK(heightFromFlight(0.3, g) == Approx(0.11032).margin(5e-6));
    CHECK(heightFromFlight(0.4, g) == Approx(0.19613).margin(5e-6));
    CHECK(heightFromFlight(0.5, g) == Approx(0.30646).margin(5e-6));
    CHECK(heightFromFlight(0.6, g) == Approx(0.44130).margin(5e-6));
    CHECK(heightFromFlight(0.7, g) == Approx(0.60066).margin(5e-6));
}

// sqrt(2 g H), arithmetic.
TEST_CASE("A drop's landing speed follows from its height, and the height from the speed", "[jumps]")
{
    CHECK(speedFromHeight(0.20, g) == Approx(1.9806).margin(5e-5));
    CHECK(speedFromHeight(0.30, g) == Approx(2.4257).margin(5e-5));
    CHECK(speedFromHeight(0.40, g) == Approx(2.8009).margin(5e-5));
    CHECK(speedFromHeight(0.60, g) == Approx(3.4304).margin(5e-5));
    CHECK(heightFromSpeed(speedFromHeight(0.37, g), g) == Approx(0.37));
}

// The 250 ms limit: Schmidtbleicher 1992, Training for power events (from memory).
TEST_CASE("A contact of 0.210 s is fast, one of 0.251 s slow", "[jumps]")
{
    CHECK(nameOf(stretchShortening(0.210)) == "fast");
    CHECK(nameOf(stretchShortening(0.250)) == "fast");
    CHECK(nameOf(stretchShortening(0.251)) == "slow");
}

TEST_CASE("Kinds and flags have names that are read back", "[jumps]")
{
    for (const auto kind : {Kind::Drop, Kind::CounterMovement, Kind::Squat, Kind::Hop})
        CHECK(kindNamed(nameOf(kind)) == kind);
    CHECK_FALSE(kindNamed("cartwheel"));
    CHECK(flagNames(Flags{} | Flag::FlatLanding | Flag::NoGyroscope) ==
          std::vector<std::string_view>{"flat-landing", "no-gyroscope"});
}
