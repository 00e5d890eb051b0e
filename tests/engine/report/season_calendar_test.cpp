// The season as a calendar that is taken again and again: RFC 5545, and RFC 5546 for the meaning of updates.
#include <catch2/catch.hpp>

#include <map>

#include "engine/report/content_lines.hpp"
#include "engine/report/season_calendar.hpp"
#include "tests/engine/season/example.hpp"

using namespace fleetrung;
using namespace fleetrung::report;
using season::example::on;
using namespace std::chrono_literals;

namespace
{

const std::chrono::sys_seconds firstStamp = on("2026-01-01") + 10h;
const std::chrono::sys_seconds laterStamp = on("2026-02-01") + 11h;
const std::string firstStampText = "20260101T100000Z";
const std::string laterStampText = "20260201T110000Z";

using Event = std::map<std::string, std::string, std::less<>>; ///< property, without parameters, to its value

std::vector<Event> eventsOf(const std::string& calendar)
{
    std::vector<Event> events;
    for (const auto& line : contentLines(calendar))
        if (line.text == "BEGIN:VEVENT")
            events.emplace_back();
        else if (!events.empty())
            events.back()[std::string(line.name())] = line.value();
    return events;
}

std::map<std::string, Event> byUid(const std::string& calendar)
{
    std::map<std::string, Event> events;
    for (const auto& event : eventsOf(calendar))
        REQUIRE(events.emplace(event.at("UID"), event).second); // section 3.8.4.7: an UID names one event
    return events;
}

/// The one event of which a property has that value.
Event eventWith(const std::string& calendar, const std::string& property, const std::string& value)
{
    std::vector<Event> found;
    for (const auto& event : eventsOf(calendar))
        if (event.at(property) == value)
            found.push_back(event);
    INFO(property << ':' << value);
    REQUIRE(found.size() == 1);
    return found[0];
}

std::vector<Event> eventsOn(const std::string& calendar, const std::string& category, const std::string& day)
{
    std::vector<Event> found;
    for (const auto& event : eventsOf(calendar))
        if (event.at("CATEGORIES") == category && event.at("DTSTART").substr(0, 8) == day)
            found.push_back(event);
    return found;
}

struct Wish {
    season::SeasonSetup setup = season::example::setup();
    std::vector<season::LadderState> states = {};
    std::optional<CivilDate> from = {};
    std::optional<std::chrono::minutes> sessionStart = {};
};

Expected<std::string> tryCalendar(const Wish& wish, std::chrono::sys_seconds stamp = firstStamp,
                                  const std::string& previous = {})
{
    const auto plan = season::planSeason(wish.setup);
    REQUIRE(plan);
    return seasonCalendar(
        {calendarSeason(wish.setup), *plan, wish.states, wish.from.value_or(wish.setup.start), wish.sessionStart},
        stamp, previous);
}

std::string calendarOf(const Wish& wish, std::chrono::sys_seconds stamp = firstStamp, const std::string& previous = {})
{
    const auto calendar = tryCalendar(wish, stamp, previous);
    if (!calendar)
        FAIL(describe(calendar.error()));
    return *calendar;
}

Wish seasonFrom(const char* start, const char* mainRace)
{
    Wish wish;
    wish.setup.start = on(start);
    wish.setup.competitions = {{on(mainRace), "The main race", season::Priority::A, true}};
    return wish;
}

Wish withMovedMeeting(const char* day)
{
    Wish wish;
    for (auto& competition : wish.setup.competitions)
        if (competition.name == "Spring meeting")
            competition.date = on(day);
    return wish;
}

std::string replaced(std::string text, const std::string& piece, const std::string& other)
{
    const auto at = text.find(piece);
    REQUIRE(at != std::string::npos);
    return text.replace(at, piece.size(), other);
}

} // namespace

