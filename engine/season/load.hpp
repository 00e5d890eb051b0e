// Load rules: how much may go on the bar.
#pragma once

#include <optional>
#include <span>
#include <string>

#include "engine/season/plan.hpp"
#include "engine/season/training_log.hpp"

namespace fleetrung::season
{

struct LoadLimit {
    double maximumKg = 0;
    std::string reason; ///< which rule sets it, plain words
};

/// Short squats stay within 1.4 x the full squat's e1RM (1.0 under 18 or with less than two years of lifting); nothing
/// for other rungs.
[[nodiscard]] std::optional<LoadLimit> shortRangeLimit(const Rung& rung, double fullMaximumKg,
                                                       const AthleteFacts& athlete, CivilDate day, const Rules& rules);

/// First load on the rung after `from`: the lower of ratio x last work load and the load of effort 7 of 10 (where
/// known), within shortRangeLimit() and, under 18, 10 % more than before.
[[nodiscard]] LoadLimit firstLoadOn(const Rung& next, double lastWorkLoadKg, std::optional<double> effortSevenKg,
                                    std::optional<double> fullMaximumKg, const AthleteFacts& athlete, CivilDate day,
                                    const Rules& rules);

/// At most +10 % over the heaviest load of the 7 days before... and +20 % over 28 days, on one rung. `work` by day, not
/// empty.
[[nodiscard]] LoadLimit loadLimit(std::span<const WorkDone> work, CivilDate day, const Rules& rules);

/// The next load on a rung and why: the same load, or 2-10 % more when the target was beaten by one or two repetitions
/// in the last two sessions; never more than loadLimit(). Source: ACSM, Ratamess et al., Med Sci Sports Exerc
/// 2009;41(3):687-708. `work` by day, not empty.
[[nodiscard]] LoadLimit nextLoad(std::span<const WorkDone> work, CivilDate day, const Rules& rules);

} // namespace fleetrung::season
