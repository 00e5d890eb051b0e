// Tables of what was done: sessions, sets, repetitions, evidence by session, sprints, splits, jumps.
#include <string>
#include <vector>

#include "engine/report/columns.hpp"

namespace fleetrung::report
{
namespace
{

struct SessionRow {
    const SeasonReport& report;
    const Session& session;
};

struct SetRow {
    const Session& session;
    const Set& set;
};

struct RepetitionRow {
    const Set& set;
    const Repetition& repetition;
};

/// Rows that `make` adds for each session, in order of days.
template <class Row, class Make> std::vector<Row> sessionRows(std::span<const SeasonReport> reports, Make make)
{
    std::vector<Row> rows;
    for (const auto& report : reports)
        for (const auto& session : report.sessions)
            make(rows, report, session);
    return rows;
}

DescribedTable sessions(std::span<const SeasonReport> reports)
{
    using Row = SessionRow;
    const auto rows = sessionRows<Row>(reports, [](auto& out, const auto& report, const auto& session) {
        out.push_back({report, session});
    });
    return describe<Row>(
        "sessions.csv",
        {{"session_id", "", "session", [](const Row& row) { return identifierText(row.session.id); }},
         {"season_id", "", "season, as in seasons.csv",
          [](const Row& row) { return identifierText(row.report.season); }},
         {"athlete_id", "", "athlete, as in athletes.csv",
          [](const Row& row) { return identifierText(row.report.athlete.id); }},
         {"training_day", "ISO 8601 date", "the day the session counts for",
          [](const Row& row) { return dateText(row.session.day); }},
         {"started", "ISO 8601 time", "start, local time with offset",
          [](const Row& row) { return momentText(row.session.started); }},
         {"kind", "", "strength, track or test", [](const Row& row) { return guardedText(row.session.kind); }},
         {"phase", "", "phase of the season", [](const Row& row) { return guardedText(row.session.phase); }},
         {"effort", "1", "effort of the session, 1 to 10",
          [](const Row& row) { return numberCell(row.session.effort); }},
         {"note", "", "note", [](const Row& row) { return guardedText(row.session.note); }}},
        rows);
}

struct WellnessRow {
    const SeasonReport& report;
    const Wellness& wellness;
};

DescribedTable wellness(std::span<const SeasonReport> reports)
{
    using Row = WellnessRow;
    std::vector<Row> rows;
    for (const auto& report : reports)
        for (const auto& entry : report.wellness)
            rows.push_back({report, entry});
    return describe<Row>(
        "wellness.csv",
        {{"season_id", "", "season, as in seasons.csv",
          [](const Row& row) { return identifierText(row.report.season); }},
         {"athlete_id", "", "athlete, as in athletes.csv",
          [](const Row& row) { return identifierText(row.report.athlete.id); }},
         {"day", "ISO 8601 date", "training day", [](const Row& row) { return dateText(row.wellness.day); }},
         {"asked", "ISO 8601 time", "time of entry, local with offset",
          [](const Row& row) { return momentText(row.wellness.asked); }},
         {"sleep_h", "h", "sleep of the night before",
          [](const Row& row) { return numberCell(row.wellness.sleepHours); }},
         {"soreness", "1", "soreness, 0 to 10", [](const Row& row) { return numberCell(row.wellness.soreness); }},
         {"pain", "1", "pain, 0 to 10", [](const Row& row) { return numberCell(row.wellness.pain); }},
         {"pain_where", "", "place of the pain", [](const Row& row) { return guardedText(row.wellness.painWhere); }},
         {"body_mass_kg", "kg", "body mass", [](const Row& row) { return numberCell(row.wellness.bodyMassKg); }},
         {"note", "", "note", [](const Row& row) { return guardedText(row.wellness.note); }}},
        rows);
}

DescribedTable sets(std::span<const SeasonReport> reports)
{
    using Row = SetRow;
    const auto rows = sessionRows<Row>(reports, [](auto& out, const auto&, const auto& session) {
        for (const auto& set : session.sets)
            out.push_back({session, set});
    });
    return describe<Row>(
        "sets.csv",
        {{"set_id", "", "set", [](const Row& row) { return identifierText(row.set.id); }},
         {"session_id", "", "session, as in sessions.csv",
          [](const Row& row) { return identifierText(row.session.id); }},
         {"number", "1", "place of the set in the session, from 1",
          [](const Row& row) { return integerText(row.set.number); }},
         {"lift", "", "key of the lift", [](const Row& row) { return guardedText(row.set.lift); }},
         {"lift_name", "", "name of the lift", [](const Row& row) { return guardedText(row.set.name); }},
         {"ladder", "", "ladder; empty for a lift outside the ladders",
          [](const Row& row) { return guardedText(row.set.ladder); }},
         {"rung", "", "rung; empty likewise", [](const Row& row) { return guardedText(row.set.rung); }},
         {"side", "", "both, left or right", [](const Row& row) { return sideCell(row.set.side); }},
         {"load_kg", "kg", "load on the bar, bar included", [](const Row& row) { return numberCell(row.set.loadKg); }},
         {"repetitions_planned", "1", "repetitions planned",
          [](const Row& row) { return integerText(row.set.repetitionsPlanned); }},
         {"repetitions_done", "1", "repetitions done",
          [](const Row& row) { return integerText(row.set.repetitionsDone); }},
         {"kind", "", "warm-up, probe, work or maintenance; only a probe set is evidence",
          [](const Row& row) { return guardedText(row.set.kind); }},
         {"measured", "", "yes if a sensor measured it, no if it was typed",
          [](const Row& row) { return yesNo(row.set.measured); }},
         {"velocity_loss", "1", "share of the fastest repetition's velocity lost at the last one, 0 to 1",
          [](const Row& row) { return numberCell(row.set.velocityLoss); }},
         {"effort", "1", "effort of the set, 1 to 10", [](const Row& row) { return numberCell(row.set.effort); }},
         {"note", "", "note", [](const Row& row) { return guardedText(row.set.note); }}},
        rows);
}

struct MetricColumn {
    const char* name;
    const char* suffix;
    const char* unit;
    const char* meaning;
    Measurement Repetition::*member;
};

constexpr MetricColumn metricColumns[] = {
    {"mean_velocity", "mps", "m/s", "mean velocity of the concentric phase", &Repetition::meanVelocity},
    {"mean_propulsive_velocity", "mps", "m/s",
     "mean velocity from concentric onset to the first instant at which the bar slows by more than gravity",
     &Repetition::propulsiveVelocity},
    {"peak_velocity", "mps", "m/s", "highest velocity of the concentric phase", &Repetition::peakVelocity},
    {"time_to_peak_velocity", "s", "s", "time from concentric onset to peak velocity", &Repetition::timeToPeak},
    {"range", "m", "m", "vertical range of the concentric phase", &Repetition::range},
    {"displacement_to_peak", "m", "m", "rise from concentric onset to peak velocity", &Repetition::displacementToPeak},
    {"concentric_duration", "s", "s", "duration of the concentric phase", &Repetition::concentricTime},
    {"velocity_at_100ms", "mps", "m/s", "velocity 100 ms after concentric onset", &Repetition::velocityAt100ms},
    {"velocity_at_200ms", "mps", "m/s", "velocity 200 ms after concentric onset", &Repetition::velocityAt200ms},
    {"eccentric_peak_velocity", "mps", "m/s", "fastest downward velocity, negative",
     &Repetition::eccentricPeakVelocity},
    {"eccentric_duration", "s", "s", "duration of the eccentric phase", &Repetition::eccentricTime},
    {"reversal_time", "s", "s", "time from peak eccentric velocity to concentric onset", &Repetition::reversalTime},
};

std::vector<Column<RepetitionRow>> metricPairs()
{
    std::vector<Column<RepetitionRow>> columns;
    for (const auto& metric : metricColumns) {
        const std::string name = metric.name;
        const auto member = metric.member;
        columns.push_back({name + "_" + metric.suffix, metric.unit, metric.meaning,
                           [member](const RepetitionRow& row) { return valueCell(row.repetition.*member); }});
        columns.push_back({name + "_uncertainty_" + metric.suffix, metric.unit,
                           "standard uncertainty of " + name + "_" + metric.suffix,
                           [member](const RepetitionRow& row) { return uncertaintyCell(row.repetition.*member); }});
    }
    return columns;
}

std::string flagCell(reps::Flags flags)
{
    std::string text;
    for (const auto name : reps::flagNames(flags))
        text += (text.empty() ? "" : " ") + std::string(name);
    return text;
}

DescribedTable repetitions(std::span<const SeasonReport> reports)
{
    using Row = RepetitionRow;
    const auto rows = sessionRows<Row>(reports, [](auto& out, const auto&, const auto& session) {
        for (const auto& set : session.sets)
            for (const auto& repetition : set.repetitions)
                out.push_back({set, repetition});
    });
    std::vector<Column<Row>> columns{
        {"repetition_id", "", "repetition", [](const Row& row) { return identifierText(row.repetition.id); }},
        {"set_id", "", "set, as in sets.csv", [](const Row& row) { return identifierText(row.set.id); }},
        {"number", "1", "place of the repetition in the set, from 1",
         [](const Row& row) { return integerText(row.repetition.number); }},
        {"accepted", "", "no if it was struck out or outside the range of the rung",
         [](const Row& row) { return yesNo(row.repetition.accepted); }}};
    for (auto& column : metricPairs())
        columns.push_back(std::move(column));
    columns.push_back({"flags", "",
                       "what to know before trusting it, words apart by spaces: clipped, gap, no-stillness, "
                       "short-range, bounced, two-peaked, no-gyroscope",
                       [](const Row& row) { return flagCell(row.repetition.flags); }});
    return describe<Row>("repetitions.csv", columns, rows);
}

struct ProbeRow {
    const SeasonReport& report;
    const Ladder& ladder;
    const EvidencePoint& point;
};

DescribedTable probes(std::span<const SeasonReport> reports)
{
    using Row = ProbeRow;
    std::vector<Row> rows;
    for (const auto& report : reports)
        for (const auto& ladder : report.ladders)
            for (const auto& point : ladder.evidence)
                rows.push_back({report, ladder, point});
    const auto rungOf = [](const Row& row) -> const Rung* {
        return row.point.rung < row.ladder.rungs.size() ? &row.ladder.rungs[row.point.rung] : nullptr;
    };
    return describe<Row>(
        "probes.csv",
        {{"season_id", "", "season, as in seasons.csv",
          [](const Row& row) { return identifierText(row.report.season); }},
         {"session_id", "", "session, as in sessions.csv",
          [](const Row& row) { return identifierText(row.point.session); }},
         {"day", "ISO 8601 date", "training day", [](const Row& row) { return dateText(row.point.day); }},
         {"ladder", "", "ladder", [](const Row& row) { return guardedText(row.ladder.name); }},
         {"rung", "", "rung; times of different rungs are not to be compared",
          [rungOf](const Row& row) { return rungOf(row) ? guardedText(rungOf(row)->name) : std::string(); }},
         {"side", "", "both, left or right", [](const Row& row) { return sideCell(row.point.side); }},
         {"load_kg", "kg", "probe load", [](const Row& row) { return numberCell(row.point.loadKg); }},
         {"time_s", "s", "median of the probe set: time to peak velocity, or contact time for drop jumps",
          [](const Row& row) { return valueCell(row.point.time); }},
         {"time_uncertainty_s", "s", "standard uncertainty of time_s",
          [](const Row& row) { return uncertaintyCell(row.point.time); }},
         {"velocity_mps", "m/s", "median of the probe set: mean or peak velocity, as the rung asks",
          [](const Row& row) { return valueCell(row.point.velocity); }},
         {"velocity_uncertainty_mps", "m/s", "standard uncertainty of velocity_mps",
          [](const Row& row) { return uncertaintyCell(row.point.velocity); }},
         {"target_from_s", "s", "target band of the rung, from",
          [rungOf](const Row& row) {
              return rungOf(row) && rungOf(row)->targetBand ? shortestText(rungOf(row)->targetBand->from)
                                                            : std::string();
          }},
         {"target_to_s", "s", "target band of the rung, to",
          [rungOf](const Row& row) {
              return rungOf(row) && rungOf(row)->targetBand ? shortestText(rungOf(row)->targetBand->to) : std::string();
          }}},
        rows);
}

} // namespace

std::string sideCell(Side side)
{
    switch (side) {
    case Side::Both:
        return "both";
    case Side::Left:
        return "left";
    case Side::Right:
        return "right";
    }
    return {};
}

std::vector<DescribedTable> logTables(std::span<const SeasonReport> reports)
{
    auto tables = trackTables(reports);
    tables.insert(tables.begin(),
                  {wellness(reports), sessions(reports), sets(reports), repetitions(reports), probes(reports)});
    return tables;
}

} // namespace fleetrung::report