TEST_CASE("The calendar is one VCALENDAR of VEVENTs with what the standard asks for", "[calendar]")
{
    const auto calendar = calendarOf({});
    // Section 3.4 and 3.6: BEGIN, VERSION and PRODID once, then the components
    CHECK(calendar.starts_with("BEGIN:VCALENDAR\r\nVERSION:2.0\r\nPRODID:-//Fleetrung//"));
    CHECK(calendar.ends_with("END:VEVENT\r\nEND:VCALENDAR\r\n"));
    CHECK(calendar.find("\r\nMETHOD:PUBLISH\r\n") != std::string::npos); // RFC 5546 section 3.2.1
    for (std::size_t at = 0; (at = calendar.find('\n', at)) != std::string::npos; ++at)
        REQUIRE(calendar[at - 1] == '\r'); // section 3.1
    const auto events = byUid(calendar);
    CHECK(events.size() > 70);
    for (const auto& [uid, event] : events) {
        CHECK(event.at("DTSTAMP") == firstStampText); // section 3.8.7.2
        CHECK(event.at("LAST-MODIFIED") == firstStampText);
        CHECK(event.at("SEQUENCE") == "0"); // section 3.8.7.4: the first version
        CHECK(event.at("DTSTART") < event.at("DTEND"));
        CHECK_FALSE(event.at("SUMMARY").empty());
    }
}

TEST_CASE("Every lifting day with lifts, every competition and every phase has its event", "[calendar]")
{
    const Wish wish;
    const auto plan = *season::planSeason(wish.setup);
    const auto calendar = calendarOf(wish);
    std::size_t expected = plan.phases.size() + wish.setup.competitions.size();
    for (auto day = wish.setup.start; day <= plan.end; day += std::chrono::days(1)) {
        const auto session = season::planSession(plan, {}, {}, day);
        const auto events = eventsOn(calendar, "strength", calendarDate(day));
        INFO(dateText(day));
        REQUIRE(events.size() == (session.lifts.empty() ? 0U : 1U));
        expected += events.size();
    }
    CHECK(eventsOf(calendar).size() == expected);
    for (const auto& competition : wish.setup.competitions) {
        const auto event = eventWith(calendar, "SUMMARY", competition.name);
        CHECK(event.at("CATEGORIES") == "competition");
        CHECK(event.at("DTSTART") == calendarDate(competition.date));
    }
    for (const auto& span : plan.phases) {
        const auto event = eventsOn(calendar, "phase", calendarDate(span.from)).at(0);
        CHECK(event.at("DTEND") == calendarDate(span.to + std::chrono::days(1))); // section 3.6.1: exclusive
        CHECK(event.at("TRANSP") == "TRANSPARENT");                               // section 3.8.2.7
    }
}

TEST_CASE("A session names its lifts fastest first, its sets, that the day decides, and every caution", "[calendar]")
{
    Wish wish;
    wish.setup.ladders = {"squat", "clean"};
    const auto event = eventsOn(calendarOf(wish), "strength", "20260105").at(0);
    CHECK(event.at("SUMMARY") == "Lifts: clean from the floor\\, caught low\\; full squat");
    const auto& text = event.at("DESCRIPTION");
    CHECK(text.find("Full squat: 4 x 5") != std::string::npos);
    CHECK(text.find(" kg") == std::string::npos); // no load is known yet
    CHECK(text.find("Planned\\; the day's evidence decides rung and load.") != std::string::npos);
    const auto* caution = season::findCaution(season::standardSeasonData(), "first-heavy");
    REQUIRE(caution != nullptr);
    CHECK(text.find(escapedText(caution->title + ": " + caution->text)) != std::string::npos);
}

TEST_CASE("Loads are given where the athlete stands, and not for the rungs still ahead", "[calendar]")
{
    Wish wish;
    wish.setup.ladders = {"squat"};
    wish.states = {{"squat", {{"full", on("2026-01-05")}}, 90, 107.5}};
    const auto calendar = calendarOf(wish);
    const auto now = eventsOn(calendar, "strength", "20260105").at(0);
    CHECK(now.at("DESCRIPTION").find("4 x 5 at 107.5 kg\\, after a probe set of 3 at 90 kg.") != std::string::npos);
    int ahead = 0;
    for (const auto& event : eventsOf(calendar))
        if (event.at("SUMMARY") == "Lifts: half squat") {
            ++ahead;
            CHECK(event.at("DESCRIPTION").find(" kg") == std::string::npos);
        }
    CHECK(ahead > 3);
}

