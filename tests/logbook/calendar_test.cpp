// The season that a phone hands to a calendar (RFC 5545).
#include "logbook_helper.hpp"

using namespace fleetrung;
using namespace fleetrung::logbook;
using namespace fleetrung::logbook::test;

namespace
{

constexpr std::chrono::sys_seconds firstStamp = std::chrono::sys_days(std::chrono::days(20400));
constexpr std::chrono::sys_seconds laterStamp = firstStamp + std::chrono::hours(100);

int countOf(const std::string& text, std::string_view piece)
{
    int count = 0;
    for (auto at = text.find(piece); at != std::string::npos; at = text.find(piece, at + 1))
        ++count;
    return count;
}

} // namespace

TEST_CASE("a stored season is handed out as a calendar, and a moved race updates it instead of doubling it")
{
    const Folder folder;
    auto logbook = openLogbook(folder);
    const auto [athlete, season] = fill(logbook);
    const auto start = thirtyWeeks().start;
    const auto calendar = good(logbook.seasonCalendar(season, start, firstStamp, {}));
    CHECK(countOf(calendar, "SUMMARY:Bay meeting\r\n") == 1);
    CHECK(countOf(calendar, "SUMMARY:Lifts: ") > 50);
    CHECK(good(logbook.seasonCalendar(season, start, laterStamp, calendar)) == calendar);

    auto setup = thirtyWeeks();
    setup.name = "Outdoors"; // the stored season is the same, whatever it is called
    setup.competitions[0].date = date("2026-07-05");
    good(logbook.changeSeason(season, setup));
    const auto changed = good(logbook.seasonCalendar(season, start, laterStamp, calendar));
    CHECK(countOf(changed, "SUMMARY:Bay meeting\r\n") == 1);
    CHECK(countOf(changed, "DTSTART;VALUE=DATE:20260705\r\nDTEND;VALUE=DATE:20260706\r\nSUMMARY:Bay meeting\r\n") == 1);
    CHECK(countOf(changed, "SEQUENCE:1\r\n") > 0);
}

TEST_CASE("a calendar shows the load that the athlete works with on the rung of today")
{
    const Folder folder;
    auto logbook = openLogbook(folder);
    const auto [athlete, season] = fill(logbook);
    const auto day = thirtyWeeks().start;
    typedSession(logbook, athlete, day, 0.60, 0.5);
    const auto today = day + std::chrono::days(2);
    auto calendar = good(logbook.seasonCalendar(season, today, firstStamp, {}));
    while (calendar.find("\r\n ") != std::string::npos)
        calendar.erase(calendar.find("\r\n "), 3);
    CHECK(countOf(calendar, "Full squat: 4 x 5 at 90 kg\\, after a probe set of 3 at 80 kg") > 0);
}

TEST_CASE("a calendar of another season is refused")
{
    const Folder folder;
    auto logbook = openLogbook(folder);
    const auto [athlete, season] = fill(logbook);
    const auto other = good(logbook.addSeason(athlete, thirtyWeeks()));
    const auto start = thirtyWeeks().start;
    const auto calendar = good(logbook.seasonCalendar(season, start, firstStamp, {}));
    CHECK(codeOf(logbook.seasonCalendar(other, start, firstStamp, calendar)) == Code::InvalidInput);
    CHECK(codeOf(logbook.seasonCalendar(numbered(0xABCD), start, firstStamp, {})) == Code::NotFound);
}
