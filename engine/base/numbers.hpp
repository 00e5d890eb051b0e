// Numbers to and from text without any locale: fast_float reads, std::to_chars writes.
// The engine never calls strtod, printf or std::to_string: they follow the machine's locale.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace fleetrung
{

/// The whole of `text` as a finite decimal number, spaces around it allowed; nothing for anything else (also nan, inf).
/// `decimalMark` is '.' or ','.
[[nodiscard]] std::optional<double> parseNumber(std::string_view text, char decimalMark = '.');

/// The whole of `text` as a whole number.
[[nodiscard]] std::optional<std::int64_t> parseInteger(std::string_view text);

/// The shortest text that reads back as the same double. `-0` is written "0".
[[nodiscard]] std::string shortestText(double value);

/// Fixed number of decimals, halves away from zero on the decimal text: 1.25, 1 -> "1.3". Never "-0.0".
[[nodiscard]] std::string fixedText(double value, int decimals);

[[nodiscard]] std::string integerText(std::int64_t value);

/// `value` rounded to the step in which it is printed: decisions are taken on such values, so that they are the same
/// on every machine. `stepsPerUnit` 1000 rounds to thousandths.
[[nodiscard]] double roundTo(double value, double stepsPerUnit);

} // namespace fleetrung
