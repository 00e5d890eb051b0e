#include <algorithm>
#include <cmath>
#include <limits>
#include <map>
#include <random>

#include <catch2/catch.hpp>

#include "engine/base/numbers.hpp"
#include "tests/engine/transfer/simulated_season.hpp"

using namespace fleetrung;
using namespace fleetrung::transfer;
using std::chrono::days;

namespace
{

constexpr CivilDate monday = std::chrono::sys_days{std::chrono::year{2025} / 11 / 3};
constexpr int weeksOnARung = 5;

/// The wander of a week, the same on every machine: no two weeks alike, no trend.
double wander(int week)
{
    return std::sin(1.7 * week) + std::sin(2.9 * week + 1);
}

/// Two sessions a week, the next rung every five weeks, a sprint every Saturday that follows the bar so many weeks
/// later; `following` 1: quicker bar, quicker sprint; -1: slower.
simulated::Season orderly(int weeks, double following = 1, int lag = 2)
{
    simulated::Season season;
    for (int week = 0; week < weeks; ++week) {
        const int rung = week / weeksOnARung;
        for (const int day : {0, 3})
            season.bar.push_back({monday + days{7 * week + day}, "squat", "rung " + integerText(rung),
                                  0.4 * std::pow(0.9, rung) * (1 + 0.05 * wander(week) - 0.002 * week), 100.0, 0.08});
        season.sprints.push_back({monday + days{7 * week + 5}, "flying 30 m, gates, track, spikes",
                                  2.9 - 0.003 * week + 0.02 * following * wander(week - lag)});
    }
    return season;
}

Transfer judged(const simulated::Season& season)
{
    const auto transfer = didItWork(season.bar, season.sprints, 200);
    REQUIRE(transfer);
    return *transfer;
}

bool says(const Transfer& transfer, const std::string& words)
{
    return transfer.sentence.find(words) != std::string::npos;
}

void checkSame(const Transfer& one, const Transfer& other, double margin)
{
    CHECK(one.verdict == other.verdict);
    CHECK(one.strongest == other.strongest);
    CHECK(one.chance.value_or(-1) == Approx(other.chance.value_or(-1)).margin(margin));
    REQUIRE(one.lags.size() == other.lags.size());
    for (std::size_t i = 0; i < one.lags.size(); ++i) {
        CHECK(one.lags[i].pairs == other.lags[i].pairs);
        CHECK(one.lags[i].correlation.value_or(-9) == Approx(other.lags[i].correlation.value_or(-9)).margin(margin));
    }
}

void checkRefused(const simulated::Season& season, const std::string& place, const std::string& words)
{
    const auto transfer = didItWork(season.bar, season.sprints);
    REQUIRE_FALSE(transfer);
    CHECK(transfer.error().code == Code::InvalidInput);
    CHECK_THAT(transfer.error().place, Catch::Contains(place));
    CHECK_THAT(transfer.error().message, Catch::Contains(words));
}

} // namespace

TEST_CASE("A sprint that follows the bar is told with its lag, and never called a cause", "[transfer]")
{
    const auto transfer = judged(orderly(30));
    INFO(transfer.sentence);
    CHECK(transfer.verdict == Verdict::MovedTogether);
    CHECK(transfer.strongest == 2);
    CHECK(*transfer.chance <= 0.04);
    REQUIRE(transfer.lags.size() == 5);
    for (int lag = 0; lag <= 4; ++lag) {
        const auto& row = transfer.lags[static_cast<std::size_t>(lag)];
        CHECK(row.weeks == lag);
        CHECK(row.pairs == 30 - lag);
        CHECK(row.rungs == 6);
        REQUIRE(row.correlation);
        CHECK(*row.low <= *row.correlation);
        CHECK(*row.correlation <= *row.high);
    }
    CHECK(says(transfer,
               "In the weeks when the bar was quicker within a rung, sprint times (flying 30 m, gates, track, "
               "spikes) were better than the season's trend 2 weeks later"));
    CHECK(says(transfer, "over 28 weeks and 6 rungs"));
    CHECK(says(transfer, "they moved together, not that one caused the other"));
    CHECK_THAT(transfer.premise, Catch::Contains("premise") && Catch::Contains("evidence on both sides"));
}

