// Steps that are due by date, and the way up of the drop jumps.
#include <algorithm>

#include "engine/base/numbers.hpp"
#include "engine/season/lines.hpp"

namespace fleetrung::season
{
namespace
{

constexpr int climbSessions = 3; // starting value of this project

} // namespace

std::optional<Decision> decideMustStep(const LadderDay& day)
{
    const auto latest = day.latest();
    if (!latest || day.input.today <= *latest)
        return std::nullopt;
    auto target = day.place + 1;
    if (day.rung().climbs) // a higher box is earned, never due: when time is up, the ladder goes down from here
        while (target + 1 < day.usable.rungs.size() &&
               (day.usable.rungs[target]->climbs ||
                day.usable.rungs[target]->boxHeight().value_or(0) > day.rung().boxHeight().value_or(0)))
            ++target;
    auto decision = moveDecision(day, DecisionKind::Step, "must-step", target,
                                 "The time for " + day.name() + " ended on " + dateText(*latest) + ": go to " +
                                     day.nameOf(*day.usable.rungs[target]) + ". No gain is claimed.");
    addStayLines(day, decision.evidence);
    if (const auto progress = timeProgress(day))
        addTimeLines(day, *progress, decision.evidence);
    for (auto& item : decision.evidence)
        item.gates = false;
    decision.evidence.push_back(
        line("days past the latest date", daysBetween(*latest, day.input.today), "days", "0", false));
    return decision;
}

std::optional<Decision> decideClimb(const LadderDay& day)
{
    if (!day.rung().climbs || day.next() == nullptr)
        return std::nullopt;
    const auto& rules = day.data.rules;
    const double limit = rules.jumpContactLimit * 1000;
    std::vector<EvidenceLine> lines;
    addStayLines(day, lines);
    lines.pop_back();
    const auto sessions = static_cast<int>(day.stay.size());
    lines.front() =
        lacking(line("sessions on this rung", sessions, "sessions", atLeast(climbSessions), sessions >= climbSessions),
                counted(climbSessions - sessions, "more session") + " on it");
    double contact = 0, index = 0, best = 0;
    for (const auto& session : day.stay) {
        contact = session.timeToPeak ? session.timeToPeak->value * 1000 : contact;
        index = session.reactiveStrength ? session.reactiveStrength->value : index;
    }
    for (const auto& session : day.sessions)
        best = std::max(best, session.reactiveStrength ? session.reactiveStrength->value : 0);
    lines.push_back(lacking(line("contact time", roundTo(contact, 1), "ms", "at most " + fixedText(limit, 0),
                                 contact > 0 && roundTo(contact, 1) <= limit),
                            contact > 0
                                ? "contact takes " + milliseconds(contact) + ", longer than " + milliseconds(limit)
                                : std::string("no contact time was measured or typed")));
    const double floor = roundTo(best * (1 - rules.jumpIndexError), 1000);
    if (best > 0)
        lines.push_back(lacking(line("reactive strength index", index, "m/s", atLeast(floor, 3), index >= floor),
                                "the reactive strength index is down from its best by more than its error"));
    const int wait = daysUntilOpen(day);
    lines.push_back(lacking(line("days until the next rung's phase", wait, "days", "0", wait == 0),
                            counted(wait, "day") + " until the phase in which " + day.nextName() + " begins"));
    const auto missing = firstUnmet(lines);
    if (!missing.empty())
        return hold(day, std::move(lines), "Stay on this box: " + missing + "." + latestText(day));
    auto decision = moveDecision(day, DecisionKind::Step, "climb", day.place + 1,
                                 "Contact is quick and the reactive strength index holds: go to " + day.nextName() +
                                     ". Stay here if heels strike.");
    decision.evidence = std::move(lines);
    return decision;
}

} // namespace fleetrung::season
