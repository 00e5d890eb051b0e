// A finger on the pictures of Trends: which point it means, and how it stands out.
#include <catch2/catch.hpp>

#include "mobile/plot/pictures.hpp"
#include "mobile/plot/spoken_summary.hpp"

using namespace fleetrung;
using namespace fleetrung::plot;
using std::chrono::days;

namespace
{

constexpr CivilDate first = std::chrono::sys_days{std::chrono::year{2026} / 1 / 5};

SeasonSpan span()
{
    return {.first = first, .last = first + days{7 * 30 - 1}, .today = {}, .phases = {}, .races = {}};
}

TpvTrendInput squat()
{
    TpvTrendInput input;
    input.lift = "Squat";
    input.season = span();
    input.stays = {{"Full", {}, {{first + days{7}, 0.50}, {first + days{14}, 0.49}}},
                   {"Half", {}, {{first + days{70}, 0.36}, {first + days{77}, 0.30}}}};
    return input;
}

std::vector<Mark> chosenOf(const Plot& plot)
{
    std::vector<Mark> chosen;
    for (const auto& primitive : plot.primitives)
        if (const auto* mark = std::get_if<Mark>(&primitive); mark != nullptr && mark->role == Role::Chosen)
            chosen.push_back(*mark);
    return chosen;
}

} // namespace

TEST_CASE("a finger on the trend means the nearest point, also on another rung", "[touch]")
{
    const auto hit = tpvHit(squat(), {10.3, 355});
    REQUIRE(hit);
    CHECK(hit->stay == 1);
    CHECK(hit->point == 0);
    const auto between = tpvHit(squat(), {1.5, 497}); // equally far across, nearer to 500 ms
    REQUIRE(between);
    CHECK(between->stay == 0);
    CHECK(between->point == 0);
}

TEST_CASE("a finger on an empty part of the trend means nothing", "[touch]")
{
    CHECK_FALSE(tpvHit(squat(), {25, 400}));
    CHECK_FALSE(tpvHit(TpvTrendInput{.lift = {}, .stays = {}, .season = span()}, {1, 300}));
}

TEST_CASE("the chosen point is ringed with its value and said, the newest has its value already", "[touch]")
{
    const auto plot = tpvTrend(squat(), TpvHit{1, 0});
    const auto chosen = chosenOf(plot);
    REQUIRE(chosen.size() == 1);
    CHECK(chosen[0].at.y == Approx(360));
    CHECK(chosen[0].label == "360");
    CHECK_THAT(spokenSummary(plot), Catch::Contains("Chosen: 360 milliseconds in week 11."));
    CHECK_THAT(spokenSummary(plot), !Catch::Contains(", 3 marks")); // it is no further value
    CHECK(chosenOf(tpvTrend(squat(), TpvHit{1, 1})).at(0).label.empty());
    CHECK(chosenOf(tpvTrend(squat(), TpvHit{7, 0})).empty());
}

TEST_CASE("of several runs on one day a finger means the one at its height", "[touch]")
{
    SprintTrendInput input;
    input.season = span();
    input.tests = {
        {"flying 20 m", {{first + days{21}, 2.10, {}}, {first + days{21}, 2.02, {}}, {first + days{63}, 2.05, {}}}}};
    CHECK(sprintHit(input, 0, {3.07, 2.03}) == std::optional<std::size_t>(1));
    CHECK(sprintHit(input, 0, {3.07, 2.09}) == std::optional<std::size_t>(0));
    CHECK(sprintHit(input, 0, {8.8, 2.06}) == std::optional<std::size_t>(2));
    CHECK_FALSE(sprintHit(input, 0, {20, 2.06}));
    CHECK_FALSE(sprintHit(input, 3, {3, 2.06}));
    CHECK_THAT(spokenSummary(sprintTrend(input, 0, 1)), Catch::Contains("Chosen: 2.02 seconds in week 4."));
}

TEST_CASE("a part of the season keeps the numbers of its weeks", "[touch]")
{
    auto input = squat();
    input.stays.erase(input.stays.begin());
    input.season.shownFrom = first + days{7 * 9};
    input.season.shownTo = first + days{7 * 15 - 1};
    const auto plot = tpvTrend(input);
    CHECK(plot.x.from == 9);
    CHECK(plot.x.to == 15);
    CHECK(plot.x.ticks.front().label == "week 10");
    CHECK_THAT(spokenSummary(plot), Catch::Contains("Across: week 10 to 15."));
}
