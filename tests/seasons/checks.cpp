#include "tests/seasons/checks.hpp"

#include <algorithm>
#include <cmath>
#include <set>

#include "engine/base/numbers.hpp"
#include "engine/season/replay.hpp"

namespace fleetrung::seasons
{
namespace
{

using season::DecisionKind;
using season::Ladder;
using season::Metric;
using season::Rung;
using std::chrono::days;

// The rules' numbers once more: a check must not take them from what it checks.
constexpr int heavyStepDays = 7, putOffDays = 7, restDays = 2, layoffDays = 7, layoffBackDays = 14;
constexpr int sessionContacts = 40, youngContacts = 24, weekContacts = 80, jumpRestDays = 2;
constexpr int primerRepetitions = 8;
constexpr double primerShare = 0.6, workShare = 0.8, weekGrowth = 1.10, monthGrowth = 1.20;
constexpr double shortRange = 1.4, shortRangeYoung = 1.0, youngYears = 2, youngDrop = 0.30;
constexpr double hair = 1e-6; // kg

const season::SeasonData& data()
{
    return season::standardSeasonData();
}

const Ladder& ladderOf(const std::string& key)
{
    return *findLadder(data().ladders, key);
}

std::string kg(double load)
{
    return fixedText(load, 1) + " kg";
}

bool isYoung(const Played& played, CivilDate day)
{
    return season::ageOn(played.athlete.setup.athlete, day).value_or(18) < 18;
}

std::vector<std::string> usable(const Played& played, const std::string& ladder)
{
    std::vector<std::string> keys;
    const auto& omitted = findLadderPlan(played.first, ladder)->omitted;
    for (const auto& rung : ladderOf(ladder).rungs)
        if (std::none_of(omitted.begin(), omitted.end(), [&](const auto& item) { return item.rung == rung.key; }))
            keys.push_back(rung.key);
    return keys;
}

int placeOf(const std::vector<std::string>& keys, const std::string& key)
{
    return static_cast<int>(std::find(keys.begin(), keys.end(), key) - keys.begin());
}

int daysToCompetition(const Played& played, CivilDate day)
{
    int least = 10000;
    for (const auto& race : played.athlete.setup.competitions)
        if (const int away = daysBetween(day, race.date); away >= 0)
            least = std::min(least, away);
    return least;
}

class Checker
{
public:
    explicit Checker(const Played& played) : played_(played) {}

    Report run()
    {
        if (!played_.failure.empty())
            breach("plays", played_.athlete.setup.start, played_.failure);
        for (std::size_t i = 0; i < played_.days.size(); ++i) {
            const auto& day = played_.days[i];
            oneDecisionALadder(day);
            for (const auto& decision : day.decisions) {
                precedence(day, decision);
                rungOrder(day, decision);
                phaseDate(day, decision);
            }
            heavySteps(day);
            sessionFollows(day);
            competition(day);
            loads(day);
            contacts(day);
        }
        stepAndBack();
        ladderEnd();
        return {std::move(found_), ends_};
    }

private:
    void breach(const char* check, CivilDate day, std::string what) { found_.push_back({check, day, std::move(what)}); }

    void oneDecisionALadder(const Day& day)
    {
        std::set<std::string> seen;
        for (const auto& decision : day.decisions)
            if (!seen.insert(decision.ladder).second)
                breach("one decision", day.date, "two decisions for " + decision.ladder);
        for (const auto& ladder : day.plan.ladders)
            if (!ladder.rungs.empty() && !seen.contains(ladder.ladder))
                breach("one decision", day.date, "no decision for " + ladder.ladder);
    }

    /// Days since the ladder was last trained, as the log and the sessions say.
    int daysAway(const Day& day, const std::string& ladder) const
    {
        std::optional<CivilDate> last;
        for (const auto& earlier : played_.days)
            if (earlier.date < day.date)
                for (const auto& lift : earlier.session.lifts)
                    if (lift.ladder == ladder && !lift.primer)
                        last = earlier.date;
        return last ? daysBetween(*last, day.date) : 0;
    }

