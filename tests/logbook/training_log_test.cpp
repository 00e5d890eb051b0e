// What loads, limits and decisions are told of the training done.
#include "logbook_helper.hpp"

using namespace fleetrung;
using namespace fleetrung::logbook;
using namespace fleetrung::logbook::test;

namespace
{

constexpr std::chrono::days twoDays{2};

store::LiftSet dropJumps(const Identifier& session)
{
    store::LiftSet set;
    set.session = session;
    set.lift = "drop-jump";
    set.ladder = "drop-jump";
    set.rung = "enter-20";
    return set;
}

store::Jump jumpOn(const Identifier& athlete, CivilDate day, std::optional<Identifier> session)
{
    store::Jump jump;
    jump.athlete = athlete;
    jump.session = session;
    jump.done = at(day);
    jump.kind = "drop-jump";
    jump.boxHeightM = 0.2;
    jump.contact = {0.2, {}};
    return jump;
}

store::Sprint flying(const Identifier& athlete, CivilDate day, double time)
{
    store::Sprint sprint;
    sprint.athlete = athlete;
    sprint.run = at(day);
    sprint.distance = 20;
    sprint.time = time;
    sprint.start = "flying";
    sprint.runIn = 30;
    sprint.timing = "gates";
    sprint.surface = "track";
    sprint.shoes = "spikes";
    sprint.windMps = 0.5;
    return sprint;
}

TypedRepetitions repetitions(int count, std::optional<double> meanVelocity = {})
{
    TypedRepetitions typed;
    typed.count = count;
    typed.meanVelocity = meanVelocity;
    return typed;
}

} // namespace

TEST_CASE("the work of a session is its heaviest set on the rung, and of equals the one that beat its target least")
{
    const Folder folder;
    auto logbook = openLogbook(folder);
    const auto [athlete, season] = fill(logbook);
    const auto day = date("2026-01-07");
    const auto session = good(logbook.openSession(athlete, "strength", at(day)));
    for (const auto& [load, done] :
         {std::pair(80.0, 9), std::pair(100.0, 7), std::pair(100.0, 6), std::pair(90.0, 5)}) {
        auto set = squat(session, store::SetKind::Work, load);
        set.repetitionsPlanned = 5;
        set.effort = 8;
        good(logbook.typeSet(set, repetitions(done), at(day)));
    }
    good(logbook.typeSet(squat(session, store::SetKind::WarmUp, 120), repetitions(1), at(day)));
    good(logbook.typeSet(squat(session, store::SetKind::Maintenance, 130, "parallel"), repetitions(3), at(day)));
    const auto log = good(logbook.dayInput(season, day + twoDays)).log;
    REQUIRE(log.work.size() == 2);
    CHECK(log.work[0].rung == "full");
    CHECK(log.work[0].loadKg == 100.0);
    CHECK(log.work[0].targetRepetitions == 5);
    CHECK(log.work[0].doneRepetitions == 6);
    CHECK(log.work[0].effort == 8.0);
    CHECK_FALSE(log.work[0].maintenance);
    CHECK(log.work[1].maintenance);
    CHECK(log.work[1].loadKg == 130.0);
    CHECK(good(logbook.dayInput(season, day)).log.work.empty()); // a day's own work is not before it
}

TEST_CASE("what was lifted on a day that a decision eased is marked as eased")
{
    const Folder folder;
    auto logbook = openLogbook(folder);
    const auto [athlete, season] = fill(logbook);
    const auto day = good(logbook.states(season, date("2025-12-01"))).at(0).since();
    typedSession(logbook, athlete, day, 0.6, 0.5);
    const auto back = day + std::chrono::days{11}; // rules: after 7 to 13 days off the same rung, 10 % lighter
    good(logbook.decide(season, at(back)));
    typedSession(logbook, athlete, back, 0.6, 0.5);
    const auto work = good(logbook.dayInput(season, back + twoDays)).log.work;
    REQUIRE(work.size() == 2);
    CHECK_FALSE(work[0].eased);
    CHECK(work[1].eased);
}

TEST_CASE("drop-jump contacts of a day are counted once: jumps measured in a session are among its sets' repetitions")
{
    const Folder folder;
    auto logbook = openLogbook(folder);
    const auto [athlete, season] = fill(logbook);
    const auto day = date("2026-01-07");
    const auto session = good(logbook.openSession(athlete, "strength", at(day)));
    for (int i = 0; i < 4; ++i)
        good(logbook.typeSet(dropJumps(session), repetitions(5), at(day)));
    for (int i = 0; i < 3; ++i)
        good(logbook.addJump(jumpOn(athlete, day, session)));
    for (int i = 0; i < 2; ++i)
        good(logbook.addJump(jumpOn(athlete, day, {}))); // on their own, in the evening
    const auto contacts = good(logbook.dayInput(season, day + twoDays)).log.contacts;
    REQUIRE(contacts.size() == 1);
    CHECK(contacts[0].day == day);
    CHECK(contacts[0].contacts == 22);
}

