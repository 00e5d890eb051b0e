// This program's own tables come back in as they went out; and split times of real people (FLEETRUNG_DATA names the
// folder, without it the tests are skipped): gates contributed by J. D. Vescovi, in github.com/mladenjovanovic/shorts
// (MIT); finals of 2009 from Graubner R, Nixdorf E, New Stud Athl 2011;26(1/2):19-53.
#include "helper.hpp"

#include <filesystem>
#include <fstream>
#include <sstream>

#include "engine/report/csv_tables.hpp"

using namespace fleetrung;
using namespace fleetrung::importing;
using namespace fleetrung::importing::test;

namespace
{

Identifier numbered(std::uint8_t number)
{
    Identifier id;
    id.bytes[15] = number;
    return id;
}

/// 2026-03-01 18:00:00.000 +01:00
report::Moment evening()
{
    return {std::int64_t{20513} * 86400000 + 17 * 3600000, 60};
}

report::SeasonReport invented()
{
    report::SeasonReport season;
    season.season = numbered(1);
    season.athlete.id = numbered(2);
    season.athlete.name = "=Ada \"the\" Muster, jun.";
    report::Sprint run;
    run.id = numbered(3);
    run.day = *parseDate("2026-03-01");
    run.at = evening();
    run.test = "30 m standing";
    run.distanceM = 30;
    run.timeS = 4.02;
    run.splits = {{10, 1.85}, {20, 2.98}, {30, 4.02}};
    run.start = "standing";
    run.timing = "gates";
    run.surface = "indoor";
    run.shoes = "spikes";
    run.windMps = -0.4;
    run.temperatureC = 14.5;
    run.trial = true;
    run.note = "a, \"b\"\nc";
    report::Sprint flying;
    flying.id = numbered(4);
    flying.day = run.day;
    flying.at = evening();
    flying.test = "flying 20 m";
    flying.distanceM = 20;
    flying.runInM = 30;
    flying.timeS = 2.04;
    flying.start = "flying";
    flying.timing = "electronic";
    season.sprints = {run, flying};
    report::Session session;
    session.id = numbered(5);
    session.day = run.day;
    session.started = evening();
    session.kind = "strength";
    report::Set set;
    set.id = numbered(6);
    set.number = 2;
    set.lift = "half-squat";
    set.name = "Half squat";
    set.ladder = "squat";
    set.rung = "half";
    set.loadKg = 102.5;
    set.repetitionsDone = 5;
    set.kind = "probe";
    set.effort = 8;
    set.note = "'quoted";
    session.sets = {set};
    season.sessions = {session};
    return season;
}

Table exported(const std::string& name)
{
    const std::vector reports{invented()};
    for (const auto& table : report::csvTables(reports))
        if (table.fileName == name)
            return tableOf(report::csvText(table));
    FAIL(name);
    return {};
}

Table completed(const std::string& name)
{
    auto table = exported(name);
    for (const auto& other : companions(table)) {
        auto joint = joined(table, exported(other));
        if (!joint)
            FAIL(describe(joint.error()));
        table = *joint;
    }
    return table;
}

std::string fileText(const std::string& path)
{
    std::ifstream file(path, std::ios::binary);
    std::stringstream text;
    text << file.rdbuf();
    return text.str();
}

const std::string folder = FLEETRUNG_DATA "/sprint-splits/";

bool isHere()
{
    if (std::filesystem::exists(folder))
        return true;
    WARN("skipped: no data in " << folder);
    return false;
}

} // namespace

TEST_CASE("runs exported with their splits come back as they were", "[export]")
{
    const auto table = completed("sprints.csv");
    const auto proposal = propose(table, Kind::Runs);
    CHECK(firstQuestion(table, proposal.mapping).empty());
    const auto read = runsOf(table, proposal.mapping);
    INFO(sentencesOf(read.bad, table));
    REQUIRE(read.runs.size() == 2);
    const auto before = invented();
    for (std::size_t i = 0; i < 2; ++i) {
        const auto& run = read.runs[i];
        const auto& sprint = before.sprints[i];
        CHECK(run.athlete == before.athlete.name);
        CHECK(run.athleteKey == before.athlete.id);
        CHECK(run.day == sprint.day);
        CHECK(run.clock == 18 * 3600);
        CHECK(run.offsetMinutes == 60);
        CHECK(run.distance == sprint.distanceM);
        CHECK(run.time == sprint.timeS);
        REQUIRE(run.splits.size() == sprint.splits.size());
        for (std::size_t k = 0; k < run.splits.size(); ++k)
            CHECK(run.splits[k] == SplitTime{sprint.splits[k].distanceM, sprint.splits[k].timeS});
        CHECK(run.start == sprint.start);
        CHECK(run.timing == sprint.timing);
        CHECK(run.surface == sprint.surface);
        CHECK(run.shoes == sprint.shoes);
        CHECK(run.wind == sprint.windMps);
        CHECK(run.temperature == sprint.temperatureC);
        CHECK(run.runIn == sprint.runInM.value_or(0));
        CHECK(run.trial == sprint.trial);
        CHECK(run.note == sprint.note);
    }
}