    void precedence(const Day& day, const Decision& decision)
    {
        if (decision.loadFactor < 0.5 || decision.loadFactor > 1 || decision.setFactor < 0 || decision.setFactor > 1)
            breach("precedence", day.date, decision.ladder + ": load or sets out of bounds");
        const bool step = decision.kind == DecisionKind::Step;
        const auto& regions = ladderOf(decision.ladder).regions;
        const auto& wellness = day.wellness;
        const bool loaded = wellness.painRegion.empty() ||
                            std::find(regions.begin(), regions.end(), wellness.painRegion) != regions.end();
        const int pain = wellness.pain.value_or(0);
        const bool hurts = (pain >= 3 && loaded) || wellness.limping || wellness.refused;
        if (hurts && decision.kind != DecisionKind::Rest)
            breach("precedence", day.date, decision.ladder + ": " + decision.rule + " with pain or refusal");
        if ((pain >= 5 || wellness.newHamstringPain || wellness.limping) && !decision.noSprints)
            breach("precedence", day.date, decision.ladder + ": sprints allowed with strong pain");
        if (step && daysToCompetition(played_, day.date) <= restDays)
            breach("precedence", day.date, decision.ladder + ": a step within competition rest");
        if (step && decision.loadFactor < 1)
            breach("precedence", day.date, decision.ladder + ": a step on a day that eases its load");
        if (step && day.wellness.sleepHours.value_or(8) <= 4.5 && decision.rule != "must-step")
            breach("precedence", day.date, decision.ladder + ": a step for evidence after a very poor night");
        if (decision.rule != "new-macrocycle" &&
            (decision.kind == DecisionKind::Step || decision.kind == DecisionKind::StepBack) ==
                (decision.from == decision.to))
            breach("precedence", day.date,
                   decision.ladder + ": " + decision.rule + " says " + std::string(decisionKey(decision.kind)) +
                       " from " + decision.from + " to " + decision.to);
        if (decision.reason.empty())
            breach("precedence", day.date, decision.ladder + ": no reason");
    }

    void rungOrder(const Day& day, const Decision& decision)
    {
        const auto keys = usable(played_, decision.ladder);
        const int from = placeOf(keys, decision.from), to = placeOf(keys, decision.to);
        const auto state = std::find_if(day.before.begin(), day.before.end(),
                                        [&](const auto& s) { return s.ladder == decision.ladder; });
        if (state != day.before.end() && state->rung() != decision.from)
            breach("no rung skipped", day.date,
                   decision.ladder + ": decided from " + decision.from + " but stands on " + state->rung());
        const auto* climbing = ladderOf(decision.ladder).find(decision.from);
        const bool down = climbing != nullptr && climbing->climbs && decision.rule == "must-step";
        const bool fair = decision.kind == DecisionKind::Step ? to == from + 1 || (down && to > from)
                          : decision.kind == DecisionKind::StepBack
                              ? decision.rule == "new-macrocycle" || (to < from && from - to <= 2)
                              : to == from;
        if (!fair)
            breach("no rung skipped", day.date,
                   decision.ladder + ": " + decision.from + " to " + decision.to + " by " + decision.rule);
        if (decision.kind == DecisionKind::Step && isYoung(played_, day.date) && climbing != nullptr &&
            climbing->metric == Metric::ContactTime &&
            ladderOf(decision.ladder).find(decision.to)->boxHeight().value_or(0) > youngDrop + 0.011)
            breach("contacts", day.date, "under 18 and a drop above 30 cm");
    }

