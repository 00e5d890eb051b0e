// Events of a season's calendar: those the plan asks for, and those published before. Internal to this folder.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "engine/base/error.hpp"
#include "engine/report/season_calendar.hpp"

namespace fleetrung::report
{

struct CalendarEvent {
    std::string uid;
    CivilDate first;
    CivilDate end;                    ///< exclusive
    std::vector<std::string> content; ///< every line of it but UID, SEQUENCE and the stamps: what a reader sees
};

/// How often an event changed, and when it did last.
struct Revision {
    std::int64_t sequence = 0;
    std::string stamp; ///< RFC 5545 section 3.3.5, UTC
};

struct PublishedEvent {
    CalendarEvent event;
    Revision revision;
};

inline constexpr std::string_view productId = "-//Fleetrung//Season calendar 1//EN"; // RFC 5545 section 3.7.3
inline constexpr std::string_view seasonProperty = "X-FLEETRUNG-SEASON";
inline constexpr std::string_view cancelledStatus = "STATUS:CANCELLED";

[[nodiscard]] std::vector<CalendarEvent> plannedEvents(const CalendarSource& source, const season::SeasonData& data);

/// Reads what `seasonCalendar` wrote for that season, and nothing else. Why no library: libical gives no line of a
/// fault, keeps its error state and the machine's time zones in globals, and cannot hand an event back byte for byte.
[[nodiscard]] Expected<std::vector<PublishedEvent>> publishedEvents(std::string_view bytes, const Identifier& season);

} // namespace fleetrung::report
