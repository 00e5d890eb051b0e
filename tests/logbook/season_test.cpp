// From sessions to evidence, from evidence to decisions, and from all of it to the report.
#include "logbook_helper.hpp"

#include "engine/base/numbers.hpp"
#include "engine/statistics/robust.hpp"

using namespace fleetrung;
using namespace fleetrung::logbook;
using namespace fleetrung::logbook::test;

namespace
{

constexpr std::chrono::days week{7};

constexpr std::chrono::days apart{4};

/// Typed sessions, four days apart, in which the full squat's peak comes sooner by `gain` a session. Gives the day of
/// the next.
CivilDate improvingSessions(Logbook& logbook, const Identifier& athlete, CivilDate first, int sessions, double gain)
{
    auto day = first;
    for (int i = 0; i < sessions; ++i, day += apart)
        typedSession(logbook, athlete, day, 0.600 - gain * std::max(0, i - 2), 0.50);
    return day;
}

CivilDate firstDayOn(const Logbook& logbook, const Identifier& season)
{
    return good(logbook.states(season, date("2025-12-01"))).at(0).since();
}

const season::Decision& squatOf(const std::vector<season::Decision>& decisions)
{
    const auto found = std::ranges::find(decisions, "squat", &season::Decision::ladder);
    REQUIRE(found != decisions.end());
    return *found;
}

} // namespace

TEST_CASE("the evidence of a session is the median of its probe set's three repetitions, in printed steps")
{
    const Folder folder;
    auto logbook = openLogbook(folder);
    const auto [athlete, season] = fill(logbook);
    const auto day = firstDayOn(logbook, season);
    const auto session = good(logbook.openSession(athlete, "strength", at(day)));
    const auto probe = good(logbook.recordSet(squat(session, store::SetKind::Probe, 80),
                                              simulated("full-squat", 3, 21).recording, {}, at(day)));
    good(logbook.recordSet(squat(session, store::SetKind::Work, 90), simulated("full-squat", 5, 22).recording, {},
                           at(day)));

    std::vector<double> times, velocities;
    for (const auto& repetition : probe.analysis.repetitions) {
        times.push_back(repetition.timeToPeakVelocity.value);
        velocities.push_back(repetition.meanVelocity.value);
    }
    REQUIRE(times.size() == 3);
    const auto evidence = good(logbook.evidence(season, day + std::chrono::days{1}, "squat"));
    REQUIRE(evidence.size() == 1);
    CHECK(evidence[0].rung == "full");
    CHECK(evidence[0].loadKg == 80.0);
    CHECK(evidence[0].timeToPeak->value == roundTo(statistics::median(times), 1000));
    CHECK(evidence[0].meanVelocity->value == roundTo(statistics::median(velocities), 1000));
    CHECK(good(logbook.evidence(season, day)).empty()); // a day's own session is not yet evidence for it
}

TEST_CASE("a struck-out repetition, a warm-up and a probe at another load are no evidence")
{
    const Folder folder;
    auto logbook = openLogbook(folder);
    const auto [athlete, season] = fill(logbook);
    const auto day = firstDayOn(logbook, season);
    typedSession(logbook, athlete, day, 0.60, 0.5, 80);
    typedSession(logbook, athlete, day + week, 0.40, 0.7, 60);     // lighter than the stay's probe load
    typedSession(logbook, athlete, day + 2 * week, 0.58, 0.5, 81); // within 3 % of it
    auto evidence = good(logbook.evidence(season, day + 3 * week, "squat"));
    REQUIRE(evidence.size() == 2);
    CHECK(evidence[0].timeToPeak->value == 0.60);
    CHECK(evidence[1].timeToPeak->value == 0.58);

    const auto warmUpDay = day + 3 * week;
    const auto session = good(logbook.openSession(athlete, "strength", at(warmUpDay)));
    TypedRepetitions three;
    three.count = 3;
    three.timeToPeak = 0.3;
    good(logbook.typeSet(squat(session, store::SetKind::WarmUp, 40), three, at(warmUpDay)));
    CHECK(good(logbook.evidence(season, warmUpDay + week, "squat")).size() == 2);

    const auto first = good(logbook.sessions(athlete)).front();
    const auto probe = good(logbook.sets(first.id)).front();
    for (const auto& repetition : probe.repetitions)
        good(logbook.deleteRepetition(repetition.row.id, at(warmUpDay)));
    evidence = good(logbook.evidence(season, warmUpDay, "squat"));
    CHECK(std::ranges::none_of(evidence,
                               [&](const auto& one) { return one.day == first.begun.trainingDay && one.timeToPeak; }));
}