    /// A rung may be left late only for a reason that stands above the date.
    void phaseDate(const Day& day, const Decision& decision)
    {
        const auto* laid = findLadderPlan(day.plan, decision.ladder);
        const season::PlannedRung* now = nullptr;
        for (const auto& rung : laid->rungs)
            if (rung.taken && rung.rung == decision.from)
                now = &rung;
        if (now == nullptr)
            return;
        // After a step back the rung gets its week, though its time had come.
        const auto state = *std::find_if(day.before.begin(), day.before.end(),
                                         [&](const auto& s) { return s.ladder == decision.ladder; });
        const auto& rungs = ladderOf(decision.ladder);
        const bool back = state.path.size() > 1 &&
                          rungs.indexOf(state.path[state.path.size() - 2].rung) > rungs.indexOf(state.rung());
        const auto latest = back ? std::max(now->latest, state.since() + days(putOffDays - 1)) : now->latest;
        if (daysBetween(latest, day.date) <= putOffDays)
            return;
        const auto keys = usable(played_, decision.ladder);
        if (decision.from == keys.back() || decision.kind == DecisionKind::Step ||
            decision.kind == DecisionKind::StepBack)
            return;
        static const std::set<std::string> reasons{"pain",   "pain-swap",      "refusal",    "competition-rest",
                                                   "layoff", "one-heavy-step", "transition", "outside-season"};
        if (!reasons.contains(decision.rule))
            breach("phase dates", day.date,
                   decision.ladder + ": " + decision.from + " should have been left by " + dateText(latest) + ", yet " +
                       decision.rule);
    }

    void heavySteps(const Day& day)
    {
        for (const auto& decision : day.decisions) {
            if (decision.kind != DecisionKind::Step || !ladderOf(decision.ladder).heavy)
                continue;
            for (const auto& [when, ladder] : heavy_)
                if (daysBetween(when, day.date) < heavyStepDays)
                    breach("one heavy step", day.date,
                           decision.ladder + " steps " + integerText(daysBetween(when, day.date)) + " days after " +
                               ladder);
        }
        std::size_t today = 0;
        for (const auto& decision : day.decisions)
            today += decision.kind == DecisionKind::Step && ladderOf(decision.ladder).heavy ? 1 : 0;
        if (today > 1)
            breach("one heavy step", day.date, "two heavy ladders step on one day");
        for (const auto& lived : day.lived) // a step that was not taken binds nobody
            if (lived.kind == DecisionKind::Step && ladderOf(lived.ladder).heavy)
                heavy_.emplace_back(day.date, lived.ladder);
    }

    static const Decision* livedOn(const Day& day, const std::string& ladder)
    {
        const auto found =
            std::find_if(day.lived.begin(), day.lived.end(), [&](const auto& d) { return d.ladder == ladder; });
        return found == day.lived.end() ? nullptr : &*found;
    }

    void sessionFollows(const Day& day)
    {
        std::set<std::string> seen;
        for (const auto& lift : day.session.lifts) {
            if (!seen.insert(lift.ladder).second)
                breach("session follows", day.date, lift.ladder + " stands twice in the session");
            const auto* decision = livedOn(day, lift.ladder);
            if (decision == nullptr) {
                breach("session follows", day.date, lift.ladder + " is lifted without a decision");
                continue;
            }
            if (decision->kind == DecisionKind::Rest && !(lift.primer && decision->primerAllowed))
                breach("session follows", day.date, lift.ladder + " rests by " + decision->rule + " and is lifted");
            if (lift.rung != decision->to)
                breach("session follows", day.date,
                       lift.ladder + ": decided " + decision->to + ", planned " + lift.rung);
            if (lift.work.empty() && lift.contactLimit == 0)
                breach("session follows", day.date, lift.ladder + ": no work set");
        }
        const auto lifts = static_cast<int>(day.session.lifts.size());
        if (lifts > season::liftCap(played_.athlete.setup, data().rules))
            breach("session follows", day.date, integerText(lifts) + " primary lifts");
        const bool noSprints =
            std::any_of(day.lived.begin(), day.lived.end(), [](const auto& d) { return d.noSprints; });
        if (noSprints != day.session.sprintsForbidden)
            breach("session follows", day.date, "sprints: session and decisions differ");
    }

