#include "mobile/logbook/ladder_walk.hpp"

#include <algorithm>

#include <map>

#include "engine/season/load.hpp"
#include "mobile/logbook/failure.hpp"

namespace fleetrung::logbook
{
namespace
{

/// The decision as it was lived: where the athlete chose another rung it leads there; where something else, nowhere.
season::Decision asFollowed(const DecisionRecord& record, const std::string& rung)
{
    auto lived = record.decision;
    if (record.answer != store::Answer::Changed)
        return lived;
    const auto* ladder = season::findLadder(season::standardSeasonData().ladders, lived.ladder);
    lived.from = rung;
    lived.to = ladder != nullptr && ladder->find(record.changedTo) != nullptr ? record.changedTo : rung;
    lived.kind = season::DecisionKind::Hold;
    if (lived.to != lived.from)
        lived.kind = *ladder->indexOf(lived.to) > *ladder->indexOf(lived.from) ? season::DecisionKind::Step
                                                                               : season::DecisionKind::StepBack;
    return lived;
}

} // namespace

Expected<LadderWalk> LadderWalk::read(const Logbook& logbook, const Identifier& season)
{
    LadderWalk walk;
    auto record = logbook.season(season);
    if (!record)
        return failure(record);
    walk.record_ = std::move(*record);
    const auto plan = season::planSeason(walk.record_.setup);
    if (!plan)
        return failure(plan);
    walk.start_ = season::startStates(*plan);
    auto decisions = logbook.decisions(season);
    if (!decisions)
        return failure(decisions);
    walk.decisions_ = std::move(*decisions);
    const auto sessions = logbook.sessions(walk.record_.row.athlete, walk.record_.row.start, walk.record_.row.finish);
    if (!sessions)
        return failure(sessions);
    std::map<Identifier, CivilDate> days;
    for (const auto& session : *sessions)
        days[session.id] = session.begun.trainingDay;
    const auto sets = logbook.rows().list<store::LiftSet>(
        {.athlete = walk.record_.row.athlete, .from = walk.record_.row.start, .to = walk.record_.row.finish});
    if (!sets)
        return failure(sets);
    for (const auto& set : *sets)
        walk.loads_.push_back({days[set.session], set.ladder, set.rung, set.kind, set.loadKg});
    return walk;
}

std::vector<season::LadderState> LadderWalk::walk(CivilDate decidedBefore, CivilDate liftedBefore) const
{
    auto states = start_;
    for (auto& state : states) {
        for (const auto& record : decisions_)
            if (record.decision.ladder == state.ladder && record.decision.day < decidedBefore) {
                const auto lived = asFollowed(record, state.rung());
                state = season::afterDecision(std::move(state), lived);
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
        if (done.ladder != state.ladder || done.day >= before || done.loadKg <= 0)
            continue;
        const bool thisStay = done.rung == state.rung() && done.day >= state.since();
        if (done.kind == store::SetKind::Probe && thisStay && !state.probeLoadKg)
            state.probeLoadKg = done.loadKg;
        // A lighter day by decision says nothing of what the next full day may carry.
        if (done.kind == store::SetKind::Work && !(state.workLoadKg && isEased(state.ladder, done.day)))
            state.workLoadKg = carried(done.loadKg, done.rung, state, before);
    }
}

bool LadderWalk::isEased(const std::string& ladder, CivilDate day) const
{
    return std::any_of(decisions_.begin(), decisions_.end(), [&](const auto& record) {
        return record.decision.ladder == ladder && record.decision.day == day && record.decision.loadFactor < 1;
    });
}

/// What was lifted on another rung says what may be lifted on this one, by the ladder's own ratios.
double LadderWalk::carried(double loadKg, const std::string& from, const season::LadderState& to, CivilDate day) const
{
    const auto& data = season::standardSeasonData();
    const auto* ladder = season::findLadder(data.ladders, to.ladder);
    const auto begin = ladder == nullptr ? std::nullopt : ladder->indexOf(from);
    const auto end = ladder == nullptr ? std::nullopt : ladder->indexOf(to.rung());
    if (!begin || !end)
        return loadKg;
    const auto rung = [&](int index) -> const season::Rung& { return ladder->rungs[static_cast<std::size_t>(index)]; };
    for (int i = *begin + 1; i <= *end; ++i)
        loadKg = season::firstLoadOn(rung(i), loadKg, {}, {}, setup().athlete, day, data.rules).maximumKg;
    for (int i = *begin; i > *end; --i)
        loadKg /= std::max(1.0, rung(i).loadRatio); // never heavier on the way back
    return loadKg;
}

std::vector<season::Decision> LadderWalk::decisionsOn(CivilDate day) const
{
    std::vector<season::Decision> found;
    for (const auto& record : decisions_)
        if (record.decision.day == day)
            found.push_back(record.decision);
    return found;
}

std::vector<season::Decision> LadderWalk::followedOn(CivilDate day) const
{
    std::vector<season::Decision> found;
    for (const auto& record : decisions_)
        if (record.decision.day == day)
            found.push_back(asFollowed(record, record.decision.from));
    return found;
}

} // namespace fleetrung::logbook
