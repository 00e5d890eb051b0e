// Rows in, rows out: nothing is lost, nothing is doubled, and what is deleted can come back.
#include "store_helper.hpp"

#include <cmath>
#include <limits>

using namespace fleetrung;
using namespace fleetrung::store;
using namespace fleetrung::store::test;

TEST_CASE("what was stored is read back after the program was closed")
{
    const Folder folder;
    {
        auto store = openStore(folder);
        fillOneSet(store);
    }
    const auto store = openStore(folder);
    const auto athlete = good(store.find<Athlete>(idOf(1)));
    CHECK(athlete.name == "Ilka Tannhof");
    CHECK(athlete.born == parseDate("2009-02-11"));
    CHECK_FALSE(athlete.statureM);
    CHECK(athlete.bodyMassKg == 61.5);
    CHECK(athlete.origin == benchDevice);

    const auto set = good(store.find<LiftSet>(idOf(3)));
    CHECK(set.kind == SetKind::Probe);
    CHECK(set.done.utcSeconds == at("2026-03-30", 61500).utcSeconds);
    CHECK(set.done.offsetMinutes == 120);
    CHECK(set.done.zone == "Europe/Vienna");
    CHECK(dateText(set.done.trainingDay) == "2026-03-30");

    const auto repetitions =
        good(store.list<Repetition>({.athlete = idOf(1), .ladder = "squat", .acceptedOnly = true}));
    REQUIRE(repetitions.size() == 3);
    CHECK(repetitions[1].ordinal == 2);
    CHECK(repetitions[1].timeToPeakVelocity == Metric{0.281, 0.004});
    CHECK(repetitions[1].reversalTime == Metric{});
}

TEST_CASE("every kind of record keeps every field")
{
    const Folder folder;
    auto store = openStore(folder);
    fillOneSet(store);

    Season season;
    season.id = idOf(20);
    season.athlete = idOf(1);
    season.name = "Outdoor";
    season.start = *parseDate("2025-12-01");
    season.finish = *parseDate("2026-07-05");
    season.setup = R"({"name":"Outdoor"})";
    CHECK(good(store.insert(season)));
    CHECK(good(store.find<Season>(season.id)).setup == season.setup);

    Sprint sprint;
    sprint.id = idOf(21);
    sprint.athlete = idOf(1);
    sprint.run = at("2026-03-31");
    sprint.distance = 30;
    sprint.time = 4.21;
    sprint.splits = {{10, 1.93}, {20, 3.11}, {30, 4.21}};
    sprint.start = "block";
    sprint.timing = "gates";
    sprint.windMps = -0.4;
    sprint.competition = true;
    CHECK(good(store.insert(sprint)));
    const auto run = good(store.list<Sprint>({.athlete = idOf(1)})).at(0);
    CHECK(run.splits == sprint.splits);
    CHECK(run.windMps == -0.4);
    CHECK(run.competition);

    Jump jump;
    jump.id = idOf(22);
    jump.athlete = idOf(1);
    jump.done = at("2026-03-31");
    jump.kind = "drop-jump";
    jump.side = Side::Left;
    jump.boxHeightM = 0.2;
    jump.contact = {0.184, 0.005};
    jump.height = {0.27, {}};
    CHECK(good(store.insert(jump)));
    const auto jumped = good(store.list<Jump>({.athlete = idOf(1)})).at(0);
    CHECK(jumped.side == Side::Left);
    CHECK(jumped.contact == jump.contact);
    CHECK(jumped.height == jump.height);
    CHECK(jumped.flight == Metric{});

    Wellness wellness;
    wellness.id = idOf(23);
    wellness.athlete = idOf(1);
    wellness.asked = at("2026-03-31", 25200);
    wellness.pain = 3;
    wellness.painWhere = "knee";
    wellness.limping = true;
    CHECK(good(store.insert(wellness)));
    const auto felt = good(store.list<Wellness>({.athlete = idOf(1)})).at(0);
    CHECK(felt.pain == 3.0);
    CHECK(felt.painWhere == "knee");
    CHECK(felt.limping);
    CHECK_FALSE(felt.sharpPain);

    LostDay lost;
    lost.id = idOf(24);
    lost.athlete = idOf(1);
    lost.day = *parseDate("2026-04-02");
    lost.why = "illness";
    CHECK(good(store.insert(lost)));
    CHECK(good(store.list<LostDay>({.athlete = idOf(1)})).at(0).why == "illness");

    EditEvent edit;
    edit.id = idOf(25);
    edit.set = idOf(3);
    edit.atTime = 4.2;
    edit.kind = EditKind::Relabel;
    edit.value = "left";
    edit.made = at("2026-03-30", 70000);
    CHECK(good(store.insert(edit)));
    CHECK(good(store.list<EditEvent>({.set = idOf(3)})).at(0).kind == EditKind::Relabel);

    Decision decision;
    decision.id = idOf(26);
    decision.athlete = idOf(1);
    decision.season = season.id;
    decision.day = *parseDate("2026-03-30");
    decision.made = at("2026-03-30", 60000);
    decision.ladder = "squat";
    decision.action = "hold";
    decision.rule = "hold";
    decision.rungFrom = decision.rungTo = "half";
    decision.evidence = "[]";
    decision.reason = "two sessions so far";
    CHECK(good(store.insert(decision)));
    decision.answer = Answer::Changed;
    decision.why = "coach";
    good(store.update(decision));
    const auto decided = good(store.list<Decision>({.season = season.id})).at(0);
    CHECK(decided.answer == Answer::Changed);
    CHECK(decided.why == "coach");

    CHECK(good(store.verify()).empty());
}

