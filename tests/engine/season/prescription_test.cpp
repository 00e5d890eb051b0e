// What a session prescribes beside its work sets: loads within their bounds, contacts of the week, maintenance sets,
// primers, reasons; and a squad's racks.
#include <catch2/catch.hpp>

#include <set>

#include "engine/season/squad_day.hpp"
#include "tests/engine/season/example.hpp"

using namespace fleetrung;
using namespace fleetrung::season;
using namespace fleetrung::season::example;
using std::chrono::days;

namespace
{

WorkDone work(const char* day, const char* rung, double loadKg, int target = 4, int done = 4)
{
    return {on(day), "squat", rung, loadKg, target, done, {}, false, false};
}

/// On the half squat since 2026-04-06, with squat alone, on Wednesday 2026-04-22.
struct HalfSquat {
    SeasonPlan plan;
    std::vector<LadderState> states{{"squat", {{"full", on("2026-01-05")}, {"half", on("2026-04-06")}}, 100.0, 120.0}};
    TrainingLog log;

    HalfSquat()
    {
        auto season = setup();
        season.ladders = {"squat"};
        plan = *planSeason(season);
    }

    [[nodiscard]] PlannedLift squatOn(const char* day, std::vector<Decision> decisions = {}) const
    {
        return planSession(plan, states, decisions, example::on(day), standardSeasonData(), log).lifts.at(0);
    }
};

const Why* whyOf(const PlannedLift& lift, const std::string& about)
{
    for (const auto& why : lift.why)
        if (why.about == about)
            return &why;
    return nullptr;
}

} // namespace

TEST_CASE("The next load is the last one, or 2 to 10 % more when the target was beaten in two sessions",
          "[season][prescription][load][published]")
{
    // ACSM, Ratamess et al. 2009, Med Sci Sports Exerc 41(3):687-708.
    HalfSquat half;
    half.log.work = {work("2026-04-08", "half", 120), work("2026-04-15", "half", 120)};
    CHECK(*half.squatOn("2026-04-22").work[0].loadKg == 120);
    half.log.work = {work("2026-04-08", "half", 120, 4, 5), work("2026-04-15", "half", 120, 4, 5)};
    CHECK(*half.squatOn("2026-04-22").work[0].loadKg == 120); // 122.4, down to the plates
    half.log.work = {work("2026-04-08", "half", 120, 4, 6), work("2026-04-15", "half", 120, 4, 6)};
    CHECK(*half.squatOn("2026-04-22").work[0].loadKg == 130); // 132
    CHECK(whyOf(half.squatOn("2026-04-22"), "load")->text.find("beaten by two repetitions") != std::string::npos);
}

TEST_CASE("No plan takes up a jump in load that was more than 10 % in a week or 20 % in four",
          "[season][prescription][load]")
{
    HalfSquat half;
    half.log.work = {work("2026-04-08", "half", 100), work("2026-04-20", "half", 125)};
    CHECK(*half.squatOn("2026-04-22").work[0].loadKg == 110);
    CHECK(whyOf(half.squatOn("2026-04-22"), "load")->text.find("at most 10 % more in 7 days") != std::string::npos);
    half.log.work.push_back(work("2026-04-21", "half", 60)); // a lighter day by decision says nothing
    half.log.work.back().eased = true;
    CHECK(*half.squatOn("2026-04-22").work[0].loadKg == 110);
}

TEST_CASE("A quarter squat stays within 1.4 times the full squat's maximum, on the first day and after",
          "[season][prescription][load][caution]")
{
    HalfSquat half;
    half.states[0].path.push_back({"quarter", on("2026-04-20")});
    half.states[0].workLoadKg = 200;
    half.log.maxima = {{on("2026-01-20"), "squat", "full", 120}};
    CHECK(*half.squatOn("2026-04-22").work[0].loadKg == 167.5); // 168
    half.log.work = {work("2026-04-20", "quarter", 200)};
    CHECK(*half.squatOn("2026-04-22").work[0].loadKg == 167.5);
    half.plan.setup.athlete.trainingYears = 1;
    CHECK(*half.squatOn("2026-04-22").work[0].loadKg == 120);
}

TEST_CASE("A longer rung that was left is kept with two heavy sets every ten days, not near a main competition",
          "[season][prescription][maintenance]")
{
    HalfSquat half;
    half.states[0].path = {{"full", on("2026-01-05")}, {"parallel", on("2026-02-09")}, {"half", on("2026-04-06")}};
    half.log.work = {work("2026-03-30", "parallel", 130), work("2026-04-08", "half", 120)};
    CHECK_FALSE(half.squatOn("2026-04-08").maintenance); // 9 days after
    const auto due = half.squatOn("2026-04-10").maintenance;
    REQUIRE(due);
    CHECK(due->rung == "parallel"); // the full squat ends with general preparation
    CHECK(due->sets.size() == 2);
    CHECK(*due->sets[0].loadKg == 130);
    half.log.work.push_back(work("2026-04-10", "parallel", 130));
    half.log.work.back().maintenance = true;
    CHECK_FALSE(half.squatOn("2026-04-17").maintenance);
    CHECK(half.squatOn("2026-04-20").maintenance);

    Decision decision;
    decision.day = on("2026-04-17");
    decision.ladder = "squat";
    decision.from = decision.to = "half";
    decision.strengthLost = true; // sooner where strength is down
    CHECK(half.squatOn("2026-04-17", {decision}).maintenance);
    decision.speedNotFollowing = true;
    CHECK(half.squatOn("2026-04-17", {decision}).maintenance->sets.size() == 1);
    decision.loadFactor = 0.95; // never on an eased day
    CHECK_FALSE(half.squatOn("2026-04-17", {decision}).maintenance);

    half.plan.setup.competitions[0].main = true; // 2026-06-14
    half.plan.phases.back().kind = PhaseKind::SpecialPreparation;
    half.plan.phases = {{PhaseKind::SpecialPreparation, half.plan.setup.start, half.plan.end, 0}};
    CHECK(half.squatOn("2026-06-08").maintenance); // six days before
    CHECK_FALSE(half.squatOn("2026-06-10").maintenance);
}