TEST_CASE("A relation is claimed exactly where a lag goes beyond what chance reaches", "[transfer]")
{
    simulated::Recipe recipe;
    recipe.weeklyTests = 1;
    recipe.following = 0.9;
    recipe.barForm = 0.08;
    recipe.sprintForm = 0.015;
    int claimed = 0;
    for (unsigned seed = 1; seed <= 60; ++seed) {
        CAPTURE(seed);
        const auto season = simulated::season(recipe, seed);
        const auto transfer = judged(season);
        bool beyond = false;
        for (const auto& lag : transfer.lags) {
            CHECK(lag.chanceReaches.has_value() == (transfer.verdict != Verdict::NotEnough));
            beyond = beyond || (lag.chanceReaches && *lag.correlation > *lag.chanceReaches + 1e-9);
        }
        CHECK((transfer.verdict == Verdict::MovedTogether) == (beyond && !transfer.otherWay));
        claimed += transfer.verdict == Verdict::MovedTogether ? 1 : 0;
    }
    CHECK(claimed > 10);
    CHECK(claimed < 50);
}

TEST_CASE("A bar that is quicker when the sprint is slower is no success, and is said", "[transfer]")
{
    const auto transfer = judged(orderly(30, -1));
    INFO(transfer.sentence);
    CHECK(transfer.verdict == Verdict::NotShown);
    CHECK(transfer.otherWay);
    CHECK(says(transfer, "Not shown"));
    CHECK(says(transfer, "The strongest relation goes the other way"));
    CHECK(says(transfer, "slower 2 weeks later"));
    CHECK_FALSE(says(transfer, "cause"));
}

TEST_CASE("Too few tests are counted to the last one", "[transfer]")
{
    // At lag 4 the first four weeks of the bar's have no sprint 4 weeks before the first test: 16 weeks bring 12 pairs.
    for (int weeks = 11; weeks < 16; ++weeks) {
        CAPTURE(weeks);
        const auto transfer = judged(orderly(weeks));
        CHECK(transfer.verdict == Verdict::NotEnough);
        CHECK(transfer.testsMissing == 16 - weeks);
        CHECK_FALSE(transfer.chance);
        CHECK_FALSE(transfer.strongest);
        CHECK(
            says(transfer, "Not enough: " + integerText(16 - weeks) + (weeks == 15 ? " more test (" : " more tests")));
    }
    const auto enough = judged(orderly(16));
    CHECK(enough.verdict != Verdict::NotEnough);
    CHECK(enough.testsMissing == 0);
    CHECK(says(judged(orderly(13)), "Not enough: 3 more tests"));
}

TEST_CASE("No results at all are not enough, and no failure", "[transfer]")
{
    const auto transfer = judged({});
    CHECK(transfer.verdict == Verdict::NotEnough);
    CHECK(transfer.testsMissing == 12);
    CHECK(transfer.rungsMissing == 3);
    CHECK(transfer.lags.size() == 5);
}

TEST_CASE("One rung only is not enough however long, and the rungs that lack are said", "[transfer]")
{
    auto season = orderly(30);
    for (auto& result : season.bar)
        result.rung = "rung 0";
    const auto transfer = judged(season);
    CHECK(transfer.verdict == Verdict::NotEnough);
    CHECK(transfer.rungsMissing == 2);
    CHECK(transfer.testsMissing == 2);
    CHECK(says(transfer, "2 more tests, on 2 more rungs"));
}

TEST_CASE("A stay of three sessions is no evidence", "[transfer]")
{
    auto season = orderly(30);
    std::map<std::string, int> kept;
    std::erase_if(season.bar, [&](const BarResult& result) { return ++kept[result.rung] > 3; });
    const auto transfer = judged(season);
    CHECK(transfer.verdict == Verdict::NotEnough);
    for (const auto& lag : transfer.lags)
        CHECK(lag.pairs == 0);
}

TEST_CASE("A step in range is no evidence: the level of a rung does not matter", "[transfer]")
{
    auto season = orderly(30);
    const auto before = judged(season);
    for (auto& result : season.bar)
        if (result.rung == "rung 3" || result.rung == "rung 5")
            result.timeToPeak *= 3;
    checkSame(before, judged(season), 0.05);
}

TEST_CASE("A season's trend is no evidence: getting faster steadily does not matter", "[transfer]")
{
    auto season = orderly(30);
    const auto before = judged(season);
    for (auto& sprint : season.sprints)
        sprint.seconds -= 0.01 * daysBetween(monday, sprint.day) / 7;
    checkSame(before, judged(season), 0.05);
}

TEST_CASE("Names, the order of results and the calendar do not matter", "[transfer]")
{
    const simulated::Recipe recipe;
    const auto season = simulated::season(recipe, 7);
    const auto before = judged(season);
    auto other = season;
    std::ranges::shuffle(other.bar, std::mt19937(1));
    std::ranges::shuffle(other.sprints, std::mt19937(2));
    for (auto& result : other.bar) {
        result.day += days{7 * 100};
        result.rung = "z" + std::string(1, static_cast<char>('z' - result.rung.back() + '0'));
    }
    for (auto& sprint : other.sprints) {
        sprint.day += days{7 * 100};
        sprint.conditions = "q" + sprint.conditions;
    }
    checkSame(before, judged(other), 1e-9);
    CHECK(judged(season).sentence == before.sentence);
}

