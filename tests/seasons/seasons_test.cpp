// A part of the simulated seasons that README quotes: the same checks, fewer seasons.
#include <catch2/catch.hpp>

#include "tests/seasons/tally.hpp"

using namespace fleetrung::seasons;

namespace
{

constexpr std::uint64_t firstSeason = 1;
constexpr std::size_t seasonCount = 150;

} // namespace

TEST_CASE(
    "in simulated seasons no rule contradicts another, loads keep their bounds, dates are met, and changes are found")
{
    const auto tally = playSeasons(firstSeason, seasonCount, 2);
    INFO("first season " << firstSeason << '\n' << tallyText(tally));
    for (const auto& check : allChecks()) {
        INFO(check.name);
        CHECK((!tally.checks.contains(check.name) || tally.checks.at(check.name).breaches == 0));
    }
    CHECK(tally.evidenceSteps > 100);
    CHECK(tally.ends.judged > 50);
}
