// Reading the season calendar that this program wrote.
#include <algorithm>
#include <limits>
#include <set>

#include "engine/base/numbers.hpp"
#include "engine/report/calendar_event.hpp"
#include "engine/report/content_lines.hpp"

namespace fleetrung::report
{
namespace
{

constexpr std::string_view remedy = "; choose another file, or move this one away and write a new one";

tl::unexpected<Error> wrong(int line, const std::string& cause)
{
    return fail(Code::InvalidInput, "line " + integerText(line), cause + std::string(remedy));
}

bool areDigits(std::string_view text)
{
    return std::all_of(text.begin(), text.end(), [](char c) { return c >= '0' && c <= '9'; });
}

/// "20260330" or "20260330T174200".
std::optional<CivilDate> dayOf(std::string_view value)
{
    const bool isDate = value.size() == 8;
    const bool isTime = value.size() == 15 && value[8] == 'T' && areDigits(value.substr(9));
    if (!isDate && !isTime)
        return std::nullopt;
    return parseDate(std::string(value.substr(0, 4)) + '-' + std::string(value.substr(4, 2)) + '-' +
                     std::string(value.substr(6, 2)));
}

bool isInstant(std::string_view value)
{
    return value.size() == 16 && value.back() == 'Z' && dayOf(value.substr(0, 15));
}

class Reader
{
public:
    explicit Reader(std::string_view bytes) : lines_(contentLines(bytes)) {}

    Expected<std::vector<PublishedEvent>> read(const Identifier& season)
    {
        if (lines_.empty() || lines_.front().text != "BEGIN:VCALENDAR")
            return wrong(1, "this is no calendar: it does not begin with BEGIN:VCALENDAR");
        if (auto head = readHead(season); !head)
            return tl::unexpected(head.error());
        std::vector<PublishedEvent> events;
        std::set<std::string> uids;
        while (at_ < lines_.size() && lines_[at_].text == "BEGIN:VEVENT") {
            const int line = lines_[at_].line;
            auto event = readEvent();
            if (!event)
                return tl::unexpected(event.error());
            if (!uids.insert(event->event.uid).second)
                return wrong(line, "this event has the UID of one before it");
            events.push_back(std::move(*event));
        }
        return atEnd().map([&] { return std::move(events); });
    }

private:
    /// Properties of the calendar, up to its first event or its end.
    Expected<void> readHead(const Identifier& season)
    {
        bool ours = false, sameSeason = false;
        for (at_ = 1; at_ < lines_.size() && lines_[at_].name() != "BEGIN" && lines_[at_].name() != "END"; ++at_) {
            const auto& line = lines_[at_];
            if (line.name() == "PRODID" && line.value() != productId)
                return wrong(line.line, "another program wrote this calendar");
            if (line.name() == seasonProperty && line.value() != identifierText(season))
                return wrong(line.line, "this is the calendar of another season");
            ours = ours || line.name() == "PRODID";
            sameSeason = sameSeason || line.name() == seasonProperty;
        }
        if (!ours || !sameSeason)
            return wrong(lastLine(), "nothing up to here says that this program wrote this calendar");
        return {};
    }

    Expected<PublishedEvent> readEvent()
    {
        const int began = lines_[at_].line;
        PublishedEvent event;
        std::set<std::string, std::less<>> seen;
        for (++at_; at_ < lines_.size() && lines_[at_].text != "END:VEVENT"; ++at_) {
            const auto& line = lines_[at_];
            if (line.name() == "BEGIN" || line.name() == "END")
                return wrong(line.line, "an event does not end before " + line.text);
            if (!seen.emplace(line.name()).second)
                return wrong(line.line, "an event has a second " + std::string(line.name()));
            if (auto taken = take(line, event); !taken)
                return tl::unexpected(taken.error());
        }
        if (at_ == lines_.size())
            return wrong(lastLine(), "the file ends within an event: it was cut off");
        ++at_;
        for (const auto* name : {"UID", "SEQUENCE", "DTSTAMP", "DTSTART", "DTEND"})
            if (!seen.contains(name))
                return wrong(began, "this event has no " + std::string(name));
        return event;
    }

    static Expected<void> take(const ContentLine& line, PublishedEvent& event)
    {
        const auto name = line.name();
        const auto value = line.value();
        if (name == "UID")
            event.event.uid = value;
        else if (name == "SEQUENCE")
            return takeSequence(line, event.revision);
        else if (name == "DTSTAMP" || name == "LAST-MODIFIED") {
            if (!isInstant(value))
                return wrong(line.line, std::string(name) + " is no instant in UTC");
            event.revision.stamp = value;
        } else {
            if (name == "DTSTART" || name == "DTEND")
                if (auto taken = takeDay(line, event.event); !taken)
                    return taken;
            event.event.content.push_back(line.text);
        }
        return {};
    }

    static Expected<void> takeSequence(const ContentLine& line, Revision& revision)
    {
        const auto sequence = parseInteger(line.value());
        if (!sequence || *sequence < 0 || *sequence >= std::numeric_limits<std::int32_t>::max()) // section 3.3.8
            return wrong(line.line, "SEQUENCE is no whole number that can grow");
        revision.sequence = *sequence;
        return {};
    }

    static Expected<void> takeDay(const ContentLine& line, CalendarEvent& event)
    {
        const auto day = dayOf(line.value());
        if (!day)
            return wrong(line.line, std::string(line.name()) + " is no date");
        if (line.name() == "DTSTART") {
            event.first = *day;
            event.end = *day + std::chrono::days(1); // of an event with a time of day
        } else if (line.value().size() == 8) {
            event.end = *day; // exclusive as written
        }
        return {};
    }

    Expected<void> atEnd() const
    {
        if (at_ >= lines_.size())
            return wrong(lastLine(), "the file ends before END:VCALENDAR: it was cut off");
        if (lines_[at_].text != "END:VCALENDAR")
            return wrong(lines_[at_].line, "this program writes no " + lines_[at_].text + " here");
        if (at_ + 1 < lines_.size())
            return wrong(lines_[at_ + 1].line, "the file goes on behind END:VCALENDAR");
        return {};
    }

    [[nodiscard]] int lastLine() const { return lines_[std::min(at_, lines_.size() - 1)].line; }

    std::vector<ContentLine> lines_;
    std::size_t at_ = 0;
};

} // namespace

Expected<std::vector<PublishedEvent>> publishedEvents(std::string_view bytes, const Identifier& season)
{
    return Reader(bytes).read(season);
}

} // namespace fleetrung::report
