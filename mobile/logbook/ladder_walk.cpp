#include "mobile/logbook/ladder_walk.hpp"

#include <algorithm>
#include <map>

#include "engine/season/load.hpp"
#include "mobile/logbook/failure.hpp"

namespace fleetrung::logbook
{
namespace
{

constexpr double plateStep = 2.5; // kg, as planSession() rounds loads

season::DecisionKind kindOf(const std::string& key)
{
    using enum season::DecisionKind;
    for (const auto kind : {Step, StepBack, Ease, Rest})
        if (season::decisionKey(kind) == key)
            return kind;
    return Hold;
}

season::Decision lived(season::Decision decision, store::Answer answer, const std::string& changedTo,
                       const std::string& rung, const season::SeasonData& data)
{
    if (answer != store::Answer::Changed)
        return decision;
    const auto* ladder = season::findLadder(data.ladders, decision.ladder);
    decision.from = rung;
    decision.to = ladder != nullptr && ladder->find(changedTo) != nullptr ? changedTo : rung;
    decision.kind = season::DecisionKind::Hold;
    if (decision.to != decision.from)
        decision.kind = *ladder->indexOf(decision.to) > ladder->indexOf(decision.from).value_or(0)
                            ? season::DecisionKind::Step
                            : season::DecisionKind::StepBack;
    return decision;
}

season::Decision lived(const store::DecisionOutline& row, const std::string& rung, const season::SeasonData& data)
{
    season::Decision decision;
    decision.day = row.day;
    decision.ladder = row.ladder;
    decision.kind = kindOf(row.action);
    decision.from = row.rungFrom;
    decision.to = row.rungTo;
    return lived(std::move(decision), row.answer, row.changedTo, rung, data);
}

/// Of several decisions on one ladder and day the last counts.
std::vector<store::DecisionOutline> lastOfEachDay(std::vector<store::DecisionOutline> all)
{
    std::map<std::pair<CivilDate, std::string>, store::DecisionOutline> last;
    for (auto& row : all) {
        const std::pair place(row.day, row.ladder);
        last[place] = std::move(row);
    }
    std::vector<store::DecisionOutline> kept;
    for (auto& [place, row] : last)
        kept.push_back(std::move(row));
    return kept;
}

} // namespace

season::Decision asFollowed(const DecisionRecord& record, const season::SeasonData& data)
{
    return lived(record.decision, record.answer, record.changedTo, record.decision.from, data);
}

std::vector<season::Decision> followedOn(std::span<const DecisionRecord> decisions, CivilDate day,
                                         const season::SeasonData& data)
{
    std::vector<season::Decision> found;
    for (const auto& record : decisions)
        if (record.decision.day == day)
            found.push_back(asFollowed(record, data));
    return found;
}

Expected<LadderWalk> LadderWalk::of(Facts facts)
{
    LadderWalk walk;
    walk.record_ = std::move(facts.record);
    if (!walk.setup().ownLadders.empty())
        walk.own_ = season::dataFor(walk.setup());
    auto plan = season::planSeason(walk.record_.setup, walk.data());
    if (!plan)
        return failure(plan);
    walk.firstPlan_ = std::move(*plan);
    walk.decisions_ = lastOfEachDay(std::move(facts.decisions));
    return walk;
}

Expected<LadderWalk> LadderWalk::read(const Logbook& logbook, SeasonRecord record,
                                      std::span<const SessionView> training)
{
    auto decisions = logbook.rows().list<store::DecisionOutline>({.season = record.row.id});
    if (!decisions)
        return failure(decisions);
    auto walk = of({std::move(record), std::move(*decisions)});
    if (walk)
        for (const auto& session : training)
            for (const auto& set : session.sets)
                walk->addLoad(set.row, session.row.begun.trainingDay);
    return walk;
}

Expected<LadderWalk> LadderWalk::read(const Logbook& logbook, const Identifier& season)
{
    auto record = logbook.season(season);
    if (!record)
        return failure(record);
    const store::Filter filter{.athlete = record->row.athlete, .from = record->row.start, .to = record->row.finish};
    const auto sessions = logbook.rows().list<store::Session>(filter);
    if (!sessions)
        return failure(sessions);
    std::map<Identifier, CivilDate> days;
    for (const auto& session : *sessions)
        days[session.id] = session.begun.trainingDay;
    const auto sets = logbook.rows().list<store::LiftSet>(filter);
    if (!sets)
        return failure(sets);
    auto walk = read(logbook, std::move(*record), {});
    if (walk)
        for (const auto& set : *sets)
            walk->addLoad(set, days[set.session]);
    return walk;
}

void LadderWalk::addLoad(const store::LiftSet& set, CivilDate day)
{
    if (!set.ladder.empty() && set.loadKg > 0)
        loads_.push_back({day, set.ladder, set.rung, set.kind, set.loadKg, isEased(set.ladder, day)});
}

std::vector<season::LadderState> LadderWalk::walk(CivilDate decidedBefore, CivilDate liftedBefore) const
{
    auto states = season::startStates(firstPlan_);
    for (auto& state : states) {
        for (const auto& row : decisions_)
            if (row.ladder == state.ladder && row.day < decidedBefore) {
                const auto decision = lived(row, state.rung(), data());
                state = season::afterDecision(std::move(state), decision);
            }
        findLoads(state, liftedBefore);
    }
    return states;
}

void LadderWalk::findLoads(season::LadderState& state, CivilDate before) const
{
    state.probeLoadKg.reset();
    state.workLoadKg.reset();
    for (const auto& done : loads_) {
        if (done.ladder != state.ladder || done.day >= before)
            continue;
        const bool thisStay = done.rung == state.rung() && done.day >= state.since();
        if (done.kind == store::SetKind::Probe && thisStay && !state.probeLoadKg)
            state.probeLoadKg = done.loadKg;
        if (done.kind != store::SetKind::Work || (state.workLoadKg && done.eased))
            continue;
        // A load that was rounded to plates is the load that was planned: else each rounding would be carried on.
        const double load = carried(done.loadKg, done.rung, state, before);
        if (!state.workLoadKg || std::abs(load - *state.workLoadKg) > plateStep - 1e-9)
            state.workLoadKg = load;
    }
}

bool LadderWalk::isEased(const std::string& ladder, CivilDate day) const
{
    const auto rest = season::decisionKey(season::DecisionKind::Rest);
    const auto found = std::ranges::lower_bound(decisions_, std::pair(day, ladder), {},
                                                [](const auto& row) { return std::pair(row.day, row.ladder); });
    return found != decisions_.end() && found->day == day && found->ladder == ladder &&
           (found->loadFactor < 1 || found->action == rest);
}

/// What was lifted on another rung says what may be lifted on this one, by the ladder's own ratios.
double LadderWalk::carried(double loadKg, const std::string& from, const season::LadderState& to, CivilDate day) const
{
    const auto* ladder = season::findLadder(data().ladders, to.ladder);
    const auto begin = ladder == nullptr ? std::nullopt : ladder->indexOf(from);
    const auto end = ladder == nullptr ? std::nullopt : ladder->indexOf(to.rung());
    if (!begin || !end)
        return loadKg;
    const auto rung = [&](int index) -> const season::Rung& { return ladder->rungs[static_cast<std::size_t>(index)]; };
    for (int i = *begin + 1; i <= *end; ++i)
        loadKg = season::firstLoadOn(rung(i), loadKg, {}, {}, setup().athlete, day, data().rules).maximumKg;
    for (int i = *begin; i > *end; --i)
        loadKg /= std::max(1.0, rung(i).loadRatio); // never heavier on the way back
    return loadKg;
}

} // namespace fleetrung::logbook
