#include <array>

#include <catch2/catch.hpp>

#include "engine/strength/velocity_loss.hpp"

using namespace fleetrung::strength;

TEST_CASE("Velocity loss counts from the fastest repetition, not from the first", "[strength]")
{
    CHECK(velocityLoss(std::array{0.50, 0.60, 0.54}) == Approx(0.10));
    CHECK(velocityLoss({}) == 0);
}

TEST_CASE("A set goes on after one slow repetition and stops after two in a row", "[strength]")
{
    const std::array velocities{0.80, 0.79, 0.63, 0.62};
    CHECK_FALSE(shouldStopSet(std::span(velocities).first(3), 0.20));
    CHECK(shouldStopSet(velocities, 0.20));
    CHECK_FALSE(shouldStopSet(std::array{0.80, 0.63, 0.75, 0.63}, 0.20)); // not in a row
}

TEST_CASE("One repetition far beyond the limit stops the set at once", "[strength]")
{
    CHECK(shouldStopSet(std::array{0.80, 0.59}, 0.20));
    CHECK_FALSE(shouldStopSet(std::array{0.80, 0.61}, 0.20));
}
