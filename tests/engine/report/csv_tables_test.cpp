#include "engine/report/csv_tables.hpp"

#include <algorithm>
#include <map>
#include <set>

#include <catch2/catch.hpp>

#include "engine/base/csv_table.hpp"
#include "engine/base/numbers.hpp"
#include "tests/report/invented_season.hpp"

using namespace fleetrung;
using namespace fleetrung::report;

namespace
{

const Table& tableOf(const std::vector<Table>& tables, const std::string& name)
{
    const auto found =
        std::find_if(tables.begin(), tables.end(), [&](const Table& table) { return table.fileName == name; });
    REQUIRE(found != tables.end());
    return *found;
}

std::string cell(const Table& table, std::size_t row, const std::string& column)
{
    const auto found = std::find(table.header.begin(), table.header.end(), column);
    REQUIRE(found != table.header.end());
    REQUIRE(row < table.rows.size());
    return table.rows[row][static_cast<std::size_t>(found - table.header.begin())];
}

} // namespace

TEST_CASE("the data dictionary describes every column of every table, once and in order", "[csv]")
{
    const std::vector reports{invented::season()};
    const auto tables = csvTables(reports);
    const auto& dictionary = tableOf(tables, "data_dictionary.csv");
    std::map<std::string, std::vector<std::string>> described;
    for (const auto& row : dictionary.rows) {
        REQUIRE(row.size() == 4);
        CHECK_FALSE(row[3].empty());
        described[row[0]].push_back(row[1]);
    }
    CHECK(described.size() == tables.size());
    for (const auto& table : tables) {
        CAPTURE(table.fileName);
        CHECK(described[table.fileName] == table.header);
        for (const auto& row : table.rows)
            CHECK(row.size() == table.header.size());
    }
}

TEST_CASE("a column whose unit has a suffix carries it in its name", "[csv]")
{
    const std::map<std::string, std::string> suffixes{{"s", "_s"},   {"m", "_m"}, {"m/s", "_mps"},
                                                      {"kg", "_kg"}, {"h", "_h"}, {"deg C", "_degc"}};
    const auto tables = csvTables({});
    for (const auto& row : tableOf(tables, "data_dictionary.csv").rows) {
        const auto suffix = suffixes.find(row[2]);
        if (suffix == suffixes.end())
            continue;
        CAPTURE(row[0], row[1]);
        CHECK(row[1].ends_with(suffix->second));
    }
}

TEST_CASE("every table is there when nothing was done yet, with its header alone", "[csv]")
{
    for (const auto& table : csvTables({})) {
        CAPTURE(table.fileName);
        CHECK_FALSE(table.header.empty());
        CHECK((table.rows.empty() || table.fileName == "data_dictionary.csv"));
    }
}

TEST_CASE("the tables read back from their bytes cell for cell", "[csv]")
{
    const std::vector reports{invented::season()};
    for (const auto& table : csvTables(reports)) {
        CAPTURE(table.fileName);
        const auto read = parseCsv(csvText(table));
        REQUIRE(read);
        CHECK(read->header.cells == table.header);
        REQUIRE(read->rows.size() == table.rows.size());
        for (std::size_t i = 0; i < table.rows.size(); ++i)
            CHECK(read->rows[i].cells == table.rows[i]);
    }
}

TEST_CASE("a note that a spreadsheet would run is guarded, a negative number is not", "[csv]")
{
    auto report = invented::season();
    report.sessions.front().note = "=1+1";
    report.sprints.front().windMps = -1.25;
    report.sprints.front().note = "-1.25";
    const auto tables = csvTables(std::span(&report, 1));
    CHECK(cell(tableOf(tables, "sessions.csv"), 0, "note") == "'=1+1");
    CHECK(cell(tableOf(tables, "sprints.csv"), 0, "wind_mps") == "-1.25");
    CHECK(cell(tableOf(tables, "sprints.csv"), 0, "note") == "'-1.25");
}