TEST_CASE("deciding twice on the same evidence stores the decisions once, new facts of the day are decided anew")
{
    const Folder folder;
    auto logbook = openLogbook(folder);
    const auto [athlete, season] = fill(logbook);
    const auto next = improvingSessions(logbook, athlete, firstDayOn(logbook, season), 2, 0);
    const auto first = good(logbook.decide(season, at(next)));
    CHECK(first.size() == 2); // squat and hinge
    good(logbook.answerDecision(squatOf(first).id, store::Answer::Followed));
    store::Wellness slept;
    slept.athlete = athlete;
    slept.asked = at(next, 69000);
    slept.sleepHours = 9;
    good(logbook.addWellness(slept)); // changes what is known, not what is decided
    CHECK(squatOf(good(logbook.decide(season, at(next, 70000)))).id == squatOf(first).id);
    CHECK(std::ranges::any_of(good(logbook.decisions(season)),
                              [](const auto& one) { return one.answer == store::Answer::Followed; }));
    CHECK(good(logbook.decisions(season)).size() == 2);
    CHECK(squatOf(first).kind == season::DecisionKind::Hold);
    CHECK_FALSE(squatOf(first).reason.empty());

    store::Wellness hurt;
    hurt.athlete = athlete;
    hurt.asked = at(next, 71000);
    hurt.pain = 7;
    hurt.painWhere = "knee";
    good(logbook.addWellness(hurt));
    CHECK(squatOf(good(logbook.decide(season, at(next, 72000)))).kind == season::DecisionKind::Rest);
    const auto day = good(logbook.day(season, next));
    CHECK(squatOf(day.decisions).kind == season::DecisionKind::Rest); // the last one counts
    CHECK(good(logbook.decisions(season)).size() == 2);
    CHECK(good(logbook.rows().list<store::Decision>({.season = season})).size() > 2); // and none is lost
}

