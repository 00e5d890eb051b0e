#include "engine/report/season_calendar.hpp"

#include <algorithm>
#include <map>
#include <tuple>

#include "engine/base/numbers.hpp"
#include "engine/report/calendar_event.hpp"
#include "engine/report/content_lines.hpp"

namespace fleetrung::report
{
namespace
{

using Published = std::map<std::string, PublishedEvent>; ///< by UID

/// What a calendar must be told of an event that was published, and is planned (again) with this content.
PublishedEvent updated(const PublishedEvent& before, CalendarEvent planned, const std::string& stamp)
{
    if (before.event.content == planned.content)
        return before;
    return {std::move(planned), {before.revision.sequence + 1, stamp}};
}

/// RFC 5546 section 3.2.1: a published event is taken back by its status.
PublishedEvent cancelled(const PublishedEvent& before, const std::string& stamp)
{
    auto event = before.event;
    for (auto& line : event.content)
        if (line.starts_with("STATUS:"))
            line = cancelledStatus;
    return updated(before, std::move(event), stamp);
}

/// Published and planned as one list. What is over for both stays as it was published.
std::vector<PublishedEvent> merged(std::vector<CalendarEvent> planned, Published published, CivilDate from,
                                   const std::string& stamp)
{
    const auto isOver = [from](const CalendarEvent& event) { return event.end <= from; };
    std::vector<PublishedEvent> events;
    for (auto& event : planned) {
        const auto found = published.find(event.uid);
        if (found == published.end()) {
            if (!isOver(event))
                events.push_back({std::move(event), {0, stamp}});
            continue;
        }
        const auto& before = found->second;
        events.push_back(isOver(event) && isOver(before.event) ? before : updated(before, std::move(event), stamp));
        published.erase(found);
    }
    for (const auto& [uid, before] : published)
        events.push_back(isOver(before.event) ? before : cancelled(before, stamp));
    std::sort(events.begin(), events.end(), [](const auto& a, const auto& b) {
        return std::tie(a.event.first, a.event.uid) < std::tie(b.event.first, b.event.uid);
    });
    return events;
}

std::string eventText(const PublishedEvent& published)
{
    const auto& [sequence, stamp] = published.revision;
    std::string text = foldedText("BEGIN:VEVENT");
    text += foldedText("UID:" + published.event.uid);
    text += foldedText("DTSTAMP:" + stamp); // the instant at which this version of the event was made
    text += foldedText("LAST-MODIFIED:" + stamp);
    text += foldedText("SEQUENCE:" + integerText(sequence));
    for (const auto& line : published.event.content)
        text += foldedText(line);
    return text + foldedText("END:VEVENT");
}

std::string calendarText(const CalendarSource& source, const std::vector<PublishedEvent>& events)
{
    const auto& setup = source.plan.setup;
    const auto name = setup.athlete.name.empty() ? setup.name : setup.athlete.name + ": " + setup.name;
    std::string text = foldedText("BEGIN:VCALENDAR");
    text += foldedText("VERSION:2.0");
    text += foldedText("PRODID:" + std::string(productId));
    text += foldedText("METHOD:PUBLISH");
    text += foldedText("NAME:" + escapedText(name)); // RFC 7986 section 5.1
    text += foldedText(std::string(seasonProperty) + ':' + identifierText(source.season));
    for (const auto& event : events)
        text += eventText(event);
    return text + foldedText("END:VCALENDAR");
}

/// Section 3.3.4 has room for four figures of a year, and the days behind the last must be written too.
Expected<void> checkWritable(const CalendarSource& source)
{
    using namespace std::chrono;
    constexpr CivilDate lastDay = year(9999) / December / 29;
    auto last = source.plan.end;
    for (const auto& competition : source.plan.setup.competitions)
        last = std::max(last, competition.date);
    if (last > lastDay)
        return fail(Code::InvalidArgument, "end", "a calendar has no room for years beyond 9999");
    if (source.sessionStart && (*source.sessionStart < minutes(0) || *source.sessionStart >= hours(24)))
        return fail(Code::InvalidArgument, "session start", "the time of day lies between 00:00 and 23:59");
    return {};
}

} // namespace

Expected<std::string> seasonCalendar(const CalendarSource& source, std::chrono::sys_seconds stamp,
                                     std::string_view previous, const season::SeasonData& data)
{
    if (auto writable = checkWritable(source); !writable)
        return tl::unexpected(writable.error());
    Published published;
    if (!previous.empty()) {
        auto read = publishedEvents(previous, source.season);
        if (!read)
            return tl::unexpected(read.error());
        for (auto& event : *read) {
            auto uid = event.event.uid;
            published.emplace(std::move(uid), std::move(event));
        }
    }
    return calendarText(source,
                        merged(plannedEvents(source, data), std::move(published), source.from, calendarInstant(stamp)));
}

} // namespace fleetrung::report