TEST_CASE("doubles are the shortest text that reads back the same, and what was not measured is empty", "[csv]")
{
    auto report = invented::season();
    auto& repetition = report.sessions.front().sets.front().repetitions.front();
    repetition.meanVelocity = {0.1 + 0.2, std::nullopt};
    repetition.reversalTime = {};
    const auto tables = csvTables(std::span(&report, 1));
    const auto& table = tableOf(tables, "repetitions.csv");
    CHECK(cell(table, 0, "mean_velocity_mps") == "0.30000000000000004");
    CHECK(parseNumber(cell(table, 0, "mean_velocity_mps")) == 0.1 + 0.2);
    CHECK(cell(table, 0, "mean_velocity_uncertainty_mps").empty());
    CHECK(cell(table, 0, "reversal_time_s").empty());
}

TEST_CASE("every id that a row points to stands in the table it points to", "[csv]")
{
    const std::vector reports{invented::season()};
    const auto tables = csvTables(reports);
    const auto idsOf = [&](const std::string& file, const std::string& column) {
        const auto& table = tableOf(tables, file);
        std::set<std::string> ids;
        for (std::size_t i = 0; i < table.rows.size(); ++i)
            ids.insert(cell(table, i, column));
        return ids;
    };
    const auto holds = [](const std::set<std::string>& all, const std::set<std::string>& some) {
        return !some.empty() && std::includes(all.begin(), all.end(), some.begin(), some.end());
    };
    CHECK(holds(idsOf("athletes.csv", "athlete_id"), idsOf("seasons.csv", "athlete_id")));
    CHECK(holds(idsOf("sessions.csv", "session_id"), idsOf("sets.csv", "session_id")));
    CHECK(holds(idsOf("sets.csv", "set_id"), idsOf("repetitions.csv", "set_id")));
    CHECK(holds(idsOf("decisions.csv", "decision_id"), idsOf("evidence.csv", "decision_id")));
    CHECK(holds(idsOf("sprints.csv", "sprint_id"), idsOf("splits.csv", "sprint_id")));
}

TEST_CASE("an athlete with two seasons stands in the table of athletes once", "[csv]")
{
    auto second = invented::season();
    second.season.bytes[0] ^= 1;
    const std::vector reports{invented::season(), second};
    const auto tables = csvTables(reports);
    CHECK(tableOf(tables, "athletes.csv").rows.size() == 1);
    CHECK(tableOf(tables, "seasons.csv").rows.size() == 2);
}

TEST_CASE("a run's curve stands in its row as the engine fitted it, a refused one with its reason", "[csv][sprint]")
{
    auto report = invented::season();
    const sprint::Model model{.vmax = 9.6, .tau = 1.25};
    std::vector<sprint::Split> splits;
    for (const double distance : {5.0, 10.0, 20.0, 30.0, 40.0})
        splits.push_back({distance, model.timeTo(distance)});
    sprint::SplitOptions options;
    options.start.clock = sprint::Clock::FirstMovement;
    const auto fit = sprint::fitSplits(splits, options);
    REQUIRE(fit);
    REQUIRE(report.sprints.size() >= 2);
    report.sprints[0].curve = SpeedCurve{.fit = *fit,
                                         .noFit = {},
                                         .beamM = 0,
                                         .force = sprint::ForceVelocity{.f0 = 480, .v0 = 9.9, .pmax = 1188},
                                         .noForce = {},
                                         .massKg = 60};
    report.sprints[1].curve = SpeedCurve{
        .fit = {}, .noFit = "two splits carry no curve", .beamM = 0, .force = {}, .noForce = {}, .massKg = 0};
    const auto tables = csvTables(std::span(&report, 1));
    const auto& fits = tableOf(tables, "sprint_fits.csv");
    REQUIRE(fits.rows.size() == 2); // runs without splits have no row
    CHECK(cell(fits, 0, "sprint_id") == identifierText(report.sprints[0].id));
    CHECK(cell(fits, 0, "top_speed_mps") == shortestText(fit->model.vmax));
    CHECK(fit->model.vmax == Approx(9.6).margin(1e-4));
    CHECK(cell(fits, 0, "tau_s") == shortestText(fit->model.tau));
    CHECK(cell(fits, 0, "splits_used") == "5");
    CHECK(cell(fits, 0, "splits_left_out") == "0");
    CHECK(cell(fits, 0, "f0_npkg") == "8");
    CHECK(cell(fits, 0, "not_available").empty());
    CHECK(cell(fits, 1, "top_speed_mps").empty());
    CHECK(cell(fits, 1, "not_available") == "two splits carry no curve");
}
