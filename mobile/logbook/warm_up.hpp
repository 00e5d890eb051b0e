// Warm-up checks that took something off (private to mobile/logbook).
#pragma once

#include "engine/season/warm_up_check.hpp"
#include "engine/store/store.hpp"

namespace fleetrung::logbook
{

/// The last of each ladder on that day.
[[nodiscard]] Expected<std::vector<season::DayAdjustment>> keptAdjustments(const store::Store& store,
                                                                           const Identifier& athlete, CivilDate day);

} // namespace fleetrung::logbook
