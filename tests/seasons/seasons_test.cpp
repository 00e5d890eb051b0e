// A part of the simulated seasons of engine/season/simulated_seasons.md: the same checks on fewer of them.
#include <catch2/catch.hpp>

#include "tests/seasons/tally.hpp"

using namespace fleetrung::seasons;

namespace
{

constexpr std::uint64_t firstSeason = 1;
constexpr std::size_t seasonCount = 500; // about 40 s on two cores that others use too

} // namespace

TEST_CASE("In 500 simulated seasons the rules agree, loads keep their bounds, dates are met and true changes are found",
          "[season][seasons]")
{
    const auto tally = playSeasons(firstSeason, seasonCount, 2);
    INFO("first season " << firstSeason << '\n' << tallyText(tally));
    for (const auto& check : allChecks()) {
        INFO(check.name);
        CHECK((!tally.checks.contains(check.name) || tally.checks.at(check.name).breaches == 0));
    }
    CHECK(tally.evidenceSteps > 300);
    CHECK(tally.falseShare() < largestFalseShare);
    CHECK(tally.ends.judged > 100);
    for (const double large : {-2.5, 2.5})
        CHECK(tally.foundWithin(large, 2) >= largeFound);
    for (const double small : {-1.5, 1.5})
        CHECK(tally.foundWithin(small, 5) >= smallFound);
}

TEST_CASE("A simulated season is the same when it is played again", "[season][seasons]")
{
    CHECK(seasonText(playSeason(7)) == seasonText(playSeason(7)));
    CHECK(seasonText(playSeason(7)) != seasonText(playSeason(8)));
}

TEST_CASE("The checks of the simulated seasons find what breaks the rules", "[season][seasons]")
{
    auto played = playSeason(7);
    REQUIRE(judge(played).breaches.empty());
    auto& day = played.days.at(played.days.size() / 2);
    REQUIRE_FALSE(day.decisions.empty());
    const auto finds = [&](const std::string& check) {
        const auto report = judge(played);
        return std::any_of(report.breaches.begin(), report.breaches.end(),
                           [&](const Breach& breach) { return breach.check == check && breach.day == day.date; });
    };
    SECTION("two decisions for one ladder")
    {
        day.decisions.push_back(day.decisions.front());
        CHECK(finds("one decision"));
    }
    SECTION("training with strong pain")
    {
        day.wellness.pain = 8;
        CHECK(finds("precedence"));
    }
    SECTION("a rung that is skipped")
    {
        auto& decision = day.decisions.front();
        decision.kind = fleetrung::season::DecisionKind::StepBack;
        decision.rule = "layoff";
        decision.to = decision.from;
        CHECK(finds("no rung skipped"));
    }
    SECTION("a load out of bounds, and a lift that stands twice")
    {
        auto trained = std::find_if(played.days.rbegin(), played.days.rend(), [](const Day& candidate) {
            return !candidate.session.lifts.empty() && !candidate.session.lifts.front().primer &&
                   !candidate.session.lifts.front().work.empty() &&
                   candidate.session.lifts.front().work.front().loadKg.value_or(0) > 0;
        });
        REQUIRE(trained != played.days.rend());
        trained->session.lifts.front().work.front().loadKg = 1000;
        trained->session.lifts.push_back(trained->session.lifts.front());
        const auto report = judge(played);
        for (const char* check : {"loads", "session follows"}) {
            INFO(check);
            CHECK(std::any_of(report.breaches.begin(), report.breaches.end(),
                              [&](const Breach& breach) { return breach.check == check; }));
        }
    }
}