TEST_CASE("a true gain leads to a step with its evidence by value, and the athlete then stands on the next rung")
{
    const Folder folder;
    auto logbook = openLogbook(folder);
    const auto [athlete, season] = fill(logbook);
    const auto next = improvingSessions(logbook, athlete, firstDayOn(logbook, season), 8, 0.030);
    const auto decision = squatOf(good(logbook.decide(season, at(next))));
    INFO(decision.rule << ": " << decision.reason);
    REQUIRE(decision.kind == season::DecisionKind::Step);
    CHECK(decision.from == "full");
    CHECK(decision.to == "parallel");

    const auto stored = good(logbook.decisions(season));
    const auto record = std::ranges::find(stored, decision.id, [](const auto& one) { return one.decision.id; });
    REQUIRE(record != stored.end());
    REQUIRE(record->decision.evidence.size() == decision.evidence.size());
    REQUIRE_FALSE(decision.evidence.empty());
    for (std::size_t i = 0; i < decision.evidence.size(); ++i)
        CHECK(record->decision.evidence[i].value == decision.evidence[i].value);

    CHECK(good(logbook.states(season, next)).at(0).rung() == "full"); // until the day begins
    const auto after = good(logbook.states(season, next + std::chrono::days{1})).at(0);
    CHECK(after.rung() == "parallel");
    CHECK(after.since() == next);
    const auto day = good(logbook.day(season, next));
    CHECK(day.states.at(0).rung() == "parallel");
    const auto lift = std::ranges::find(day.session.lifts, "squat", &season::PlannedLift::ladder);
    REQUIRE(lift != day.session.lifts.end());
    CHECK(lift->rung == "parallel");
    REQUIRE(lift->work.at(0).loadKg);
    CHECK(*lift->work[0].loadKg <= 90 * 1.05); // rules: full to parallel at most 1.05 of the last load

    SECTION("where it was not followed, the athlete stays, and the reason is kept")
    {
        good(logbook.answerDecision(decision.id, store::Answer::Changed, "hold", "sore back"));
        CHECK(good(logbook.states(season, next + week)).at(0).rung() == "full");
        const auto again = good(logbook.decisions(season));
        CHECK(std::ranges::any_of(again, [](const auto& one) { return one.why == "sore back"; }));
        const auto stays = good(logbook.day(season, next)).session.lifts;
        CHECK(std::ranges::find(stays, "squat", &season::PlannedLift::ladder)->rung == "full");
    }
    SECTION("where the athlete chose another rung, that one counts")
    {
        good(logbook.answerDecision(decision.id, store::Answer::Changed, "half", "race in two weeks"));
        CHECK(good(logbook.states(season, next + week)).at(0).rung() == "half");
    }
}

TEST_CASE("probe and work loads of a stay are found again, and a new stay has none of its own")
{
    const Folder folder;
    auto logbook = openLogbook(folder);
    const auto [athlete, season] = fill(logbook);
    const auto next = improvingSessions(logbook, athlete, firstDayOn(logbook, season), 8, 0.030);
    const auto before = good(logbook.states(season, next)).at(0);
    CHECK(before.probeLoadKg == 80.0);
    CHECK(before.workLoadKg == 90.0);
    REQUIRE(squatOf(good(logbook.decide(season, at(next)))).kind == season::DecisionKind::Step);
    const auto after = good(logbook.states(season, next + std::chrono::days{1})).at(0);
    CHECK_FALSE(after.probeLoadKg);
    CHECK(after.workLoadKg == Approx(90 * 1.05));
}

TEST_CASE("time to peak velocity by week gives one point a week and rung")
{
    const Folder folder;
    auto logbook = openLogbook(folder);
    const auto [athlete, season] = fill(logbook);
    const auto first = firstDayOn(logbook, season);
    const auto next = improvingSessions(logbook, athlete, first, 4, 0.020);
    const auto points = good(logbook.weeks(season, "squat", next));
    REQUIRE(points.size() == 2); // days 0 and 4, days 8 and 12: two of each week
    CHECK(points[0].week == daysBetween(date("2025-12-01"), first) / 7 + 1);
    CHECK(points[0].rung == "full");
    CHECK(points[0].sessions == 2);
    CHECK(points[0].timeToPeak == 0.600);
    CHECK(points[1].timeToPeak == Approx(0.590)); // median of 0.600 and 0.580
    CHECK(points[1].week == points[0].week + 1);
}

TEST_CASE("drop jumps are evidence of contact time on the rung whose box they came from")
{
    const Folder folder;
    auto logbook = openLogbook(folder);
    const auto athlete = good(logbook.addAthlete(longJumper()));
    auto setup = thirtyWeeks();
    setup.ladders = {"drop-jump"};
    const auto season = good(logbook.addSeason(athlete, setup));
    const auto day = firstDayOn(logbook, season);
    for (const double contact : {0.21, 0.19, 0.20}) {
        store::Jump jump;
        jump.athlete = athlete;
        jump.done = at(day);
        jump.kind = "drop-jump";
        jump.boxHeightM = 0.2;
        jump.contact = {contact, 0.005};
        jump.flight = {0.5, {}}; // height g t^2 / 8 = 0.306 m
        good(logbook.addJump(jump));
    }
    const auto evidence = good(logbook.evidence(season, day + week));
    REQUIRE(evidence.size() == 1);
    CHECK(evidence[0].rung == "enter-20");
    CHECK(evidence[0].timeToPeak->value == 0.2);
    CHECK(evidence[0].reactiveStrength->value == Approx(9.80665 * 0.25 / 8 / 0.20).margin(0.001));
}

