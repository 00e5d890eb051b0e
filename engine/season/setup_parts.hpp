// What the reader and the checks of a setup share. Private to engine/season.
#pragma once

#include "engine/season/setup.hpp"

namespace fleetrung::season
{

/// Primary lifts that the session's minutes allow, whatever was chosen.
[[nodiscard]] int liftCapOfMinutes(const SeasonSetup& setup, const Rules& rules);

} // namespace fleetrung::season
