// The season plan as an iCalendar object (RFC 5545) that a calendar can take again and again: each event keeps its UID
// however the plan moves, and what changed or is no longer planned carries a higher SEQUENCE (RFC 5546 section 2.1.4).
//
// The bytes written last are all that is known of what was published before. An event whose lines are the same keeps
// its SEQUENCE and its stamps: the same plan gives the same bytes. One that is planned no more stays in the file as
// STATUS:CANCELLED, so that a calendar that took the older file drops it, and one that comes back counts on.
//
// No ORGANIZER is written, although RFC 5546 section 3.2.1 lists it for METHOD:PUBLISH: nobody is invited (RFC 5545
// section 3.8.4.3), and the program knows no address.
#pragma once

#include <chrono>
#include <optional>
#include <span>
#include <string>
#include <string_view>

#include "engine/base/identifier.hpp"
#include "engine/season/session_plan.hpp"

namespace fleetrung::report
{

/// What a season's calendar is made of. References must outlive the call.
struct CalendarSource {
    Identifier season; ///< the same for all plans of one season: every UID is named after it
    const season::SeasonPlan& plan;
    std::span<const season::LadderState> states; ///< loads are known on the rung where the athlete stands; may be empty
    CivilDate from; ///< what lies wholly before this day stays as it was published, and is not published anew
    std::optional<std::chrono::minutes> sessionStart; ///< local time of day; without it sessions are whole days
};

/// Bytes of one VCALENDAR: sessions, competitions and phases. `stamp` is the instant of this writing, `previous` the
/// bytes written last (empty: none). Fails with InvalidInput and the line where `previous` is damaged, by another
/// program, or of another season; with InvalidArgument where a date or the time of day cannot be written.
[[nodiscard]] Expected<std::string> seasonCalendar(const CalendarSource& source, std::chrono::sys_seconds stamp,
                                                   std::string_view previous = {},
                                                   const season::SeasonData& data = season::standardSeasonData());

/// A season that has no identifier of its own (a file): its athlete, its name and the year of its last main
/// competition. Two seasons of one athlete that share all three share their events.
[[nodiscard]] Identifier calendarSeason(const season::SeasonSetup& setup);

} // namespace fleetrung::report
