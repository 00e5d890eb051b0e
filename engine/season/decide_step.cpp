// Step for evidence, no response, hold.
#include <algorithm>

#include "engine/base/numbers.hpp"
#include "engine/season/lines.hpp"

namespace fleetrung::season
{
namespace
{

/// Long enough on the rung to say that it brings nothing.
bool longEnough(const LadderDay& day, bool exposed)
{
    const auto& rules = day.data.rules;
    return exposed || (static_cast<double>(day.stay.size()) >= rules.noResponseSessions &&
                       daysOnRung(day) >= rules.noResponseDays);
}

std::string noResponseText(const LadderDay& day, const TimeProgress& progress)
{
    const auto strength = strengthTrend(day);
    return "No response on " + day.name() + ": in " + integerText(progress.sessions) + " sessions " + timeName(day) +
           (progress.gain > 0 ? " has come down by " + milliseconds(progress.gain)
                              : std::string(" has not come down")) +
           ", less than it wanders by itself" +
           (strength && strength->levelled ? ", and strength has levelled off." : ".");
}

/// The athlete or coach may step without evidence: the decision asks, or takes the step where it was chosen.
Decision byExposure(const LadderDay& day, const std::string& told, std::vector<EvidenceLine> lines)
{
    const auto& chosen = day.input.stepByExposure;
    Decision decision;
    if (std::find(chosen.begin(), chosen.end(), day.ladder.key) != chosen.end()) {
        decision = moveDecision(day, DecisionKind::Step, "step-by-exposure", day.place + 1,
                                told + " The step to " + day.nextName() +
                                    " is taken by choice, for exposure; no evidence of a gain stands behind it.");
    } else {
        decision = stayDecision(day, DecisionKind::Hold, "no-response",
                                told + " You or the coach may choose to step by exposure; otherwise the rung is kept." +
                                    latestText(day));
        decision.asks = true;
    }
    decision.evidence = std::move(lines);
    return decision;
}

} // namespace

Decision decideByEvidence(const LadderDay& day)
{
    std::vector<EvidenceLine> lines;
    auto slow = speedNotFollowing(day);
    addStayLines(day, lines, slow.has_value());
    const auto progress = timeProgress(day);
    if (progress)
        addTimeLines(day, *progress, lines);
    if (!day.stay.empty())
        addStrengthLines(day, lines);
    const bool exposed = slow.has_value();
    if (slow)
        lines.push_back(std::move(*slow));
    if (day.next() == nullptr)
        return hold(day, std::move(lines), day.name() + " is the last rung: it is kept to the last competition.");
    const int wait = daysUntilOpen(day);
    lines.push_back(lacking(line("days until the next rung's phase", wait, "days", "0", wait == 0),
                            counted(wait, "day") + " until the phase in which " + day.nextName() + " begins"));
    const bool mayAsk = wait == 0 && longEnough(day, exposed);
    if (!progress && mayAsk && !day.stay.empty())
        return byExposure(day, "No " + timeName(day) + " was measured on " + day.name() + ".", std::move(lines));
    if (!progress)
        return hold(day, std::move(lines),
                    (day.stay.empty()
                         ? "No session on this rung yet."
                         : "Fewer than three sessions with a measured " + timeName(day) + " on this rung.") +
                        latestText(day));
    if (mayAsk && progress->gain < roundTo(day.data.rules.noResponseGain * progress->error, 1))
        return byExposure(day, noResponseText(day, *progress), std::move(lines));
    const auto missing = firstUnmet(lines);
    if (!missing.empty())
        return hold(day, std::move(lines), "Stay on " + day.name() + ": " + missing + "." + latestText(day));
    auto decision =
        moveDecision(day, DecisionKind::Step, "step-for-evidence", day.place + 1,
                     "On " + day.name() + " " + timeName(day) + " came down from " + milliseconds(progress->baseline) +
                         " to " + milliseconds(progress->recent) +
                         ", more than it wanders by itself, and velocity held: go to " + day.nextName() + ".");
    decision.evidence = std::move(lines);
    return decision;
}

} // namespace fleetrung::season