TEST_CASE("the season report holds the season as it was lived, and is the same every time")
{
    const Folder folder;
    auto logbook = openLogbook(folder);
    const auto [athlete, season] = fill(logbook);
    const auto first = firstDayOn(logbook, season);
    auto day = first;
    for (int i = 0; i < 8; ++i, day += apart) {
        good(logbook.decide(season, at(day)));
        typedSession(logbook, athlete, day, 0.600 - 0.030 * std::max(0, i - 2), 0.50);
    }
    good(logbook.recordSet(squat(good(logbook.openSession(athlete, "strength", at(day))), store::SetKind::Probe, 80),
                           simulated("full-squat", 3, 31).recording, {}, at(day)));
    store::Sprint sprint;
    sprint.athlete = athlete;
    sprint.run = at(day);
    sprint.distance = 20;
    sprint.time = 2.05;
    sprint.start = "flying";
    sprint.runIn = 25;
    good(logbook.addSprint(sprint));
    store::LostDay lost;
    lost.athlete = athlete;
    lost.day = first + std::chrono::days{2};
    lost.why = "illness";
    good(logbook.addLostDay(lost));

    const auto report = good(logbook.seasonReport(athlete, season, day));
    CHECK(report.athlete.name == "Marle Oddvik");
    CHECK(report.seasonName == "Outdoor 2026");
    CHECK(report.upTo == day);
    CHECK(report.phases.size() >= 5);
    CHECK(report.competitions.at(0).grade == "A");
    CHECK(report.sessions.size() == 9);
    CHECK(report.sessions.back().sets.at(0).measured);
    CHECK(report.sessions.back().sets.at(0).repetitions.size() == 3);
    CHECK(report.sessions.front().sets.at(1).name == "Full squat");
    CHECK_FALSE(report.sessions.front().phase.empty());
    CHECK(report.sprints.at(0).test == "flying 20 m");
    CHECK(report.decisions.size() >= 8);
    CHECK(report.decisions.front().ladder == "Squat");
    CHECK_FALSE(report.decisions.front().rule.empty());

    REQUIRE(report.ladders.size() == 2);
    const auto& ladder = report.ladders[0];
    CHECK(ladder.planned.size() == ladder.rungs.size());
    CHECK(ladder.taken.front().first == first);
    CHECK(ladder.taken.back().last == day);
    CHECK(ladder.evidence.size() >= 8);

    const auto lostLine = std::ranges::find_if(report.plan, [&](const auto& line) { return line.day == lost.day; });
    REQUIRE(lostLine != report.plan.end());
    CHECK(lostLine->state == report::PlanState::Lost);
    CHECK(lostLine->why == "illness");
    CHECK(std::ranges::any_of(report.plan, [&](const auto& line) {
        return line.day == first && line.ladder == "Squat" && line.setsDone == 3;
    }));
    CHECK(std::ranges::all_of(
        report.plan, [&](const auto& line) { return line.day <= day || line.state == report::PlanState::Ahead; }));

    const auto twice = good(Logbook::openReadOnly(folder.paths()).and_then([&](Logbook&& reader) {
        return reader.seasonReport(athlete, season, day);
    }));
    CHECK(twice.plan.size() == report.plan.size());
    CHECK(twice.decisions.back().reason == report.decisions.back().reason);
    CHECK(codeOf(logbook.seasonReport(numbered(0xAAAA), season, day)) == Code::InvalidArgument);
}
