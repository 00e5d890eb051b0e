// Tables of the track log: work that is counted, and the weeks with their fast metres.
#include <string>
#include <vector>

#include "engine/report/columns.hpp"

namespace fleetrung::report
{
namespace
{

struct WorkRow {
    const SeasonReport& report;
    const TrackWork& work;
};

struct WeekRow {
    const SeasonReport& report;
    const TrackWeek& entry;

    [[nodiscard]] const track::Week& week() const { return entry.week; }
};

std::string tenths(double metres)
{
    return shortestText(roundTo(metres, 10));
}

std::string tenths(const std::optional<double>& metres)
{
    return metres ? tenths(*metres) : std::string();
}

DescribedTable work(std::span<const SeasonReport> reports)
{
    using Row = WorkRow;
    std::vector<Row> rows;
    for (const auto& report : reports)
        for (const auto& one : report.trackWork)
            rows.push_back({report, one});
    return describe<Row>(
        "track_work.csv",
        {{"work_id", "", "runs of one kind", [](const Row& row) { return identifierText(row.work.id); }},
         {"season_id", "", "season, as in seasons.csv",
          [](const Row& row) { return identifierText(row.report.season); }},
         {"athlete_id", "", "athlete, as in athletes.csv",
          [](const Row& row) { return identifierText(row.report.athlete.id); }},
         {"training_day", "ISO 8601 date", "the day the work counts for",
          [](const Row& row) { return dateText(row.work.day); }},
         {"at", "ISO 8601 time", "time of the work, local with offset",
          [](const Row& row) { return momentText(row.work.at); }},
         {"kind", "", "sprints, flying, resisted, hill, easy",
          [](const Row& row) { return guardedText(row.work.kind); }},
         {"distance_m", "m", "distance of one run; of a flying run the zone",
          [](const Row& row) { return shortestText(row.work.distanceM); }},
         {"repetitions", "1", "runs", [](const Row& row) { return integerText(row.work.repetitions); }},
         {"metres_m", "m", "distance of all runs",
          [](const Row& row) { return shortestText(row.work.distanceM * row.work.repetitions); }},
         {"best_time_s", "s", "time of the fastest run", [](const Row& row) { return numberCell(row.work.bestTimeS); }},
         {"rest_s", "s", "rest between runs", [](const Row& row) { return numberCell(row.work.restS); }},
         {"effort", "1", "effort, 1 to 10", [](const Row& row) { return numberCell(row.work.effort); }},
         {"sled_load_kg", "kg", "load on the sled", [](const Row& row) { return numberCell(row.work.loadKg); }},
         {"slope_percent", "%", "slope of the hill", [](const Row& row) { return numberCell(row.work.slopePercent); }},
         {"wind_mps", "m/s", "wind along the run, tail wind positive",
          [](const Row& row) { return numberCell(row.work.windMps); }},
         {"timing", "", "how the best time was taken", [](const Row& row) { return guardedText(row.work.timing); }},
         {"surface", "", "surface", [](const Row& row) { return guardedText(row.work.surface); }},
         {"shoes", "", "shoes", [](const Row& row) { return guardedText(row.work.shoes); }},
         {"fast_metres_90_m", "m", "metres at 90 % of best speed or above; empty where none can be told",
          [](const Row& row) { return fastCell(row.work.fast, row.work.fast.at90); }},
         {"fast_metres_95_m", "m", "the same at 95 %",
          [](const Row& row) { return fastCell(row.work.fast, row.work.fast.at95); }},
         {"fast_metres_basis", "", "estimated, or none",
          [](const Row& row) { return std::string(track::nameOf(row.work.fast.basis)); }},
         {"note", "", "note", [](const Row& row) { return guardedText(row.work.note); }}},
        rows);
}

DescribedTable weeks(std::span<const SeasonReport> reports)
{
    using Row = WeekRow;
    std::vector<Row> rows;
    for (const auto& report : reports)
        for (const auto& week : report.trackWeeks)
            rows.push_back({report, week});
    return describe<Row>(
        "track_weeks.csv",
        {{"season_id", "", "season, as in seasons.csv",
          [](const Row& row) { return identifierText(row.report.season); }},
         {"athlete_id", "", "athlete, as in athletes.csv",
          [](const Row& row) { return identifierText(row.report.athlete.id); }},
         {"monday", "ISO 8601 date", "first day of the week",
          [](const Row& row) { return dateText(row.week().monday); }},
         {"sprint_days_planned", "1", "sprint days of the plan in that week",
          [](const Row& row) { return integerText(row.entry.sprintDaysPlanned); }},
         {"sprint_days_done", "1", "days with a run or with work on the track",
          [](const Row& row) { return integerText(row.entry.sprintDaysDone); }},
         {"runs", "1", "timed runs and runs of work", [](const Row& row) { return integerText(row.week().runs); }},
         {"metres_m", "m", "metres of all runs", [](const Row& row) { return tenths(row.week().metres); }},
         {"fast_metres_90_m", "m", "metres at 90 % of best speed or above",
          [](const Row& row) { return tenths(row.week().fast90); }},
         {"fast_metres_95_m", "m", "the same at 95 %", [](const Row& row) { return tenths(row.week().fast95); }},
         {"fast_metres_estimated", "", "yes if part of the fast metres is estimated",
          [](const Row& row) { return yesNo(row.week().estimated); }},
         {"resisted_m", "m", "metres with a load behind", [](const Row& row) { return tenths(row.week().resisted); }},
         {"hill_m", "m", "metres uphill", [](const Row& row) { return tenths(row.week().hill); }},
         {"jump_contacts", "1", "contacts in jumps", [](const Row& row) { return integerText(row.week().contacts); }},
         {"usual_metres_m", "m", "mean of metres_m of the four weeks before",
          [](const Row& row) { return tenths(row.week().usualMetres); }},
         {"usual_fast_metres_90_m", "m", "mean of fast_metres_90_m of the four weeks before",
          [](const Row& row) { return tenths(row.week().usualFastMetres); }},
         {"flag", "", "said where the week is above 1.3 times that mean (starting value of this project)",
          [](const Row& row) { return guardedText(track::flagText(row.week())); }}},
        rows);
}

} // namespace

std::vector<DescribedTable> trackWorkTables(std::span<const SeasonReport> reports)
{
    return {work(reports), weeks(reports)};
}

} // namespace fleetrung::report