TEST_CASE("sets exported with their sessions come back as they were", "[export]")
{
    const auto table = completed("sets.csv");
    const auto proposal = propose(table, Kind::Sets);
    CHECK(firstQuestion(table, proposal.mapping).empty());
    const auto sets = readSets(table, proposal.mapping, {today, {}});
    REQUIRE(sets);
    INFO(sentencesOf(sets->bad, table));
    REQUIRE(sets->sets.size() == 1);
    const auto& set = sets->sets[0];
    const auto before = invented();
    const auto& there = before.sessions[0].sets[0];
    CHECK(set.athlete == before.athlete.name);
    CHECK(set.day == before.sessions[0].day);
    CHECK(set.clock == 18 * 3600);
    CHECK(set.attempt == "2");
    CHECK(set.lift == there.lift);
    CHECK(set.rung == there.rung);
    CHECK(set.loadKg == there.loadKg);
    CHECK(set.repetitions == there.repetitionsDone);
    CHECK(set.kind == there.kind);
    CHECK(set.effort == there.effort);
    CHECK(set.note == there.note);
}

TEST_CASE("files that do not belong together are not joined", "[export]")
{
    const auto refused = joined(tableOf("a_id,b\n1,2\n"), tableOf("c_id,d\n1,2\n"));
    REQUIRE_FALSE(refused);
    CHECK(refused.error().code == Code::InvalidInput);
    CHECK(companions(tableOf("Name,30 m\nAda,4.2\n")).empty());
}

TEST_CASE("gates of 52 athletes are imported as they stand in their file", "[real]")
{
    if (!isHere())
        return;
    const auto text = fileText(folder + "timing_gates_52_athletes.csv");
    const auto table = tableOf(text);
    auto mapping = propose(table, Kind::Runs).mapping;
    CHECK(asked(table, mapping) == std::vector{Ask::Day}); // the file has no dates
    mapping.day = parseDate("2012-05-01");
    const auto read = runsOf(table, mapping);
    INFO(sentencesOf(read.bad, table));
    CHECK(read.runs.size() == 52);
    const auto csv = parseCsv(text);
    REQUIRE(csv);
    constexpr double gates[] = {5, 10, 20, 30, 35};
    for (std::size_t i = 0; i < read.runs.size(); ++i) {
        const auto& cells = csv->rows[i].cells;
        CHECK(read.runs[i].athlete == cells[0]);
        REQUIRE(read.runs[i].splits.size() == 5);
        for (std::size_t k = 0; k < 5; ++k)
            CHECK(read.runs[i].splits[k] == SplitTime{gates[k], std::stod(cells[6 + k])});
    }
    CHECK(read.runs[0].surface == "grass");
}

TEST_CASE("the finals of 2009 are imported as they stand in their file", "[real]")
{
    if (!isHere())
        return;
    const auto table = tableOf(fileText(folder + "world_champs_2009_100m.csv"));
    auto mapping = propose(table, Kind::Runs).mapping;
    mapping = withMeaning(table, mapping, 0, {Meaning::Key}).mapping; // the event names the run
    mapping.day = parseDate("2009-08-16");
    CHECK(mapping.form == RowForm::SplitPerRow);
    const auto read = runsOf(table, mapping);
    INFO(sentencesOf(read.bad, table));
    CHECK(read.bad.empty());
    REQUIRE_FALSE(read.runs.empty());
    const auto& final = read.runs[0];
    CHECK(final.splits.size() == 10);
    CHECK(final.splits[0] == SplitTime{10, 1.88});
    CHECK(final.splits[9].time == Approx(9.58)); // the world record, as the table and World Athletics have it
    CHECK(final.reaction == 0.146);
    CHECK(final.start == "block");
}
