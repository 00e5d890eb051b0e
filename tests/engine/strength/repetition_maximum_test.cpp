#include <catch2/catch.hpp>

#include "engine/strength/repetition_maximum.hpp"

using namespace fleetrung;
using namespace fleetrung::strength;

TEST_CASE("Epley and Brzycki meet at ten repetitions", "[strength][published]")
{
    // Formulas: Epley 1985, Brzycki 1993 (from memory); worked values computed from them.
    CHECK(*epley(100, 10) == Approx(133.333333).margin(1e-6));
    CHECK(*brzycki(100, 10) == Approx(133.333333).margin(1e-6));
    CHECK(*epley(100, 5) == Approx(116.67).margin(0.005));
    CHECK(*brzycki(100, 5) == Approx(112.50).margin(0.005));
}

TEST_CASE("One repetition is the load itself", "[strength]")
{
    CHECK(*epley(120, 1) == 120);
    CHECK(*brzycki(120, 1) == 120);
    CHECK(*estimatedMaximum(120, 1) == 120);
}

TEST_CASE("A set that says nothing of 1RM is refused", "[strength]")
{
    CHECK(brzycki(60, 37).error().code == Code::InvalidInput);
    CHECK(estimatedMaximum(60, 12).error().code == Code::NotAvailable);
    CHECK(estimatedMaximum(60, 0).error().code == Code::InvalidInput);
    CHECK(epley(-5, 3).error().code == Code::InvalidInput);
}

TEST_CASE("Repetitions left in reserve count as possible ones", "[strength]")
{
    CHECK(*estimatedMaximum(100, 3, 2) == Approx(*brzycki(100, 5)));
}

TEST_CASE("The training load chart gives 121.8 kg for five repetitions of a 140 kg maximum", "[strength][published]")
{
    // NSCA training load chart, row 140.
    CHECK(140 * *chartShare(5) == Approx(121.8));
    CHECK(140 * *chartShare(10) == Approx(105));
    CHECK_FALSE(chartShare(11));
}