TEST_CASE("Another load begins another stay", "[transfer]")
{
    auto season = orderly(30);
    const auto before = judged(season);
    // Heavier and slower from the fifth week of each stay on: with the load said this is another level, no slow week.
    for (auto& result : season.bar)
        if (daysBetween(monday, result.day) / 7 % weeksOnARung >= 3) {
            result.timeToPeak *= 1.5;
            result.loadKg = 110;
        }
    const auto said = judged(season);
    CHECK(said.verdict == Verdict::MovedTogether);
    for (auto& result : season.bar)
        result.loadKg.reset();
    const auto unsaid = judged(season);
    CHECK(*said.lags[2].correlation > *unsaid.lags[2].correlation + 0.2);
    CHECK(before.verdict == Verdict::MovedTogether);
}

TEST_CASE("Times of different conditions are never compared raw", "[transfer]")
{
    auto season = orderly(30);
    const auto before = judged(season);
    for (auto& sprint : season.sprints)
        if (daysBetween(monday, sprint.day) / 7 % 2 == 1) {
            sprint.conditions = "60 m, by hand, grass";
            sprint.seconds *= 2.6;
        }
    const auto mixed = judged(season);
    CHECK(mixed.verdict == Verdict::MovedTogether);
    CHECK(*mixed.lags[2].correlation == Approx(*before.lags[2].correlation).margin(0.15));
    CHECK(says(mixed, "each in its own conditions"));
    for (auto& sprint : season.sprints)
        sprint.conditions = "some sprint";
    CHECK(judged(season).verdict != Verdict::MovedTogether);
}

TEST_CASE("A few tests in new conditions wait until there are four", "[transfer]")
{
    auto season = orderly(17);
    for (auto& sprint : season.sprints)
        if (sprint.day > monday + days{7 * 14})
            sprint.conditions = "hall";
    REQUIRE(season.sprints.back().conditions == "hall"); // of weeks 14, 15, 16
    const auto waiting = judged(season);
    CHECK(waiting.verdict == Verdict::NotEnough);
    CHECK(waiting.lags[0].pairs == 14);
    CHECK(waiting.lags[4].pairs == 10);
    CHECK(waiting.testsMissing == 1); // in the hall; two were needed in the other conditions
    CHECK(says(waiting, "1 more test (hall)"));
    auto longer = orderly(18);
    for (auto& sprint : longer.sprints)
        if (sprint.day > monday + days{7 * 14})
            sprint.conditions = "hall";
    CHECK(judged(longer).lags[4].pairs == 14);
    CHECK(judged(longer).testsMissing == 0);
}

TEST_CASE("Times that never differ from their trend show nothing", "[transfer]")
{
    auto season = orderly(30);
    for (auto& sprint : season.sprints)
        sprint.seconds = 2.9 - 0.01 * daysBetween(monday, sprint.day) / 7;
    const auto transfer = judged(season);
    CHECK(transfer.verdict == Verdict::NotShown);
    CHECK(says(transfer, "did not vary"));
}

TEST_CASE("A result that cannot be used is named", "[transfer]")
{
    const auto with = [](auto change) {
        auto season = orderly(30);
        change(season);
        return season;
    };
    const auto nan = std::numeric_limits<double>::quiet_NaN();
    for (const double bad : {nan, 0.0, -0.3, std::numeric_limits<double>::infinity()}) {
        CAPTURE(bad);
        checkRefused(with([&](auto& season) { season.bar[10].timeToPeak = bad; }),
                     "bar result of 2025-12-08, ladder 'squat', rung 'rung 1'", "above zero");
        checkRefused(with([&](auto& season) { season.bar[10].loadKg = bad; }), "2025-12-08", "load");
        checkRefused(with([&](auto& season) { season.bar[10].priorErrorShare = bad; }), "2025-12-08", "typical error");
        checkRefused(with([&](auto& season) { season.sprints[3].seconds = bad; }),
                     "sprint of 2025-11-29, conditions 'flying 30 m", "above zero");
    }
    checkRefused(with([](auto& season) { season.bar[10].rung = ""; }), "2025-12-08", "rung");
    checkRefused(with([](auto& season) { season.sprints[3].conditions = ""; }), "2025-11-29", "conditions");
    checkRefused(with([](auto& season) { season.bar.push_back(season.bar[10]); }), "2025-12-08", "twice");
    checkRefused(with([](auto& season) { season.sprints.push_back(season.sprints[3]); }), "2025-11-29", "twice");
    checkRefused(with([](auto& season) { season.sprints[29].day += days{7 * 52}; }), "2025-11-03", "60 weeks");
}
