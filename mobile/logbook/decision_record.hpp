// A stored decision as a value (private to mobile/logbook).
#pragma once

#include "mobile/logbook/values.hpp"

namespace fleetrung::logbook
{

[[nodiscard]] Expected<DecisionRecord> recordOf(const store::Decision& row);

} // namespace fleetrung::logbook