TEST_CASE("the same row a second time adds nothing and changes nothing, also where it was deleted")
{
    const Folder folder;
    auto store = openStore(folder);
    CHECK(good(store.insert(athleteRow(1))));
    auto again = athleteRow(1, "Somebody Else");
    CHECK_FALSE(good(store.insert(again)));
    CHECK(good(store.find<Athlete>(idOf(1))).name == "Ilka Tannhof");

    good(store.setDeleted<Athlete>(idOf(1), true));
    CHECK_FALSE(good(store.insert(again)));
    CHECK(good(store.find<Athlete>(idOf(1))).deleted);
    CHECK(good(store.list<Athlete>()).empty());
}

TEST_CASE("deleting is a mark: the row and everything below it come back as they were")
{
    const Folder folder;
    auto store = openStore(folder);
    fillOneSet(store);
    good(store.setDeleted<Session>(idOf(2), true));
    CHECK(good(store.list<Session>({.athlete = idOf(1)})).empty());
    CHECK(good(store.list<Repetition>({.athlete = idOf(1)})).empty());
    CHECK(good(store.list<Session>({.athlete = idOf(1), .deletedToo = true})).size() == 1);

    good(store.setDeleted<Session>(idOf(2), false));
    CHECK(good(store.list<Repetition>({.athlete = idOf(1)})).size() == 3);
}

TEST_CASE("a filter narrows by athlete, day and acceptance, and one that a table does not have is refused")
{
    const Folder folder;
    auto store = openStore(folder);
    fillOneSet(store);
    good(store.insert(athleteRow(10, "Bero Quint")));
    good(store.insert(sessionRow(11, 10, "2026-04-06")));
    good(store.insert(setRow(12, 11, 1, "2026-04-06")));
    good(store.insert(analysisRow(13, 12, false)));
    good(store.insert(repetitionRow(14, 13, 1)));

    CHECK(good(store.list<LiftSet>()).size() == 2);
    CHECK(good(store.list<LiftSet>({.athlete = idOf(10)})).at(0).id == idOf(12));
    CHECK(good(store.list<LiftSet>({.from = parseDate("2026-03-31")})).at(0).id == idOf(12));
    CHECK(good(store.list<LiftSet>({.to = parseDate("2026-03-30")})).at(0).id == idOf(3));
    CHECK(good(store.list<Repetition>({.athlete = idOf(10)})).size() == 1);
    CHECK(good(store.list<Repetition>({.athlete = idOf(10), .acceptedOnly = true})).empty());

    const auto refused = store.list<Athlete>({.ladder = "squat"});
    REQUIRE_FALSE(refused);
    CHECK(refused.error().code == Code::InvalidArgument);
}

TEST_CASE("a squad's activity counts sessions and gives the last day")
{
    const Folder folder;
    auto store = openStore(folder);
    good(store.insert(athleteRow(1)));
    good(store.insert(sessionRow(2, 1, "2026-03-30")));
    good(store.insert(sessionRow(3, 1, "2026-04-01")));
    good(store.insert(sessionRow(4, 1, "2026-04-03")));
    good(store.setDeleted<Session>(idOf(4), true));
    const auto activity = good(store.activity());
    REQUIRE(activity.size() == 1);
    CHECK(activity[0].sessions == 2);
    CHECK(dateText(activity[0].lastDay) == "2026-04-01");
}

TEST_CASE(
    "a row without the row it belongs to, a value outside its limits and not-a-number are refused, and nothing stays")
{
    const Folder folder;
    auto store = openStore(folder);
    const auto orphan = store.insert(sessionRow(2, 1, "2026-03-30"));
    REQUIRE_FALSE(orphan);
    CHECK(orphan.error().code == Code::InvalidArgument);

    auto heavy = athleteRow(1);
    heavy.bodyMassKg = 3000;
    CHECK_FALSE(store.insert(heavy));
    heavy.bodyMassKg = std::numeric_limits<double>::quiet_NaN();
    const auto nan = store.insert(heavy);
    REQUIRE_FALSE(nan);
    CHECK(nan.error().place == "athlete.body_mass_kg");
    CHECK(good(store.list<Athlete>({.deletedToo = true})).empty());
    CHECK(good(store.insert(athleteRow(1))));
}

TEST_CASE("a transaction that fails leaves nothing, also where the caller forgot to look at the error")
{
    const Folder folder;
    auto store = openStore(folder);
    const auto failed = store.inTransaction([&]() -> Expected<void> {
        good(store.insert(athleteRow(1)));
        static_cast<void>(store.insert(sessionRow(2, 99, "2026-03-30"))); // no such athlete
        return {};
    });
    CHECK_FALSE(failed);
    CHECK(good(store.list<Athlete>()).empty());

    CHECK_FALSE(store.inTransaction([&]() -> Expected<void> {
        good(store.insert(athleteRow(1)));
        return fail(Code::Cancelled, "", "cancelled");
    }));
    CHECK(good(store.list<Athlete>()).empty());
}

TEST_CASE("a missing row is not found, by name")
{
    const Folder folder;
    auto store = openStore(folder);
    const auto missing = store.find<Sprint>(idOf(7));
    REQUIRE_FALSE(missing);
    CHECK(missing.error().code == Code::NotFound);
    CHECK(missing.error().place == "sprint");
    CHECK(codeOf(store.update(athleteRow(7))) == Code::NotFound);
}
