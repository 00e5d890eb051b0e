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

std::string percent(double share)
{
    return fixedText(share * 100, 0) + " %";
}

bool isEarly(PhaseKind kind)
{
    return kind == PhaseKind::GeneralPreparation || kind == PhaseKind::SpecialPreparation;
}

/// What is taken off. Where nothing is on the bar (drop jumps) sets go instead of load.
struct Less {
    double load = 0;
    double sets = 0;
};

Less lessFor(const LadderDay& day, double load, double sets)
{
    return day.rung().probeShare > 0 ? Less{load, sets} : Less{0, std::max(sets, day.data.rules.easeSets)};
}

std::string lessText(const Less& less)
{
    if (less.load <= 0)
        return percent(less.sets) + " fewer sets";
    return percent(less.load) + " less load" + (less.sets > 0 ? " and " + percent(less.sets) + " fewer sets" : "");
}

Decision lighter(Decision decision, const Less& less, const LadderDay& day, int daysAway)
{
    decision.loadFactor = 1 - less.load;
    decision.setFactor = 1 - less.sets;
    decision.evidence.push_back(line("days away from this ladder", daysAway, "days",
                                     "under " + fixedText(day.data.rules.layoffDays, 0), false));
    return decision;
}

/// The last time this ladder was left alone: how long, and when it was taken up again (today, if it was not yet).
struct Layoff {
    int days = 0;
    CivilDate back;
    CivilDate before; ///< last session before it
};

/// Days on which this ladder was trained, as far as evidence and log say.
std::vector<CivilDate> trainedDays(const LadderDay& day)
{
    std::vector<CivilDate> days;
    for (const auto& session : day.sessions)
        days.push_back(session.day);
    for (const auto& done : day.input.log.work)
        if (done.ladder == day.ladder.key && done.day < day.input.today)
            days.push_back(done.day);
    if (day.rung().metric == Metric::ContactTime && day.rung().box)
        for (const auto& done : day.input.log.contacts)
            if (done.day < day.input.today)
                days.push_back(done.day);
    std::sort(days.begin(), days.end());
    days.erase(std::unique(days.begin(), days.end()), days.end());
    return days;
}

/// Days on which anything was lifted or jumped, on any ladder.
std::vector<CivilDate> anyTrainedDays(const LadderDay& day)
{
    std::vector<CivilDate> days;
    for (const auto& session : day.input.history)
        days.push_back(session.day);
    for (const auto& done : day.input.log.work)
        days.push_back(done.day);
    std::sort(days.begin(), days.end());
    return days;
}

/// Longest time between `from` and `to` without any training.
int longestRest(const LadderDay& day, CivilDate from, CivilDate to)
{
    int longest = 0;
    CivilDate last = from;
    for (const auto trained : anyTrainedDays(day))
        if (trained > last && trained < to) {
            longest = std::max(longest, daysBetween(last, trained));
            last = trained;
        }
    return std::max(longest, daysBetween(last, to));
}

/// Days between two sessions that count as away: none where the plan had no turn between. Where the ladder has its turn
/// less than once a week, one missed turn is no layoff as long as the athlete lifts: then days without any training
/// count.
int daysAway(const LadderDay& day, CivilDate before, CivilDate back)
{
    const auto& rules = day.data.rules;
    if (daysBetween(before, back) < static_cast<int>(rules.layoffDays))
        return 0;
    const auto missed = firstMissedTurn(day, before, back);
    if (!missed)
        return 0;
    return daysBetween(before, *missed) > static_cast<int>(rules.layoffDays) ? longestRest(day, before, back)
                                                                             : daysBetween(before, back);
}

std::optional<Layoff> lastLayoff(const LadderDay& day)
{
    const auto days = trainedDays(day);
    if (days.empty())
        return std::nullopt;
    const auto& rules = day.data.rules;
    const Layoff open{daysAway(day, days.back(), day.input.today), day.input.today, days.back()};
    if (open.days >= rules.layoffDays)
        return open;
    for (std::size_t i = days.size() - 1; i-- > 0;) {
        if (daysBetween(days[i], days[i + 1]) < static_cast<int>(rules.layoffStepBackDays))
            continue;
        const Layoff past{daysAway(day, days[i], days[i + 1]), days[i + 1], days[i]};
        if (past.days >= rules.layoffStepBackDays)
            return past;
    }
    return std::nullopt;
}