TEST_CASE("With a time of day sessions are floating local times, and the rest stays whole days", "[calendar]")
{
    Wish wish;
    wish.sessionStart = 23h + 15min;
    const auto calendar = calendarOf(wish);
    // Section 3.3.5, form 1: no zone, the same hour wherever the athlete is. 90 minutes end on the next day.
    const auto event = eventsOn(calendar, "strength", "20260105").at(0);
    CHECK(event.at("DTSTART") == "20260105T231500");
    CHECK(event.at("DTEND") == "20260106T004500");
    CHECK(event.at("TRANSP") == "OPAQUE");
    CHECK(eventWith(calendar, "SUMMARY", "The main race").at("DTSTART") == "20260802");
    CHECK(calendar.find("VTIMEZONE") == std::string::npos);

    wish.sessionStart = 24h;
    CHECK(tryCalendar(wish).error().code == Code::InvalidArgument);
}

TEST_CASE("Leap day, year end and a year of 53 weeks are days like others", "[calendar]")
{
    // 29 February 2028 is a Tuesday; 2026 has an ISO week 53 (28 December to 3 January)
    auto leap = seasonFrom("2028-01-03", "2028-07-30");
    leap.setup.trainingDays = {2, 4, 6};
    leap.setup.sprintDays = {2, 4, 6};
    auto event = eventsOn(calendarOf(leap), "strength", "20280229").at(0);
    CHECK(event.at("DTEND") == "20280301");

    auto winter = seasonFrom("2026-10-05", "2027-03-07");
    winter.setup.trainingDays = {1, 4};
    winter.setup.sprintDays = {1, 4};
    const auto calendar = calendarOf(winter);
    CHECK(eventsOn(calendar, "strength", "20261228").at(0).at("DTEND") == "20261229");
    event = eventsOn(calendar, "strength", "20261231").at(0);
    CHECK(event.at("DTEND") == "20270101");
    CHECK(event.at("DESCRIPTION").find("week 13 of 22") != std::string::npos); // weeks of the season, not of the year
}

TEST_CASE("Names of any script and with the standard's own signs come through", "[calendar]")
{
    Wish wish;
    const std::string name = "\xE9\x99\xB8\xE4\xB8\x8A\xE7\xAB\xB6\xE6\x8A\x80\xE5\xA4\xA7\xE4\xBC\x9A "
                             "\xF0\x9F\x8F\x83\xF0\x9F\x8F\xBD, second; the \\ meeting\nof the year "
                             "\xE9\x99\xB8\xE4\xB8\x8A\xE7\xAB\xB6\xE6\x8A\x80\xE5\xA4\xA7\xE4\xBC\x9A";
    wish.setup.competitions.back().name = name;
    const auto calendar = calendarOf(wish);
    CHECK(eventWith(calendar, "SUMMARY", escapedText(name)).at("DTSTART") == "20260802");
    CHECK(calendarOf(wish, laterStamp, calendar) == calendar);
}

TEST_CASE("The same plan over the file written last gives the same bytes, whenever it is asked", "[calendar]")
{
    const auto calendar = calendarOf({});
    CHECK(calendarOf({}) == calendar);
    CHECK(calendarOf({}, laterStamp, calendar) == calendar);
    auto stored = calendar;
    std::erase(stored, '\r'); // a file that was stored as text
    CHECK(calendarOf({}, laterStamp, stored) == calendar);
}

TEST_CASE("A moved competition keeps its UID and counts on, what did not change keeps its stamp", "[calendar]")
{
    const auto before = calendarOf({});
    const auto after = calendarOf(withMovedMeeting("2026-06-21"), laterStamp, before);
    const auto was = eventWith(before, "SUMMARY", "Spring meeting");
    const auto is = eventWith(after, "SUMMARY", "Spring meeting");
    CHECK(is.at("UID") == was.at("UID"));
    CHECK(is.at("DTSTART") == "20260621");
    CHECK(is.at("SEQUENCE") == "1"); // RFC 5545 section 3.8.7.4, RFC 5546 section 2.1.4: DTSTART changed
    CHECK(is.at("DTSTAMP") == laterStampText);
    CHECK(is.at("LAST-MODIFIED") == laterStampText);

    const auto old = byUid(before);
    int unchanged = 0, changed = 0;
    for (const auto& [uid, event] : byUid(after)) {
        const auto found = old.find(uid);
        if (found == old.end()) {
            CHECK(event.at("SEQUENCE") == "0");
            continue;
        }
        (event == found->second ? unchanged : changed) += 1;
        if (event != found->second) {
            CHECK(event.at("SEQUENCE") == "1");
            CHECK(event.at("DTSTAMP") == laterStampText);
        }
    }
    CHECK(unchanged > 60);
    CHECK(changed < 10);
}

