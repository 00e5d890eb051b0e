// Turns that were planned and not taken: what makes days away a layoff.
#include <algorithm>

#include "engine/season/lines.hpp"
#include "engine/season/turns.hpp"

namespace fleetrung::season
{

bool restsForCompetition(const SeasonSetup& setup, CivilDate day, const Rules& rules)
{
    return std::any_of(setup.competitions.begin(), setup.competitions.end(), [&](const Competition& competition) {
        const int away = daysBetween(day, competition.date);
        return away >= 0 && away <= static_cast<int>(rules.competitionRestDays);
    });
}

std::optional<CivilDate> firstMissedTurn(const LadderDay& day, CivilDate after, CivilDate before)
{
    auto plan = day.input.plan;
    plan.setup.blocks.clear(); // days lost to illness or travel are days away
    for (CivilDate d = after + std::chrono::days(1); d < before; d += std::chrono::days(1)) {
        if (restsForCompetition(plan.setup, d, day.data.rules))
            continue;
        const auto turns = laddersOn(plan, d, day.data);
        if (std::any_of(turns.begin(), turns.end(),
                        [&](const Ladder* ladder) { return ladder->key == day.ladder.key; }))
            return d;
    }
    return std::nullopt;
}

} // namespace fleetrung::season
