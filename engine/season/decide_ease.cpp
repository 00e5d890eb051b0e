#include "engine/base/numbers.hpp"
#include "engine/season/lines.hpp"

namespace fleetrung::season
{
namespace
{

/// Where nothing is on the bar (drop jumps) sets go instead of load.
std::string easedText(const LadderDay& day, double off)
{
    return day.rung().probeShare > 0 ? fixedText(off * 100, 0) + " % less load."
                                     : fixedText(day.data.rules.easeSets * 100, 0) + " % fewer sets.";
}

} // namespace

std::optional<Decision> decideEase(const LadderDay& day)
{
    const auto& rules = day.data.rules;
    if (day.putOffTooLong())
        return std::nullopt;
    if (const auto change = recentChange(day); change && change->later > change->limit) {
        const bool strong = change->later > roundTo(rules.easeStrongGain * change->error, 1);
        const double off = strong ? rules.easeStrongLoad : rules.easeLoad;
        auto decision = stayDecision(day, DecisionKind::Ease, "ease",
                                     "The last two sessions came " + milliseconds(change->later) +
                                         " later than the six before: " + easedText(day, off));
        decision.loadFactor = day.rung().probeShare > 0 ? 1 - off : 1;
        decision.setFactor = day.rung().probeShare > 0 ? 1 : 1 - rules.easeSets;
        decision.evidence.push_back(line(timeName(day) + ", later than before", change->later, "ms",
                                         "at most " + fixedText(change->limit, 0), false, change->error));
        return decision;
    }
    const auto& sleep = day.input.wellness.sleepHours;
    if (sleep && *sleep <= rules.poorNightHours) {
        auto decision =
            stayDecision(day, DecisionKind::Ease, "poor-night",
                         "A very poor night: " + fixedText(rules.easeSets * 100, 0) + " % fewer sets, no step.");
        decision.setFactor = 1 - rules.easeSets;
        decision.evidence.push_back(
            line("sleep", roundTo(*sleep, 10), "h", "more than " + fixedText(rules.poorNightHours, 1), false));
        return decision;
    }
    return std::nullopt;
}

} // namespace fleetrung::season
