// The squad's day.
#include "logbook_helper.hpp"

using namespace fleetrung;
using namespace fleetrung::logbook;
using namespace fleetrung::logbook::test;

namespace
{

Identifier addNamed(Logbook& logbook, const char* name, const char* group)
{
    auto athlete = longJumper();
    athlete.name = name;
    athlete.group = group;
    return good(logbook.addAthlete(athlete));
}

/// What was planned for the day, lifted: probe and work sets typed, a step followed as decided.
void lift(Logbook& logbook, const Identifier& athlete, const season::SessionPlan& plan, CivilDate day,
          double timeToPeak)
{
    const auto session = good(logbook.openSession(athlete, "strength", at(day)));
    for (const auto& lift : plan.lifts) {
        store::LiftSet set;
        set.session = session;
        set.lift = lift.lift;
        set.ladder = lift.ladder;
        set.rung = lift.rung;
        const double load = lift.work.empty() ? 0 : lift.work.front().loadKg.value_or(100);
        if (lift.probe) {
            set.kind = store::SetKind::Probe;
            set.loadKg = lift.probe->loadKg.value_or(75);
            TypedRepetitions three;
            three.count = 3;
            three.timeToPeak = timeToPeak;
            three.meanVelocity = 0.6;
            good(logbook.typeSet(set, three, at(day)));
        }
        for (const auto& planned : lift.work) {
            set.kind = store::SetKind::Work;
            set.loadKg = lift.metric == season::Metric::ContactTime ? 0 : load;
            set.repetitionsPlanned = planned.repetitions;
            set.effort = 7;
            TypedRepetitions done;
            done.count = planned.repetitions;
            good(logbook.typeSet(set, done, at(day)));
        }
    }
}

const season::DueAthlete* dueOf(const std::vector<season::DueAthlete>& due, const Identifier& athlete)
{
    const auto found = std::ranges::find(due, athlete, &season::DueAthlete::athlete);
    return found == due.end() ? nullptr : &*found;
}

} // namespace

TEST_CASE("who is due today stands by group and name, and lifts what the athlete's own day says, the season through")
{
    const Folder folder;
    auto logbook = openLogbook(folder);
    auto setup = thirtyWeeks();
    setup.ladders = {"squat", "hinge", "drop-jump"};
    const auto zoe = addNamed(logbook, "Zoe Arnvik", "jumps");
    const auto ada = addNamed(logbook, "Ada Brune", "sprint");
    const auto idle = addNamed(logbook, "Cleo Dorn", "sprint"); // no season
    const auto first = good(logbook.addSeason(ada, setup));
    const auto second = good(logbook.addSeason(zoe, thirtyWeeks()));
    int dueDays = 0, lifts = 0, compared = 0;
    for (auto day = setup.start; day < date("2026-06-01"); day += std::chrono::days{1}) {
        const bool training = std::ranges::find(setup.trainingDays, isoWeekday(day)) != setup.trainingDays.end();
        if (training)
            good(logbook.decide(first, at(day)));
        const auto due = good(logbook.dueToday(day));
        CHECK(dueOf(due, idle) == nullptr);
        dueDays += due.empty() ? 0 : 1;
        if (due.size() == 2) {
            CHECK(due[0].athlete == zoe);
            CHECK(due[0].group == "jumps");
            CHECK(due[1].name == "Ada Brune");
        }
        const auto own = good(logbook.day(first, day)).session;
        const auto* ofAda = dueOf(due, ada);
        INFO(dateText(day));
        REQUIRE((ofAda != nullptr) == !own.lifts.empty());
        if (ofAda != nullptr) {
            CHECK(season::sessionJson(ofAda->session) == season::sessionJson(own));
            ++compared;
            lifts += static_cast<int>(own.lifts.size());
        }
        const auto* ofZoe = dueOf(due, zoe);
        REQUIRE((ofZoe != nullptr) == !good(logbook.day(second, day)).session.lifts.empty());
        if (ofAda != nullptr)
            lift(logbook, ada, own, day, 0.60 * std::max(0.4, 1 - 0.004 * daysBetween(setup.start, day)));
    }
    CHECK(dueDays > 40);
    CHECK(compared > 40);
    CHECK(lifts > 80);
    CHECK(good(logbook.states(first, date("2026-06-01"))).at(0).path.size() > 2); // steps were taken on the way
    CHECK(good(logbook.dueToday(date("2027-06-01"))).empty());                    // after the season
    CHECK_FALSE(season::shareRacks(good(logbook.dueToday(date("2026-01-07"))), 2).empty());
}
