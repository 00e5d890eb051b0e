#include "engine/base/civil_date.hpp"

#include <algorithm>

#include "engine/base/numbers.hpp"

namespace fleetrung
{
namespace
{

std::string padded(std::int64_t value, std::size_t width)
{
    const auto digits = integerText(value);
    return std::string(width - std::min(width, digits.size()), '0') + digits;
}

bool allDigits(std::string_view text)
{
    return std::all_of(text.begin(), text.end(), [](char c) { return c >= '0' && c <= '9'; });
}

} // namespace

std::optional<CivilDate> parseDate(std::string_view text)
{
    if (text.size() != 10 || text[4] != '-' || text[7] != '-')
        return std::nullopt;
    const auto year = text.substr(0, 4), month = text.substr(5, 2), day = text.substr(8, 2);
    if (!allDigits(year) || !allDigits(month) || !allDigits(day))
        return std::nullopt;
    const std::chrono::year_month_day date{std::chrono::year(static_cast<int>(*parseInteger(year))),
                                           std::chrono::month(static_cast<unsigned>(*parseInteger(month))),
                                           std::chrono::day(static_cast<unsigned>(*parseInteger(day)))};
    if (!date.ok())
        return std::nullopt;
    return CivilDate(date);
}

std::string dateText(CivilDate date)
{
    const std::chrono::year_month_day parts(date);
    return padded(static_cast<int>(parts.year()), 4) + '-' + padded(static_cast<unsigned>(parts.month()), 2) + '-' +
           padded(static_cast<unsigned>(parts.day()), 2);
}

int isoWeekday(CivilDate date)
{
    return static_cast<int>(std::chrono::weekday(date).iso_encoding());
}

int daysBetween(CivilDate from, CivilDate to)
{
    return static_cast<int>((to - from).count());
}

} // namespace fleetrung
