#include "engine/base/numbers.hpp"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>

#include <fast_float/fast_float.h>

namespace fleetrung
{
namespace
{

std::string_view trimmed(std::string_view text)
{
    constexpr std::string_view blank = " \t\r\n";
    const auto first = text.find_first_not_of(blank);
    if (first == std::string_view::npos)
        return {};
    return text.substr(first, text.find_last_not_of(blank) - first + 1);
}

std::string_view withoutPlus(std::string_view text)
{
    return text.size() > 1 && text[0] == '+' && text[1] != '-' ? text.substr(1) : text;
}

} // namespace

std::optional<double> parseNumber(std::string_view text, char decimalMark)
{
    text = withoutPlus(trimmed(text));
    double value = 0.0;
    const fast_float::parse_options options{fast_float::chars_format::general, decimalMark};
    const auto [end, error] = fast_float::from_chars_advanced(text.data(), text.data() + text.size(), value, options);
    if (text.empty() || error != std::errc() || end != text.data() + text.size() || !std::isfinite(value))
        return std::nullopt;
    return value;
}

std::optional<std::int64_t> parseInteger(std::string_view text)
{
    text = withoutPlus(trimmed(text));
    std::int64_t value = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
    if (text.empty() || error != std::errc() || end != text.data() + text.size())
        return std::nullopt;
    return value;
}

std::string shortestText(double value)
{
    std::array<char, 32> buffer{};
    const auto [end, error] = std::to_chars(buffer.data(), buffer.data() + buffer.size(), value == 0.0 ? 0.0 : value);
    return error == std::errc() ? std::string(buffer.data(), end) : std::string();
}

std::string fixedText(double value, int decimals)
{
    // The extra digits settle 1.25 -> 1.3 by the decimal value a person typed, not by its binary neighbour.
    const double scale = std::pow(10.0, decimals);
    const double scaled = value * scale;
    const double rounded = std::abs(scaled) < 1e15 ? std::round(scaled + std::copysign(1e-9, scaled)) / scale : value;
    std::array<char, 352> buffer{};
    const auto [end, error] = std::to_chars(buffer.data(), buffer.data() + buffer.size(),
                                            rounded == 0.0 ? 0.0 : rounded, std::chars_format::fixed, decimals);
    return error == std::errc() ? std::string(buffer.data(), end) : std::string();
}

std::string integerText(std::int64_t value)
{
    std::array<char, 24> buffer{};
    const auto [end, error] = std::to_chars(buffer.data(), buffer.data() + buffer.size(), value);
    return error == std::errc() ? std::string(buffer.data(), end) : std::string();
}

double roundTo(double value, double stepsPerUnit)
{
    return std::round(value * stepsPerUnit) / stepsPerUnit;
}

} // namespace fleetrung
