#include "engine/season/session_plan.hpp"

#include <algorithm>

#include "engine/base/numbers.hpp"
#include "engine/season/session_parts.hpp"
#include "engine/season/turns.hpp"

namespace fleetrung::season
{
namespace
{

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

/// One session under way.
class SessionMaker
{
public:
    SessionMaker(const SeasonPlan& plan, const std::vector<LadderState>& states, const std::vector<Decision>& decisions,
                 CivilDate day, const SeasonData& data, const TrainingLog& log, const PhaseSpan& phase)
        : plan_(plan), states_(states), decisions_(decisions), day_(day), data_(data), log_(log), phase_(phase),
          contacts_(contactsLeft(plan, log, day, data.rules))
    {
    }

    void addLifts(SessionPlan& session)
    {
        turns_ = laddersOn(plan_, day_, data_);
        for (const auto* ladder : turns_)
            addTurn(session, *ladder);
        std::stable_sort(session.lifts.begin(), session.lifts.end(), [&](const auto& a, const auto& b) {
            return findLadder(data_.ladders, a.ladder)->order < findLadder(data_.ladders, b.ladder)->order;
        });
        if (session.lifts.empty() && session.notes.empty())
            session.notes.emplace_back("A low day: no heavy lifts without sprints before them.");
    }

    /// The fastest lift with a bar that stands on this day and is not kept from training by more than the competition.
    void addPrimer(SessionPlan& session)
    {
        for (const auto* ladder : laddersOn(plan_, day_, data_)) {
            const auto* decision = decisionFor(decisions_, *ladder, day_);
            if (decision != nullptr && !decision->primerAllowed)
                continue;
            const auto* rung = rungFor(plan_, *ladder, stateFor(states_, *ladder), decision, day_);
            auto primer = rung == nullptr ? std::nullopt : planPrimer(liftDay(*ladder, *rung));
            if (primer) {
                session.lifts.push_back(std::move(*primer));
                return;
            }
        }
    }

private:
    LiftDay liftDay(const Ladder& ladder, const Rung& rung) const
    {
        return {plan_,  data_, log_,     ladder, rung, stateFor(states_, ladder), decisionFor(decisions_, ladder, day_),
                phase_, day_,  contacts_};
    }

    void addTurn(SessionPlan& session, const Ladder& ladder)
    {
        const auto* decision = decisionFor(decisions_, ladder, day_);
        const auto* rung = rungFor(plan_, ladder, stateFor(states_, ladder), decision, day_);
        if (rests(decision)) {
            session.notes.push_back(ladder.name + " rests: " + decision->reason);
            if (decision->rule == "pain-swap")
                addStandIn(session, ladder);
        } else if (rung != nullptr && rung->metric == Metric::ContactTime && contacts_ == 0) {
            session.notes.push_back(ladder.name + " rests: the contacts of these days are done, and drop jumps need " +
                                    fixedText(data_.rules.jumpRestDays, 0) + " days between.");
        } else if (rung != nullptr) {
            session.lifts.push_back(planLift(liftDay(ladder, *rung)));
            contacts_ -= session.lifts.back().contacts; // the next ladder of jumps gets what this one leaves
            addTurnReason(session.lifts.back(), ladder, session.sprintDay);
        }
    }

    /// A ladder whose turn it is not takes the place of one that rests for pain where it loads.
    void addStandIn(SessionPlan& session, const Ladder& resting)
    {
        for (const auto& laid : plan_.ladders) {
            const auto* ladder = findLadder(data_.ladders, laid.ladder);
            if (ladder == nullptr || !standsOn(plan_, *ladder, day_) || inSession(session, *ladder))
                continue;
            const auto* decision = decisionFor(decisions_, *ladder, day_);
            const auto* rung = rungFor(plan_, *ladder, stateFor(states_, *ladder), decision, day_);
            if (decision == nullptr || rests(decision) || rung == nullptr || rung->metric == Metric::ContactTime)
                continue; // only what was asked about the pain may stand in; jumps keep to their own days
            session.lifts.push_back(planLift(liftDay(*ladder, *rung)));
            session.lifts.back().why.insert(
                session.lifts.back().why.begin(),
                Why{"lift", ladder->name + " stands in for " + resting.name + ", which loads the place that hurts."});
            return;
        }
    }

    bool inSession(const SessionPlan& session, const Ladder& ladder) const
    {
        return std::find(turns_.begin(), turns_.end(), &ladder) != turns_.end() ||
               std::any_of(session.lifts.begin(), session.lifts.end(),
                           [&](const PlannedLift& lift) { return lift.ladder == ladder.key; });
    }

