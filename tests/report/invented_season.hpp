// A season that nobody lived: invented athlete, places and numbers, rich enough to fill every part of the report.
#pragma once

#include "engine/report/season_report.hpp"

namespace fleetrung::invented
{

[[nodiscard]] report::SeasonReport season();

} // namespace fleetrung::invented
