// One day: each ladder by the precedence of the rules, then what binds them together.
#include <algorithm>
#include <numeric>

#include "engine/base/numbers.hpp"
#include "engine/season/lines.hpp"
#include "engine/season/replay.hpp"

namespace fleetrung::season
{
namespace
{

/// A layoff stands above competition rest, but nothing is lifted on those days all the same.
Decision resting(Decision layoff, Decision rest)
{
    if (layoff.kind == DecisionKind::Ease)
        return rest;
    layoff.setFactor = 0;
    layoff.primerAllowed = rest.primerAllowed;
    layoff.reason += ' ' + rest.reason;
    return layoff;
}

Decision firstThatApplies(const LadderDay& day)
{
    for (const auto rule : {decidePain, decideCalendar, decideRestBlock})
        if (auto decision = rule(day))
            return std::move(*decision);
    auto layoff = decideLayoff(day), rest = decideCompetitionRest(day);
    if (layoff && rest)
        return resting(std::move(*layoff), std::move(*rest));
    if (layoff)
        return std::move(*layoff);
    if (rest)
        return std::move(*rest);
    for (const auto rule : {decideEase, decideExams, decideMustStep, decideClimb})
        if (auto decision = rule(day))
            return std::move(*decision);
    return decideByEvidence(day);
}

Decision decideLadder(const LadderDay& day)
{
    auto decision = firstThatApplies(day);
    const auto strength = strengthTrend(day);
    decision.noSprints = forbidsSprints(day.input.wellness, day.data.rules);
    if (decision.noSprints || day.input.wellness.pain.value_or(0) >= day.data.rules.painSwap)
        decision.painRegion = day.input.wellness.painRegion;
    decision.strengthLost = strength && strength->lost;
    decision.speedNotFollowing = speedNotFollowing(day).has_value();
    return decision;
}

/// Days on which a heavy ladder went down, from the paths taken.
std::vector<CivilDate> heavyStepDays(const std::vector<LadderDay>& days)
{
    std::vector<CivilDate> steps;
    for (const auto& day : days)
        for (std::size_t i = 1; day.ladder.heavy && i < day.state.path.size(); ++i)
            if (day.ladder.indexOf(day.state.path[i].rung) > day.ladder.indexOf(day.state.path[i - 1].rung))
                steps.push_back(day.state.path[i].from);
    return steps;
}

void putOff(Decision& decision, const LadderDay& day, int daysSince)
{
    const auto next = day.nameOf(*day.usable.rungs[day.usable.placeOf(day.ladder, decision.to)]);
    decision.rule = "one-heavy-step";
    decision.kind = DecisionKind::Hold;
    decision.to = decision.from;
    decision.cautions.clear();
    decision.reason = "The step to " + next + " is ready, but another heavy ladder stepped " +
                      (daysSince == 0   ? std::string("today")
                       : daysSince == 1 ? std::string("yesterday")
                                        : integerText(daysSince) + " days ago") +
                      ": it waits.";
    decision.evidence.push_back(
        line("days since a heavy ladder stepped", daysSince, "days", atLeast(day.data.rules.heavyStepDays), false));
}

/// Steps that must be taken go first, the longest overdue before the others; then the plan's order.
std::vector<std::size_t> stepOrder(const std::vector<LadderDay>& days, const std::vector<Decision>& decisions)
{
    std::vector<std::size_t> order(days.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
        const bool mustA = decisions[a].rule == "must-step", mustB = decisions[b].rule == "must-step";
        if (mustA != mustB)
            return mustA;
        return mustA && days[a].latest() < days[b].latest();
    });
    return order;
}

void keepHeavyStepsApart(const std::vector<LadderDay>& days, std::vector<Decision>& decisions)
{
    auto steps = heavyStepDays(days);
    for (const auto i : stepOrder(days, decisions)) {
        if (!days[i].ladder.heavy || decisions[i].kind != DecisionKind::Step)
            continue;
        const auto today = days[i].input.today;
        const auto last = std::max_element(steps.begin(), steps.end());
        if (last != steps.end() && daysBetween(*last, today) < static_cast<int>(days[i].data.rules.heavyStepDays))
            putOff(decisions[i], days[i], daysBetween(*last, today));
        else
            steps.push_back(today);
    }
}

/// Two lifts or more that come later than before: the whole session eases.
void easeSession(std::vector<Decision>& decisions, const Rules& rules)
{
    if (std::count_if(decisions.begin(), decisions.end(), [](const Decision& d) { return d.rule == "ease"; }) < 2)
        return;
    for (auto& decision : decisions) {
        if (decision.kind == DecisionKind::Rest)
            continue;
        decision.setFactor = std::min(decision.setFactor, 1 - rules.easeSets);
        decision.reason += " Two lifts or more have become later: " + fixedText(rules.easeSets * 100, 0) +
                           " % fewer sets in the whole session.";
    }
}

} // namespace

std::vector<Decision> decideDay(const DayInput& input, const SeasonData& data)
{
    std::vector<LadderDay> days;
    for (const auto& key : input.plan.setup.ladders)
        if (const auto* ladder = findLadder(data.ladders, key))
            if (auto day = lookAt(*ladder, input, data))
                days.push_back(std::move(*day));
    std::vector<Decision> decisions;
    decisions.reserve(days.size());
    for (const auto& day : days)
        decisions.push_back(decideLadder(day));
    keepHeavyStepsApart(days, decisions);
    easeSession(decisions, data.rules);
    const std::string inputs = jsonText(dayInputJson(input));
    for (auto& decision : decisions)
        decision.id =
            hashIdentifier(std::array<std::string_view, 4>{"decision", data.version, decision.ladder, inputs});
    return decisions;
}

} // namespace fleetrung::season