    void addTurnReason(PlannedLift& lift, const Ladder& ladder, bool sprintDay) const
    {
        std::string text;
        if (ladder.heavy)
            text = sprintDay ? "A heavy lift stands on a sprint day, after the run, so that low days stay low."
                             : "A lifting day of the week.";
        else
            text = "A light, fast ladder: it may stand on any lifting day, before the heavy ones.";
        const auto cap = liftCap(plan_.setup, data_.rules);
        if (static_cast<int>(plan_.setup.ladders.size()) > cap)
            text += " " + integerText(static_cast<std::int64_t>(plan_.setup.ladders.size())) + " ladders share " +
                    integerText(cap) + " places a session: it is this one's turn.";
        if (!plan_.setup.liftsPerSessionReason.empty())
            text += " The number of lifts was chosen: " + plan_.setup.liftsPerSessionReason;
        lift.why.insert(lift.why.begin(), Why{"lift", std::move(text)});
    }

    const SeasonPlan& plan_;
    const std::vector<LadderState>& states_;
    const std::vector<Decision>& decisions_;
    CivilDate day_;
    const SeasonData& data_;
    const TrainingLog& log_;
    const PhaseSpan& phase_;
    int contacts_; ///< left of the day
    std::vector<const Ladder*> turns_;
};

/// Without those that load the place that hurts.
std::vector<SecondaryLift> secondaryOn(const SeasonSetup& setup, CivilDate day, const std::vector<Decision>& decisions)
{
    const auto contains = [](const auto& list, const auto& item) {
        return std::find(list.begin(), list.end(), item) != list.end();
    };
    std::vector<SecondaryLift> lifts;
    for (const auto& lift : setup.secondary) {
        const bool hurts = std::any_of(decisions.begin(), decisions.end(), [&](const Decision& decision) {
            return decision.day == day && !decision.painRegion.empty() && contains(lift.regions, decision.painRegion);
        });
        if (contains(lift.days, isoWeekday(day)) && !hurts && restBlockOn(setup, lift.regions, day) == nullptr)
            lifts.push_back(lift);
    }
    return lifts;
}

/// Why nothing is lifted on a day that is no lifting day.
std::string idleText(const SeasonSetup& setup, const PhaseSpan& phase, CivilDate day)
{
    if (phase.kind == PhaseKind::Transition)
        return "Transition: active rest, no primary lifts.";
    if (const auto* block = restBlockOn(setup, {}, day))
        return blockText(*block) + ": no lifts.";
    return "No lifts on this day.";
}

std::string restText(const Competition& competition, CivilDate day, const Rules& rules)
{
    if (day == competition.date)
        return competition.name + " is today: no lifting.";
    return "Nothing heavy so near to " + competition.name + "; a light, fast primer of at most " +
           fixedText(rules.primerRepetitions, 0) + " repetitions at " + fixedText(rules.primerLoad * 100, 0) +
           " % or less is allowed.";
}

} // namespace

SessionPlan planSession(const SeasonPlan& plan, const std::vector<LadderState>& states,
                        const std::vector<Decision>& decisions, CivilDate day, const SeasonData& data,
                        const TrainingLog& log)
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
    session.sprintsForbidden =
        std::any_of(decisions.begin(), decisions.end(), [&](const Decision& d) { return d.day == day && d.noSprints; });
    session.sprintDay = std::find(sprintDays.begin(), sprintDays.end(), isoWeekday(day)) != sprintDays.end();
    if (session.sprintsForbidden)
        session.notes.emplace_back("Pain: no sprinting today, no hinge. See a clinician before you go on.");
    if (!isLiftingDay(plan, day)) {
        session.notes.push_back(idleText(plan.setup, *phase, day));
        if (phase->kind != PhaseKind::Transition)
            session.secondary = secondaryOn(plan.setup, day, decisions);
        return session;
    }
    SessionMaker maker(plan, states, decisions, day, data, log, *phase);
    if (const auto* competition = competitionNear(plan.setup, day, data.rules)) {
        session.notes.push_back(restText(*competition, day, data.rules));
        if (day != competition->date)
            maker.addPrimer(session);
        return session;
    }
    maker.addLifts(session);
    session.secondary = secondaryOn(plan.setup, day, decisions);
    return session;
}

} // namespace fleetrung::season
