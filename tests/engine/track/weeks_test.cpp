#include "engine/track/weeks.hpp"

#include <catch2/catch.hpp>

using namespace fleetrung;
using namespace fleetrung::track;

namespace
{

const CivilDate monday = *parseDate("2026-05-04");
constexpr std::chrono::days aWeek{7};

KnownRun flying20(CivilDate day, double time)
{
    Run run;
    run.day = day;
    run.flying = true;
    run.distance = 20;
    run.runIn = 30;
    run.time = time;
    return know(run);
}

/// Flying runs of 20 m at best speed, so many a week from `monday` on.
std::vector<KnownRun> weekly(const std::vector<int>& counts)
{
    std::vector<KnownRun> runs;
    for (std::size_t week = 0; week < counts.size(); ++week)
        for (int i = 0; i < counts[week]; ++i)
            runs.push_back(flying20(monday + static_cast<int>(week) * aWeek + std::chrono::days{1}, 2.0));
    return runs;
}

} // namespace

TEST_CASE("a week is flagged when its fast metres exceed 1.3 times the mean of the four before", "[weeks]")
{
    const auto last = monday + 4 * aWeek + std::chrono::days{6};
    const auto at13 = weeks(weekly({10, 10, 10, 10, 13}), {}, {}, monday, last).back();
    CHECK(at13.fast90 == 260);
    CHECK(*at13.usualFastMetres == 200);
    CHECK_FALSE(at13.flagged()); // exactly 1.3 times does not exceed it
    CHECK(flagText(at13).empty());
    const auto at14 = weeks(weekly({10, 10, 10, 10, 14}), {}, {}, monday, last).back();
    CHECK(at14.muchFaster);
    CHECK(flagText(at14) == "40 % more fast metres than the mean of the four weeks before");
}

TEST_CASE("before the fifth week of a log no week is flagged", "[weeks]")
{
    for (const auto& week : weeks(weekly({1, 1, 1, 20}), {}, {}, monday, monday + 4 * aWeek - std::chrono::days{1})) {
        CHECK_FALSE(week.usualMetres);
        CHECK_FALSE(week.flagged());
    }
}

TEST_CASE("weeks without running count as zero, and the first full week after them is flagged", "[weeks]")
{
    const auto all = weeks(weekly({10, 0, 0, 0, 0, 10}), {}, {}, monday, monday + 6 * aWeek - std::chrono::days{1});
    REQUIRE(all.size() == 6);
    CHECK(*all[4].usualFastMetres == 50);
    CHECK(*all[5].usualFastMetres == 0);
    CHECK(all[5].muchFaster);
    CHECK(flagText(all[5]) == "fast metres after four weeks without");
}

TEST_CASE("a week with little running is not flagged whatever its share", "[weeks]")
{
    const auto week = weeks(weekly({1, 0, 0, 0, 2}), {}, {}, monday, monday + 5 * aWeek - std::chrono::days{1}).back();
    CHECK(week.fast90 == 40);
    CHECK_FALSE(week.flagged());
}

TEST_CASE("a week adds up runs with their run-in, resisted and hill metres, and contacts", "[weeks]")
{
    const std::vector runs{flying20(monday, 2.0), flying20(monday + std::chrono::days{6}, 2.5)};
    const std::vector<Work> work{{monday, WorkKind::Resisted, 30, 6, {}, 8.0, false},
                                 {monday, WorkKind::Hill, 40, 5, {}, 9.0, false},
                                 {monday, WorkKind::Easy, 100, 8, {}, 5.0, false},
                                 {monday + aWeek, WorkKind::Easy, 100, 8, {}, 5.0, false}};
    const std::vector<Contacts> contacts{{monday, 20}, {monday + std::chrono::days{3}, 15}, {monday + aWeek, 9}};
    const auto all = weeks(runs, work, contacts, monday + std::chrono::days{2}, monday + std::chrono::days{6});
    REQUIRE(all.size() == 1);
    const auto& week = all.front();
    CHECK(week.monday == monday);
    CHECK(week.runs == 2 + 6 + 5 + 8);
    CHECK(week.metres == 100 + 180 + 200 + 800);
    CHECK(week.resisted == 180);
    CHECK(week.hill == 200);
    CHECK(week.contacts == 35);
    CHECK(week.fast95 == 20); // the slower run was at 80 %
    CHECK_FALSE(week.estimated);
}

TEST_CASE("estimated fast metres mark their week", "[weeks]")
{
    const std::vector runs{flying20(monday, 2.0)};
    const std::vector<Work> work{{monday, WorkKind::Flying, 30, 4, {}, 10.0, false}};
    const auto week = weeks(runs, work, {}, monday, monday).front();
    CHECK(week.fast90 == 20 + 120);
    CHECK(week.estimated);
}