TEST_CASE("Two competitions of one name are told apart by their order", "[calendar]")
{
    Wish wish;
    wish.setup.competitions[1].name = "Spring meeting";
    const auto before = calendarOf(wish);
    CHECK(byUid(before).size() == eventsOf(before).size());
    wish.setup.competitions[1].date = on("2026-07-05");
    const auto after = calendarOf(wish, laterStamp, before);
    CHECK(eventsOn(before, "competition", "20260614") == eventsOn(after, "competition", "20260614"));
    CHECK(eventsOn(before, "competition", "20260704").at(0).at("UID") ==
          eventsOn(after, "competition", "20260705").at(0).at("UID"));
}

TEST_CASE("A session that is planned no more is cancelled once, and counts on when it comes back", "[calendar]")
{
    Wish twice;
    twice.setup.trainingDays = {1, 3};
    twice.setup.sprintDays = {1, 3};
    const auto before = calendarOf({});
    const auto without = calendarOf(twice, laterStamp, before);
    const auto friday = eventsOn(before, "strength", "20260109").at(0);
    const auto cancelled = eventsOn(without, "strength", "20260109").at(0);
    // RFC 5545 section 3.8.1.11, RFC 5546 section 3.2.1: the same UID, a higher SEQUENCE, STATUS:CANCELLED
    CHECK(cancelled.at("UID") == friday.at("UID"));
    CHECK(cancelled.at("STATUS") == "CANCELLED");
    CHECK(cancelled.at("SEQUENCE") == "1");
    CHECK(cancelled.at("DTSTAMP") == laterStampText);
    CHECK(eventsOf(without).size() == eventsOf(before).size());

    const auto muchLater = laterStamp + 1000h;
    CHECK(calendarOf(twice, muchLater, without) == without);
    const auto again = eventsOn(calendarOf({}, muchLater, without), "strength", "20260109").at(0);
    CHECK(again.at("UID") == friday.at("UID"));
    CHECK(again.at("STATUS") == "CONFIRMED");
    CHECK(again.at("SEQUENCE") == "2");
}

TEST_CASE("What lies before the day asked for stays as it was published, and is not published anew", "[calendar]")
{
    Wish wish;
    const auto before = calendarOf(wish);
    wish.from = on("2026-03-02");
    wish.setup.trainingDays = {1, 3};
    wish.setup.sprintDays = {1, 3};
    const auto after = calendarOf(wish, laterStamp, before);
    CHECK(eventsOn(after, "strength", "20260109") == eventsOn(before, "strength", "20260109"));
    CHECK(eventsOn(after, "strength", "20260227") == eventsOn(before, "strength", "20260227"));
    CHECK(eventsOn(after, "strength", "20260306").at(0).at("STATUS") == "CANCELLED");

    const auto fresh = calendarOf(wish);
    CHECK(eventsOn(fresh, "strength", "20260225").empty());
    CHECK(eventsOn(fresh, "strength", "20260302").size() == 1);
    CHECK(eventsOn(fresh, "phase", "20260105").size() == 1); // under way on that day
}

TEST_CASE("A competition that was moved over the day asked for is moved in the calendar, either way", "[calendar]")
{
    auto early = withMovedMeeting("2026-02-22"), late = withMovedMeeting("2026-06-21");
    early.from = late.from = on("2026-03-02");
    for (const auto& [was, is] : {std::pair(early, late), std::pair(late, early)}) {
        auto whole = was;
        whole.from.reset();
        const auto before = calendarOf(whole);
        const auto moved = eventWith(calendarOf(is, laterStamp, before), "SUMMARY", "Spring meeting");
        CHECK(moved.at("UID") == eventWith(before, "SUMMARY", "Spring meeting").at("UID"));
        CHECK(moved.at("DTSTART") == calendarDate(is.setup.competitions[0].date));
        CHECK(moved.at("SEQUENCE") == "1");
    }
}

