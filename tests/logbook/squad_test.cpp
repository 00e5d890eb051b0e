// Athletes and seasons.
#include "logbook_helper.hpp"

using namespace fleetrung;
using namespace fleetrung::logbook;
using namespace fleetrung::logbook::test;

TEST_CASE("the squad shows each athlete with age, season and what was trained")
{
    const Folder folder;
    auto logbook = openLogbook(folder);
    const auto [athlete, season] = fill(logbook);
    good(logbook.openSession(athlete, "strength", at(date("2025-12-01"))));
    good(logbook.openSession(athlete, "strength", at(date("2025-12-03"))));
    CHECK(good(logbook.openSession(athlete, "strength", at(date("2025-12-03"), 60000))) ==
          good(logbook.openSession(athlete, "strength", at(date("2025-12-03"), 64000))));
    const auto squad = good(logbook.squad(date("2026-05-19")));
    REQUIRE(squad.size() == 1);
    CHECK(squad[0].athlete.name == "Marle Oddvik");
    CHECK(squad[0].season->id == season);
    CHECK(squad[0].sessions == 2);
    CHECK(squad[0].lastDay == date("2025-12-03"));
    CHECK(squad[0].age == 24); // 25 on the next day
}

TEST_CASE("a deleted athlete leaves the squad and comes back with everything")
{
    const Folder folder;
    auto logbook = openLogbook(folder);
    const auto [athlete, season] = fill(logbook);
    good(logbook.deleteAthlete(athlete));
    CHECK(good(logbook.squad(date("2026-01-01"))).empty());
    CHECK(good(logbook.deletedAthletes()).at(0).id == athlete);
    good(logbook.restoreAthlete(athlete));
    CHECK(good(logbook.squad(date("2026-01-01"))).at(0).season->id == season);
}

TEST_CASE("a season is read back as it was set up, with the facts of its athlete, and is found by a day")
{
    const Folder folder;
    auto logbook = openLogbook(folder);
    const auto [athlete, season] = fill(logbook);
    const auto record = good(logbook.season(season));
    CHECK(record.setup.ladders == thirtyWeeks().ladders);
    CHECK(record.setup.competitions.at(0).name == "Bay meeting");
    CHECK(record.setup.athlete.bodyMassKg == 64.0);
    CHECK(record.row.start == date("2025-12-01"));
    CHECK(good(logbook.seasonOn(athlete, date("2026-03-01"))).row.id == season);
    CHECK(codeOf(logbook.seasonOn(athlete, date("2027-03-01"))) == Code::NotFound);

    auto changed = thirtyWeeks();
    changed.ladders.push_back("drop-jump");
    good(logbook.changeSeason(season, changed));
    CHECK(good(logbook.season(season)).setup.ladders.size() == 3);
}

TEST_CASE("a season that must not be is refused with the reason, and nothing is stored")
{
    const Folder folder;
    auto logbook = openLogbook(folder);
    auto young = longJumper();
    young.born = date("2009-02-11");
    const auto athlete = good(logbook.addAthlete(young));
    CHECK(codeOf(logbook.addSeason(athlete, thirtyWeeks())) == Code::Refused); // no guardian's consent
    CHECK(good(logbook.seasons(athlete)).empty());

    young = good(logbook.athlete(athlete));
    young.guardianConsent = true;
    good(logbook.changeAthlete(young));
    CHECK(logbook.addSeason(athlete, thirtyWeeks()));
}

TEST_CASE("sprints, jumps, how the athlete is and lost days are listed by day and can be taken back")
{
    const Folder folder;
    auto logbook = openLogbook(folder);
    const auto [athlete, season] = fill(logbook);
    store::Sprint sprint;
    sprint.athlete = athlete;
    sprint.run = at(date("2026-01-10"));
    sprint.distance = 20;
    sprint.time = 2.05;
    sprint.start = "flying";
    const auto id = good(logbook.addSprint(sprint));
    sprint.run = at(date("2026-01-03"));
    sprint.time = 2.09;
    good(logbook.addSprint(sprint));
    CHECK(good(logbook.sprints(athlete)).at(0).time == 2.09);
    CHECK(good(logbook.sprints(athlete, date("2026-01-05"))).size() == 1);
    good(logbook.setSprintDeleted(id, true));
    CHECK(good(logbook.sprints(athlete)).size() == 1);
    good(logbook.setSprintDeleted(id, false));
    CHECK(good(logbook.sprints(athlete)).size() == 2);

    store::LostDay lost;
    lost.athlete = athlete;
    lost.day = date("2026-01-04");
    lost.why = "travel";
    good(logbook.addLostDay(lost));
    CHECK(good(logbook.lostDays(athlete)).at(0).why == "travel");
}
