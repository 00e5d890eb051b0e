#include <algorithm>
#include <array>
#include <catch2/catch.hpp>
#include <cmath>
#include <random>

#include "engine/sprint/history.hpp"

using namespace fleetrung;
using namespace fleetrung::sprint;

namespace
{

CivilDate day(int number)
{
    return CivilDate{std::chrono::days{20000 + number}};
}

} // namespace

TEST_CASE("A first run is the best and has nothing to be compared with", "[history]")
{
    const auto first = compareWithHistory({day(0), 9.5, 0.05}, {});
    CHECK(first.isBest);
    CHECK(first.best.speed == 9.5);
    CHECK_FALSE(first.change.has_value());
}

TEST_CASE("A run is compared with the median of the last three, not with older ones", "[history]")
{
    const std::array<DatedSpeed, 4> before{
        {{day(0), 9.9, 0.05}, {day(7), 9.4, 0.05}, {day(14), 9.2, 0.05}, {day(21), 9.3, 0.05}}};
    const auto now = compareWithHistory({day(28), 9.5, 0.05}, before);
    CHECK_FALSE(now.isBest);
    CHECK(now.best.day == day(0));
    REQUIRE(now.change);
    CHECK(now.change->runs == 3);
    CHECK(now.change->usual == Approx(9.3));
    CHECK(now.change->change == Approx(0.2));
    CHECK(now.change->error == Approx(0.05 * std::hypot(1.0, 0.66983)));
    CHECK(now.change->beyond);
    CHECK_FALSE(compareWithHistory({day(28), 9.4, 0.05}, before).change->beyond);
}

TEST_CASE("The error of the median of three runs is that of drawn ones", "[history][property]")
{
    const unsigned seed = 20;
    CAPTURE(seed);
    std::mt19937 random(seed);
    std::normal_distribution<double> normal;
    const int draws = 200000;
    double squares = 0;
    for (int i = 0; i < draws; ++i) {
        std::array<double, 3> three{normal(random), normal(random), normal(random)};
        std::ranges::sort(three);
        squares += three[1] * three[1];
    }
    const std::array<DatedSpeed, 3> before{{{day(0), 9, 1}, {day(1), 9, 1}, {day(2), 9, 1}}};
    const auto now = compareWithHistory({day(3), 9, 0}, before);
    CHECK(now.change->error == Approx(std::sqrt(squares / draws)).epsilon(0.01));
}
