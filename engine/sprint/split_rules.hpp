// Which splits can be used, and whether they carry a fit (private to engine/sprint).
#pragma once

#include "engine/sprint/splits.hpp"

namespace fleetrung::sprint
{

[[nodiscard]] bool offsetIsFree(const Start& start);
[[nodiscard]] int unknowns(const Start& start);

/// In order of distance, the one at the start line left out; refused where they cannot be.
[[nodiscard]] Expected<std::vector<SplitResidual>> readSplits(std::span<const Split> splits);

/// Marks the splits after the speed has begun to fall. The fall must be 1.5 % from one stretch to the fastest: less is
/// timing, and so is anything over a stretch shorter than 8 m (starting values of this project).
void leaveOutAfterPeak(std::vector<SplitResidual>& splits);

/// What is missing, in a sentence; nothing where the used splits carry the fit.
[[nodiscard]] Expected<void> checkPlacement(const std::vector<SplitResidual>& splits, const Start& start);

[[nodiscard]] int usedCount(const std::vector<SplitResidual>& splits);

} // namespace fleetrung::sprint
