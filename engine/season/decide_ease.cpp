#include "engine/base/numbers.hpp"
#include "engine/season/lines.hpp"
#include "engine/statistics/robust.hpp"

namespace fleetrung::season
{
namespace
{

constexpr std::size_t easeRecent = 2;
constexpr std::size_t easeBefore = 6;

} // namespace

std::optional<Decision> decideEase(const LadderDay& day)
{
    const auto& rules = day.data.rules;
    if (day.putOffTooLong())
        return std::nullopt;
    std::vector<double> times;
    for (const auto& session : day.stay)
        if (session.timeToPeak)
            times.push_back(session.timeToPeak->value * 1000);
    if (times.size() >= easeRecent + easeBefore) {
        const double recent = roundTo(statistics::mean(std::span(times).last(easeRecent)), 1);
        const double before =
            roundTo(statistics::median(std::span(times).last(easeRecent + easeBefore).first(easeBefore)), 1);
        const double error = roundTo(timeError(day, before), 1);
        const double limit = roundTo(rules.easeGain * error, 1);
        if (recent - before > limit) {
            const bool strong = recent - before > roundTo(rules.easeStrongGain * error, 1);
            const double off = strong ? rules.easeStrongLoad : rules.easeLoad;
            auto decision =
                stayDecision(day, DecisionKind::Ease, "ease",
                             "The last two sessions came " + milliseconds(recent - before) +
                                 " later than the six before: " + fixedText(off * 100, 0) + " % less load.");
            decision.loadFactor = 1 - off;
            decision.evidence.push_back(line(timeName(day) + ", later than before", recent - before, "ms",
                                             "at most " + fixedText(limit, 0), false, error));
            return decision;
        }
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