TEST_CASE("Drop jumps: at most 40 contacts a session and 80 in seven days, two days between",
          "[season][prescription][caution]")
{
    auto season = setup();
    season.ladders = {"drop-jump"};
    const auto plan = *planSeason(season);
    const auto states = startStates(plan);
    TrainingLog log;
    const auto contacts = [&](const char* day) {
        const auto session = planSession(plan, states, {}, on(day), standardSeasonData(), log);
        return session.lifts.empty() ? 0 : session.lifts[0].contacts;
    };
    CHECK(contacts("2026-01-14") == 23); // 3 of the probe and 4 sets of 5
    log.contacts = {{on("2026-01-09"), 40}, {on("2026-01-12"), 30}};
    CHECK(contacts("2026-01-14") == 8); // 10 are left of the week's 80: a probe set and one set
    log.contacts.push_back({on("2026-01-13"), 5});
    CHECK(contacts("2026-01-14") == 0); // yesterday
    log.contacts = {{on("2026-01-10"), 78}};
    CHECK(contacts("2026-01-14") == 0);
    const auto session = planSession(plan, states, {}, on("2026-01-14"), standardSeasonData(), log);
    CHECK(session.lifts.empty() == false);
    CHECK(session.lifts.at(0).contactLimit == 2);
}

TEST_CASE("Every prescription says why: the lift, the rung, the load, the sets, the probe and the set stop",
          "[season][prescription]")
{
    const auto plan = *planSeason(setup());
    std::vector<LadderState> states = startStates(plan);
    for (auto& state : states)
        state.workLoadKg = 100;
    const auto session = planSession(plan, states, {}, on("2026-01-07"));
    REQUIRE(session.lifts.size() == 3);
    for (const auto& lift : session.lifts) {
        CHECK(whyOf(lift, "lift") != nullptr);
        CHECK(whyOf(lift, "rung") != nullptr);
        CHECK(whyOf(lift, "sets") != nullptr);
        CHECK(whyOf(lift, "probe") != nullptr);
        CHECK((whyOf(lift, "load") != nullptr) == (lift.ladder != "drop-jump"));
        CHECK((whyOf(lift, "contacts") != nullptr) == (lift.ladder == "drop-jump"));
    }
    CHECK(sessionJson(session)["lifts"][1]["why"].size() >= 4);
}

TEST_CASE("A squad shares its racks: everybody gets every lift once, no one stands at two, plates are only added",
          "[season][squad]")
{
    std::vector<DueAthlete> due;
    for (std::uint8_t i = 0; i < 40; ++i) {
        DueAthlete athlete;
        athlete.athlete.bytes[15] = i;
        athlete.group = i % 2 == 0 ? "sprints" : "jumps";
        for (const char* ladder : {"drop-jump", "clean", "squat"}) {
            PlannedLift lift;
            lift.ladder = ladder;
            lift.rung = ladder == std::string("squat") && i % 3 == 0 ? "half" : "full";
            lift.metric = ladder == std::string("drop-jump") ? Metric::ContactTime : Metric::MeanVelocity;
            lift.work.assign(3, PlannedSet{4, 60.0 + 7 * (i % 11)});
            athlete.session.lifts.push_back(lift);
        }
        due.push_back(athlete);
    }
    const auto turns = shareRacks(due, 4);
    std::map<std::pair<int, Identifier>, int> places;
    std::map<std::pair<int, int>, std::size_t> perRack;
    for (const auto& turn : turns) {
        CHECK((turn.rack == -1) == (turn.ladder == "drop-jump"));
        CHECK(turn.rack < 4);
        perRack[{turn.round, turn.rack}] += turn.athletes.size();
        double load = 0;
        for (const auto& id : turn.athletes) {
            ++places[{turn.round, id}];
            const double own = *due[id.bytes[15]].session.lifts[static_cast<std::size_t>(turn.round)].work[0].loadKg;
            CHECK((due[id.bytes[15]].group == due[turn.athletes[0].bytes[15]].group ? own >= load : true));
            load = own;
        }
    }
    CHECK(places.size() == 120);
    for (const auto& [place, count] : places)
        CHECK(count == 1);
    for (const auto& [rack, count] : perRack)
        if (rack.second >= 0)
            CHECK(count == 10);
    CHECK(shareRacks({}, 3).empty());
    CHECK(shareRacks(due, 0).size() == shareRacks(due, 1).size());
}
