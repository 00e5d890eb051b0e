#include "engine/season/session_plan.hpp"

#include <algorithm>
#include <array>
#include <cmath>

#include "engine/base/numbers.hpp"
#include "engine/season/load.hpp"
#include "engine/season/turns.hpp"

namespace fleetrung::season
{
namespace
{

constexpr int probeRepetitions = 3;
constexpr double plateStep = 2.5;     // kg, smallest pair of plates in most gyms: common practice, no source
constexpr double workShare = 0.8;     // of what a rung allows: work sets at effort 7 to 8, starting value
constexpr double cleanSetStop = 0.10; // of peak velocity, starting value
constexpr int adult = 18;

/// Share of the work load, repetitions: common practice, no source. The last two are done with full intent.
constexpr std::array<std::pair<double, int>, 3> warmUpSteps{{{0.4, 5}, {0.6, 3}, {0.7, 2}}};

const Decision* decisionFor(const std::vector<Decision>& decisions, const Ladder& ladder, CivilDate day)
{
    const auto found = std::find_if(decisions.begin(), decisions.end(), [&](const Decision& decision) {
        return decision.ladder == ladder.key && decision.day == day;
    });
    return found == decisions.end() ? nullptr : &*found;
}

const LadderState* stateFor(const std::vector<LadderState>& states, const Ladder& ladder)
{
    const auto found = std::find_if(states.begin(), states.end(),
                                    [&](const LadderState& state) { return state.ladder == ladder.key; });
    return found == states.end() || found->path.empty() ? nullptr : &*found;
}

double toPlates(double load)
{
    return std::floor(load / plateStep + 1e-9) * plateStep;
}

/// Work load carried from the rung where it was lifted to the rung of today, by the ladder's ratios.
std::optional<double> carriedLoad(const Ladder& ladder, const LadderState* state, const Rung& rung,
                                  const SeasonSetup& setup, CivilDate day, const Rules& rules)
{
    if (state == nullptr || !state->workLoadKg)
        return std::nullopt;
    double load = *state->workLoadKg;
    const auto from = static_cast<std::size_t>(ladder.indexOf(state->rung()).value_or(0));
    const auto to = static_cast<std::size_t>(ladder.indexOf(rung.key).value_or(0));
    for (auto i = from; i < to; ++i)
        load = firstLoadOn(ladder.rungs[i + 1], load, std::nullopt, std::nullopt, setup.athlete, day, rules).maximumKg;
    for (auto i = from; i > to; --i)
        load /= std::max(1.0, ladder.rungs[i].loadRatio); // never heavier on the way back
    return load;
}

/// Sets and repetitions whose product follows the day's share of the rung's volume as whole numbers can.
std::pair<int, int> scaledVolume(const Rung& rung, double share)
{
    const double total = rung.sets * rung.repetitions * share;
    const int sets = std::max(1, static_cast<int>(std::lround(rung.sets * share)));
    const int repetitions = std::clamp(static_cast<int>(std::lround(total / sets)), 1, rung.repetitions);
    return {sets, repetitions};
}

bool isYoung(const SeasonPlan& plan, CivilDate day)
{
    return ageOn(plan.setup.athlete, day).value_or(adult) < adult;
}

/// Drop jumps: fewer sets where the session's contacts would be more than allowed.
void capContacts(PlannedLift& lift, const SeasonPlan& plan, CivilDate day, const Rules& rules)
{
    const double most = isYoung(plan, day) ? rules.jumpContactsYoung : rules.jumpContacts;
    int contacts = lift.probe ? lift.probe->repetitions : 0;
    std::size_t kept = 0;
    for (const auto& set : lift.work) {
        if (contacts + set.repetitions > most)
            break;
        contacts += set.repetitions;
        ++kept;
    }
    lift.work.resize(kept);
}

void addLoads(PlannedLift& lift, const Rung& rung, const std::optional<double>& work,
              const std::optional<double>& probe, double loadFactor)
{
    if (rung.probeShare <= 0) { // body mass only
        lift.probe = PlannedSet{probeRepetitions, 0.0};
        return;
    }
    std::optional<double> workKg, probeKg;
    if (work) {
        workKg = toPlates(*work * loadFactor);
        probeKg = probe ? *probe : toPlates(*work * rung.probeShare / workShare);
        for (const auto& [share, repetitions] : warmUpSteps)
            lift.warmUp.push_back({repetitions, toPlates(*workKg * share)});
    } else {
        lift.note = "Find a load of effort 7 of 10 for " + integerText(rung.repetitions) + " repetitions; about " +
                    fixedText(100 * rung.probeShare / workShare, 0) + " % of it is the probe load for the whole stay.";
        for (const auto& [share, repetitions] : warmUpSteps)
            lift.warmUp.push_back({repetitions, std::nullopt});
    }
    lift.probe = PlannedSet{probeRepetitions, probeKg};
    for (auto& set : lift.work)
        set.loadKg = workKg;
}

double setStopFor(const Rung& rung, const PhaseRule& phase)
{
    if (rung.metric == Metric::ContactTime)
        return 0;
    return rung.metric == Metric::PeakVelocity ? std::min(cleanSetStop, phase.setStop) : phase.setStop;
}

PlannedLift planLift(const SeasonPlan& plan, const Ladder& ladder, const LadderState* state, const Decision* decision,
                     const Rung& rung, const PhaseSpan& phase, CivilDate day, const SeasonData& data)
{
    PlannedLift lift;
    lift.ladder = ladder.key;
    lift.rung = rung.key;
    lift.lift = rung.lift;
    lift.restSeconds = rung.restSeconds;
    lift.setStop = setStopFor(rung, data.rules.phases[static_cast<std::size_t>(phase.kind)]);
    lift.metric = rung.metric;
    lift.targetBand = rung.targetBand;
    lift.range = rung.range;
    lift.cautions = rung.cautions;
    if (isYoung(plan, day))
        lift.cautions.emplace_back("young");
    const double setFactor = decision != nullptr ? decision->setFactor : 1;
    const auto [sets, repetitions] =
        scaledVolume(rung, volumeShare(plan.setup, plan.phases, data.rules, day) * setFactor);
    lift.work.assign(static_cast<std::size_t>(sets),
                     PlannedSet{repetitions, rung.probeShare <= 0 ? std::optional(0.0) : std::nullopt});
    const bool sameRung = state != nullptr && state->rung() == rung.key;
    addLoads(lift, rung, carriedLoad(ladder, state, rung, plan.setup, day, data.rules),
             sameRung ? state->probeLoadKg : std::nullopt, decision != nullptr ? decision->loadFactor : 1);
    if (rung.metric == Metric::ContactTime)
        capContacts(lift, plan, day, data.rules);
    return lift;
}

/// The competition that keeps the bar in the rack on this day; null where there is none.
const Competition* competitionNear(const SeasonSetup& setup, CivilDate day, const Rules& rules)
{
    for (const auto& competition : setup.competitions) {
        const int away = daysBetween(day, competition.date);
        if (away >= 0 && away <= static_cast<int>(rules.competitionRestDays))
            return &competition;
    }
    return nullptr;
}

bool rests(const Decision* decision)
{
    return decision != nullptr && (decision->kind == DecisionKind::Rest || decision->setFactor <= 0);
}

/// The rung of today: where the day's decision leads, else where the athlete stands, else what is planned.
const Rung* rungFor(const SeasonPlan& plan, const Ladder& ladder, const LadderState* state, const Decision* decision,
                    CivilDate day)
{
    if (decision != nullptr)
        return ladder.find(decision->to);
    if (state != nullptr)
        return ladder.find(state->rung());
    const auto* laid = findLadderPlan(plan, ladder.key);
    const auto* planned = laid == nullptr ? nullptr : rungOn(*laid, day);
    return planned == nullptr ? nullptr : ladder.find(planned->rung);
}

} // namespace

SessionPlan planSession(const SeasonPlan& plan, const std::vector<LadderState>& states,
                        const std::vector<Decision>& decisions, CivilDate day, const SeasonData& data,
                        const TrainingLog&)
{
    SessionPlan session;
    session.day = day;
    const auto* phase = phaseOn(plan.phases, day);
    if (phase == nullptr) {
        session.notes.emplace_back("This day lies outside the season.");
        return session;
    }
    session.phase = phase->kind;
    const auto& sprintDays = plan.setup.sprintDays;
    session.sprintDay = std::find(sprintDays.begin(), sprintDays.end(), isoWeekday(day)) != sprintDays.end();
    if (!isLiftingDay(plan, day)) {
        session.notes.emplace_back(phase->kind == PhaseKind::Transition ? "Transition: active rest, no primary lifts."
                                                                        : "No lifts on this day.");
        return session;
    }
    if (const auto* competition = competitionNear(plan.setup, day, data.rules)) {
        session.notes.push_back(day == competition->date
                                    ? competition->name + " is today: no lifting."
                                    : "Nothing heavy so near to " + competition->name +
                                          "; a light, fast primer of at most " +
                                          fixedText(data.rules.primerRepetitions, 0) + " repetitions at " +
                                          fixedText(data.rules.primerLoad * 100, 0) + " % or less is allowed.");
        return session;
    }
    for (const auto* ladder : laddersOn(plan, day, data)) {
        const auto* decision = decisionFor(decisions, *ladder, day);
        const auto* state = stateFor(states, *ladder);
        const auto* rung = rungFor(plan, *ladder, state, decision, day);
        if (rests(decision))
            session.notes.push_back(ladder->name + " rests: " + decision->reason);
        else if (rung != nullptr)
            session.lifts.push_back(planLift(plan, *ladder, state, decision, *rung, *phase, day, data));
    }
    if (session.lifts.empty() && session.notes.empty())
        session.notes.emplace_back("A low day: no heavy lifts without sprints before them.");
    return session;
}

} // namespace fleetrung::season
