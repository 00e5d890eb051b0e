// Civil dates: the calendar a training plan is written in. Days only; the engine has no clock and no time zone.
#pragma once

#include <chrono>
#include <optional>
#include <string>
#include <string_view>

namespace fleetrung
{

/// A day of the proleptic Gregorian calendar. `date + std::chrono::days{7}` and differences work as expected.
using CivilDate = std::chrono::sys_days;

/// "2026-03-30" (ISO 8601-1:2019, calendar date). Nothing for any other form and for days that do not exist.
[[nodiscard]] std::optional<CivilDate> parseDate(std::string_view text);

/// "2026-03-30".
[[nodiscard]] std::string dateText(CivilDate date);

/// Monday 1 ... Sunday 7 (ISO 8601).
[[nodiscard]] int isoWeekday(CivilDate date);

/// Whole days from `from` to `to`; negative where `to` is earlier.
[[nodiscard]] int daysBetween(CivilDate from, CivilDate to);

} // namespace fleetrung
