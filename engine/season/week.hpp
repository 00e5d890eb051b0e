// Weeks of the calendar, beginning on Monday or on Sunday.
#pragma once

#include "engine/base/civil_date.hpp"

namespace fleetrung::season
{

/// First day of the week of that day; `weekStart` is an ISO weekday: 1 Monday, 7 Sunday.
[[nodiscard]] CivilDate firstDayOfWeek(CivilDate day, int weekStart);

/// Weeks that begin on Monday and belong to the year of their Thursday (ISO 8601-1:2019, 5.2.3): 2026-W53 ends on
/// 2027-01-03.
struct IsoWeek {
    int year = 0;
    int week = 0; ///< 1..53
};
[[nodiscard]] IsoWeek isoWeek(CivilDate day);

} // namespace fleetrung::season
