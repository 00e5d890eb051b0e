#include "engine/report/season_calendar.hpp"

#include "mobile/logbook/failure.hpp"
#include "mobile/logbook/logbook.hpp"

namespace fleetrung::logbook
{

Expected<std::string> Logbook::seasonCalendar(const Identifier& season, CivilDate today, std::chrono::sys_seconds stamp,
                                              std::string_view previous,
                                              std::optional<std::chrono::minutes> sessionStart) const
{
    const auto planned = plan(season, today);
    if (!planned)
        return failure(planned);
    const auto standing = states(season, today);
    if (!standing)
        return failure(standing);
    return report::seasonCalendar({season, *planned, *standing, today, sessionStart}, stamp, previous);
}

} // namespace fleetrung::logbook