Decision stepBackAfter(const LadderDay& day, const Layoff& layoff, std::size_t rungs)
{
    const auto place = day.place - std::min(day.place, rungs);
    const auto& rules = day.data.rules;
    const bool far = layoff.days >= rules.layoffLongDays;
    const bool first = place == day.place;
    const auto less =
        far || first ? lessFor(day, rules.layoffLateLoad, rules.layoffLateSets) : lessFor(day, rules.layoffLoad, 0);
    std::string reason = counted(layoff.days, "day") + " away from this ladder: ";
    reason += first ? "the first rung again, lighter." : "back to " + day.nameOf(*day.usable.rungs[place]) + ".";
    reason +=
        far ? " Return plan: for a week " + lessText(less) + ", then by the plan." : " " + lessText(less) + " today.";
    auto decision =
        moveDecision(day, first ? DecisionKind::Ease : DecisionKind::StepBack, "layoff", place, std::move(reason));
    return lighter(std::move(decision), less, day, layoff.days);
}

} // namespace

bool forbidsSprints(const Wellness& wellness, const Rules& rules)
{
    return wellness.pain.value_or(0) >= rules.painStop || wellness.sharpPain || wellness.limping ||
           wellness.newHamstringPain;
}

std::optional<Decision> decidePain(const LadderDay& day)
{
    const auto& wellness = day.input.wellness;
    const auto& rules = day.data.rules;
    if (wellness.refused)
        return stayDecision(day, DecisionKind::Rest, "refusal", "You chose not to lift today. The rung waits.");
    const int pain = wellness.pain.value_or(0);
    const auto painDecision = [&](const char* rule, double limit, std::string reason) {
        auto decision = stayDecision(day, DecisionKind::Rest, rule, std::move(reason));
        decision.evidence = {line("pain", pain, "of 10", "under " + fixedText(limit, 0), pain < limit)};
        decision.cautions = {"pain"};
        return decision;
    };
    if (forbidsSprints(wellness, rules) &&
        (loadsRegion(day.ladder, wellness.painRegion) || loadsHamstring(day.ladder) || wellness.limping))
        return painDecision("pain", rules.painStop,
                            "Strong, sharp or new pain: no sprinting, no hinge" +
                                (day.ladder.key == "hinge" ? std::string() : ", no " + day.ladder.name) +
                                " today. See a clinician before you go on.");
    if (pain >= rules.painSwap && loadsRegion(day.ladder, wellness.painRegion))
        return painDecision("pain-swap", rules.painSwap,
                            "Pain of " + integerText(pain) +
                                " of 10 where this lift loads: it rests today, a lift "
                                "that does not load that place may stand in.");
    return std::nullopt;
}

std::optional<Decision> decideCalendar(const LadderDay& day)
{
    if (day.phase == nullptr)
        return stayDecision(day, DecisionKind::Rest, "outside-season", "This day lies outside the season.");
    if (!day.window)
        return stayDecision(day, DecisionKind::Rest, "transition", "Transition: active rest, no primary lifts.");
    if (day.state.since() < day.window->from && day.window->macrocycle > 0)
        return moveDecision(day, day.place == 0 ? DecisionKind::Hold : DecisionKind::StepBack, "new-macrocycle", 0,
                            "A new macrocycle begins: the ladder starts again at its longest range, " +
                                day.nameOf(*day.usable.rungs.front()) + ".");
    return std::nullopt;
}

std::optional<Decision> decideRestBlock(const LadderDay& day)
{
    const auto* block = restBlockOn(day.input.plan.setup, day.ladder.regions, day.input.today);
    if (block == nullptr)
        return std::nullopt;
    return stayDecision(day, DecisionKind::Rest, "blocked", blockText(*block) + ": this ladder rests, the rung waits.");
}

std::optional<Decision> decideExams(const LadderDay& day)
{
    const auto* exams = blockOn(day.input.plan.setup, Block::Kind::Exam, day.input.today);
    if (exams == nullptr || day.putOffTooLong())
        return std::nullopt;
    return stayDecision(day, DecisionKind::Hold, "blocked",
                        blockText(*exams) + ": fewer sets, and no ladder steps in these days.");
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
    if (gentle && !longAgo) {
        const auto less = lessFor(day, rules.layoffLateLoad, rules.layoffLateSets);
        return lighter(
            stayDecision(day, DecisionKind::Ease, "layoff",
                         "Back after " + counted(layoff->days, "day") + " away: " + lessText(less) + " for a week."),
            less, day, layoff->days);
    }
    if (returning && !answered) {
        const auto less = lessFor(day, rules.layoffLoad, 0);
        return lighter(stayDecision(day, DecisionKind::Ease, "layoff",
                                    counted(layoff->days, "day") +
                                        " since the last session on this ladder: same rung, " + lessText(less) + "."),
                       less, day, layoff->days);
    }
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
                                   : competition.name + " is in " + counted(away, "day") +
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
