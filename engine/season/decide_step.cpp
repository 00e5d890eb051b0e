// Step for evidence, no response, hold.
#include <algorithm>

#include "engine/base/numbers.hpp"
#include "engine/season/lines.hpp"

namespace fleetrung::season
{
namespace
{

std::optional<Decision> noResponse(const LadderDay& day, const TimeProgress& progress,
                                   const std::vector<EvidenceLine>& lines, bool open)
{
    const auto& rules = day.data.rules;
    const double least = roundTo(rules.noResponseGain * progress.error, 1);
    if (!open || static_cast<double>(day.stay.size()) < rules.noResponseSessions ||
        daysOnRung(day) < rules.noResponseDays || progress.gain >= least)
        return std::nullopt;
    const auto& chosen = day.input.stepByExposure;
    const std::string told = "No response on " + day.rung().name + ": " + timeName(day) + " has come down by " +
                             milliseconds(progress.gain) + " in " + integerText(progress.sessions) + " sessions.";
    Decision decision;
    if (std::find(chosen.begin(), chosen.end(), day.ladder.key) != chosen.end()) {
        decision = moveDecision(day, DecisionKind::Step, "step-by-exposure", day.place + 1,
                                told + " The step to " + day.next()->name +
                                    " is taken by choice, for exposure; no evidence of "
                                    "a gain stands behind it.");
    } else {
        decision = stayDecision(day, DecisionKind::Hold, "no-response",
                                told + " You or the coach may choose to step by exposure; otherwise the rung is kept." +
                                    latestText(day));
        decision.asks = true;
    }
    decision.evidence = lines;
    return decision;
}

} // namespace

Decision decideByEvidence(const LadderDay& day)
{
    std::vector<EvidenceLine> lines;
    addStayLines(day, lines);
    const auto progress = timeProgress(day);
    if (progress)
        addTimeLines(day, *progress, lines);
    if (!day.stay.empty())
        addStrengthLines(day, lines);
    if (day.next() == nullptr)
        return hold(day, std::move(lines), day.rung().name + " is the last rung: it is kept to the races.");
    const int wait = daysUntilOpen(day);
    lines.push_back(line("days until the next rung's phase", wait, "days", "0", wait == 0));
    if (!progress)
        return hold(day, std::move(lines),
                    (day.stay.empty()
                         ? "No session on this rung yet."
                         : "Fewer than three sessions with a measured " + timeName(day) + " on this rung.") +
                        latestText(day));
    if (auto asked = noResponse(day, *progress, lines, wait == 0))
        return *asked;
    const auto missing = firstUnmet(lines);
    if (!missing.empty())
        return hold(day, std::move(lines), "Hold: " + missing + "." + latestText(day));
    auto decision =
        moveDecision(day, DecisionKind::Step, "step-for-evidence", day.place + 1,
                     "On " + day.rung().name + " " + timeName(day) + " came down from " +
                         milliseconds(progress->baseline) + " to " + milliseconds(progress->recent) +
                         ", more than it wanders by itself, and velocity held: go to " + day.next()->name + ".");
    decision.evidence = std::move(lines);
    return decision;
}

} // namespace fleetrung::season