    void competition(const Day& day)
    {
        if (daysToCompetition(played_, day.date) > restDays)
            return;
        int repetitions = 0;
        for (const auto& lift : day.session.lifts) {
            if (!lift.primer)
                breach("competition rest", day.date,
                       lift.ladder + " is lifted " + integerText(daysToCompetition(played_, day.date)) +
                           " days before a competition");
            for (const auto& set : lift.work)
                repetitions += set.repetitions;
            const auto state = std::find_if(day.before.begin(), day.before.end(),
                                            [&](const auto& s) { return s.ladder == lift.ladder; });
            if (state != day.before.end() && state->workLoadKg && !lift.work.empty() && lift.work.front().loadKg &&
                *lift.work.front().loadKg > *state->workLoadKg / workShare * primerShare * weekGrowth + hair)
                breach("competition rest", day.date, lift.ladder + ": a primer of " + kg(*lift.work.front().loadKg));
        }
        if (repetitions > primerRepetitions)
            breach("competition rest", day.date, "a primer of " + integerText(repetitions) + " repetitions");
    }

    /// Full work on a rung since it was entered, before a day.
    std::vector<season::WorkDone> workOfStay(const std::string& ladder, const std::string& rung, CivilDate since,
                                             CivilDate day) const
    {
        std::vector<season::WorkDone> work;
        for (const auto& done : played_.log.work)
            if (done.ladder == ladder && done.rung == rung && !done.maintenance && done.day >= since && done.day < day)
                work.push_back(done);
        return work;
    }

    void loads(const Day& day)
    {
        for (const auto& lift : day.session.lifts) {
            if (lift.primer || lift.work.empty() || !lift.work.front().loadKg || *lift.work.front().loadKg <= 0)
                continue;
            const double load = *lift.work.front().loadKg;
            const auto& ladder = ladderOf(lift.ladder);
            const auto state = *std::find_if(day.before.begin(), day.before.end(),
                                             [&](const auto& s) { return s.ladder == lift.ladder; });
            const bool sameStay = state.rung() == lift.rung;
            const auto work = sameStay ? workOfStay(lift.ladder, lift.rung, state.since(), day.date)
                                       : std::vector<season::WorkDone>{};
            if (!work.empty())
                growth(day, lift, load, work);
            else if (state.workLoadKg)
                firstLoad(day, lift, ladder, state, load);
            shortRangeCap(day, lift, ladder, load);
            for (const auto& set : lift.warmUp)
                if (set.loadKg && *set.loadKg > load + hair)
                    breach("loads", day.date, lift.ladder + ": a warm-up heavier than the work");
        }
    }

    /// At most +10 % over any load of the seven days before, counted from the load that stood when they began; and 20 %
    /// over 28.
    void growth(const Day& day, const season::PlannedLift& lift, double load, const std::vector<season::WorkDone>& work)
    {
        const auto full = [](const season::WorkDone& done) { return !done.eased; };
        for (const auto& [span, most] : {std::pair{7, weekGrowth}, std::pair{28, monthGrowth}}) {
            double before = 0; // heaviest full load up to the day the span began, else the first in it
            for (const auto& done : work)
                if (full(done) && (daysBetween(done.day, day.date) >= span || before == 0))
                    before = std::max(before, done.loadKg);
            if (before > 0 && load > before * most + hair)
                breach("loads", day.date,
                       lift.ladder + " " + lift.rung + ": " + kg(load) + " after " + kg(before) + " " +
                           integerText(span) + " days before");
        }
    }

    void firstLoad(const Day& day, const season::PlannedLift& lift, const Ladder& ladder, const LadderState& state,
                   double load)
    {
        double most = *state.workLoadKg;
        const int from = *ladder.indexOf(state.rung()), to = *ladder.indexOf(lift.rung);
        for (int i = from + 1; i <= to; ++i)
            most *= ladder.rungs[static_cast<std::size_t>(i)].loadRatio;
        if (load > most + hair)
            breach("loads", day.date,
                   lift.ladder + " " + lift.rung + ": first load " + kg(load) + ", allowed " + kg(most));
    }

