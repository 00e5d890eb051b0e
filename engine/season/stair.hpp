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

/// Days already given to heavy ladders, which must not step in the same seven days.
struct HeavyDays {
    std::vector<CivilDate> planned; ///< first days on a rung
    std::vector<CivilDate> latest;  ///< last days on a rung, by which the step must be taken
};

/// Lays the stair of one window. Heavy ladders keep clear of `heavy`, and add their own days to it.
/// No step falls into a block, and a block's days do not count towards the stay.
[[nodiscard]] std::vector<PlannedRung> layStair(const Ladder& ladder, const UsableRungs& usable, const Window& window,
                                                std::span<const PhaseSpan> phases, const SeasonSetup& setup,
                                                const Rules& rules, const Footing& footing, HeavyDays& heavy,
                                                std::vector<std::string>& notes);

/// Last day on the rung at `place`, by its own latest phase and by what the rungs below it still need.
[[nodiscard]] CivilDate latestDay(const UsableRungs& usable, std::size_t place, const Window& window,
                                  std::span<const PhaseSpan> phases, const Rules& rules);

} // namespace fleetrung::season
