#include "mobile/logbook/report_parts.hpp"

#include "engine/base/numbers.hpp"
#include "engine/reps/lift.hpp"

namespace fleetrung::logbook
{
namespace
{

report::Side sideOf(store::Side side)
{
    return static_cast<report::Side>(side);
}
static_assert(static_cast<int>(store::Side::Right) == static_cast<int>(report::Side::Right));

report::Measurement measured(const store::Metric& metric)
{
    return {metric.value, metric.uncertainty};
}

report::Repetition repetitionOf(const RepetitionView& view, int number)
{
    const auto& row = view.row;
    report::Repetition repetition;
    repetition.id = row.id;
    repetition.number = number;
    repetition.meanVelocity = measured(row.meanVelocity);
    repetition.propulsiveVelocity = measured(row.meanPropulsiveVelocity);
    repetition.peakVelocity = measured(row.peakVelocity);
    repetition.timeToPeak = measured(row.timeToPeakVelocity);
    repetition.range = measured(row.range);
    repetition.displacementToPeak = measured(row.displacementToPeak);
    repetition.concentricTime = measured(row.concentricDuration);
    repetition.velocityAt100ms = measured(row.velocityAt100ms);
    repetition.velocityAt200ms = measured(row.velocityAt200ms);
    repetition.eccentricPeakVelocity = measured(row.eccentricPeakVelocity);
    repetition.eccentricTime = measured(row.eccentricDuration);
    repetition.reversalTime = measured(row.reversalTime);
    repetition.flags = static_cast<reps::Flags>(row.flags);
    repetition.accepted = !view.deleted && view.evidence;
    return repetition;
}

std::string kindText(store::SetKind kind)
{
    constexpr std::array<const char*, 4> names{"warm-up", "probe", "work", "maintenance"};
    return names.at(static_cast<std::size_t>(kind));
}

void nameSet(report::Set& set, const store::LiftSet& row, const season::SeasonData& data)
{
    const auto* lift = reps::findLift(row.lift);
    set.name = lift == nullptr ? row.lift : std::string(lift->name);
    const auto* ladder = season::findLadder(data.ladders, row.ladder);
    if (ladder == nullptr)
        return;
    set.ladder = ladder->name;
    const auto* rung = ladder->find(row.rung);
    set.rung = rung == nullptr ? row.rung : rung->name;
}

report::Set setOf(const SetView& view, const season::SeasonData& data)
{
    report::Set set;
    set.id = view.row.id;
    set.number = view.row.ordinal;
    set.lift = view.row.lift;
    nameSet(set, view.row, data);
    set.side = sideOf(view.row.side);
    set.loadKg = view.row.loadKg;
    set.repetitionsPlanned = view.row.repetitionsPlanned;
    set.repetitionsDone = view.done;
    set.kind = kindText(view.row.kind);
    set.measured = view.measured;
    set.velocityLoss = view.velocityLoss;
    set.effort = view.row.effort;
    set.note = view.row.note;
    for (const auto& repetition : view.repetitions)
        set.repetitions.push_back(repetitionOf(repetition, static_cast<int>(set.repetitions.size()) + 1));
    return set;
}

} // namespace

report::Session reportSession(const SessionView& view, const season::SeasonPlan& plan, const season::SeasonData& data)
{
    report::Session session;
    session.id = view.row.id;
    session.day = view.row.begun.trainingDay;
    session.started = reportMoment(view.row.begun);
    session.kind = view.row.kind;
    if (const auto* phase = season::phaseOn(plan.phases, session.day))
        session.phase = season::phaseName(phase->kind);
    session.effort = view.row.effort;
    session.note = view.row.note;
    for (const auto& set : view.sets)
        session.sets.push_back(setOf(set, data));
    return session;
}

report::Wellness reportWellness(const store::Wellness& row)
{
    report::Wellness wellness;
    wellness.day = row.asked.trainingDay;
    wellness.asked = reportMoment(row.asked);
    wellness.sleepHours = row.sleepHours;
    wellness.soreness = row.soreness;
    wellness.pain = row.pain;
    wellness.painWhere = row.painWhere;
    wellness.bodyMassKg = row.bodyMassKg;
    wellness.note = row.note;
    return wellness;
}

report::Decision reportDecision(const DecisionRecord& record, const season::SeasonData& data)
{
    const auto& taken = record.decision;
    const auto* ladder = season::findLadder(data.ladders, taken.ladder);
    const auto rungName = [&](const std::string& key) {
        const auto* rung = ladder == nullptr ? nullptr : ladder->find(key);
        return rung == nullptr ? key : rung->name;
    };
    report::Decision decision;
    decision.id = taken.id;
    decision.day = taken.day;
    decision.ladder = ladder == nullptr ? taken.ladder : ladder->name;
    decision.kind = taken.rule == "must-step" ? "must step" : std::string(season::decisionName(taken.kind));
    decision.rule = season::ruleTitle(taken.rule);
    decision.from = rungName(taken.from);
    decision.to = rungName(taken.to);
    decision.reason = taken.reason;
    for (const auto& line : taken.evidence)
        decision.evidence.push_back({line.name, line.unit, line.value,
                                     line.uncertainty > 0 ? std::optional(line.uncertainty) : std::nullopt,
                                     line.allowed, line.gates ? std::optional(line.met) : std::nullopt});
    decision.answer = static_cast<report::Answer>(record.answer);
    decision.changedTo = rungName(record.changedTo);
    decision.why = record.why;
    return decision;
}
static_assert(static_cast<int>(store::Answer::Changed) == static_cast<int>(report::Answer::Changed));

} // namespace fleetrung::logbook
