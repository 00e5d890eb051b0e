#include "platform/desk/plan_calendar.hpp"

#include <chrono>
#include <filesystem>
#include <optional>

#include "engine/report/season_calendar.hpp"
#include "platform/desk/input_file.hpp"
#include "platform/desk/output_files.hpp"

namespace fleetrung::desk
{
namespace
{

/// Two figures at `at`, below `limit`.
std::optional<int> twoFigures(std::string_view text, std::size_t at, int limit)
{
    const auto isFigure = [](char c) { return c >= '0' && c <= '9'; };
    if (text.size() < at + 2 || !isFigure(text[at]) || !isFigure(text[at + 1]))
        return std::nullopt;
    const int value = (text[at] - '0') * 10 + (text[at + 1] - '0');
    return value < limit ? std::optional(value) : std::nullopt;
}

/// "17:30".
std::optional<std::chrono::minutes> timeOfDay(std::string_view text)
{
    const auto hour = twoFigures(text, 0, 24), minute = twoFigures(text, 3, 60);
    if (text.size() != 5 || text[2] != ':' || !hour || !minute)
        return std::nullopt;
    return std::chrono::hours(*hour) + std::chrono::minutes(*minute);
}

/// "2026-03-30T15:42:05Z".
std::optional<std::chrono::sys_seconds> instantOf(std::string_view text)
{
    if (text.size() != 20 || text[10] != 'T' || text[16] != ':' || text.back() != 'Z')
        return std::nullopt;
    const auto day = parseDate(text.substr(0, 10));
    const auto minute = timeOfDay(text.substr(11, 5));
    const auto second = twoFigures(text, 17, 60);
    if (!day || !minute || !second)
        return std::nullopt;
    return *day + *minute + std::chrono::seconds(*second);
}

/// The choices of the command line, understood.
struct Choices {
    std::chrono::sys_seconds stamp;
    CivilDate from;
    std::optional<std::chrono::minutes> sessionStart;
};

Result<Choices> understood(const CalendarOptions& options, CivilDate seasonStart)
{
    Choices choices{std::chrono::floor<std::chrono::seconds>(std::chrono::system_clock::now()), seasonStart, {}};
    if (!options.stamp.empty()) {
        const auto stamp = instantOf(options.stamp);
        if (!stamp)
            return refuse("--stamp: \"" + options.stamp + "\" is no instant in UTC; write it as 2026-03-30T15:42:05Z");
        choices.stamp = *stamp;
    }
    if (!options.from.empty()) {
        const auto from = parseDate(options.from);
        if (!from)
            return refuse("--from: \"" + options.from + "\" is no date; write it as 2026-03-30");
        choices.from = *from;
    }
    if (!options.at.empty()) {
        choices.sessionStart = timeOfDay(options.at);
        if (!choices.sessionStart)
            return refuse("--at: \"" + options.at + "\" is no time of day; write it as 17:30");
    }
    return choices;
}

/// What was published before; empty where there is no file yet.
Result<std::string> previousBytes(const std::string& file)
{
    std::error_code error;
    if (std::filesystem::status(file, error).type() == std::filesystem::file_type::not_found)
        return std::string();
    return readFile(file);
}

} // namespace

void addCalendarOptions(CLI::App& command, CalendarOptions& options)
{
    auto* calendar = command.add_option("--calendar", options.file,
                                        "also write the sessions, competitions and phases as an iCalendar file, or "
                                        "bring the file that is there up to date");
    command.add_option("--from", options.from, "date: what lies before it stays in the calendar as it is")
        ->needs(calendar);
    command.add_option("--at", options.at, "time of day at which sessions begin (17:30); without it, whole days")
        ->needs(calendar);
    command.add_option("--stamp", options.stamp, "instant to stamp changes with (2026-03-30T15:42:05Z) instead of now")
        ->needs(calendar);
}

Result<void> writeCalendar(const CalendarOptions& options, const season::SeasonPlan& plan)
{
    if (options.file.empty())
        return {};
    const auto choices = understood(options, plan.setup.start);
    if (!choices)
        return tl::unexpected(choices.error());
    const auto previous = previousBytes(options.file);
    if (!previous)
        return tl::unexpected(previous.error());
    const auto calendar =
        report::seasonCalendar({report::calendarSeason(plan.setup), plan, {}, choices->from, choices->sessionStart},
                               choices->stamp, *previous);
    if (!calendar)
        return tl::unexpected(inFile(options.file, calendar.error()));
    return *calendar == *previous ? Result<void>() : writeFile(options.file, *calendar);
}

} // namespace fleetrung::desk
