#include "tests/report/invented_season.hpp"

#include <array>
#include <cmath>

#include "engine/base/numbers.hpp"

namespace fleetrung::invented
{
namespace
{

using namespace report;
using std::chrono::days;

constexpr int weeksKnown = 22;

CivilDate date(std::string_view text)
{
    return *parseDate(text);
}

Identifier idOf(std::string_view kind, std::int64_t number)
{
    const auto text = integerText(number);
    const std::array<std::string_view, 2> parts{kind, text};
    return hashIdentifier(parts);
}

/// Between -1 and 1, the same every time.
double wobble(int seed)
{
    return std::sin(12.9898 * seed) * 0.7 + std::sin(78.233 * seed + 1.0) * 0.3;
}

Moment evening(CivilDate day, int minutes)
{
    const auto midnight = std::chrono::duration_cast<std::chrono::milliseconds>(day.time_since_epoch()).count();
    return {midnight + (16 * 60 + minutes) * 60'000LL, 120};
}

Measurement measured(double value, double uncertainty)
{
    return {std::round(value * 1000) / 1000, std::round(uncertainty * 10'000) / 10'000};
}

Ladder squat(CivilDate start)
{
    Ladder ladder;
    ladder.key = "squat";
    ladder.name = "Squat";
    ladder.rungs = {{"full-squat", "Full squat", Band{0.52, 0.62}},
                    {"parallel-squat", "Parallel squat", Band{0.40, 0.48}},
                    {"half-squat", "Half squat", Band{0.28, 0.34}},
                    {"quarter-squat", "Quarter squat", Band{0.18, 0.24}},
                    {"pin-quarter-squat", "Quarter squat from pins", Band{0.14, 0.20}},
                    {"drop-squat", "Short drop squat", Band{0.10, 0.16}}};
    const std::array<int, 7> planned{0, 6, 11, 16, 21, 25, 29};
    for (std::size_t rung = 0; rung + 1 < planned.size(); ++rung)
        ladder.planned.push_back({rung, start + days{7 * planned[rung]}, start + days{7 * planned[rung + 1] - 1}});
    const std::array<int, 5> taken{0, 7, 13, 17, weeksKnown};
    const std::array<double, 4> entry{0.64, 0.50, 0.37, 0.27};
    for (std::size_t rung = 0; rung + 1 < taken.size(); ++rung) {
        const CivilDate first = start + days{7 * taken[rung]};
        const CivilDate last = start + days{7 * taken[rung + 1] - 1};
        ladder.taken.push_back({rung, first, last});
        int session = 0;
        for (CivilDate day = first; day <= last; day += days{session % 2 == 0 ? 3 : 4}, ++session) {
            EvidencePoint point;
            point.session = idOf("session", daysBetween(start, day));
            point.day = day;
            point.rung = rung;
            point.time = measured(
                entry[rung] * (1 - 0.011 * session) + 0.012 * wobble(session + 31 * static_cast<int>(rung)), 0.004);
            point.velocity = measured(0.55 + 0.01 * session, 0.006);
            point.loadKg = 110 + 15.0 * static_cast<double>(rung);
            ladder.evidence.push_back(point);
            SessionLoads loads{day, rung, Side::Both, ladder.rungs[rung].key, {}};
            for (const double share : {0.5, 0.7, 1.0})
                loads.points.push_back(
                    {share * *point.loadKg, std::round(1000 * (1.25 - 0.75 * share + 0.02 * wobble(session))) / 1000});
            ladder.loads.push_back(loads);
        }
    }
    return ladder;
}

Ladder stepUp(CivilDate start)
{
    Ladder ladder;
    ladder.key = "step-up";
    ladder.name = "Step-up";
    ladder.typicalErrorShare = 0.10;
    ladder.rungs = {{"step-up-45", "45 cm", Band{0.42, 0.50}},
                    {"step-up-35", "35 cm", Band{0.34, 0.42}},
                    {"step-up-25", "25 cm", Band{0.26, 0.32}},
                    {"step-up-15", "15 cm", Band{0.18, 0.24}},
                    {"step-up-10", "10 cm", Band{0.14, 0.18}}};
    const std::array<int, 6> planned{0, 7, 13, 19, 25, 29};
    for (std::size_t rung = 0; rung + 1 < planned.size(); ++rung)
        ladder.planned.push_back({rung, start + days{7 * planned[rung]}, start + days{7 * planned[rung + 1] - 1}});
    const std::array<int, 4> taken{0, 8, 15, weeksKnown};
    for (std::size_t rung = 0; rung + 1 < taken.size(); ++rung) {
        ladder.taken.push_back({rung, start + days{7 * taken[rung]}, start + days{7 * taken[rung + 1] - 1}});
        for (int week = taken[rung]; week < taken[rung + 1]; ++week)
            for (const Side side : {Side::Left, Side::Right}) {
                EvidencePoint point;
                point.session = idOf("session", 7 * week + 1);
                point.day = start + days{7 * week + 1};
                point.rung = rung;
                point.side = side;
                const double stay = week - taken[rung];
                point.time =
                    measured(0.50 - 0.085 * static_cast<double>(rung) - 0.006 * stay +
                                 (side == Side::Left ? 0.018 : 0) + 0.010 * wobble(3 * week + (side == Side::Left)),
                             0.006);
                point.loadKg = 60;
                ladder.evidence.push_back(point);
            }
    }
    return ladder;
}

std::vector<Decision> decisions(CivilDate start)
{
    std::vector<Decision> all;
    const auto add = [&](int week, std::string kind, std::string rule, std::string from, std::string to,
                         std::string reason, Answer answer) -> Decision& {
        Decision decision;
        decision.id = idOf("decision", static_cast<std::int64_t>(all.size()));
        decision.day = start + days{7 * week};
        decision.ladder = "Squat";
        decision.kind = std::move(kind);
        decision.rule = std::move(rule);
        decision.from = std::move(from);
        decision.to = std::move(to);
        decision.reason = std::move(reason);
        decision.answer = answer;
        return all.emplace_back(std::move(decision));
    };
    add(5, "hold", "hold", "Full squat", "Full squat",
        "Time to peak is quicker, but by less than its day-to-day error.", Answer::Followed)
        .evidence = {{"gain in time to peak velocity", "ms", 14, 9, "at least 38", false},
                     {"sessions on the rung", "sessions", 10, {}, "at least 6", true}};
    add(7, "step", "step for evidence", "Full squat", "Parallel squat",
        "Time to peak has truly come down, and probe velocity was kept.", Answer::Followed)
        .evidence = {{"gain in time to peak velocity", "ms", 61, 9, "at least 38", true},
                     {"valid repetitions", "%", 92, {}, "at least 80", true}};
    add(10, "ease", "ease", "Parallel squat", "Parallel squat",
        "The last two sessions were slower than usual by more than one and a half typical errors: 5 % less load for "
        "this lift.",
        Answer::Followed);
    add(13, "step", "must step", "Parallel squat", "Half squat", "The latest date of this phase is reached.",
        Answer::Followed);
    add(15, "rest", "pain", "Half squat", "Half squat",
        "Pain of 5 out of 10 in the left hamstring: no sprinting, no hinge today; see a clinician.", Answer::Followed);
    auto& changed =
        add(17, "hold", "hold", "Half squat", "Quarter squat", "Six sessions are not yet there.", Answer::Changed);
    changed.changedTo = "stepped to the quarter squat";
    changed.why = "-8 days to the first race, the coach wanted \"quick\" work, not more load";
    changed.evidence = {{"sessions on the rung", "", 5, {}, "at least 6", false}};
    add(18, "hold", "hold", "Quarter squat", "Quarter squat", "Too few sessions on the rung yet.", Answer::Open);
    add(19, "hold", "hold", "Quarter squat", "Quarter squat", "Too few sessions on the rung yet.", Answer::Open);
    add(20, "hold", "hold", "Quarter squat", "Quarter squat", "Soon enough, but not yet steady.", Answer::Open);
    return all;
}

Set workSet(CivilDate start, CivilDate day, int number, std::size_t rung, bool probe)
{
    const auto ladder = squat(start);
    Set set;
    set.id = idOf("set", daysBetween(start, day) * 10 + number);
    set.number = number;
    set.lift = ladder.rungs[rung].key;
    set.name = ladder.rungs[rung].name;
    set.ladder = ladder.name;
    set.rung = ladder.rungs[rung].name;
    set.loadKg = 110 + 15.0 * static_cast<double>(rung) + (probe ? 0 : 12.5);
    set.repetitionsPlanned = set.repetitionsDone = probe ? 3 : 5;
    set.kind = probe ? "probe" : "work";
    set.measured = true;
    set.velocityLoss = 0.04 + 0.03 * number;
    for (int i = 1; i <= set.repetitionsDone; ++i) {
        Repetition repetition;
        repetition.id = idOf("repetition", daysBetween(start, day) * 1000 + number * 20 + i);
        repetition.number = i;
        repetition.meanVelocity = measured(0.62 - 0.012 * i, 0.006);
        repetition.peakVelocity = measured(1.02 - 0.015 * i, 0.008);
        repetition.timeToPeak =
            measured(0.5 / (1.0 + 0.4 * static_cast<double>(rung)) + 0.006 * i + 0.004 * wobble(i), 0.004);
        repetition.range = measured(0.55 / (1.0 + 0.5 * static_cast<double>(rung)), 0.005);
        repetition.flags = i == 5 ? reps::Flags{0} | reps::Flag::ShortRange | reps::Flag::TwoPeaked : reps::Flags{0};
        repetition.accepted = i != 5;
        set.repetitions.push_back(repetition);
    }
    return set;
}

std::vector<Session> sessions(CivilDate start)
{
    std::vector<Session> all;
    const auto ladder = squat(start);
    for (const auto& point : ladder.evidence) {
        Session session;
        session.id = point.session;
        session.day = point.day;
        session.started = evening(point.day, 5);
        session.kind = "strength";
        session.phase = daysBetween(start, point.day) < 91 ? "general preparation" : "special preparation";
        session.effort = 6 + daysBetween(start, point.day) % 3;
        session.note = all.size() == 4 ? "=felt heavy, \"sticky\" at the bottom;\nbelt tried" : "";
        for (int number = 1; number <= 4; ++number)
            session.sets.push_back(workSet(start, point.day, number, point.rung, number == 1));
        all.push_back(session);
    }
    return all;
}

std::vector<Sprint> sprints(CivilDate start)
{
    std::vector<Sprint> all;
    for (int test = 0; test < 6; ++test)
        for (int run = 0; run < 3; ++run) {
            Sprint sprint;
            sprint.day = start + days{21 + 24 * test};
            sprint.at = evening(sprint.day, 10 * run);
            sprint.id = idOf("sprint", test * 10 + run);
            sprint.test = "flying 20 m";
            sprint.distanceM = 20;
            sprint.runInM = 30;
            sprint.timeS = std::round((2.16 - 0.022 * test + 0.012 * wobble(7 * test + run)) * 100) / 100;
            sprint.start = "flying";
            sprint.timing = "gates";
            sprint.surface = test < 2 ? "indoor" : "track";
            sprint.shoes = "spikes";
            if (test >= 2)
                sprint.windMps = std::round(wobble(test + 5 * run) * 18) / 10;
            all.push_back(sprint);
        }
    Sprint race;
    race.day = date("2026-05-23");
    race.at = evening(race.day, 0);
    race.id = idOf("sprint", 99);
    race.test = "100 m from blocks";
    race.distanceM = 100;
    race.timeS = 12.04;
    race.start = "block";
    race.timing = "electronic";
    race.surface = "track";
    race.shoes = "spikes";
    race.windMps = 0.4;
    race.competition = true;
    race.splits = {{30, 4.28}, {60, 7.43}, {100, 12.04}};
    all.push_back(race);
    return all;
}

std::vector<PlanLine> plan(CivilDate start, CivilDate upTo)
{
    std::vector<PlanLine> lines;
    for (const auto& stay : squat(start).planned)
        for (CivilDate day = stay.first; day <= stay.last; day += days{7})
            for (const int offset : {0, 3}) {
                PlanLine line;
                line.day = day + days{offset};
                line.phase = daysBetween(start, line.day) < 91 ? "general preparation" : "special preparation";
                line.ladder = "Squat";
                line.rung = squat(start).rungs[stay.rung].name;
                line.sets = 4;
                line.repetitions = 5;
                line.loadKg = 122.5;
                line.state = line.day > upTo ? PlanState::Ahead : PlanState::Done;
                line.setsDone = line.state == PlanState::Done ? 4 : 0;
                lines.push_back(line);
            }
    for (const std::size_t lost : {9U, 20U, 31U}) {
        lines[lost].state = PlanState::Lost;
        lines[lost].setsDone = 0;
        lines[lost].why = lost == 31U ? "travel" : "illness";
    }
    return lines;
}

/// One week in five much fuller than the others.
void addTrack(SeasonReport& report)
{
    for (int i = 0; i < weeksKnown; ++i) {
        TrackWork work;
        work.id = idOf("track work", i);
        work.day = report.first + days{7 * i + 1};
        work.at = evening(work.day, 0);
        work.kind = i % 3 == 0 ? "resisted" : i % 3 == 1 ? "hill" : "flying";
        work.distanceM = 30;
        work.repetitions = i % 5 == 4 ? 9 : 4;
        work.effort = 9;
        work.restS = 180;
        if (i % 3 == 0)
            work.loadKg = 9;
        if (i % 3 == 1)
            work.slopePercent = 6;
        if (i % 3 == 2)
            work.fast = {30.0 * work.repetitions, 30.0 * work.repetitions, track::Basis::Estimated, ""};
        work.surface = "track";
        work.shoes = "spikes";
        report.trackWork.push_back(work);
        TrackWeek week;
        week.week.monday = report.first + days{7 * i};
        week.week.runs = work.repetitions;
        week.week.metres = 30.0 * work.repetitions + 480;
        week.week.fast90 = week.week.fast95 = work.fast.at90;
        week.week.estimated = i % 3 == 2;
        week.week.usualMetres = 600;
        week.week.muchMore = i == 9;
        if (i == 9)
            week.week.metres = 840;
        week.week.usualFastMetres = 90;
        week.sprintDaysPlanned = 2;
        week.sprintDaysDone = 1 + i % 2;
        report.trackWeeks.push_back(week);
    }
}

} // namespace

SeasonReport season()
{
    SeasonReport report;
    const CivilDate start = date("2026-01-05");
    report.athlete = {idOf("athlete", 1), "Ottoline Vårdhaug", date("2001-09-14"), "100 m", 61.5, 1.71};
    report.season = idOf("season", 1);
    report.seasonName = "Outdoor 2026";
    report.first = start;
    report.last = date("2026-07-26");
    report.upTo = start + days{7 * weeksKnown - 1};
    report.phases = {{"transition", start, start + days{6}},
                     {"general preparation", start + days{7}, start + days{90}},
                     {"special preparation", start + days{91}, start + days{139}},
                     {"pre-competition", start + days{140}, start + days{167}},
                     {"competition", start + days{168}, start + days{188}},
                     {"taper", start + days{189}, report.last}};
    report.competitions = {{date("2026-05-23"), "Kvarnby spring meeting", "C", false, "100 m 12.04"},
                           {date("2026-06-27"), "Lakeside evening", "B", false, ""},
                           {date("2026-07-25"), "Regional championships, Ostermoor", "A", true, ""}};
    report.ladders = {squat(start), stepUp(start)};
    report.decisions = decisions(start);
    report.sessions = sessions(start);
    report.sprints = sprints(start);
    for (int i = 0; i < 4; ++i) {
        Jump jump;
        jump.id = idOf("jump", i);
        jump.day = start + days{40 + 30 * i};
        jump.at = evening(jump.day, 30);
        jump.kind = "drop jump";
        jump.boxHeightM = 0.2;
        jump.contactTime = measured(0.21 - 0.006 * i, 0.003);
        jump.flightTime = measured(0.48 + 0.008 * i, 0.003);
        jump.height = measured(0.283 + 0.01 * i, 0.004);
        jump.reactiveStrength = measured(1.35 + 0.09 * i, 0.03);
        report.jumps.push_back(jump);
    }
    addTrack(report);
    for (int week = 0; week < weeksKnown; ++week) {
        Wellness entry;
        entry.day = start + days{7 * week};
        entry.asked = evening(entry.day, -30);
        entry.sleepHours = 7.5 + 0.5 * std::round(2 * wobble(week)) / 2;
        entry.soreness = 2 + week % 4;
        entry.pain = week == 15 ? 5 : 0;
        entry.painWhere = week == 15 ? "left hamstring" : "";
        entry.bodyMassKg = 61.5;
        report.wellness.push_back(entry);
    }
    report.plan = plan(start, report.upTo);
    for (const auto& line : report.plan)
        if (line.state == PlanState::Lost)
            report.lostDays.push_back({line.day, line.why});
    report.cautions = {"In week 17 a step was taken without the evidence asked for; the athlete recorded why."};
    return report;
}

} // namespace fleetrung::invented
