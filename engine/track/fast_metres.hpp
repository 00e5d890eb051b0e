// Fast metres: metres run at 90 % and at 95 % of best speed or above. The shares are this project's (rules.md, "Also of
// the job"); that fast running is what a sprinter's load is counted by is common practice, no source.
//
// A flying run: the metres of its zone where its mean speed reaches the share; the run-in counts none. A run with
// splits that carry a fit: from where the fitted speed reaches the share up to the last split the fit used; beyond it
// each stretch by its mean speed. Any other run: from its distance and time, by a top speed that is solved with the
// usual time constant; marked estimated. Untimed work counts only where it is sprints or flying runs at effort 9 or
// above (starting value of this project): such a run is taken to reach best speed. The best time of work stands for
// all its runs. Resisted, hill and easy runs count none.
#pragma once

#include "engine/track/best_speed.hpp"

namespace fleetrung::track
{

enum class Basis { None, Measured, Fitted, Estimated };

struct FastMetres {
    double at90 = 0, at95 = 0; ///< m
    Basis basis = Basis::None;
    std::string why; ///< why there are none, or what was assumed
};

constexpr double fastShare = 0.90, fastestShare = 0.95;
constexpr double fullEffort = 9; ///< of 10

[[nodiscard]] FastMetres fastMetres(const KnownRun& run, const std::optional<TopSpeed>& best);
[[nodiscard]] FastMetres fastMetres(const Work& work, const std::optional<TopSpeed>& best);

[[nodiscard]] std::string_view nameOf(Basis basis); ///< "none", "measured", "fitted", "estimated"

} // namespace fleetrung::track
