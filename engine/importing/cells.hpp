// Single cells as numbers, dates and clock times. Internal to this folder.
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "engine/base/civil_date.hpp"
#include "engine/importing/mapping.hpp"

namespace fleetrung::importing
{

/// Empty, or one of the signs that stand for "nothing" ("-", "n/a", "DNF"; common practice, no source).
[[nodiscard]] bool isBlank(std::string_view cell);

/// What one cell says of the decimal mark of its file.
enum class MarkEvidence { None, Point, Comma, OpenPoint, OpenComma };
/// "12,5" is a decimal comma; "1,234" is open: it may be a thousand.
[[nodiscard]] MarkEvidence markEvidence(std::string_view cell);
[[nodiscard]] bool looksNumeric(std::string_view cell);

/// The number, and the unit that stands behind it in the cell ("1.85 s", "100kg"). Marks of thousands are allowed where
/// they stand right. Of times also "1:02.35".
struct NumberCell {
    double value = 0;
    Unit unit = Unit::None;
};
[[nodiscard]] std::optional<NumberCell> numberCell(std::string_view cell, char decimalMark);

/// A day as written; `open` where day and month may be either way round.
struct DateCell {
    int year = 0, first = 0, second = 0; ///< first and second: as they stand; of ISO dates month and day
    bool open = false;
    std::string_view rest; ///< what follows: a clock time
};
/// 2026-03-30, 2026/3/30, 30.3.2026, 3/30/2026, 30-3-26 (two digits: 20..).
[[nodiscard]] std::optional<DateCell> dateCell(std::string_view cell);
/// Nothing for days that do not exist.
[[nodiscard]] std::optional<CivilDate> dayOf(const DateCell& cell, std::optional<DateOrder> order);

struct ClockCell {
    int second = 0;                   ///< of the day, local
    std::optional<int> offsetMinutes; ///< local minus UTC, where it was said
};
/// 17:05, 17:05:30.5, 5:05 PM, T17:05:30+02:00. Nothing for anything else.
[[nodiscard]] std::optional<ClockCell> clockCell(std::string_view cell);

} // namespace fleetrung::importing
