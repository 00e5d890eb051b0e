#include "engine/report/summary.hpp"

#include <algorithm>
#include <array>
#include <map>
#include <set>

#include "engine/base/numbers.hpp"
#include "engine/report/rung_change.hpp"
#include "engine/report/words.hpp"

namespace fleetrung::report
{
namespace
{

using Sentences = std::vector<std::string>;

constexpr double notedPain = 3; // from here on the rules swap lifts

void sayTime(Sentences& out, const SeasonReport& report)
{
    const int weeks = weekOf(report, report.last);
    if (report.upTo >= report.last)
        out.push_back("The season ran " + countText(weeks, "week", "weeks") + ", from " + dayText(report.first) +
                      " to " + dayText(report.last) + ".");
    else
        out.push_back("Week " + integerText(weekOf(report, report.upTo)) + " of " + integerText(weeks) +
                      ": the season began on " + dayText(report.first) + " and is planned to " + dayText(report.last) +
                      ".");
}

/// "illness 3, travel 2", most frequent first, then by name.
std::string reasonsText(const std::vector<LostDay>& days)
{
    std::map<std::string, int> counts;
    for (const auto& day : days)
        ++counts[day.why.empty() ? "no reason given" : day.why];
    std::vector<std::pair<std::string, int>> sorted(counts.begin(), counts.end());
    std::stable_sort(sorted.begin(), sorted.end(), [](const auto& a, const auto& b) { return a.second > b.second; });
    std::string text;
    for (const auto& [why, count] : sorted)
        text += (text.empty() ? "" : ", ") + why + " " + integerText(count);
    return text;
}

void sayPlan(Sentences& out, const SeasonReport& report)
{
    std::set<CivilDate> planned;
    std::set<CivilDate> done;
    for (const auto& line : report.plan) {
        if (line.day > report.upTo)
            continue;
        planned.insert(line.day);
        if (line.state == PlanState::Done || line.state == PlanState::Changed)
            done.insert(line.day);
    }
    if (!planned.empty())
        out.push_back(
            integerText(static_cast<int>(done.size())) + " of " +
            countText(static_cast<int>(planned.size()), "planned training day was", "planned training days were") +
            " done.");
    if (!report.lostDays.empty())
        out.push_back(countText(static_cast<int>(report.lostDays.size()), "day was lost: ", "days were lost: ") +
                      reasonsText(report.lostDays) + ".");
}

void sayWork(Sentences& out, const SeasonReport& report)
{
    int sets = 0;
    int repetitions = 0;
    int measured = 0;
    for (const auto& session : report.sessions)
        for (const auto& set : session.sets) {
            ++sets;
            repetitions += set.repetitionsDone;
            measured += set.measured ? set.repetitionsDone : 0;
        }
    if (sets == 0)
        return;
    const std::string bySensor = measured == repetitions ? "all measured by a sensor"
                                 : measured == 0         ? "all typed in"
                                                         : integerText(measured) + " of them measured by a sensor";
    out.push_back(countText(static_cast<int>(report.sessions.size()), "session", "sessions") + " with " +
                  countText(sets, "set", "sets") + " and " + countText(repetitions, "repetition", "repetitions") +
                  " are in the log, " + bySensor + ".");
}

std::string rungName(const Ladder& ladder, std::size_t rung)
{
    return rung < ladder.rungs.size() ? inSentence(ladder.rungs[rung].name) : "an unknown rung";
}

void sayPath(Sentences& out, const Ladder& ladder)
{
    if (ladder.taken.empty())
        return;
    const auto& now = ladder.taken.back();
    const auto moves = static_cast<int>(ladder.taken.size()) - 1;
    std::string text = ladder.name + ": ";
    if (moves == 0)
        text += "on " + rungName(ladder, now.rung) + " since " + dayText(now.first) + ".";
    else
        text += "from " + rungName(ladder, ladder.taken.front().rung) + " to " + rungName(ladder, now.rung) + " in " +
                countText(moves, "change of rung", "changes of rung") + "; on " + rungName(ladder, now.rung) +
                " since " + dayText(now.first) + ".";
    out.push_back(text);
}

/// "full squat (634 to 549 ms, typical error 29 ms); half squat (...)": the rungs with that verdict, empty for none.
template <class Verdict>
std::string rungsWith(const Ladder& ladder, const std::vector<RungChange>& changes, Verdict verdict)
{
    std::string text;
    for (const auto& change : changes)
        if (verdict(change))
            text += (text.empty() ? "" : "; ") + rungName(ladder, change.rung) + std::string(sideWords(change.side)) +
                    " (" + millisecondsText(change.entry) + " to " + millisecondsText(change.latest) +
                    " ms, typical error " + millisecondsText(change.typicalError) + " ms)";
    return text;
}

void sayChanges(Sentences& out, const Ladder& ladder)
{
    const auto changes = rungChanges(ladder);
    const auto say = [&](const std::string& before, const std::string& rungs) {
        if (!rungs.empty())
            out.push_back(before + rungs + ".");
    };
    const auto quantity = capitalised(ladder.evidenceName);
    say(quantity + " became shorter on ",
        rungsWith(ladder, changes, [](const auto& change) { return change.quicker(); }));
    say(quantity + " became longer on ",
        rungsWith(ladder, changes, [](const auto& change) { return change.slower(); }));
    say("No change of " + ladder.evidenceName + " beyond its day-to-day error on ",
        rungsWith(ladder, changes, [](const auto& change) { return !change.quicker() && !change.slower(); }));
}

void saySprints(Sentences& out, const SeasonReport& report)
{
    std::vector<std::string> tests;
    for (const auto& run : report.sprints)
        if (std::find(tests.begin(), tests.end(), run.test) == tests.end())
            tests.push_back(run.test);
    for (const auto& test : tests) {
        const Sprint* first = nullptr;
        const Sprint* best = nullptr;
        int count = 0;
        for (const auto& run : report.sprints) {
            if (run.test != test)
                continue;
            ++count;
            if (first == nullptr || (run.day == first->day && run.timeS < first->timeS))
                first = &run;
            if (best == nullptr || run.timeS < best->timeS)
                best = &run;
        }
        out.push_back(capitalised(test) + ": " + countText(count, "run", "runs") + "; best " +
                      numberText(best->timeS, 2) + " s on " + dayText(best->day) +
                      (best->windMps ? " (wind " + signedText(*best->windMps, 1) + " m/s)" : std::string()) +
                      ", best of the first day " + numberText(first->timeS, 2) + " s.");
    }
}

/// "5 hold, 2 step", in the order in which the kinds first came up.
std::string kindsText(const std::vector<Decision>& decisions)
{
    std::vector<std::pair<std::string, int>> kinds;
    for (const auto& decision : decisions) {
        const auto known =
            std::find_if(kinds.begin(), kinds.end(), [&](const auto& kind) { return kind.first == decision.kind; });
        if (known == kinds.end())
            kinds.emplace_back(decision.kind, 1);
        else
            ++known->second;
    }
    std::string text;
    for (const auto& [kind, count] : kinds)
        text += (text.empty() ? "" : ", ") + integerText(count) + " " + kind;
    return text;
}

void sayDecisions(Sentences& out, const SeasonReport& report)
{
    if (report.decisions.empty())
        return;
    const auto answered = [&](Answer answer) {
        return static_cast<int>(std::count_if(report.decisions.begin(), report.decisions.end(),
                                              [&](const Decision& decision) { return decision.answer == answer; }));
    };
    const auto openMoves =
        std::count_if(report.decisions.begin(), report.decisions.end(), [](const Decision& decision) {
            return decision.answer == Answer::Open && decision.kind != "hold";
        });
    out.push_back(
        countText(static_cast<int>(report.decisions.size()), "decision was taken (", "decisions were taken (") +
        kindsText(report.decisions) + "); " + integerText(answered(Answer::Followed)) + " followed, " +
        integerText(answered(Answer::Changed)) + " changed by the athlete; of those that are no hold, " +
        integerText(openMoves) + " still open.");
}

void sayPain(Sentences& out, const SeasonReport& report)
{
    std::set<CivilDate> days;
    std::set<std::string> places;
    for (const auto& entry : report.wellness)
        if (entry.pain && *entry.pain >= notedPain) {
            days.insert(entry.day);
            if (!entry.painWhere.empty())
                places.insert(entry.painWhere);
        }
    if (days.empty())
        return;
    std::string where;
    for (const auto& place : places)
        where += (where.empty() ? " (" : ", ") + place;
    out.push_back("Pain of 3 or more out of 10 was noted on " +
                  countText(static_cast<int>(days.size()), "day", "days") + (where.empty() ? "" : where + ")") + ".");
}

} // namespace

std::vector<std::string> whatHappened(const SeasonReport& report)
{
    Sentences out;
    sayTime(out, report);
    sayPlan(out, report);
    sayWork(out, report);
    for (const auto& ladder : report.ladders) {
        sayPath(out, ladder);
        sayChanges(out, ladder);
    }
    saySprints(out, report);
    sayDecisions(out, report);
    sayPain(out, report);
    return out;
}

std::span<const std::string_view> standingCautions()
{
    static constexpr std::array<std::string_view, 7> cautions{
        "This report is no medical advice. Work with a licensed coach or clinician; local rules and facility codes "
        "come first.",
        "Pain, injury, pregnancy: clear it with a clinician before training on. Under 18: with a guardian's consent "
        "and clearance.",
        "Heavy lifts over a short range: safety bars set and a spotter there.",
        "Landings are limited: keep to the contacts planned for a session.",
        "Estimates of the one-repetition maximum are estimates.",
        "Target bands are starting values, for show: where a rung should lead, not a mark to be forced.",
        "That strength over shorter ranges carries over better to sprinting is the working premise, with evidence on "
        "both sides. "
        "Nothing here shows cause."};
    return cautions;
}

int weekOf(const SeasonReport& report, CivilDate day)
{
    const int days = daysBetween(report.first, day);
    return (days >= 0 ? days : days - 6) / 7 + 1;
}

} // namespace fleetrung::report
