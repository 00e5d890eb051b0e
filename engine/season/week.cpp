#include "engine/season/week.hpp"

namespace fleetrung::season
{

using std::chrono::days;

CivilDate firstDayOfWeek(CivilDate day, int weekStart)
{
    return day - days((isoWeekday(day) - weekStart + 7) % 7);
}

IsoWeek isoWeek(CivilDate day)
{
    const CivilDate thursday = firstDayOfWeek(day, 1) + days(3);
    const std::chrono::year year = std::chrono::year_month_day(thursday).year();
    return {static_cast<int>(year), daysBetween(CivilDate(year / 1 / 1), thursday) / 7 + 1};
}

} // namespace fleetrung::season
