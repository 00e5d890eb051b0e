#include "mobile/views/page_data.hpp"

#include <algorithm>

#include <QCoreApplication>

#include "mobile/views/season_pictures.hpp"

namespace fleetrung::views
{
namespace
{

using logbook::Logbook;
using logbook::Moment;

QString translated(const char* text)
{
    return QCoreApplication::translate("Pages", text);
}

std::vector<RunShown> runsOf(const std::vector<store::Sprint>& sprints)
{
    std::vector<RunShown> runs;
    for (const auto& sprint : sprints)
        runs.push_back({.key = identifierText(sprint.id),
                        .day = sprint.run.trainingDay,
                        .distance = sprint.distance,
                        .time = sprint.time,
                        .start = sprint.start,
                        .runIn = sprint.runIn,
                        .timing = sprint.timing,
                        .surface = sprint.surface,
                        .windMps = sprint.windMps,
                        .competition = sprint.competition});
    return runs;
}

std::vector<JumpShown> jumpsOf(const std::vector<store::Jump>& jumps)
{
    std::vector<JumpShown> shown;
    for (const auto& jump : jumps)
        shown.push_back({.key = identifierText(jump.id),
                         .day = jump.done.trainingDay,
                         .kind = jump.kind,
                         .boxHeight = jump.boxHeightM,
                         .contact = jump.contact.value,
                         .flight = jump.flight.value,
                         .height = jump.height.value,
                         .distance = jump.distance.value});
    return shown;
}

/// Work sets of the day by ladder, and whether a recording of the lift can be watched again.
struct DaySets {
    std::vector<store::LiftSet> work;
    std::vector<store::LiftSet> probes;

