// Tables of the track: sprints, their splits, jumps.
#include <algorithm>
#include <iterator>
#include <string>
#include <vector>

#include "engine/report/columns.hpp"

namespace fleetrung::report
{
namespace
{

struct SprintRow {
    const SeasonReport& report;
    const Sprint& sprint;
};

struct SplitRow {
    const Sprint& sprint;
    const Split& split;
};

struct JumpRow {
    const SeasonReport& report;
    const Jump& jump;
};

DescribedTable sprints(std::span<const SeasonReport> reports)
{
    using Row = SprintRow;
    std::vector<Row> rows;
    for (const auto& report : reports)
        for (const auto& sprint : report.sprints)
            rows.push_back({report, sprint});
    return describe<Row>(
        "sprints.csv",
        {{"sprint_id", "", "timed run", [](const Row& row) { return identifierText(row.sprint.id); }},
         {"season_id", "", "season, as in seasons.csv",
          [](const Row& row) { return identifierText(row.report.season); }},
         {"athlete_id", "", "athlete, as in athletes.csv",
          [](const Row& row) { return identifierText(row.report.athlete.id); }},
         {"training_day", "ISO 8601 date", "the day the run counts for",
          [](const Row& row) { return dateText(row.sprint.day); }},
         {"at", "ISO 8601 time", "time of the run, local with offset",
          [](const Row& row) { return momentText(row.sprint.at); }},
         {"test", "", "what was run; only runs of one test are to be compared",
          [](const Row& row) { return guardedText(row.sprint.test); }},
         {"distance_m", "m", "timed distance", [](const Row& row) { return shortestText(row.sprint.distanceM); }},
         {"run_in_m", "m", "run-in before the timed distance",
          [](const Row& row) { return numberCell(row.sprint.runInM); }},
         {"time_s", "s", "time over the timed distance", [](const Row& row) { return shortestText(row.sprint.timeS); }},
         {"start", "", "kind of start", [](const Row& row) { return guardedText(row.sprint.start); }},
         {"timing", "", "how it was timed", [](const Row& row) { return guardedText(row.sprint.timing); }},
         {"surface", "", "surface", [](const Row& row) { return guardedText(row.sprint.surface); }},
         {"shoes", "", "shoes", [](const Row& row) { return guardedText(row.sprint.shoes); }},
         {"wind_mps", "m/s", "wind along the run, tail wind positive",
          [](const Row& row) { return numberCell(row.sprint.windMps); }},
         {"temperature_degc", "deg C", "air temperature",
          [](const Row& row) { return numberCell(row.sprint.temperatureC); }},
         {"competition", "", "yes if it was run in a competition",
          [](const Row& row) { return yesNo(row.sprint.competition); }},
         {"test_trial", "", "yes if it was a trial of a test day",
          [](const Row& row) { return yesNo(row.sprint.trial); }},
         {"fast_metres_90_m", "m", "metres at 90 % of best speed or above; empty without a best speed",
          [](const Row& row) { return fastCell(row.sprint.fast, row.sprint.fast.at90); }},
         {"fast_metres_95_m", "m", "the same at 95 %",
          [](const Row& row) { return fastCell(row.sprint.fast, row.sprint.fast.at95); }},
         {"fast_metres_basis", "", "measured, fitted to splits, estimated from distance and time, or none",
          [](const Row& row) { return std::string(track::nameOf(row.sprint.fast.basis)); }},
         {"contact_time_s", "s", "contact of a step near top speed, from video",
          [](const Row& row) { return numberCell(row.sprint.contactTimeS); }},
         {"step_length_m", "m", "length of a step near top speed, from video",
          [](const Row& row) { return numberCell(row.sprint.stepLengthM); }},
         {"note", "", "note", [](const Row& row) { return guardedText(row.sprint.note); }}},
        rows);
}

DescribedTable splits(std::span<const SeasonReport> reports)
{
    using Row = SplitRow;
    std::vector<Row> rows;
    for (const auto& report : reports)
        for (const auto& sprint : report.sprints)
            for (const auto& split : sprint.splits)
                rows.push_back({sprint, split});
    return describe<Row>("splits.csv",
                         {{"sprint_id", "", "timed run, as in sprints.csv",
                           [](const Row& row) { return identifierText(row.sprint.id); }},
                          {"distance_m", "m", "distance from the start of timing",
                           [](const Row& row) { return shortestText(row.split.distanceM); }},
                          {"time_s", "s", "time from the start of timing",
                           [](const Row& row) { return shortestText(row.split.timeS); }}},
                         rows);
}

DescribedTable jumps(std::span<const SeasonReport> reports)
{
    using Row = JumpRow;
    std::vector<Row> rows;
    for (const auto& report : reports)
        for (const auto& jump : report.jumps)
            rows.push_back({report, jump});
    return describe<Row>(
        "jumps.csv",
        {{"jump_id", "", "jump", [](const Row& row) { return identifierText(row.jump.id); }},
         {"season_id", "", "season, as in seasons.csv",
          [](const Row& row) { return identifierText(row.report.season); }},
         {"athlete_id", "", "athlete, as in athletes.csv",
          [](const Row& row) { return identifierText(row.report.athlete.id); }},
         {"training_day", "ISO 8601 date", "the day the jump counts for",
          [](const Row& row) { return dateText(row.jump.day); }},
         {"at", "ISO 8601 time", "time of the jump, local with offset",
          [](const Row& row) { return momentText(row.jump.at); }},
         {"kind", "", "kind of jump", [](const Row& row) { return guardedText(row.jump.kind); }},
         {"side", "", "both, left or right", [](const Row& row) { return sideCell(row.jump.side); }},
         {"box_height_m", "m", "height of the box", [](const Row& row) { return numberCell(row.jump.boxHeightM); }},
         {"distance_m", "m", "distance jumped", [](const Row& row) { return numberCell(row.jump.distanceM); }},
         {"contact_time_s", "s", "ground contact time", [](const Row& row) { return valueCell(row.jump.contactTime); }},
         {"contact_time_uncertainty_s", "s", "standard uncertainty of contact_time_s",
          [](const Row& row) { return uncertaintyCell(row.jump.contactTime); }},
         {"flight_time_s", "s", "flight time", [](const Row& row) { return valueCell(row.jump.flightTime); }},
         {"flight_time_uncertainty_s", "s", "standard uncertainty of flight_time_s",
          [](const Row& row) { return uncertaintyCell(row.jump.flightTime); }},
         {"height_m", "m", "jump height from flight time", [](const Row& row) { return valueCell(row.jump.height); }},
         {"height_uncertainty_m", "m", "standard uncertainty of height_m",
          [](const Row& row) { return uncertaintyCell(row.jump.height); }},
         {"reactive_strength_index_mps", "m/s", "jump height over contact time",
          [](const Row& row) { return valueCell(row.jump.reactiveStrength); }},
         {"reactive_strength_index_uncertainty_mps", "m/s", "standard uncertainty of reactive_strength_index_mps",
          [](const Row& row) { return uncertaintyCell(row.jump.reactiveStrength); }},
         {"test_trial", "", "yes if it was a trial of a test day",
          [](const Row& row) { return yesNo(row.jump.trial); }},
         {"surface", "", "surface", [](const Row& row) { return guardedText(row.jump.surface); }},
         {"shoes", "", "shoes", [](const Row& row) { return guardedText(row.jump.shoes); }},
         {"note", "", "note", [](const Row& row) { return guardedText(row.jump.note); }}},
        rows);
}

} // namespace

std::vector<DescribedTable> trackTables(std::span<const SeasonReport> reports)
{
    std::vector tables{sprints(reports), splits(reports), sprintFitTable(reports), jumps(reports)};
    std::ranges::move(trackWorkTables(reports), std::back_inserter(tables));
    return tables;
}

} // namespace fleetrung::report
