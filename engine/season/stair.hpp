// One ladder's stair over the season. Private to engine/season.
#pragma once

#include <vector>

#include "engine/season/plan.hpp"

namespace fleetrung::season
{

/// The days of one macrocycle on which a ladder is trained.
struct Window {
    CivilDate from;
    CivilDate to;      ///< inclusive
    CivilDate taperTo; ///< last day of the taper; races may follow it
    int macrocycle = 0;
};
[[nodiscard]] std::vector<Window> trainingWindows(std::span<const PhaseSpan> phases);

/// The rungs of a ladder this athlete can and may use, in order, and why the others are left out.
struct UsableRungs {
    std::vector<const Rung*> rungs; ///< point into the ladder
    std::vector<OmittedRung> omitted;

    /// Place of a rung; of the next usable one where it is not usable itself; the last where none follows.
    [[nodiscard]] std::size_t placeOf(const Ladder& ladder, std::string_view rungKey) const;
};
[[nodiscard]] UsableRungs usableRungs(const Ladder& ladder, const SeasonSetup& setup, const Rules& rules);

/// Where the stair of a window begins: on which usable rung, since when, and from which day on steps can still be laid.
struct Footing {
    std::size_t place = 0;
    CivilDate since;
    CivilDate notBefore;
};

/// Lays the stair of one window. Heavy ladders keep clear of `heavySteps`, the first days on a
/// rung of those laid before, and add their own.
/// No step falls into a block, and a block's days do not count towards the stay.
[[nodiscard]] std::vector<PlannedRung> layStair(const Ladder& ladder, const UsableRungs& usable, const Window& window,
                                                std::span<const PhaseSpan> phases, const SeasonSetup& setup,
                                                const Rules& rules, const Footing& footing,
                                                std::vector<CivilDate>& heavySteps, std::vector<std::string>& notes);

/// One heavy ladder steps in seven days: from the last step of the window backwards, latest dates are moved as much
/// earlier as that takes, though no stay is made shorter than a step for evidence needs. So steps that must be taken do
/// not queue up behind each other. Where there is no time for all of them the plan's notes say so.
void keepHeavyStepsApart(SeasonPlan& plan, const Window& window, std::optional<CivilDate> today,
                         const SeasonData& data);

/// Last day on the rung at `place`, by its own latest phase and by what the rungs below it still need.
[[nodiscard]] CivilDate latestDay(const UsableRungs& usable, std::size_t place, const Window& window,
                                  std::span<const PhaseSpan> phases, const Rules& rules);

} // namespace fleetrung::season
