// Small words of the report: dates, counts, milliseconds. English; no locale.
#pragma once

#include <string>
#include <string_view>

#include "engine/base/civil_date.hpp"
#include "engine/report/training_log.hpp"

namespace fleetrung::report
{

/// "5 January 2026".
[[nodiscard]] std::string dayText(CivilDate day);
/// "5 Jan".
[[nodiscard]] std::string shortDayText(CivilDate day);
/// "1 session", "3 sessions".
[[nodiscard]] std::string countText(int count, std::string_view singular, std::string_view plural);
/// 0.2861 -> "286".
[[nodiscard]] std::string millisecondsText(double seconds);
/// Signed with a true minus: "−24", "+3", "0".
[[nodiscard]] std::string signedMillisecondsText(double seconds);
/// With a true minus: 2.04, 2 -> "2.04"; -1.25, 1 -> "−1.3".
[[nodiscard]] std::string numberText(double value, int decimals);
/// Numbers above zero get a plus: wind "+1.2", "−0.4", "0.0".
[[nodiscard]] std::string signedText(double value, int decimals);
/// "half squat" of "Half squat"; names that begin with a figure, an abbreviation or a proper name stay.
[[nodiscard]] std::string inSentence(std::string_view name);
/// "Flying 20 m" of "flying 20 m".
[[nodiscard]] std::string capitalised(std::string_view text);
/// "", ", left", ", right".
[[nodiscard]] std::string_view sideWords(Side side);

} // namespace fleetrung::report
