// A stored decision as a value (private to mobile/logbook).
#pragma once

#include "mobile/logbook/values.hpp"

namespace fleetrung::logbook
{

[[nodiscard]] Expected<DecisionRecord> recordOf(const store::Decision& row);

/// Of several decisions on one ladder and day (the athlete entered pain after the first one) the last counts. `all` in
/// the order taken.
[[nodiscard]] std::vector<store::Decision> lastOfEachDay(std::vector<store::Decision> all);

} // namespace fleetrung::logbook
