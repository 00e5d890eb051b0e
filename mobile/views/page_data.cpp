#include "mobile/views/page_data.hpp"

#include <algorithm>
#include <cmath>
#include <set>

#include <QCoreApplication>

#include "mobile/views/engine_words.hpp"
#include "mobile/views/season_pictures.hpp"
#include "mobile/views/season_trends.hpp"
#include "mobile/views/stair_steps.hpp"

namespace fleetrung::views
{
namespace
{

using logbook::Logbook;
using logbook::Moment;

struct PagesWords {
    Q_DECLARE_TR_FUNCTIONS(PagesWords)
};

/// Work sets of the day by ladder, and whether a recording of the lift can be watched again.
struct DaySets {
    std::vector<store::LiftSet> work;
    std::vector<store::LiftSet> probes;
    std::vector<store::LiftSet> warmUps;
    std::vector<store::LiftSet> others; ///< outside the ladders
    std::vector<logbook::SetView> all;

    [[nodiscard]] int count(const std::string& ladder, store::SetKind kind = store::SetKind::Work) const
    {
        return static_cast<int>(std::ranges::count_if(
            work, [&](const store::LiftSet& set) { return set.ladder == ladder && set.kind == kind; }));
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
        done.all.insert(done.all.end(), sets->begin(), sets->end());
        for (const auto& set : *sets)
            if (set.row.ladder.empty())
                done.others.push_back(set.row);
            else if (set.row.kind == store::SetKind::WarmUp)
                done.warmUps.push_back(set.row);
            else if (set.row.kind == store::SetKind::Work || set.row.kind == store::SetKind::Maintenance)
                done.work.push_back(set.row);
            else if (set.row.kind == store::SetKind::Probe)
                done.probes.push_back(set.row);
    }
    return done;
}

/// Of the decisions that ease, rest or forbid something; those of a step are shown with it on Ladder.
std::vector<std::string> dayCautions(const std::vector<season::Decision>& decisions)
{
    std::vector<std::string> keys;
    for (const auto& decision : decisions)
        if (decision.kind == season::DecisionKind::Ease || decision.kind == season::DecisionKind::Rest)
            for (const auto& key : decision.cautions)
                if (std::ranges::find(keys, key) == keys.end())
                    keys.push_back(key);
    return cautionTexts(keys);
}

BenchDay benchDay(const logbook::DayView& view, const DaySets& done, const std::string& athlete)
{
    const season::SeasonData& data = season::standardSeasonData();
    BenchDay day;
    day.day = view.session.day;
    day.athlete = athlete;
    day.phase = engineText(std::string(season::phaseName(view.session.phase)));
    const int week = season::weekOf(view.plan, view.session.day);
    day.week = PagesWords::tr("week %1 of %2").arg(week).arg(season::weekCount(view.plan));
    if (view.session.sprintDay && !view.session.sprintsForbidden && !view.session.lifts.empty())
        day.notes.push_back(PagesWords::tr("Sprints first, the lifts after the run.").toStdString());
    day.notes.insert(day.notes.end(), view.session.notes.begin(), view.session.notes.end());
    day.sprintsForbidden = view.session.sprintsForbidden;
    day.cautions = dayCautions(view.decisions);
    day.emptyTitle = PagesWords::tr("No lifts today");
    day.emptyText = view.session.sprintDay && !day.sprintsForbidden
                        ? PagesWords::tr("Today belongs to the track.")
                        : PagesWords::tr("Rest is part of the plan. The next lifts stand on Ladder.");
    day.emptyAction = PagesWords::tr("Go to Ladder");
    for (const auto& planned : view.session.lifts) {
        BenchLift lift;
        lift.plan = planned;
        lift.name = planned.lift;
        if (const auto* ladder = season::ladderOf(view.plan.setup, data, planned.ladder)) {
            lift.ladder = ladder->name;
            lift.rungCount = static_cast<int>(ladder->rungs.size());
            lift.oneSided = ladder->oneSided;
            if (const auto index = ladder->indexOf(planned.rung))
                lift.rungNumber = *index + 1;
            if (const auto* rung = ladder->find(planned.rung))
                lift.name = rung->name;
        }
        lift.setsDone = done.count(planned.ladder);
        for (const auto& known : view.log.maxima) // by day
            if (known.ladder == planned.ladder && known.rung == planned.rung)
                lift.maximumKg = known.loadKg;
        for (const auto& box : view.plan.setup.boxHeights)
            if (planned.boxHeight && std::abs(box.metres() - *planned.boxHeight) < 0.0005)
                lift.box = box; // as entered
        if (planned.maintenance) {
            lift.maintenanceDone = done.count(planned.ladder, store::SetKind::Maintenance);
            lift.maintenanceName = rungName(view.plan.setup, planned.ladder, planned.maintenance->rung);
            const auto* ladder = season::ladderOf(view.plan.setup, data, planned.ladder);
            if (const auto* rung = ladder ? ladder->find(planned.maintenance->rung) : nullptr)
                lift.maintenanceLift = rung->lift;
        }
        lift.probeDone = std::ranges::find(done.probes, planned.ladder, &store::LiftSet::ladder) != done.probes.end();
        day.lifts.push_back(std::move(lift));
    }
    return day;
}

/// The sets of the day with the names of their lifts, and how their rungs are judged.
std::vector<DoneSet> doneSets(const logbook::DayView& view, const DaySets& done)
{
    std::vector<DoneSet> sets;
    for (const auto& set : done.all) {
        DoneSet one{.set = set, .name = set.row.note};
        if (const auto* ladder = season::ladderOf(view.plan.setup, season::standardSeasonData(), set.row.ladder)) {
            one.name = rungName(view.plan.setup, set.row.ladder, set.row.rung);
            one.oneSided = ladder->oneSided;
        }
        for (const auto& planned : view.session.lifts)
            if (planned.ladder == set.row.ladder) {
                one.byPeakVelocity = planned.metric == season::Metric::PeakVelocity;
                one.byDropTime = planned.metric == season::Metric::DropTime;
            }
        sets.push_back(std::move(one));
    }
    return sets;
}

/// What the warm-up check says of each lift: as answered, or as it would be once two warm-up loads were lifted.
Expected<void> findChecks(const Logbook& logbook, const logbook::DayView& view, const DaySets& done, BenchDay& day)
{
    for (auto& lift : day.lifts) {
        const auto& ladder = lift.plan.ladder;
        for (const auto& answer : view.warmUpAnswers)
            if (answer.adjustment.ladder == ladder)
                lift.check = WarmUpCheckShown{answer.adjustment, answer.accepted, answer.why};
        std::set<double> loads;
        for (const auto& set : done.warmUps)
            if (set.ladder == ladder && set.loadKg > 0)
                loads.insert(set.loadKg);
        if (lift.check || loads.size() < 2)
            continue;
        auto proposed = logbook.proposedAdjustment(view.season, ladder, view.session.day);
        if (!proposed)
            return tl::unexpected(proposed.error());
        lift.check = WarmUpCheckShown{std::move(*proposed), {}, {}};
    }
    return {};
}

/// Lifts of this weekday that stand on no ladder.
std::vector<OtherLift> otherLifts(const logbook::DayView& view, const DaySets& done)
{
    std::vector<OtherLift> lifts;
    const int weekday = static_cast<int>(std::chrono::weekday{view.session.day}.iso_encoding());
    for (const auto& item : view.plan.setup.secondary) {
        if (std::ranges::find(item.days, weekday) == item.days.end())
            continue;
        OtherLift lift{item, 0, {}};
        for (const auto& set : done.others)
            if (set.note == item.name) {
                ++lift.setsDone;
                lift.lastLoadKg = set.loadKg;
            }
        lifts.push_back(std::move(lift));
    }
    return lifts;
}

/// Loads of lifts outside the ladders as last lifted. Looks back six weeks.
Expected<void> findOtherLoads(const Logbook& logbook, const Identifier& athlete, CivilDate today, BenchDay& day)
{
    if (day.others.empty())
        return {};
    const auto sessions = logbook.sessions(athlete, today - std::chrono::days{42}, today);
    if (!sessions)
        return tl::unexpected(sessions.error());
    for (auto session = sessions->rbegin(); session != sessions->rend(); ++session) {
        const auto sets = logbook.sets(session->id);
        if (!sets)
            return tl::unexpected(sets.error());
        for (auto set = sets->rbegin(); set != sets->rend(); ++set)
            for (auto& lift : day.others)
                if (!lift.lastLoadKg && set->row.ladder.empty() && set->row.note == lift.plan.name)
                    lift.lastLoadKg = set->row.loadKg;
    }
    return {};
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
    day.emptyTitle = PagesWords::tr("No season yet");
    day.emptyText = PagesWords::tr(
        "Plan a season on Ladder: it starts from the main competition and counts backwards. From then on, "
        "each day's lifts, loads and sets stand here.");
    day.emptyAction = PagesWords::tr("Plan a season on Ladder");
    return day;
}

LadderPageData ladderWithoutSeason()
{
    LadderPageData data;
    data.emptyTitle = PagesWords::tr("A season is planned backwards");
    data.emptyText =
        PagesWords::tr("Say when the main competition is and which lifts you keep for the whole season. As it comes "
                       "nearer, each lift goes down its ladder to a shorter range.");
    return data;
}

AthleteShown shownOf(const store::Athlete& athlete)
{
    return {.key = identifierText(athlete.id),
            .name = athlete.name,
            .born = athlete.born,
            .bodyMassKg = athlete.bodyMassKg,
            .statureM = athlete.statureM,
            .trainingYears = athlete.trainingYears,
            .event = athlete.event,
            .group = athlete.group,
            .guardianConsent = athlete.guardianConsent};
}

} // namespace

Expected<SquadData> squadData(const Logbook& logbook, const std::string& wanted, CivilDate today)
{
    const auto squad = logbook.squad(today);
    if (!squad)
        return tl::unexpected(squad.error());
    const auto archived = logbook.deletedAthletes();
    if (!archived)
        return tl::unexpected(archived.error());
    SquadData data;
    for (const auto& summary : *squad)
        data.athletes.push_back(shownOf(summary.athlete));
    for (const auto& athlete : *archived)
        data.archived.push_back(shownOf(athlete));
    if (!data.athletes.empty())
        data.current = data.athletes.front().key;
    if (std::ranges::find(data.athletes, wanted, &AthleteShown::key) != data.athletes.end())
        data.current = wanted;
    return data;
}

AthletePages emptyPages()
{
    AthletePages pages;
    pages.bench.emptyTitle = PagesWords::tr("Nobody trains here yet");
    pages.bench.emptyText = PagesWords::tr("Add an athlete on Squad, then plan a season on Ladder.");
    pages.bench.emptyAction = PagesWords::tr("Go to Squad");
    pages.bench.emptyLeadsToSquad = true;
    pages.ladder.emptyTitle = PagesWords::tr("No athlete, no season");
    pages.ladder.emptyText = PagesWords::tr("Add an athlete on Squad first.");
    return pages;
}

Expected<AthletePages> athletePages(Logbook& logbook, const Identifier& id, const Moment& now)
{
    const CivilDate today = now.trainingDay;
    const auto athlete = logbook.athlete(id);
    if (!athlete)
        return tl::unexpected(athlete.error());
    auto sprints = logbook.sprints(id, {}, today);
    auto jumps = logbook.jumps(id, {}, today);
    if (!sprints || !jumps)
        return tl::unexpected(!sprints ? sprints.error() : jumps.error());

    AthletePages pages;
    pages.name = QString::fromStdString(athlete->name);
    pages.runs = std::move(*sprints);
    pages.jumps = std::move(*jumps);
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
    const auto said = logbook.wellness(id, today, today);
    if (!said)
        return tl::unexpected(said.error());
    if (!said->empty())
        pages.bench.wellness = said->back();
    pages.bench.others = otherLifts(*view, *done);
    pages.done = doneSets(*view, *done);
    for (const auto& found :
         {findReplays(logbook, id, today, pages.bench), findChecks(logbook, *view, *done, pages.bench),
          findOtherLoads(logbook, id, today, pages.bench)})
        if (!found)
            return tl::unexpected(found.error());
    pages.ladder = ladderPage(*view, *report, *decisions, today);
    pages.season = SeasonShown{view->plan, view->states, today};
    pages.seasonId = season->row.id;
    auto trends = trendsPage(logbook, *season, *report, today);
    if (!trends)
        return tl::unexpected(trends.error());
    pages.trends = std::move(*trends);
    pages.trends.athlete = pages.name;
    return pages;
}

} // namespace fleetrung::views
