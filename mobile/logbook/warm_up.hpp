// Warm-up checks that took something off (private to mobile/logbook).
#pragma once

#include "engine/store/store.hpp"
#include "mobile/logbook/values.hpp"

namespace fleetrung::logbook
{

/// The last of each ladder. `documents` of one athlete and day; others than warm-up checks are passed over.
[[nodiscard]] Expected<std::vector<season::DayAdjustment>> adjustmentsOf(const std::vector<store::Document>& documents);

/// The last of each ladder on that day.
[[nodiscard]] Expected<std::vector<WarmUpAnswer>> keptAnswers(const store::Store& store, const Identifier& athlete,
                                                              CivilDate day);

} // namespace fleetrung::logbook
