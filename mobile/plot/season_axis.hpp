// What the pictures of a season share: the week axis, today, races, phases. Internal to this folder.
#pragma once

#include "mobile/plot/pictures.hpp"

namespace fleetrung::plot
{

/// Weeks since the season's first day: 0 at its start.
[[nodiscard]] double weeksAt(const SeasonSpan& season, CivilDate day);
[[nodiscard]] Axis weekAxis(const SeasonSpan& season);
[[nodiscard]] std::vector<StripPart> phaseStrip(const SeasonSpan& season);
void addToday(Plot& plot, const SeasonSpan& season);

} // namespace fleetrung::plot
