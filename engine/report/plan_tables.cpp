// Tables of who, when, what was planned and what was decided.
#include <string>
#include <vector>

#include "engine/report/columns.hpp"

namespace fleetrung::report
{
namespace
{

/// A row is the report it stands in and the thing itself.
template <class Thing> struct Of {
    const SeasonReport& report;
    const Thing& thing;
};

template <class Thing, class Member>
std::vector<Of<Thing>> gather(std::span<const SeasonReport> reports, Member SeasonReport::*member)
{
    std::vector<Of<Thing>> rows;
    for (const auto& report : reports)
        for (const auto& thing : report.*member)
            rows.push_back({report, thing});
    return rows;
}

template <class Row> std::vector<Column<Row>> seasonKey(std::vector<Column<Row>> own)
{
    std::vector<Column<Row>> columns{{"season_id", "", "season, as in seasons.csv",
                                      [](const Row& row) { return identifierText(row.report.season); }}};
    columns.insert(columns.end(), own.begin(), own.end());
    return columns;
}

DescribedTable athletes(std::span<const SeasonReport> reports)
{
    std::vector<Athlete> rows;
    for (const auto& report : reports) {
        bool known = false;
        for (const auto& row : rows)
            known = known || row.id == report.athlete.id;
        if (!known)
            rows.push_back(report.athlete);
    }
    using Row = Athlete;
    return describe<Row>(
        "athletes.csv",
        {{"athlete_id", "", "athlete", [](const Row& row) { return identifierText(row.id); }},
         {"name", "", "name", [](const Row& row) { return guardedText(row.name); }},
         {"born", "ISO 8601 date", "date of birth", [](const Row& row) { return row.born ? dateText(*row.born) : ""; }},
         {"event", "", "main event", [](const Row& row) { return guardedText(row.event); }},
         {"body_mass_kg", "kg", "body mass, latest known", [](const Row& row) { return numberCell(row.bodyMassKg); }},
         {"stature_m", "m", "standing height", [](const Row& row) { return numberCell(row.statureM); }}},
        rows);
}

struct SeasonRow {
    const SeasonReport& report;
};

DescribedTable seasons(std::span<const SeasonReport> reports)
{
    using Row = SeasonRow;
    std::vector<Row> rows;
    for (const auto& report : reports)
        rows.push_back({report});
    return describe<Row>(
        "seasons.csv",
        {{"season_id", "", "season", [](const Row& row) { return identifierText(row.report.season); }},
         {"athlete_id", "", "athlete, as in athletes.csv",
          [](const Row& row) { return identifierText(row.report.athlete.id); }},
         {"name", "", "name of the season", [](const Row& row) { return guardedText(row.report.seasonName); }},
         {"first_day", "ISO 8601 date", "first day; week 1 begins here",
          [](const Row& row) { return dateText(row.report.first); }},
         {"last_day", "ISO 8601 date", "last day planned", [](const Row& row) { return dateText(row.report.last); }},
         {"known_up_to", "ISO 8601 date", "last day these tables know of",
          [](const Row& row) { return dateText(row.report.upTo); }}},
        rows);
}

DescribedTable phases(std::span<const SeasonReport> reports)
{
    using Row = Of<Phase>;
    return describe<Row>(
        "phases.csv",
        seasonKey<Row>({{"phase", "", "name of the phase", [](const Row& row) { return guardedText(row.thing.name); }},
                        {"first_day", "ISO 8601 date", "first day of the phase",
                         [](const Row& row) { return dateText(row.thing.first); }},
                        {"last_day", "ISO 8601 date", "last day of the phase",
                         [](const Row& row) { return dateText(row.thing.last); }}}),
        gather<Phase>(reports, &SeasonReport::phases));
}

DescribedTable competitions(std::span<const SeasonReport> reports)
{
    using Row = Of<Competition>;
    return describe<Row>(
        "competitions.csv",
        seasonKey<Row>(
            {{"day", "ISO 8601 date", "day of the competition", [](const Row& row) { return dateText(row.thing.day); }},
             {"name", "", "name of the competition", [](const Row& row) { return guardedText(row.thing.name); }},
             {"grade", "", "A, B or C: how much training gives way to it",
              [](const Row& row) { return guardedText(row.thing.grade); }},
             {"main", "", "yes for a main competition, from which the phases are laid backwards",
              [](const Row& row) { return yesNo(row.thing.main); }},
             {"result", "", "result in the athlete's own words",
              [](const Row& row) { return guardedText(row.thing.result); }}}),
        gather<Competition>(reports, &SeasonReport::competitions));
}

std::string stateCell(PlanState state)
{
    switch (state) {
    case PlanState::Ahead:
        return "ahead";
    case PlanState::Done:
        return "done";
    case PlanState::Changed:
        return "changed";
    case PlanState::Lost:
        return "lost";
    }
    return {};
}

DescribedTable plan(std::span<const SeasonReport> reports)
{
    using Row = Of<PlanLine>;
    return describe<Row>(
        "plan.csv",
        seasonKey<Row>(
            {{"day", "ISO 8601 date", "training day", [](const Row& row) { return dateText(row.thing.day); }},
             {"phase", "", "phase of the season", [](const Row& row) { return guardedText(row.thing.phase); }},
             {"ladder", "", "ladder", [](const Row& row) { return guardedText(row.thing.ladder); }},
             {"rung", "", "rung planned", [](const Row& row) { return guardedText(row.thing.rung); }},
             {"sets", "1", "sets planned", [](const Row& row) { return integerText(row.thing.sets); }},
             {"repetitions", "1", "repetitions planned in each set",
              [](const Row& row) { return integerText(row.thing.repetitions); }},
             {"load_kg", "kg", "load planned", [](const Row& row) { return numberCell(row.thing.loadKg); }},
             {"state", "", "ahead, done, changed or lost", [](const Row& row) { return stateCell(row.thing.state); }},
             {"sets_done", "1", "sets done", [](const Row& row) { return integerText(row.thing.setsDone); }},
             {"why", "", "why it was changed or lost", [](const Row& row) { return guardedText(row.thing.why); }}}),
        gather<PlanLine>(reports, &SeasonReport::plan));
}

DescribedTable lostDays(std::span<const SeasonReport> reports)
{
    using Row = Of<LostDay>;
    return describe<Row>(
        "lost_days.csv",
        seasonKey<Row>({{"day", "ISO 8601 date", "training day that was lost",
                         [](const Row& row) { return dateText(row.thing.day); }},
                        {"why", "", "reason", [](const Row& row) { return guardedText(row.thing.why); }}}),
        gather<LostDay>(reports, &SeasonReport::lostDays));
}

std::string answerCell(Answer answer)
{
    switch (answer) {
    case Answer::Open:
        return "open";
    case Answer::Followed:
        return "followed";
    case Answer::Changed:
        return "changed";
    }
    return {};
}

DescribedTable decisions(std::span<const SeasonReport> reports)
{
    using Row = Of<Decision>;
    return describe<Row>(
        "decisions.csv",
        seasonKey<Row>(
            {{"decision_id", "", "decision", [](const Row& row) { return identifierText(row.thing.id); }},
             {"day", "ISO 8601 date", "day it was taken", [](const Row& row) { return dateText(row.thing.day); }},
             {"ladder", "", "ladder; empty for the whole day",
              [](const Row& row) { return guardedText(row.thing.ladder); }},
             {"kind", "", "step, must step, hold, step back, ease or rest",
              [](const Row& row) { return guardedText(row.thing.kind); }},
             {"rule", "", "rule it follows from", [](const Row& row) { return guardedText(row.thing.rule); }},
             {"from_rung", "", "rung it was taken on", [](const Row& row) { return guardedText(row.thing.from); }},
             {"to_rung", "", "rung it leads to", [](const Row& row) { return guardedText(row.thing.to); }},
             {"reason", "", "reason in plain words", [](const Row& row) { return guardedText(row.thing.reason); }},
             {"answer", "", "open, followed or changed: what the athlete did with it",
              [](const Row& row) { return answerCell(row.thing.answer); }},
             {"changed_to", "", "what was done instead",
              [](const Row& row) { return guardedText(row.thing.changedTo); }},
             {"why", "", "why it was not followed", [](const Row& row) { return guardedText(row.thing.why); }}}),
        gather<Decision>(reports, &SeasonReport::decisions));
}

struct EvidenceRow {
    const Decision& decision;
    const Evidence& evidence;
};

DescribedTable evidence(std::span<const SeasonReport> reports)
{
    using Row = EvidenceRow;
    std::vector<Row> rows;
    for (const auto& report : reports)
        for (const auto& decision : report.decisions)
            for (const auto& number : decision.evidence)
                rows.push_back({decision, number});
    return describe<Row>(
        "evidence.csv",
        {{"decision_id", "", "decision, as in decisions.csv",
          [](const Row& row) { return identifierText(row.decision.id); }},
         {"name", "", "what the number is", [](const Row& row) { return guardedText(row.evidence.name); }},
         {"value", "see unit", "the number, as it was when the decision was taken",
          [](const Row& row) { return shortestText(row.evidence.value); }},
         {"uncertainty", "see unit", "standard uncertainty of the number",
          [](const Row& row) { return numberCell(row.evidence.uncertainty); }},
         {"unit", "", "unit of value and uncertainty; empty for counts",
          [](const Row& row) { return guardedText(row.evidence.unit); }},
         {"allowed", "", "limit it was held against", [](const Row& row) { return guardedText(row.evidence.allowed); }},
         {"met", "", "yes or no; empty where nothing was asked of it",
          [](const Row& row) { return row.evidence.met ? yesNo(*row.evidence.met) : std::string(); }}},
        rows);
}

} // namespace

std::vector<DescribedTable> planTables(std::span<const SeasonReport> reports)
{
    return {athletes(reports), seasons(reports),  phases(reports),    competitions(reports),
            plan(reports),     lostDays(reports), decisions(reports), evidence(reports)};
}

} // namespace fleetrung::report
