// One heavy ladder steps in seven days: the plan's latest dates leave room for that, or the plan says that they cannot.
#include <catch2/catch.hpp>

#include <algorithm>

#include "tests/engine/season/example.hpp"

using namespace fleetrung;
using namespace fleetrung::season;

namespace
{

SeasonSetup heavySetup(const char* start, std::vector<std::string> ladders)
{
    auto setup = example::setup();
    setup.start = example::on(start);
    setup.ladders = std::move(ladders);
    return setup;
}

/// Latest dates of the rungs of heavy ladders that are left, in order.
std::vector<CivilDate> latestDates(const SeasonPlan& plan)
{
    std::vector<CivilDate> dates;
    for (const auto& ladder : plan.ladders)
        for (std::size_t i = 0; i + 1 < ladder.rungs.size(); ++i)
            dates.push_back(ladder.rungs[i].latest);
    std::sort(dates.begin(), dates.end());
    return dates;
}

bool saysTooManySteps(const SeasonPlan& plan)
{
    return std::any_of(plan.notes.begin(), plan.notes.end(), [](const std::string& note) {
        return note.find("steps of heavy ladders before") != std::string::npos;
    });
}

} // namespace

TEST_CASE("latest dates of three heavy ladders stand seven days apart over a long season")
{
    const auto plan = planSeason(heavySetup("2026-01-05", {"squat", "clean", "hinge"})).value();
    CHECK_FALSE(saysTooManySteps(plan));
    const auto dates = latestDates(plan);
    REQUIRE(dates.size() == 11);
    for (std::size_t i = 1; i < dates.size(); ++i)
        CHECK(daysBetween(dates[i - 1], dates[i]) >= 7);
}

TEST_CASE("more steps of heavy ladders than weeks are said at once")
{
    const auto plan = planSeason(heavySetup("2026-05-04", {"squat", "clean", "hinge", "pull", "step-up"})).value();
    CHECK(saysTooManySteps(plan));
}

TEST_CASE("no rung is planned beyond its latest date")
{
    for (const char* start : {"2026-01-05", "2026-03-02"}) {
        const auto plan = planSeason(heavySetup(start, {"squat", "clean", "hinge", "pull"})).value();
        for (const auto& ladder : plan.ladders)
            for (std::size_t i = 0; i + 1 < ladder.rungs.size(); ++i) {
                INFO(start << ' ' << ladder.ladder << ' ' << ladder.rungs[i].rung);
                CHECK(ladder.rungs[i].to <= ladder.rungs[i].latest);
                CHECK(ladder.rungs[i + 1].from == ladder.rungs[i].to + std::chrono::days(1));
            }
    }
}
