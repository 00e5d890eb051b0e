#include "mobile/logbook/track_log.hpp"

#include <algorithm>

#include "tests/logbook/logbook_helper.hpp"

using namespace fleetrung;
using namespace fleetrung::logbook;
using namespace fleetrung::logbook::test;

namespace
{

store::Sprint flying20(const Identifier& athlete, CivilDate day, double time)
{
    store::Sprint run;
    run.athlete = athlete;
    run.run = at(day);
    run.start = "flying";
    run.distance = 20;
    run.runIn = 30;
    run.time = time;
    run.timing = "gates";
    return run;
}

store::TrackWork sled(const Identifier& athlete, CivilDate day)
{
    store::TrackWork work;
    work.athlete = athlete;
    work.done = at(day);
    work.kind = "resisted";
    work.distance = 30;
    work.repetitions = 6;
    work.loadKg = 12;
    return work;
}

store::Jump dropJump(const Identifier& athlete, CivilDate day)
{
    store::Jump jump;
    jump.athlete = athlete;
    jump.done = at(day);
    jump.kind = "drop-jump";
    jump.boxHeightM = 0.3;
    jump.contact.value = 0.2;
    jump.flight.value = 0.5;
    return jump;
}

store::Jump bounds(const Identifier& athlete, CivilDate day)
{
    store::Jump jump;
    jump.athlete = athlete;
    jump.done = at(day);
    jump.kind = "bounds";
    jump.repetitions = 5;
    jump.distance.value = 12.9;
    return jump;
}

} // namespace

TEST_CASE("a run of last year tells the best speed of today's fast metres", "[track]")
{
    const Folder folder;
    auto logbook = openLogbook(folder);
    const auto athlete = good(logbook.addAthlete(longJumper()));
    const auto today = date("2026-05-06");
    static_cast<void>(good(logbook.addSprint(flying20(athlete, today - std::chrono::days{300}, 2.0))));
    const auto slow = flying20(athlete, today, 2.1); // 95.2 % of it
    static_cast<void>(good(logbook.addSprint(slow)));
    const auto log = good(readTrackLog(logbook, athlete, today, today));
    CHECK(log.fastOf(slow).at95 == 20);
    CHECK(log.fastOf(flying20(athlete, today, 2.15)).at95 == 0);
    CHECK(log.fastOf(flying20(athlete, today, 2.15)).at90 == 20);
}

TEST_CASE("a week adds up runs, the sled and the contacts of drop jumps and bounds; what was deleted counts no more",
          "[track]")
{
    const Folder folder;
    auto logbook = openLogbook(folder);
    const auto athlete = good(logbook.addAthlete(longJumper()));
    const auto today = date("2026-05-06");
    static_cast<void>(good(logbook.addSprint(flying20(athlete, today, 2.0))));
    const auto work = good(logbook.addTrackWork(sled(athlete, today)));
    for (int i = 0; i < 4; ++i)
        static_cast<void>(good(logbook.addJump(dropJump(athlete, today))));
    static_cast<void>(good(logbook.addJump(bounds(athlete, today))));
    const auto week = [&] {
        const auto log = good(readTrackLog(logbook, athlete, today, today));
        return track::weeks(log.runs, log.work, log.contacts, today, today).front();
    };
    CHECK(week().metres == 50 + 180);
    CHECK(week().resisted == 180);
    CHECK(week().contacts == 9);
    good(logbook.setTrackWorkDeleted(work, true));
    CHECK(week().resisted == 0);
    good(logbook.setTrackWorkDeleted(work, false));
    CHECK(week().resisted == 180);
}

TEST_CASE("the season report has work, weeks, height and RSI of typed jumps, and the long jump of a competition",
          "[track][report]")
{
    const Folder folder;
    auto logbook = openLogbook(folder);
    const auto athlete = good(logbook.addAthlete(longJumper()));
    season::SeasonSetup setup;
    setup.name = "Outdoor";
    setup.start = date("2026-05-04");
    setup.end = date("2026-08-30");
    setup.trainingDays = {1, 3, 5};
    setup.sprintDays = {1, 3};
    setup.ladders = {"squat"};
    setup.equipment = {"bar", "rack", "pins"};
    setup.competitions = {{date("2026-05-16"), "Spring meeting", season::Priority::C, false},
                          {date("2026-08-29"), "Championships", season::Priority::A, true}};
    const auto season = good(logbook.addSeason(athlete, setup));
    static_cast<void>(good(logbook.addTrackWork(sled(athlete, date("2026-05-06")))));
    static_cast<void>(good(logbook.addJump(dropJump(athlete, date("2026-05-06")))));
    static_cast<void>(good(logbook.addJump(bounds(athlete, date("2026-05-06")))));
    for (const double distance : {5.91, 6.03}) {
        store::Jump jump;
        jump.athlete = athlete;
        jump.done = at(date("2026-05-16"));
        jump.kind = "long-jump";
        jump.distance.value = distance;
        static_cast<void>(good(logbook.addJump(jump)));
    }
    const auto report = good(logbook.seasonReport(athlete, season, date("2026-05-17")));
    REQUIRE(report.trackWork.size() == 1);
    CHECK(report.trackWork.front().kind == "resisted");
    REQUIRE(report.trackWeeks.size() == 2);
    CHECK(report.trackWeeks[0].week.resisted == 180);
    CHECK(report.trackWeeks[0].sprintDaysPlanned == 2);
    CHECK(report.trackWeeks[0].sprintDaysDone == 1);
    CHECK(report.trackWeeks[1].week.contacts == 2);
    CHECK(report.competitions.front().result == "long jump 6.03 m");
    REQUIRE(report.jumps.size() == 4);
    const auto drop = std::ranges::find(report.jumps, "drop jump", &report::Jump::kind);
    REQUIRE(drop != report.jumps.end());
    CHECK(*drop->height.value == Approx(0.306458).epsilon(1e-5)); // 9.80665 x 0.5^2 / 8
    CHECK(*drop->reactiveStrength.value == Approx(1.53229).epsilon(1e-5));
    CHECK(std::ranges::count(report.jumps, "5 bounds", &report::Jump::kind) == 1);
}
