// Rules that come before all evidence: pain and refusal, the calendar, a layoff, rest around competitions.
#include <algorithm>

#include "engine/base/numbers.hpp"
#include "engine/season/lines.hpp"

namespace fleetrung::season
{
namespace
{

bool loadsRegion(const Ladder& ladder, const std::string& region)
{
    return region.empty() || std::find(ladder.regions.begin(), ladder.regions.end(), region) != ladder.regions.end();
}

bool loadsHamstring(const Ladder& ladder)
{
    return loadsRegion(ladder, "hamstring");
}

std::string dayCount(int days)
{
    return integerText(days) + (days == 1 ? " day" : " days");
}

std::string percent(double share)
{
    return fixedText(share * 100, 0) + " %";
}

bool isEarly(PhaseKind kind)
{
    return kind == PhaseKind::GeneralPreparation || kind == PhaseKind::SpecialPreparation;
}

Decision lighter(Decision decision, double load, double sets)
{
    decision.loadFactor = 1 - load;
    decision.setFactor = 1 - sets;
    return decision;
}

/// The last time this ladder was left alone: how long, and when it was taken up again (today, if it was not yet).
struct Layoff {
    int days = 0;
    CivilDate back;
    CivilDate before; ///< last session before it
};

std::optional<Layoff> lastLayoff(const LadderDay& day)
{
    const auto& sessions = day.sessions;
    if (sessions.empty())
        return std::nullopt;
    const Layoff open{daysBetween(sessions.back().day, day.input.today), day.input.today, sessions.back().day};
    if (open.days >= day.data.rules.layoffDays)
        return open;
    for (std::size_t i = sessions.size() - 1; i-- > 0;) {
        const Layoff past{daysBetween(sessions[i].day, sessions[i + 1].day), sessions[i + 1].day, sessions[i].day};
        if (past.days >= day.data.rules.layoffStepBackDays)
            return past;
    }
    return std::nullopt;
}

Decision stepBackAfter(const LadderDay& day, const Layoff& layoff, std::size_t rungs)
{
    const auto place = day.place - std::min(day.place, rungs);
    const auto& rules = day.data.rules;
    const bool far = layoff.days >= rules.layoffLongDays;
    std::string reason = dayCount(layoff.days) + " away from this ladder: ";
    reason += place == day.place ? "the first rung again, lighter." : "back to " + day.usable.rungs[place]->name + ".";
    if (far)
        reason += " Return plan: for a week half the sets and " + percent(rules.layoffLateLoad) +
                  " less load, then by the plan.";
    auto decision = moveDecision(day, place == day.place ? DecisionKind::Ease : DecisionKind::StepBack, "layoff", place,
                                 std::move(reason));
    return lighter(std::move(decision), far || place == day.place ? rules.layoffLateLoad : rules.layoffLoad,
                   far || place == day.place ? rules.layoffLateSets : 0);
}

} // namespace

std::optional<Decision> decidePain(const LadderDay& day)
{
    const auto& wellness = day.input.wellness;
    const auto& rules = day.data.rules;
    if (wellness.refused)
        return stayDecision(day, DecisionKind::Rest, "refusal", "You chose not to lift today. The rung waits.");
    const int pain = wellness.pain.value_or(0);
    const bool stop = pain >= rules.painStop || wellness.sharpPain || wellness.limping || wellness.newHamstringPain;
    const auto lines =
        std::vector{line("pain", pain, "of 10", "under " + fixedText(rules.painSwap, 0), pain < rules.painSwap)};
    if (stop && (loadsRegion(day.ladder, wellness.painRegion) || loadsHamstring(day.ladder) || wellness.limping)) {
        auto decision = stayDecision(day, DecisionKind::Rest, "pain",
                                     "Strong, sharp or new pain: no sprinting, no hinge, no " + day.ladder.name +
                                         " today. See a clinician before you go on.");
        decision.evidence = lines;
        decision.cautions = {"pain"};
        return decision;
    }
    if (pain >= rules.painSwap && loadsRegion(day.ladder, wellness.painRegion)) {
        auto decision = stayDecision(day, DecisionKind::Rest, "pain",
                                     "Pain of " + integerText(pain) +
                                         " of 10 where this lift loads: swap it today for one "
                                         "that does not.");
        decision.evidence = lines;
        decision.cautions = {"pain"};
        return decision;
    }
    return std::nullopt;
}

std::optional<Decision> decideCalendar(const LadderDay& day)
{
    if (day.phase == nullptr)
        return stayDecision(day, DecisionKind::Rest, "outside-season", "This day lies outside the season.");
    if (!day.window)
        return stayDecision(day, DecisionKind::Rest, "transition", "Transition: active rest, no primary lifts.");
    if (day.state.since() < day.window->from && day.window->macrocycle > 0)
        return moveDecision(day, DecisionKind::StepBack, "new-macrocycle", 0,
                            "A new macrocycle begins: the ladder starts again at its longest range, " +
                                day.usable.rungs.front()->name + ".");
    return std::nullopt;
}

std::optional<Decision> decideLayoff(const LadderDay& day)
{
    const auto layoff = lastLayoff(day);
    if (!layoff)
        return std::nullopt;
    const auto& rules = day.data.rules;
    const bool returning = layoff->back == day.input.today;
    const bool answered = day.state.since() > layoff->before; // the ladder has already moved since then
    const bool early = isEarly(day.phase->kind);
    if (returning && !answered && layoff->days >= rules.layoffLongDays)
        return stepBackAfter(day, *layoff, 2);
    if (returning && !answered && layoff->days >= rules.layoffStepBackDays && early)
        return stepBackAfter(day, *layoff, 1);

    const bool longAgo = daysBetween(layoff->back, day.input.today) >= rules.layoffLateDays;
    const bool gentle = layoff->days >= rules.layoffLongDays || (layoff->days >= rules.layoffStepBackDays && !early);
    if (gentle && !longAgo)
        return lighter(stayDecision(day, DecisionKind::Ease, "layoff",
                                    "Back after " + dayCount(layoff->days) + " away: " + percent(rules.layoffLateLoad) +
                                        " less load and half the sets for a week."),
                       rules.layoffLateLoad, rules.layoffLateSets);
    if (returning && !answered)
        return lighter(stayDecision(day, DecisionKind::Ease, "layoff",
                                    dayCount(layoff->days) + " since the last session on this ladder: same rung, " +
                                        percent(rules.layoffLoad) + " less load."),
                       rules.layoffLoad, 0);
    return std::nullopt;
}

std::optional<Decision> decideCompetitionRest(const LadderDay& day)
{
    for (const auto& competition : day.input.plan.setup.competitions) {
        const int away = daysBetween(day.input.today, competition.date);
        if (away < 0 || away > static_cast<int>(day.data.rules.competitionRestDays))
            continue;
        auto decision =
            stayDecision(day, DecisionKind::Rest, "competition-rest",
                         away == 0 ? competition.name + " is today: no lifting."
                                   : competition.name + " is in " + dayCount(away) +
                                         ": nothing heavy. A light, fast primer of at most " +
                                         fixedText(day.data.rules.primerRepetitions, 0) + " repetitions at " +
                                         percent(day.data.rules.primerLoad) + " or less is allowed.");
        decision.primerAllowed = away > 0;
        decision.evidence.push_back(line("days to " + competition.name, away, "days",
                                         "more than " + fixedText(day.data.rules.competitionRestDays, 0), false));
        return decision;
    }
    return std::nullopt;
}

} // namespace fleetrung::season
