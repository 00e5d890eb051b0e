#include "engine/report/did_it_work.hpp"

#include <algorithm>
#include <cmath>

#include <catch2/catch.hpp>

#include "engine/base/numbers.hpp"
#include "engine/report/csv_tables.hpp"

using namespace fleetrung;
using namespace fleetrung::report;
using std::chrono::days;

namespace
{

constexpr CivilDate monday = std::chrono::sys_days{std::chrono::year{2025} / 11 / 3};
constexpr int weeks = 30;

double wander(int week)
{
    return std::sin(1.7 * week) + std::sin(2.9 * week + 1);
}

/// Three rungs of ten weeks; the sprint follows the bar's weeks two weeks later.
SeasonReport following()
{
    SeasonReport report;
    auto& ladder = report.ladders.emplace_back();
    ladder.key = "squat";
    ladder.rungs = {{"full-squat", "Full squat", {}}, {"half-squat", "Half squat", {}}, {"quarter", "Quarter", {}}};
    for (int week = 0; week < weeks; ++week) {
        EvidencePoint point;
        point.day = monday + days{7 * week};
        point.rung = static_cast<std::size_t>(week) / 10;
        point.time.value = 0.4 - 0.1 * (week / 10) + 0.02 * wander(week);
        ladder.evidence.push_back(point);
        Sprint sprint;
        sprint.day = monday + days{7 * week + 5};
        sprint.test = "flying 30 m";
        sprint.start = "flying";
        sprint.timing = "gates";
        sprint.timeS = 2.9 + 0.02 * wander(week - 2);
        report.sprints.push_back(sprint);
    }
    return report;
}

Table tableOf(const SeasonReport& report)
{
    const auto tables = csvTables(std::span(&report, 1));
    const auto found = std::ranges::find(tables, "did_it_work.csv", &Table::fileName);
    REQUIRE(found != tables.end());
    return *found;
}

std::string cell(const Table& table, std::size_t row, const std::string& column)
{
    const auto at = std::ranges::find(table.header, column) - table.header.begin();
    return table.rows.at(row).at(static_cast<std::size_t>(at));
}

} // namespace

TEST_CASE("did it work has one row for each lag and says it in words", "[csv][transfer]")
{
    const auto report = following();
    const auto transfer = didItWork(report);
    REQUIRE(transfer);
    CHECK(transfer->verdict == transfer::Verdict::MovedTogether);
    CHECK(transfer->strongest == 2);
    const auto table = tableOf(report);
    REQUIRE(table.rows.size() == 5);
    for (std::size_t row = 0; row < 5; ++row) {
        CHECK(cell(table, row, "lag_weeks") == integerText(static_cast<int>(row)));
        CHECK(cell(table, row, "pairs") == integerText(weeks - static_cast<int>(row)));
        CHECK(parseNumber(cell(table, row, "rank_correlation")) == transfer->lags[row].correlation);
        CHECK(cell(table, row, "strongest") == (row == 2 ? "yes" : "no"));
        CHECK(parseNumber(cell(table, row, "p_value")) == transfer->chance);
        CHECK(cell(table, row, "verdict") == "moved together");
        CHECK(cell(table, row, "result") == transfer->sentence);
    }
    CHECK_THAT(transfer->sentence, Catch::Contains("flying 30 m") && Catch::Contains("gates"));
}

TEST_CASE("did it work takes the best run of a day, still air, and keeps races and sides apart", "[csv][transfer]")
{
    const auto before = didItWork(following());
    auto report = following();
    auto slower = report.sprints[7], windy = report.sprints[8], race = report.sprints[9];
    slower.timeS += 0.2;
    windy.timeS -= 0.2;
    windy.windMps = 1.8;
    race.timeS -= 0.2;
    race.competition = true;
    report.sprints.insert(report.sprints.end(), {slower, windy, race});
    const auto after = didItWork(report);
    REQUIRE(before);
    REQUIRE(after);
    CHECK(after->chance == before->chance);
    CHECK(after->sentence == before->sentence);

    auto& evidence = report.ladders.front().evidence;
    for (auto& point : evidence)
        point.side = Side::Left;
    for (std::size_t i = 0; i < static_cast<std::size_t>(weeks); ++i) {
        evidence.push_back(evidence[i]);
        evidence.back().side = Side::Right;
        *evidence.back().time.value += 0.05; // the slower leg is no slower week
    }
    const auto sides = didItWork(report);
    REQUIRE(sides);
    CHECK(sides->lags[2].rungs == 6);
    CHECK(*sides->lags[2].correlation == Approx(*before->lags[2].correlation).margin(0.02));
}

TEST_CASE("did it work leaves contact times of jumps alone, and an empty season is not enough", "[csv][transfer]")
{
    auto report = following();
    report.ladders.front().evidenceName = "contact time";
    const auto jumps = didItWork(report);
    REQUIRE(jumps);
    CHECK(jumps->lags[0].pairs == 0);
    CHECK(cell(tableOf(SeasonReport{}), 0, "verdict") == "not enough");
    CHECK(cell(tableOf(SeasonReport{}), 0, "rank_correlation").empty());
    CHECK(cell(tableOf(SeasonReport{}), 0, "p_value").empty());
}

TEST_CASE("did it work says why a season cannot be judged", "[csv][transfer]")
{
    auto report = following();
    report.sprints.back().day += days{7 * 60};
    const auto table = tableOf(report);
    REQUIRE(table.rows.size() == 1);
    CHECK_THAT(cell(table, 0, "result"), Catch::Contains("Not judged") && Catch::Contains("60 weeks"));
}
