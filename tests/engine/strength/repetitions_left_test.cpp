#include <vector>

#include <catch2/catch.hpp>

#include "engine/strength/repetitions_left.hpp"

using namespace fleetrung;
using namespace fleetrung::strength;

TEST_CASE("A squat set that lost a fifth of its velocity is half done", "[strength]")
{
    const auto left = repetitionsLeft(5, 0.20, "full-squat");
    REQUIRE(left);
    CHECK(left->left == Approx(5)); // rule of thumb, from memory
    CHECK(left->low == Approx(5 * (1 / 0.65 - 1)));
    CHECK(left->high == Approx(5 * (1 / 0.35 - 1)));
    CHECK_FALSE(left->own);
    CHECK(repetitionsLeft(5, 0.20, "bench-press")->left == Approx(10)); // presses lose more
}

TEST_CASE("The slower the bar, the fewer repetitions are left, and never fewer than none", "[strength]")
{
    double before = 1000;
    for (const double loss : {0.05, 0.10, 0.20, 0.30, 0.40, 0.60, 1.0}) {
        const auto left = repetitionsLeft(6, loss, "half-squat");
        REQUIRE(left);
        CHECK(left->left <= before);
        CHECK(left->low >= 0);
        CHECK(left->low <= left->left);
        CHECK(left->high >= left->left);
        before = left->left;
    }
    CHECK(before == 0);
}

TEST_CASE("An athlete's own sets move the guess and narrow it", "[strength]")
{
    // Half done at a loss of 0.30: 4 of 8 at 0.30, 6 of 8 at 0.45, ...
    const std::vector<ToldSet> sets{{4, 0.30, 4}, {6, 0.45, 2}, {3, 0.225, 5}, {5, 0.30, 5}, {8, 0.60, 0}};
    const auto own = ownLossAtHalf(sets);
    REQUIRE(own);
    CHECK(*own == Approx(0.30));
    const auto left = repetitionsLeft(4, 0.30, "full-squat", own);
    const auto general = repetitionsLeft(4, 0.20, "full-squat");
    REQUIRE(left);
    CHECK(left->left == Approx(4));
    CHECK(left->own);
    CHECK(left->high - left->low < general->high - general->low);
    CHECK_FALSE(ownLossAtHalf(std::vector<ToldSet>{{4, 0.30, 4}, {6, 0.02, 2}}));
}

TEST_CASE("A set that has hardly slowed down does not tell how many are left", "[strength][error]")
{
    CHECK(repetitionsLeft(5, 0.03, "full-squat").error().code == Code::NotAvailable);
    CHECK(repetitionsLeft(1, 0.30, "full-squat").error().code == Code::InvalidInput);
    CHECK(repetitionsLeft(5, -0.1, "full-squat").error().code == Code::InvalidInput);
    CHECK(repetitionsLeft(5, 1.1, "full-squat").error().code == Code::InvalidInput);
}