    void shortRangeCap(const Day& day, const season::PlannedLift& lift, const Ladder& ladder, double load)
    {
        if (lift.lift != "quarter-squat" && lift.lift != "pin-quarter-squat")
            return;
        double maximum = 0;
        for (const auto& known : played_.log.maxima)
            if (known.ladder == ladder.key && known.rung == ladder.rungs.front().key && known.day < day.date)
                maximum = known.loadKg;
        const bool young =
            isYoung(played_, day.date) || played_.athlete.setup.athlete.trainingYears.value_or(10) < youngYears;
        const double most = maximum * (young ? shortRangeYoung : shortRange);
        if (maximum > 0 && load > most + hair)
            breach("loads", day.date, lift.rung + ": " + kg(load) + ", allowed " + kg(most));
    }

    void contacts(const Day& day)
    {
        int today = 0;
        for (const auto& lift : day.session.lifts)
            if (lift.metric == Metric::ContactTime)
                today += lift.contacts;
        if (today == 0)
            return;
        int week = today;
        for (const auto& done : played_.log.contacts) {
            const int ago = daysBetween(done.day, day.date);
            week += ago > 0 && ago < 7 ? done.contacts : 0;
            if (ago > 0 && ago < jumpRestDays)
                breach("contacts", day.date, "drop jumps the day after drop jumps");
        }
        if (today > (isYoung(played_, day.date) ? youngContacts : sessionContacts))
            breach("contacts", day.date, integerText(today) + " contacts in a session");
        if (week > weekContacts)
            breach("contacts", day.date, integerText(week) + " contacts in seven days");
    }

    void stepAndBack()
    {
        std::map<std::string, CivilDate> stepped;
        for (const auto& day : played_.days)
            for (const auto& lived : day.lived) {
                if (lived.kind == DecisionKind::Step)
                    stepped[lived.ladder] = day.date;
                if (lived.kind == DecisionKind::StepBack && lived.rule != "new-macrocycle" &&
                    stepped.contains(lived.ladder) && daysBetween(stepped[lived.ladder], day.date) <= 7 &&
                    daysAway(day, lived.ladder) < layoffBackDays)
                    breach("step and back", day.date,
                           lived.ladder + ": stepped on " + dateText(stepped[lived.ladder]) + " and back by " +
                               lived.rule);
            }
    }

    /// The last rung is reached before each main competition where the plan says that time allows, the athlete came and
    /// followed.
    void ladderEnd()
    {
        for (const auto& race : played_.athlete.setup.competitions) {
            const auto* phase = season::phaseOn(played_.first.phases, race.date);
            if (!race.main || phase == nullptr)
                continue;
            const bool away = awayBefore(race.date, phase->macrocycle);
            for (const auto& ladder : played_.first.ladders)
                if (!ladder.rungs.empty())
                    judgeEnd(ladder.ladder, race.date, away);
        }
    }

    void judgeEnd(const std::string& ladder, CivilDate race, bool away)
    {
        const auto last = usable(played_, ladder).back();
        const auto* lived = lastDecision(ladder, race);
        const bool reached = lived != nullptr && lived->to == last;
        ++ends_.peaks;
        ends_.reached += reached ? 1 : 0;
        if (played_.athlete.follows < 1)
            ++ends_.notFollowed;
        else if (away)
            ++ends_.away;
        else if (turnsAreSparse())
            ++ends_.sparse;
        else if (noted(ladder, race))
            ++ends_.told;
        else {
            ++ends_.judged;
            ends_.judgedReached += reached ? 1 : 0;
            if (!reached)
                breach("ladder's end", race,
                       ladder + ": stands on " + (lived == nullptr ? "no rung" : lived->to + " by " + lived->rule) +
                           ", not on " + last);
        }
    }

    /// The ladders share the places of a session: more than eight days from one turn to the next, as the plan says.
    bool turnsAreSparse() const
    {
        const auto& setup = played_.athlete.setup;
        const auto high = std::count_if(setup.trainingDays.begin(), setup.trainingDays.end(), [&](int day) {
            return std::find(setup.sprintDays.begin(), setup.sprintDays.end(), day) != setup.sprintDays.end();
        });
        const double lifting = high < 2 ? static_cast<double>(setup.trainingDays.size()) : static_cast<double>(high);
        const double places = lifting * season::liftCap(setup, data().rules);
        return 7 * static_cast<double>(setup.ladders.size()) > 8 * places;
    }