TEST_CASE("speed tests are the best of a day under one set of conditions, and races are none")
{
    const Folder folder;
    auto logbook = openLogbook(folder);
    const auto [athlete, season] = fill(logbook);
    const auto day = date("2026-01-07");
    good(logbook.addSprint(flying(athlete, day, 2.10)));
    good(logbook.addSprint(flying(athlete, day, 2.06)));
    auto flats = flying(athlete, day, 2.15);
    flats.shoes = "flats";
    good(logbook.addSprint(flats));
    auto race = flying(athlete, day, 1.99);
    race.competition = true;
    good(logbook.addSprint(race));
    auto training = flying(athlete, day, 4.3);
    training.start = "block";
    training.distance = 30;
    good(logbook.addSprint(training)); // no session of tests: it may have been one of many, tired
    auto tested = training;
    tested.run = at(day + twoDays);
    tested.time = 4.25;
    tested.session = good(logbook.openSession(athlete, "test", at(day + twoDays)));
    good(logbook.addSprint(tested));

    const auto tests = good(logbook.dayInput(season, day + 2 * twoDays)).log.tests;
    REQUIRE(tests.size() == 3);
    CHECK(tests[0].conditions == "flying 20 m, run-in 30 m, gates, track, flats");
    CHECK(tests[1].conditions == "flying 20 m, run-in 30 m, gates, track, spikes");
    CHECK(tests[1].seconds == 2.06);
    CHECK(tests[1].windMps == 0.5);
    CHECK(tests[2].conditions == "block 30 m, gates, track, spikes");
    CHECK(tests[2].day == day + twoDays);
}

TEST_CASE("estimated maxima of a session are known maxima of its rung")
{
    const Folder folder;
    auto logbook = openLogbook(folder);
    const auto [athlete, season] = fill(logbook);
    const auto day = date("2026-01-07");
    const auto session = good(logbook.openSession(athlete, "strength", at(day)));
    auto set = squat(session, store::SetKind::Work, 100);
    set.effort = 8;
    good(logbook.typeSet(set, repetitions(4, 0.5), at(day)));
    const auto maxima = good(logbook.dayInput(season, day + twoDays)).log.maxima;
    REQUIRE(maxima.size() == 1);
    CHECK(maxima[0].rung == "full");
    CHECK(maxima[0].loadKg == Approx(100 * 36.0 / (37 - 6)).margin(0.05)); // Brzycki, two repetitions left
}

TEST_CASE("evidence holds what each load of the session said, and of the warm-up what was near enough to the work")
{
    const Folder folder;
    auto logbook = openLogbook(folder);
    const auto [athlete, season] = fill(logbook);
    const auto day = date("2026-01-07");
    const auto session = good(logbook.openSession(athlete, "strength", at(day)));
    const auto lift = [&](store::SetKind kind, double load, double velocity) {
        good(logbook.typeSet(squat(session, kind, load), repetitions(3, velocity), at(day)));
    };
    lift(store::SetKind::WarmUp, 40, 0.90);
    lift(store::SetKind::WarmUp, 60, 0.80);
    lift(store::SetKind::Probe, 70, 0.70);
    lift(store::SetKind::Work, 100, 0.50);
    const auto evidence = good(logbook.evidence(season, day + twoDays, "squat"));
    REQUIRE(evidence.size() == 1);
    const auto& loads = evidence[0].loads;
    REQUIRE(loads.size() == 3); // 40 kg is under 60 % of 100
    CHECK(loads[0].loadKg == 60.0);
    CHECK(loads[0].velocity->value == 0.80);
    CHECK(loads[1].velocity->value == 0.70);
    CHECK(loads[2].velocity->value == 0.50);
}

TEST_CASE("a measured session says at each load the median of its first three valid repetitions")
{
    const Folder folder;
    auto logbook = openLogbook(folder);
    const auto [athlete, season] = fill(logbook);
    const auto day = date("2026-01-07");
    const auto session = good(logbook.openSession(athlete, "strength", at(day)));
    good(logbook.recordSet(squat(session, store::SetKind::Probe, 80), simulated("full-squat", 3, 41).recording, {},
                           at(day)));
    const auto work = good(logbook.recordSet(squat(session, store::SetKind::Work, 90),
                                             simulated("full-squat", 5, 42).recording, {}, at(day)));
    const auto evidence = good(logbook.evidence(season, day + twoDays, "squat"));
    REQUIRE(evidence.size() == 1);
    REQUIRE(evidence[0].loads.size() == 2);
    CHECK(evidence[0].loads[0].velocity->value == evidence[0].meanVelocity->value);
    std::vector<double> first;
    for (std::size_t i = 0; i < 3; ++i)
        first.push_back(work.analysis.repetitions.at(i).meanVelocity.value);
    std::ranges::sort(first);
    CHECK(evidence[0].loads[1].velocity->value == Approx(first[1]).margin(0.00051));
    CHECK(evidence[0].loads[1].velocity->uncertainty > 0);
}

TEST_CASE("a lift outside the ladders is logged and counted, and is never evidence")
{
    const Folder folder;
    auto logbook = openLogbook(folder);
    const auto [athlete, season] = fill(logbook);
    const auto day = date("2026-01-07");
    const auto session = good(logbook.openSession(athlete, "strength", at(day)));
    store::LiftSet thrust;
    thrust.session = session;
    thrust.lift = "hip-thrust";
    thrust.loadKg = 120;
    thrust.note = "hip thrust";
    good(logbook.typeSet(thrust, repetitions(8, 0.4), at(day)));
    CHECK(good(logbook.evidence(season, day + twoDays)).empty());
    CHECK(good(logbook.dayInput(season, day + twoDays)).log.work.empty());
    const auto report = good(logbook.seasonReport(athlete, season, day + twoDays));
    REQUIRE(report.sessions.size() == 1);
    const auto& set = report.sessions[0].sets.at(0);
    CHECK(set.loadKg == 120.0);
    CHECK(set.repetitionsDone == 8);
    CHECK(set.ladder.empty());
    CHECK(good(logbook.states(season, day + twoDays)).at(0).workLoadKg == std::nullopt);
}
