// Which ladders stand on which day. Private to engine/season.
#pragma once

#include "engine/season/plan.hpp"

namespace fleetrung::season
{

/// True on a day that the plan gives to primary lifts. On training days without sprints only light ladders stand,
/// unless fewer than two training days a week are sprint days.
[[nodiscard]] bool standsOn(const SeasonPlan& plan, const Ladder& ladder, CivilDate day);

/// The ladders of that day, fastest first, at most the cap; where there are more they take turns.
[[nodiscard]] std::vector<const Ladder*> laddersOn(const SeasonPlan& plan, CivilDate day, const SeasonData& data);

} // namespace fleetrung::season
