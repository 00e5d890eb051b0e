#include "engine/season/decide.hpp"

#include <algorithm>
#include <utility>

#include "engine/base/numbers.hpp"
#include "engine/season/load_correction.hpp"

namespace fleetrung::season
{
namespace
{

constexpr double thousandths = 1000;

std::optional<Measured> rounded(const std::optional<Measured>& measured)
{
    if (!measured)
        return std::nullopt;
    return Measured{roundTo(measured->value, thousandths), roundTo(measured->uncertainty, thousandths)};
}

SessionEvidence rounded(SessionEvidence session)
{
    for (auto* measured : {&session.timeToPeak, &session.meanVelocity, &session.peakVelocity, &session.range,
                           &session.estimatedMaximum, &session.reactiveStrength})
        *measured = rounded(*measured);
    session.validShare = roundTo(session.validShare, thousandths);
    return session;
}

/// Left and right of one day become one session: the later side counts, and the fewer valid repetitions.
void mergeSide(SessionEvidence& kept, const SessionEvidence& other)
{
    const double validShare = std::min(kept.validShare, other.validShare);
    if (other.timeToPeak && (!kept.timeToPeak || other.timeToPeak->value > kept.timeToPeak->value))
        kept = other;
    kept.validShare = validShare;
}

/// As they came, by day.
std::vector<SessionEvidence> sessionsOf(const Ladder& ladder, const DayInput& input)
{
    std::vector<SessionEvidence> sessions;
    for (const auto& session : input.history)
        if (session.ladder == ladder.key && session.day < input.today)
            sessions.push_back(rounded(session));
    std::stable_sort(sessions.begin(), sessions.end(),
                     [](const SessionEvidence& a, const SessionEvidence& b) { return a.day < b.day; });
    return sessions;
}

std::vector<SessionEvidence> oneADay(const std::vector<SessionEvidence>& sessions)
{
    std::vector<SessionEvidence> merged;
    for (const auto& session : sessions) {
        if (!merged.empty() && merged.back().day == session.day && merged.back().rung == session.rung)
            mergeSide(merged.back(), session);
        else
            merged.push_back(session);
    }
    return merged;
}

/// The sessions of the stay that are evidence: at its probe load, or brought there.
std::vector<SessionEvidence> stayOf(const LadderDay& day)
{
    std::vector<SessionEvidence> onRung, stay;
    for (const auto& session : day.sessions)
        if (session.rung == day.rung().key)
            onRung.push_back(session);
    const auto first = std::find_if(onRung.begin(), onRung.end(),
                                    [&](const SessionEvidence& s) { return s.day >= day.state.since(); });
    if (first == onRung.end())
        return stay;
    const double probeLoad = day.state.probeLoadKg.value_or(first->loadKg);
    const auto slopes = loadSlopes(onRung, day.data.rules);
    for (auto session = first; session != onRung.end(); ++session)
        if (auto moved = atLoad(*session, probeLoad, day.rung().metric, slopes, day.data.rules))
            stay.push_back(std::move(*moved));
    return stay;
}

std::optional<LadderState> stateOf(const Ladder& ladder, const DayInput& input)
{
    for (const auto& states : {input.states, startStates(input.plan)})
        for (const auto& state : states)
            if (state.ladder == ladder.key && !state.path.empty())
                return state;
    return std::nullopt;
}

} // namespace

std::optional<LadderDay> lookAt(const Ladder& ladder, const DayInput& input, const SeasonData& data)
{
    auto usable = usableRungs(ladder, input.plan.setup, data.rules);
    auto state = stateOf(ladder, input);
    if (usable.rungs.empty() || !state)
        return std::nullopt;
    LadderDay day{input, data, ladder, std::move(*state), std::move(usable), 0, nullptr, {}, {}, {}, {}};
    day.place = day.usable.placeOf(ladder, day.state.rung());
    day.phase = phaseOn(input.plan.phases, input.today);
    if (day.phase != nullptr && day.phase->kind != PhaseKind::Transition)
        for (const auto& window : trainingWindows(input.plan.phases))
            if (window.from <= input.today && input.today <= window.to)
                day.window = window;
    day.sided = sessionsOf(ladder, input);
    day.sessions = oneADay(day.sided);
    day.stay = stayOf(day);
    return day;
}

std::optional<CivilDate> LadderDay::latest() const
{
    if (!window || next() == nullptr)
        return std::nullopt;
    auto last = latestDay(usable, place, *window, input.plan.phases, data.rules);
    if (const auto* laid = findLadderPlan(input.plan, ladder.key)) // where heavy ladders are kept apart
        for (const auto& planned : laid->rungs)
            if (planned.macrocycle == window->macrocycle && planned.rung == rung().key &&
                (!planned.taken || planned.to == input.today))
                last = std::min(last, planned.latest);
    // After a step back the rung gets its week, though its time had come.
    const bool steppedBack =
        state.path.size() > 1 &&
        ladder.indexOf(state.path[state.path.size() - 2].rung).value_or(0) > ladder.indexOf(state.rung()).value_or(0);
    if (steppedBack)
        last = std::max(last, state.since() + std::chrono::days(static_cast<int>(data.rules.mustStepPutOffDays) - 1));
    return last;
}

bool LadderDay::putOffTooLong() const
{
    const auto last = latest();
    return last && daysBetween(*last, input.today) > static_cast<int>(data.rules.mustStepPutOffDays);
}

Decision stayDecision(const LadderDay& day, DecisionKind kind, std::string rule, std::string reason)
{
    return moveDecision(day, kind, std::move(rule), day.place, std::move(reason));
}

Decision moveDecision(const LadderDay& day, DecisionKind kind, std::string rule, std::size_t place, std::string reason)
{
    Decision decision;
    decision.day = day.input.today;
    decision.ladder = day.ladder.key;
    decision.rule = std::move(rule);
    decision.kind = kind;
    decision.from = day.rung().key;
    decision.to = day.usable.rungs[place]->key;
    decision.reason = std::move(reason);
    if (kind == DecisionKind::Step)
        decision.cautions = day.usable.rungs[place]->cautions;
    return decision;
}

} // namespace fleetrung::season
