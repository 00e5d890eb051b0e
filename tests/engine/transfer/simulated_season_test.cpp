#include <algorithm>
#include <map>

#include <catch2/catch.hpp>

#include "engine/base/numbers.hpp"
#include "engine/statistics/rank_correlation.hpp"
#include "engine/statistics/robust.hpp"
#include "tests/engine/transfer/simulated_season.hpp"

using namespace fleetrung;
using namespace fleetrung::transfer;

namespace
{

constexpr int shown = 20; // resamples of the interval: nothing is decided on it

struct Share {
    int judged = 0;  ///< with enough tests
    int claimed = 0; ///< moved together

    [[nodiscard]] double ofJudged() const { return static_cast<double>(claimed) / judged; }
    [[nodiscard]] std::string text(int seasons) const
    {
        return integerText(claimed) + " of " + integerText(judged) + " claimed (" + fixedText(100 * ofJudged(), 1) +
               " %), " + integerText(seasons - judged) + " of " + integerText(seasons) + " without enough tests";
    }
};

Share shareOf(const simulated::Recipe& recipe, int seasons, unsigned firstSeed)
{
    Share share;
    for (int i = 0; i < seasons; ++i) {
        const unsigned seed = firstSeed + static_cast<unsigned>(i);
        CAPTURE(seed);
        const auto season = simulated::season(recipe, seed);
        const auto transfer = didItWork(season.bar, season.sprints, shown);
        REQUIRE(transfer);
        share.judged += transfer->verdict != Verdict::NotEnough ? 1 : 0;
        share.claimed += transfer->verdict == Verdict::MovedTogether ? 1 : 0;
    }
    return share;
}

/// What must never be shown: times as they are, bar against sprint of the same day's week.
double rawCorrelation(const simulated::Season& season)
{
    std::map<int, double> bar;
    for (const auto& result : season.bar)
        bar[daysBetween(CivilDate{}, result.day) / 7] = result.timeToPeak;
    std::vector<double> times, sprints;
    for (const auto& sprint : season.sprints)
        if (const auto found = bar.find(daysBetween(CivilDate{}, sprint.day) / 7); found != bar.end()) {
            times.push_back(found->second);
            sprints.push_back(sprint.seconds);
        }
    return statistics::rankCorrelation(times, sprints);
}

} // namespace

TEST_CASE("Of 1000 seasons without any relation at most 5 in 100 are claimed", "[transfer]")
{
    const simulated::Recipe recipe;
    const auto share = shareOf(recipe, 1000, 1000);
    WARN("no relation: " << share.text(1000));
    CHECK(share.judged >= 700);
    CHECK(share.ofJudged() <= 0.05);
}

TEST_CASE("Seasons without a relation are claimed no more often where form is large and holds for weeks", "[transfer]")
{
    simulated::Recipe recipe;
    recipe.weeklyTests = 1;
    recipe.barForm *= 3;
    recipe.sprintForm *= 3;
    for (const double held : {0.0, 0.4, 0.7, 0.9}) {
        recipe.holdFrom = recipe.holdTo = held;
        CAPTURE(held);
        const auto share = shareOf(recipe, 3000, 5000);
        WARN("no relation, large form, " << held << " of it left a week later: " << share.text(3000));
        CHECK(share.judged >= 2700);
        CHECK(share.ofJudged() <= 0.05);
    }
}

TEST_CASE("Adaptation on every rung and a summer that comes early are no relation, though raw times go together",
          "[transfer]")
{
    simulated::Recipe recipe;
    recipe.weeklyTests = 1;
    recipe.barForm = recipe.sprintForm = 0;
    recipe.errors = 0.3;
    recipe.adaptingFrom = 0.25;
    recipe.bendFrom = 1.2;
    std::vector<double> raw;
    for (unsigned seed = 1; seed <= 200; ++seed)
        raw.push_back(rawCorrelation(simulated::season(recipe, seed)));
    const auto share = shareOf(recipe, 1000, 1);
    WARN("trends alone: raw rank correlation " << statistics::median(raw) << " (median); " << share.text(1000));
    CHECK(statistics::median(raw) > 0.8);
    CHECK(share.ofJudged() <= 0.05);
}

TEST_CASE("A sprint that follows the bar two weeks later is found the more often the larger it is", "[transfer]")
{
    simulated::Recipe realistic;
    realistic.weeklyTests = 1;
    realistic.following = 0.6;
    auto large = realistic;
    large.following = 0.9;
    large.barForm = 0.08;
    large.sprintForm = 0.015;
    auto huge = realistic;
    huge.following = 1;
    huge.barForm = 0.12;
    huge.sprintForm = 0.025;
    auto longSeason = large;
    longSeason.weeksFrom = 36;
    const auto small = shareOf(realistic, 500, 20000), big = shareOf(large, 500, 20000),
               biggest = shareOf(huge, 500, 20000), longer = shareOf(longSeason, 500, 20000);
    WARN("realistic relation: " << small.text(500));
    WARN("large relation: " << big.text(500));
    WARN("large relation, 36-44 weeks: " << longer.text(500));
    WARN("very large relation: " << biggest.text(500));
    CHECK(small.ofJudged() > 0.05);
    CHECK(big.ofJudged() >= 0.35);
    CHECK(longer.ofJudged() >= 0.5);
    CHECK(biggest.ofJudged() >= 0.65);
}

TEST_CASE("Where a large relation is found, its lag is mostly found too", "[transfer]")
{
    simulated::Recipe recipe;
    recipe.weeklyTests = 1;
    recipe.following = 1;
    recipe.barForm = 0.12;
    recipe.sprintForm = 0.025;
    recipe.holdTo = 0.3;
    for (const int lag : {0, 2, 4}) {
        recipe.lagWeeks = lag;
        int claimed = 0, right = 0;
        for (unsigned seed = 1; seed <= 200; ++seed) {
            const auto season = simulated::season(recipe, seed);
            const auto transfer = didItWork(season.bar, season.sprints, shown);
            REQUIRE(transfer);
            if (transfer->verdict != Verdict::MovedTogether)
                continue;
            ++claimed;
            right += transfer->strongest == lag ? 1 : 0;
        }
        CAPTURE(lag, claimed, right);
        CHECK(claimed >= 100);
        CHECK(right >= 0.9 * claimed);
    }
}
