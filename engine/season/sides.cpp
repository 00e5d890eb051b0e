// Left against right on one-sided lifts: told, never a gate.
#include <cmath>

#include "engine/base/numbers.hpp"
#include "engine/season/lines.hpp"
#include "engine/statistics/reliability.hpp"
#include "engine/statistics/robust.hpp"

namespace fleetrung::season
{
namespace
{

/// (left - right) / mean of the two, for each day on which both sides of the current rung were measured.
std::vector<double> asymmetries(const LadderDay& day)
{
    std::vector<double> found;
    for (const auto& left : day.sided)
        for (const auto& right : day.sided)
            if (left.side == Side::Left && right.side == Side::Right && left.day == right.day && left.timeToPeak &&
                right.timeToPeak && left.rung == day.rung().key && right.rung == day.rung().key) {
                const double sum = left.timeToPeak->value + right.timeToPeak->value;
                if (sum > 0)
                    found.push_back(2 * (left.timeToPeak->value - right.timeToPeak->value) / sum);
            }
    return found;
}

} // namespace

std::optional<EvidenceLine> sideLine(const LadderDay& day)
{
    const auto& rules = day.data.rules;
    const auto all = asymmetries(day);
    const auto count = static_cast<std::size_t>(rules.sideSessions);
    if (!day.ladder.oneSided || all.size() < count)
        return std::nullopt;
    std::vector<double> changes;
    for (std::size_t i = 1; i < all.size(); ++i)
        changes.push_back(all[i] - all[i - 1]);
    const auto recent = std::span(all).last(count);
    const double middle = statistics::mean(recent);
    const double error = statistics::typicalErrorWithPrior(changes, day.ladder.typicalErrorShare, rules.priorSessions) /
                         std::sqrt(static_cast<double>(count));
    bool sameSide = true;
    for (const double asymmetry : recent)
        sameSide = sameSide && asymmetry * middle > 0;
    const bool apart = sameSide && std::abs(middle) > rules.sideLimit && std::abs(middle) > rules.sideErrors * error;
    auto told =
        line(middle > 0 ? "left later than right" : "right later than left", roundTo(std::abs(middle) * 100, 1), "%",
             "at most " + fixedText(rules.sideLimit * 100, 0) + ", for show", !apart, roundTo(error * 100, 1));
    told.gates = false;
    return told;
}

} // namespace fleetrung::season
