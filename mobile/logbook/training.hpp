// Sessions with their sets and repetitions, put together from the store's tables (private to mobile/logbook).
#pragma once

#include <vector>

#include "engine/store/store.hpp"
#include "mobile/logbook/values.hpp"

namespace fleetrung::logbook
{

/// Six queries, whatever the number of sessions. `filter` by athlete, season, session or days.
[[nodiscard]] Expected<std::vector<SessionView>> readTraining(const store::Store& store, const store::Filter& filter);

/// The repetitions that count.
[[nodiscard]] std::vector<reps::Repetition> countedRepetitions(const SetView& set);

} // namespace fleetrung::logbook