TEST_CASE("A change that somebody else made in the file is set right with a higher sequence", "[calendar]")
{
    const auto calendar = calendarOf({});
    const auto edited = replaced(calendar, "SUMMARY:The main race", "SUMMARY:Something else");
    const auto mended = eventWith(calendarOf({}, laterStamp, edited), "SUMMARY", "The main race");
    CHECK(mended.at("UID") == eventWith(calendar, "SUMMARY", "The main race").at("UID"));
    CHECK(mended.at("SEQUENCE") == "1");
}

TEST_CASE("A damaged or foreign file is refused with the line and the cause", "[calendar]")
{
    const auto calendar = calendarOf({});
    const auto refused = [](const std::string& previous) {
        const auto result = tryCalendar({}, laterStamp, previous);
        REQUIRE_FALSE(result);
        CHECK(result.error().code == Code::InvalidInput);
        return describe(result.error());
    };
    using Catch::StartsWith;
    CHECK_THAT(refused("name,time\n"), StartsWith("line 1: this is no calendar"));
    CHECK_THAT(refused("\r\n"), StartsWith("line 1: this is no calendar"));
    CHECK_THAT(refused(replaced(calendar, "-//Fleetrung//", "-//Somebody//")),
               StartsWith("line 3: another program wrote this calendar"));
    CHECK_THAT(refused("BEGIN:VCALENDAR\r\nVERSION:2.0\r\nEND:VCALENDAR\r\n"),
               StartsWith("line 3: nothing up to here"));
    Wish other;
    other.setup.name = "Indoor season";
    CHECK_THAT(refused(calendarOf(other)), StartsWith("line 6: this is the calendar of another season"));
    CHECK_THAT(refused(replaced(calendar, "SEQUENCE:0", "SEQUENCE:-1")), StartsWith("line 11: SEQUENCE is no"));
    CHECK_THAT(refused(replaced(calendar, "SEQUENCE:0", "SEQUENCE:2147483647")), StartsWith("line 11: SEQUENCE is no"));
    CHECK_THAT(refused(replaced(calendar, "SEQUENCE:0\r\n", "")), StartsWith("line 7: this event has no SEQUENCE"));
    CHECK_THAT(refused(replaced(calendar, "DTSTAMP:20260101T100000Z", "DTSTAMP:yesterday")),
               StartsWith("line 9: DTSTAMP is no instant"));
    CHECK_THAT(refused(replaced(calendar, "DTSTART;VALUE=DATE:20260105", "DTSTART;VALUE=DATE:20260230")),
               StartsWith("line 12: DTSTART is no date"));
    CHECK_THAT(refused(replaced(calendar, "END:VEVENT\r\n", "BEGIN:VALARM\r\nEND:VALARM\r\nEND:VEVENT\r\n")),
               Catch::Contains("an event does not end before BEGIN:VALARM"));
    CHECK_THAT(refused(calendar + "BEGIN:VCALENDAR\r\n"), Catch::Contains("goes on behind END:VCALENDAR"));
    const auto first = calendar.find("BEGIN:VEVENT");
    const auto second = calendar.find("BEGIN:VEVENT", first + 1);
    CHECK_THAT(refused(replaced(calendar, "END:VCALENDAR", calendar.substr(first, second - first) + "END:VCALENDAR")),
               Catch::Contains("this event has the UID of one before it"));
}

TEST_CASE("A file that was cut off anywhere is refused or says the same", "[calendar]")
{
    Wish wish = seasonFrom("2026-01-05", "2026-03-15");
    wish.setup.trainingDays = {1};
    wish.setup.sprintDays = {1};
    const auto calendar = calendarOf(wish);
    for (std::size_t length = 1; length < calendar.size() - 2; ++length)
        if (tryCalendar(wish, laterStamp, calendar.substr(0, length)))
            FAIL("cut off after " << length << " octets and taken");
    CHECK(calendarOf(wish, laterStamp, calendar.substr(0, calendar.size() - 2)) == calendar);
}

TEST_CASE("Dates beyond what a calendar can write are refused", "[calendar]")
{
    auto far = seasonFrom("9999-06-01", "9999-12-31");
    const auto result = tryCalendar(far);
    REQUIRE_FALSE(result);
    CHECK(result.error().code == Code::InvalidArgument);
}
