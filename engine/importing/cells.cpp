#include "engine/importing/cells.hpp"

#include <algorithm>
#include <array>

#include "engine/base/numbers.hpp"
#include "engine/importing/words.hpp"

namespace fleetrung::importing
{
namespace
{

bool isDigit(char c)
{
    return c >= '0' && c <= '9';
}

bool allDigits(std::string_view text)
{
    return !text.empty() && std::ranges::all_of(text, isDigit);
}

/// The sign in front taken off; the typographic minus counts.
std::string_view withoutSign(std::string_view text, bool& negative)
{
    constexpr std::string_view minus = "\xE2\x88\x92";
    negative = text.starts_with('-') || text.starts_with(minus);
    if (text.starts_with(minus))
        return text.substr(minus.size());
    return text.starts_with('-') || text.starts_with('+') ? text.substr(1) : text;
}

struct Parts {
    std::string_view number, unit; ///< without sign
    bool negative = false;
};

/// Digits and marks in front, a unit behind; nothing where it does not begin with a number.
std::optional<Parts> partsOf(std::string_view cell)
{
    Parts parts;
    const auto text = withoutSign(trimmed(cell), parts.negative);
    const auto end = std::min(text.find_first_not_of("0123456789.,"), text.size());
    parts.number = text.substr(0, end);
    parts.unit = trimmed(text.substr(end));
    if (parts.number.empty() || !std::ranges::any_of(parts.number, isDigit))
        return std::nullopt;
    if (!parts.unit.empty() && unitNamed(parts.unit) == Unit::None)
        return std::nullopt;
    return parts;
}

/// Thousands: one to three digits, then groups of three.
bool isGrouped(std::string_view text, char mark)
{
    auto group = text.substr(0, text.find(mark));
    if (group.empty() || group.size() > 3 || !allDigits(group))
        return false;
    auto rest = text.substr(group.size());
    while (!rest.empty()) {
        if (rest.size() < 4 || rest.front() != mark || !allDigits(rest.substr(1, 3)))
            return false;
        rest.remove_prefix(4);
    }
    return true;
}

std::optional<double> plainNumber(std::string_view text, char decimalMark)
{
    const char group = decimalMark == '.' ? ',' : '.';
    const auto whole = text.substr(0, text.find(decimalMark));
    if (whole.find(group) == std::string_view::npos)
        return parseNumber(text, decimalMark);
    if (!isGrouped(whole, group))
        return std::nullopt;
    std::string without(text);
    std::erase(without, group);
    return parseNumber(without, decimalMark);
}

/// "1:02.35" as 62.35 s.
std::optional<NumberCell> minutesAndSeconds(std::string_view cell, char decimalMark)
{
    const auto colon = cell.find(':');
    if (colon == std::string_view::npos || colon > 2 || !allDigits(cell.substr(0, colon)))
        return std::nullopt;
    const auto seconds = cell.substr(colon + 1);
    const auto value = plainNumber(seconds, decimalMark);
    if (!value || seconds.size() < 2 || !allDigits(seconds.substr(0, 2)) || *value >= 60)
        return std::nullopt;
    return NumberCell{60.0 * static_cast<double>(*parseInteger(cell.substr(0, colon))) + *value, Unit::Second};
}

/// One to four digits in front.
std::optional<int> takeNumber(std::string_view& text, std::size_t most)
{
    std::size_t size = 0;
    while (size < text.size() && size < most && isDigit(text[size]))
        ++size;
    if (size == 0)
        return std::nullopt;
    const auto value = parseInteger(text.substr(0, size));
    text.remove_prefix(size);
    return value ? std::optional(static_cast<int>(*value)) : std::nullopt;
}

bool take(std::string_view& text, char mark)
{
    if (text.empty() || text.front() != mark)
        return false;
    text.remove_prefix(1);
    return true;
}

/// "Z", "+02:00", "-0530"; empty text is no offset. False where something else stands there.
bool takeOffset(std::string_view text, std::optional<int>& offset)
{
    if (text.empty())
        return true;
    if (text == "Z") {
        offset = 0;
        return true;
    }
    const int sign = text.front() == '-' ? -1 : 1;
    if (text.front() != '+' && text.front() != '-')
        return false;
    text.remove_prefix(1);
    const auto hours = takeNumber(text, 2);
    take(text, ':');
    const auto minutes = takeNumber(text, 2);
    if (!hours || *hours > 14 || !text.empty() || minutes.value_or(0) > 59)
        return false;
    offset = sign * (*hours * 60 + minutes.value_or(0));
    return true;
}

} // namespace

bool isBlank(std::string_view cell)
{
    constexpr std::array<std::string_view, 12> signs{"",    "-",  "--",  "\xE2\x80\x93", "\xE2\x80\x94", "?",
                                                     "n/a", "na", "nan", "null",         "dnf",          "dns"};
    std::string text(trimmed(cell));
    std::ranges::transform(text, text.begin(),
                           [](char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; });
    return std::ranges::find(signs, text) != signs.end();
}

MarkEvidence markEvidence(std::string_view cell)
{
    const auto parts = partsOf(cell);
    if (!parts)
        return MarkEvidence::None;
    const auto text = parts->number;
    const auto commas = std::ranges::count(text, ','), points = std::ranges::count(text, '.');
    if (commas + points == 0)
        return MarkEvidence::None;
    const char last = text[text.find_last_of(",.")];
    const auto sure = [](char mark) { return mark == ',' ? MarkEvidence::Comma : MarkEvidence::Point; };
    if (commas > 0 && points > 0)
        return sure(last);
    if (commas + points > 1) // marks of thousands: the other one is the decimal mark
        return isGrouped(text, last) ? sure(last == ',' ? '.' : ',') : MarkEvidence::None;
    const auto at = text.find(last);
    if (text.size() - at - 1 == 3 && at > 0 && at <= 3 && text.front() != '0')
        return last == ',' ? MarkEvidence::OpenComma : MarkEvidence::OpenPoint;
    return sure(last);
}

bool looksNumeric(std::string_view cell)
{
    const auto text = trimmed(cell);
    return numberCell(text, '.') || numberCell(text, ',');
}

std::optional<NumberCell> numberCell(std::string_view cell, char decimalMark)
{
    const auto text = trimmed(cell);
    if (text.find(':') != std::string_view::npos)
        return minutesAndSeconds(text, decimalMark);
    const auto parts = partsOf(text);
    const auto value = parts ? plainNumber(parts->number, decimalMark) : std::nullopt;
    if (!value)
        return std::nullopt;
    return NumberCell{parts->negative ? -*value : *value, unitNamed(parts->unit)};
}

std::optional<DateCell> dateCell(std::string_view cell)
{
    auto text = trimmed(cell);
    DateCell date;
    const std::size_t before = text.size();
    const auto first = takeNumber(text, 4);
    const std::size_t digits = before - text.size();
    if (!first || text.empty() || (text.front() != '.' && text.front() != '/' && text.front() != '-'))
        return std::nullopt;
    const char mark = text.front();
    take(text, mark);
    const auto second = takeNumber(text, 2);
    if (!second || !take(text, mark))
        return std::nullopt;
    if (mark == '.' && text.starts_with(' ')) // "30. 3. 2026" is left out, "30.3. 2026" too
        return std::nullopt;
    const std::size_t beforeThird = text.size();
    const auto third = takeNumber(text, digits == 4 ? 2 : 4);
    const std::size_t thirdDigits = beforeThird - text.size();
    if (!third || (!text.empty() && isDigit(text.front())))
        return std::nullopt;
    date.rest = trimmed(text);
    if (digits == 4) {
        date.year = *first;
        date.first = *second;
        date.second = *third;
        return date;
    }
    if (digits > 2 || (thirdDigits != 2 && thirdDigits != 4))
        return std::nullopt;
    date.year = thirdDigits == 2 ? 2000 + *third : *third;
    date.open = mark != '.';
    date.first = date.open ? *first : *second;
    date.second = date.open ? *second : *first;
    return date;
}

std::optional<CivilDate> dayOf(const DateCell& cell, std::optional<DateOrder> order)
{
    const bool dayFirst = cell.open && order != DateOrder::MonthDay;
    const auto month = static_cast<unsigned>(dayFirst ? cell.second : cell.first);
    const auto day = static_cast<unsigned>(dayFirst ? cell.first : cell.second);
    const std::chrono::year_month_day date{std::chrono::year(cell.year), std::chrono::month(month),
                                           std::chrono::day(day)};
    if (!date.ok() || (cell.open && !order))
        return std::nullopt;
    return CivilDate(date);
}

std::optional<ClockCell> clockCell(std::string_view cell)
{
    auto text = trimmed(cell);
    take(text, 'T');
    const auto hour = takeNumber(text, 2);
    if (!hour || !take(text, ':'))
        return std::nullopt;
    const auto minute = takeNumber(text, 2);
    std::optional<int> second = 0;
    if (take(text, ':')) {
        second = takeNumber(text, 2);
        if (take(text, '.') || take(text, ','))
            takeNumber(text, 9); // parts of a second do not matter to the order of runs
    }
    if (!minute || !second || *hour > 23 || *minute > 59 || *second > 59)
        return std::nullopt;
    ClockCell clock;
    int hours = *hour;
    text = trimmed(text);
    const std::string half = folded(text);
    if (half == "am" || half == "pm" || half == "a m" || half == "p m") {
        if (hours < 1 || hours > 12)
            return std::nullopt;
        hours = hours % 12 + (half.front() == 'p' ? 12 : 0);
        text = {};
    }
    if (!takeOffset(text, clock.offsetMinutes))
        return std::nullopt;
    clock.second = hours * 3600 + *minute * 60 + *second;
    return clock;
}

} // namespace fleetrung::importing
