#include <algorithm>
#include <map>

#include "engine/base/numbers.hpp"
#include "mobile/logbook/day_input.hpp"
#include "mobile/logbook/failure.hpp"
#include "mobile/logbook/report_parts.hpp"
#include "mobile/logbook/training.hpp"

namespace fleetrung::logbook
{
namespace
{

report::Athlete reportAthlete(const store::Athlete& row)
{
    return {row.id, row.name, row.born, row.event, row.bodyMassKg, row.statureM};
}

std::string gradeOf(season::Priority priority)
{
    constexpr std::array<const char*, 3> grades{"A", "B", "C"};
    return grades.at(static_cast<std::size_t>(priority));
}

/// Times run and distances jumped at the competition, as its result.
std::string resultOf(const season::Competition& competition, const report::SeasonReport& report)
{
    std::string result;
    const auto add = [&result](const std::string& text) { result += (result.empty() ? "" : ", ") + text; };
    for (const auto& sprint : report.sprints)
        if (sprint.competition && sprint.day == competition.date)
            add(sprint.test + " " + fixedText(sprint.timeS, 2) + " s");
    std::map<std::string, double> farthest;
    for (const auto& jump : report.jumps)
        if ((jump.kind == "long jump" || jump.kind == "triple jump") && jump.day == competition.date && jump.distanceM)
            farthest[jump.kind] = std::max(farthest[jump.kind], *jump.distanceM);
    for (const auto& [kind, distance] : farthest)
        add(kind + " " + fixedText(distance, 2) + " m");
    return result;
}

template <class Row, class Make> auto mapped(const std::vector<Row>& rows, Make make)
{
    std::vector<decltype(make(rows.front()))> made;
    for (const auto& row : rows)
        made.push_back(make(row));
    return made;
}

/// Everything the report is made from, read once.
struct Sources {
    store::Athlete athlete;
    std::vector<SessionView> training;
    std::vector<store::Sprint> sprints;
    std::vector<store::TrackWork> work;
    std::vector<store::Jump> jumps;
    TrackLog track;
    std::vector<store::Wellness> wellness;
    std::vector<store::LostDay> lostDays;
    std::vector<DecisionRecord> decisions;
};

Expected<Sources> readSources(const Logbook& logbook, const Identifier& athlete, const store::Season& season,
                              CivilDate upTo)
{
    Sources sources;
    const auto keep = [](auto& into) { return [&into](auto&& found) { into = std::forward<decltype(found)>(found); }; };
    return logbook.athlete(athlete)
        .map(keep(sources.athlete))
        .and_then([&] {
            return readTraining(logbook.rows(), {.athlete = athlete, .from = season.start, .to = upTo})
                .map(keep(sources.training));
        })
        .and_then([&] { return logbook.sprints(athlete, season.start, upTo).map(keep(sources.sprints)); })
        .and_then([&] { return logbook.trackWork(athlete, season.start, upTo).map(keep(sources.work)); })
        .and_then([&] { return readTrackLog(logbook, athlete, season.start, upTo).map(keep(sources.track)); })
        .and_then([&] { return logbook.jumps(athlete, season.start, upTo).map(keep(sources.jumps)); })
        .and_then([&] { return logbook.wellness(athlete, season.start, upTo).map(keep(sources.wellness)); })
        .and_then([&] { return logbook.lostDays(athlete, season.start, upTo).map(keep(sources.lostDays)); })
        .and_then([&] { return logbook.decisions(season.id).map(keep(sources.decisions)); })
        .map([&] {
            std::erase_if(sources.decisions, [&](const auto& record) { return record.decision.day > upTo; });
            return std::move(sources);
        });
}

void addPlan(report::SeasonReport& report, const season::SeasonPlan& plan)
{
    for (const auto& phase : plan.phases)
        report.phases.push_back({std::string(season::phaseName(phase.kind)), phase.from, phase.to});
    for (const auto& competition : plan.setup.competitions)
        report.competitions.push_back({competition.date, competition.name, gradeOf(competition.priority),
                                       competition.main, resultOf(competition, report)});
    report.cautions = plan.notes;
    if (!plan.setup.liftsPerSessionReason.empty())
        report.cautions.push_back("More lifts a session than its minutes allow, because: " +
                                  plan.setup.liftsPerSessionReason);
}

} // namespace

Expected<report::SeasonReport> Logbook::seasonReport(const Identifier& athlete, const Identifier& season,
                                                     CivilDate today) const
{
    const auto walk = LadderWalk::read(*this, season);
    if (!walk)
        return failure(walk);
    const auto& row = walk->record().row;
    if (row.athlete != athlete)
        return fail(Code::InvalidArgument, "season", "is another athlete's; choose one of this athlete's seasons");
    const auto upTo = std::min(today, row.finish);
    const auto sources = readSources(*this, athlete, row, upTo);
    if (!sources)
        return failure(sources);
    const auto first = season::planSeason(walk->setup(), walk->data());
    if (!first)
        return failure(first);
    const auto states = walk->on(upTo);
    const auto plan = season::replanSeason(walk->setup(), states, upTo, walk->data());
    if (!plan)
        return failure(plan);

    report::SeasonReport report;
    report.athlete = reportAthlete(sources->athlete);
    report.season = season;
    report.seasonName = row.name;
    report.first = row.start;
    report.last = row.finish;
    report.upTo = upTo;
    report.sprints =
        mapped(sources->sprints, [&](const auto& run) { return reportSprint(run, sources->track, sources->athlete); });
    report.trackWork = mapped(sources->work, [&](const auto& work) { return reportWork(work, sources->track); });
    report.trackWeeks = reportWeeks(sources->track, walk->setup().sprintDays, row.start, upTo);
    report.jumps = mapped(sources->jumps, reportJump);
    report.wellness = mapped(sources->wellness, reportWellness);
    report.decisions = mapped(sources->decisions, [&](const auto& one) { return reportDecision(one, walk->data()); });
    report.sessions =
        mapped(sources->training, [&](const auto& session) { return reportSession(session, *plan, walk->data()); });
    report.lostDays = mapped(sources->lostDays, [](const auto& lost) { return report::LostDay{lost.day, lost.why}; });
    const auto evidence = evidenceOf(*walk, sources->training, sources->jumps, upTo + std::chrono::days{1});
    const auto loads = loadsOf(sources->training);
    for (const auto& ladder : first->ladders)
        for (const auto& state : states)
            if (state.ladder == ladder.ladder)
                report.ladders.push_back(reportLadder(ladder, state, evidence, loads, upTo, walk->data()));
    const SeasonHistory history{sources->training, sources->jumps, sources->sprints};
    const auto log = trainingLogOf(*walk, history, evidence, upTo + std::chrono::days{1});
    report.plan = planLines(*walk, *plan, sources->training, sources->lostDays, sources->decisions, log, upTo);
    addPlan(report, *plan);
    return report;
}

} // namespace fleetrung::logbook