    [[nodiscard]] int count(const std::string& ladder) const
    {
        return static_cast<int>(std::ranges::count(work, ladder, &store::LiftSet::ladder));
    }
};

Expected<DaySets> setsOn(const Logbook& logbook, const Identifier& athlete, CivilDate day)
{
    DaySets done;
    const auto sessions = logbook.sessions(athlete, day, day);
    if (!sessions)
        return tl::unexpected(sessions.error());
    for (const auto& session : *sessions) {
        const auto sets = logbook.sets(session.id);
        if (!sets)
            return tl::unexpected(sets.error());
        for (const auto& set : *sets)
            if (set.row.kind == store::SetKind::Work || set.row.kind == store::SetKind::Maintenance)
                done.work.push_back(set.row);
            else if (set.row.kind == store::SetKind::Probe)
                done.probes.push_back(set.row);
    }
    return done;
}

BenchDay benchDay(const logbook::DayView& view, const DaySets& done, const std::string& athlete)
{
    const season::SeasonData& data = season::standardSeasonData();
    BenchDay day;
    day.day = view.session.day;
    day.athlete = athlete;
    day.phase = QString::fromUtf8(season::phaseName(view.session.phase).data());
    const int week = season::weekOf(view.plan, view.session.day);
    day.week = translated("week %1 of %2").arg(week).arg(season::weekCount(view.plan));
    QStringList notes;
    for (const auto& note : view.session.notes)
        notes += QString::fromStdString(note);
    if (view.session.sprintDay && !view.session.lifts.empty())
        notes.prepend(translated("Sprints first, the lifts after the run."));
    day.note = notes.join(QStringLiteral("\n"));
    day.emptyTitle = translated("No lifts today");
    day.emptyText = view.session.sprintDay ? translated("Today belongs to the track.")
                                           : translated("Rest is part of the plan. The next lifts stand on Ladder.");
    for (const auto& planned : view.session.lifts) {
        BenchLift lift;
        lift.plan = planned;
        lift.name = planned.lift;
        if (const auto* ladder = season::findLadder(data.ladders, planned.ladder)) {
            lift.ladder = ladder->name;
            lift.rungCount = static_cast<int>(ladder->rungs.size());
            lift.oneSided = ladder->oneSided;
            if (const auto index = ladder->indexOf(planned.rung))
                lift.rungNumber = *index + 1;
            if (const auto* rung = ladder->find(planned.rung))
                lift.name = rung->name;
        }
        lift.setsDone = done.count(planned.ladder);
        lift.probeDone = std::ranges::find(done.probes, planned.ladder, &store::LiftSet::ladder) != done.probes.end();
        day.lifts.push_back(std::move(lift));
    }
    return day;
}

/// The latest measured set of each lift, so that it can be watched again. Looks back six weeks.
Expected<void> findReplays(const Logbook& logbook, const Identifier& athlete, CivilDate today, BenchDay& day)
{
    if (day.lifts.empty())
        return {};
    const auto sessions = logbook.sessions(athlete, today - std::chrono::days{42}, today);
    if (!sessions)
        return tl::unexpected(sessions.error());
    for (auto session = sessions->rbegin(); session != sessions->rend(); ++session) {
        if (std::ranges::all_of(day.lifts, [](const BenchLift& lift) { return lift.replay.has_value(); }))
            break;
        const auto sets = logbook.sets(session->id);
        if (!sets)
            return tl::unexpected(sets.error());
        for (auto set = sets->rbegin(); set != sets->rend(); ++set)
            for (auto& lift : day.lifts)
                if (!lift.replay && set->measured && set->row.ladder == lift.plan.ladder &&
                    set->row.rung == lift.plan.rung)
                    lift.replay = set->row.id;
    }
    return {};
}

season::AthleteFacts factsOf(const store::Athlete& athlete)
{
    season::AthleteFacts facts;
    facts.name = athlete.name;
    facts.birthDate = athlete.born;
    facts.trainingYears = athlete.trainingYears;
    facts.bodyMassKg = athlete.bodyMassKg;
    facts.guardianConsent = athlete.guardianConsent;
    return facts;
}

BenchDay benchWithoutSeason(const std::string& athlete)
{
    BenchDay day;
    day.athlete = athlete;
    day.emptyTitle = translated("No season yet");
    day.emptyText =
        translated("Plan a season on Ladder: it starts from the main race and counts backwards. From then on, "
                   "each day's lifts, loads and sets stand here.");
    return day;
}

LadderPageData ladderWithoutSeason()
{
    LadderPageData data;
    data.emptyTitle = translated("A season is planned backwards");
    data.emptyText =
        translated("Say when the main race is and which lifts you keep for the whole season. As the race comes "
                   "nearer, each lift goes down its ladder to a shorter range.");
    return data;
}

} // namespace

Expected<SquadData> squadData(const Logbook& logbook, const std::string& wanted, CivilDate today)
{
    const auto squad = logbook.squad(today);
    if (!squad)
        return tl::unexpected(squad.error());
    SquadData data;
    for (const auto& summary : *squad) {
        const store::Athlete& athlete = summary.athlete;
        data.athletes.push_back({.key = identifierText(athlete.id),
                                 .name = athlete.name,
                                 .born = athlete.born,
                                 .bodyMassKg = athlete.bodyMassKg,
                                 .statureM = athlete.statureM,
                                 .trainingYears = athlete.trainingYears,
                                 .event = athlete.event,
                                 .guardianConsent = athlete.guardianConsent});
    }
    if (!data.athletes.empty())
        data.current = data.athletes.front().key;
    if (std::ranges::find(data.athletes, wanted, &AthleteShown::key) != data.athletes.end())
        data.current = wanted;
    return data;
}

AthletePages emptyPages()
{
    AthletePages pages;
    pages.bench.emptyTitle = translated("Nobody trains here yet");
    pages.bench.emptyText = translated("Add an athlete on Squad, then plan a season on Ladder.");
    pages.ladder.emptyTitle = translated("No athlete, no season");
    pages.ladder.emptyText = translated("Add an athlete on Squad first.");
    return pages;
}

Expected<AthletePages> athletePages(Logbook& logbook, const Identifier& id, const Moment& now)
{
    const CivilDate today = now.trainingDay;
    const auto athlete = logbook.athlete(id);
    if (!athlete)
        return tl::unexpected(athlete.error());
    const auto sprints = logbook.sprints(id, {}, today);
    const auto jumps = logbook.jumps(id, {}, today);
    if (!sprints || !jumps)
        return tl::unexpected(!sprints ? sprints.error() : jumps.error());

    AthletePages pages;
    pages.name = QString::fromStdString(athlete->name);
    pages.runs = runsOf(*sprints);
    pages.jumps = jumpsOf(*jumps);
    pages.trends.athlete = pages.name;

    const auto season = logbook.seasonOn(id, today);
    if (!season && season.error().code != Code::NotFound)
        return tl::unexpected(season.error());
    if (!season) {
        pages.bench = benchWithoutSeason(athlete->name);
        pages.ladder = ladderWithoutSeason();
        pages.ladder.canPlan = true;
        pages.ladder.today = today;
        pages.ladder.athlete = factsOf(*athlete);
        return pages;
    }

    auto view = logbook.day(season->row.id, today);
    if (view && view->decisions.empty() && season::isLiftingDay(view->plan, today)) {
        if (const auto decided = logbook.decide(season->row.id, now); !decided)
            return tl::unexpected(decided.error());
        view = logbook.day(season->row.id, today);
    }
    const auto report = logbook.seasonReport(id, season->row.id, today);
    const auto decisions = logbook.decisions(season->row.id);
    const auto done = setsOn(logbook, id, today);
    if (!view || !report || !decisions || !done)
        return tl::unexpected(!view        ? view.error()
                              : !report    ? report.error()
                              : !decisions ? decisions.error()
                                           : done.error());
    pages.bench = benchDay(*view, *done, athlete->name);
    if (const auto found = findReplays(logbook, id, today, pages.bench); !found)
        return tl::unexpected(found.error());
    pages.ladder = ladderPage(*view, *report, *decisions, today);
    pages.trends = trendsPage(*report, today);
    pages.trends.athlete = pages.name;
    return pages;
}

} // namespace fleetrung::views
