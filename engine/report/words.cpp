#include "engine/report/words.hpp"

#include <array>

#include "engine/base/numbers.hpp"

namespace fleetrung::report
{
namespace
{

constexpr std::string_view minusSign = "\xE2\x88\x92";

constexpr std::array<std::string_view, 12> monthNames{"January",   "February", "March",    "April",
                                                      "May",       "June",     "July",     "August",
                                                      "September", "October",  "November", "December"};

std::string_view monthName(const std::chrono::year_month_day& date)
{
    return monthNames[static_cast<unsigned>(date.month()) - 1];
}

std::string dayNumber(const std::chrono::year_month_day& date)
{
    return integerText(static_cast<unsigned>(date.day()));
}

constexpr std::string_view properName = "Romanian"; // the one that lifts begin with

bool isUpper(char c)
{
    return c >= 'A' && c <= 'Z';
}

} // namespace

std::string dayText(CivilDate day)
{
    const std::chrono::year_month_day date(day);
    return dayNumber(date) + " " + std::string(monthName(date)) + " " + integerText(static_cast<int>(date.year()));
}

std::string shortDayText(CivilDate day)
{
    const std::chrono::year_month_day date(day);
    return dayNumber(date) + " " + std::string(monthName(date).substr(0, 3));
}

std::string countText(int count, std::string_view singular, std::string_view plural)
{
    return integerText(count) + " " + std::string(count == 1 ? singular : plural);
}

std::string millisecondsText(double seconds)
{
    return fixedText(seconds * 1000.0, 0);
}

std::string numberText(double value, int decimals)
{
    auto text = fixedText(value, decimals);
    return text.starts_with('-') ? std::string(minusSign) + text.substr(1) : text;
}

std::string signedText(double value, int decimals)
{
    auto text = numberText(value, decimals);
    const bool isZero = text.find_first_not_of("0.") == std::string::npos;
    return value > 0 && !isZero ? "+" + text : text;
}

std::string signedMillisecondsText(double seconds)
{
    return signedText(seconds * 1000.0, 0);
}

std::string inSentence(std::string_view name)
{
    std::string text(name);
    if (text.size() > 1 && isUpper(text[0]) && !isUpper(text[1]) && !name.starts_with(properName))
        text[0] = static_cast<char>(text[0] - 'A' + 'a');
    return text;
}

std::string capitalised(std::string_view name)
{
    std::string text(name);
    if (!text.empty() && text[0] >= 'a' && text[0] <= 'z')
        text[0] = static_cast<char>(text[0] - 'a' + 'A');
    return text;
}

std::string_view sideWords(Side side)
{
    switch (side) {
    case Side::Left:
        return ", left";
    case Side::Right:
        return ", right";
    case Side::Both:
        break;
    }
    return "";
}

} // namespace fleetrung::report
