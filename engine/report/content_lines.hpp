// The lines that an iCalendar object is made of (RFC 5545 section 3): folding, unfolding and the values this program
// writes.
#pragma once

#include <chrono>
#include <string>
#include <string_view>
#include <vector>

#include "engine/base/civil_date.hpp"

namespace fleetrung::report
{

/// One property, unfolded, and the line of the file on which it began (0 for one that was not read).
struct ContentLine {
    std::string text; ///< "SUMMARY:Lifts"
    int line = 0;

    [[nodiscard]] std::string_view name() const;  ///< "SUMMARY", without parameters
    [[nodiscard]] std::string_view value() const; ///< behind the first colon; empty where there is none
};

/// Section 3.1: CRLF behind every line; longer ones are folded at 75 octets, never inside a UTF-8 sequence.
[[nodiscard]] std::string foldedText(std::string_view line);

/// Section 3.1 backwards. Takes LF alone as well (a file that was stored as text); empty lines are left out.
[[nodiscard]] std::vector<ContentLine> contentLines(std::string_view bytes);

/// Section 3.3.11: backslash, semicolon, comma and line break escaped; other control characters become spaces.
[[nodiscard]] std::string escapedText(std::string_view text);

/// Section 3.3.4: "20260330".
[[nodiscard]] std::string calendarDate(CivilDate day);
/// Section 3.3.5, form 1, local time without zone: "20260330T174200".
[[nodiscard]] std::string floatingTime(CivilDate day, std::chrono::minutes sinceMidnight);
/// Section 3.3.5, form 2, UTC: "20260330T154205Z".
[[nodiscard]] std::string calendarInstant(std::chrono::sys_seconds instant);

} // namespace fleetrung::report