    /// Share of the lifting days from `from` to the race on which the athlete came.
    double attendance(CivilDate from, CivilDate race) const
    {
        int planned = 0, came = 0;
        for (CivilDate day = from; day < race; day += days(1))
            planned += season::isLiftingDay(played_.first, day) ? 1 : 0;
        for (const auto& day : played_.days)
            came += day.date >= from && day.date < race ? 1 : 0;
        return planned == 0 ? 1 : static_cast<double>(came) / planned;
    }

    int longestGap(CivilDate from, CivilDate to) const
    {
        int longest = 0;
        CivilDate last = from;
        for (const auto& day : played_.days)
            if (day.date > last && day.date < to) {
                longest = std::max(longest, daysBetween(last, day.date));
                last = day.date;
            }
        return std::max(longest, daysBetween(last, to));
    }

    /// Came to fewer than six sevenths of the macrocycle's days, or of the last eight weeks', or stayed away for ten
    /// days or had pain in the last five weeks.
    bool awayBefore(CivilDate race, int macrocycle) const
    {
        constexpr double enough = 6.0 / 7;
        CivilDate from = race;
        for (const auto& span : played_.first.phases)
            if (span.macrocycle == macrocycle)
                from = std::min(from, span.from);
        return attendance(from, race) < enough || attendance(race - days(56), race) < enough ||
               longestGap(race - days(35), race) >= 10 ||
               std::any_of(played_.athlete.pains.begin(), played_.athlete.pains.end(), [&](const Pain& pain) {
                   return pain.level >= 3 && daysBetween(pain.to, race) >= -7 && daysBetween(pain.to, race) < 35;
               });
    }

    /// Said before the season, or on the day from which on it is so: too little time for the rungs before that race.
    bool noted(const std::string& ladder, CivilDate race) const
    {
        const auto own = ladderOf(ladder).name + " ladder before " + dateText(race);
        const auto all = "steps of heavy ladders before " + dateText(race);
        const auto says = [&](const SeasonPlan& plan) {
            return std::any_of(plan.notes.begin(), plan.notes.end(), [&](const std::string& note) {
                return note.find(own) != std::string::npos ||
                       (ladderOf(ladder).heavy && note.find(all) != std::string::npos);
            });
        };
        return says(played_.first) || std::any_of(played_.days.begin(), played_.days.end(),
                                                  [&](const Day& day) { return day.date <= race && says(day.plan); });
    }

    const Decision* lastDecision(const std::string& ladder, CivilDate day) const
    {
        const Decision* last = nullptr;
        for (const auto& played : played_.days)
            if (played.date <= day)
                if (const auto* lived = livedOn(played, ladder))
                    last = lived;
        return last;
    }

    const Played& played_;
    std::vector<Breach> found_;
    Ends ends_;
    std::vector<std::pair<CivilDate, std::string>> heavy_;
};

} // namespace

const std::vector<Check>& allChecks()
{
    static const std::vector<Check> checks{
        {"plays", "every call of the engine answers"},
        {"one decision", "one decision a ladder a day"},
        {"precedence", "no step under pain, refusal, competition rest or an eased load; every decision has its reason"},
        {"no rung skipped", "steps go one rung (drop jumps past higher boxes when time is up), step backs two at most"},
        {"one heavy step", "at most one heavy ladder steps in 7 days"},
        {"session follows", "the session is the decisions: rung, rest, sprints, no more lifts than the cap"},
        {"competition rest", "nothing heavy within 2 days of a competition, primers of 8 repetitions at most"},
        {"loads", "+10 % in 7 days, +20 % in 28 days, first load by the ratio, short squats within their cap"},
        {"contacts", "40 drop-jump contacts a session (24 under 18), 80 in 7 days, a day between"},
        {"step and back", "no step and step back of one ladder within 7 days without a layoff"},
        {"phase dates", "no rung is kept more than 7 days past its latest date without a reason above it"},
        {"ladder's end", "the last rung is reached before the main competition where time allows"},
    };
    return checks;
}

Report judge(const Played& played)
{
    return Checker(played).run();
}

} // namespace fleetrung::seasons
