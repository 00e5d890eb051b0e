// What is needed to finish a set, as the JSON text that is kept beside its pieces (private to mobile/logbook).
#pragma once

#include <string>

#include "engine/base/error.hpp"
#include "mobile/logbook/values.hpp"

namespace fleetrung::logbook
{

[[nodiscard]] std::string setUnderWayText(const SetUnderWay& set);
/// Without the set's id. StoreCorrupt where the text is not what setUnderWayText makes.
[[nodiscard]] Expected<SetUnderWay> parseSetUnderWay(const std::string& text);

} // namespace fleetrung::logbook
