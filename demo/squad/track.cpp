#include "demo/squad/track.hpp"

#include <algorithm>
#include <cmath>

#include "engine/base/numbers.hpp"

namespace fleetrung::squad
{
namespace
{

bool isIndoorSeason(CivilDate day)
{
    const auto month = static_cast<unsigned>(std::chrono::year_month_day(day).month());
    return month <= 3 || month >= 11;
}

double toHundredths(double time)
{
    return roundTo(time, 100);
}

/// What is known of every run of that day.
store::Sprint runOf(Diary& diary, const Identifier& session, CivilDate day, int minutes)
{
    store::Sprint run;
    run.athlete = diary.athlete;
    run.session = session;
    run.run = Diary::at(day, minutes);
    run.timing = "gates";
    run.shoes = "spikes";
    if (isIndoorSeason(day)) {
        run.surface = "indoor";
    } else {
        run.surface = "track";
        run.windMps = roundTo(std::clamp(diary.body.random.normal(0.2, 0.8), -1.9, 2.4), 10);
        run.temperatureC = std::round(diary.body.random.uniform(14, 27));
    }
    return run;
}

/// Wind along the track changes a time by about this share per m/s: starting value of the demo.
double windFactor(const store::Sprint& run)
{
    return 1 - 0.005 * run.windMps.value_or(0);
}

store::Sprint standing60(Diary& diary, const Identifier& session, CivilDate day, int minutes)
{
    auto run = runOf(diary, session, day, minutes);
    run.distance = 60;
    run.start = "standing";
    const double factor = windFactor(run) * diary.body.random.normal(1, 0.004);
    for (const double distance : {5.0, 10.0, 20.0, 30.0, 40.0, 60.0}) {
        run.splits.push_back({distance, toHundredths(diary.body.standingTime(distance) * factor)});
    }
    run.time = run.splits.back().time;
    run.effort = 9;
    return run;
}

/// `inOneGo`: bounds without a stop between them.
void jump(Diary& diary, const Identifier& session, CivilDate day, const std::string& kind, double distance,
          int inOneGo = 1)
{
    store::Jump row;
    row.test = kind != "long-jump";
    row.repetitions = inOneGo;
    row.surface = isIndoorSeason(day) ? "indoor" : "track";
    row.shoes = kind == "long-jump" ? "spikes" : "flats";
    row.athlete = diary.athlete;
    row.session = session;
    row.done = Diary::at(day, 11 * 60 + 30);
    row.kind = kind;
    row.distance = {toHundredths(distance), 0.01};
    static_cast<void>(must(diary.logbook.addJump(std::move(row))));
}

store::TrackWork workOf(const Identifier& session, CivilDate day, const std::string& kind, double distance,
                        int repetitions)
{
    store::TrackWork work;
    work.session = session;
    work.done = Diary::at(day, 17 * 60);
    work.kind = kind;
    work.distance = distance;
    work.repetitions = repetitions;
    work.surface = isIndoorSeason(day) ? "indoor" : "track";
    work.shoes = kind == "easy" ? "flats" : "spikes";
    return work;
}

/// What stands beside the timed run: the sled early in the week, easy runs in its middle, at its end a hill until
/// March and flying runs from then on. Three weeks build up, the fourth is lighter. All invented; no chance in it.
store::TrackWork workOfDay(const Diary& diary, const Identifier& session, CivilDate day)
{
    const int week = daysBetween(diary.who.setup.start, day) / 7 % 4;
    const int more = week == 3 ? -1 : week;
    const int weekday = isoWeekday(day);
    if (weekday <= 2) {
        auto sled = workOf(session, day, "resisted", 20, 4 + more);
        sled.loadKg = std::round(0.15 * diary.who.athlete.bodyMassKg.value_or(70));
        sled.restS = 180;
        sled.effort = 8;
        return sled;
    }
    if (weekday <= 4) {
        auto easy = workOf(session, day, "easy", 100, 6 + more);
        easy.restS = 60;
        easy.effort = 5;
        return easy;
    }
    const bool hill = isIndoorSeason(day);
    auto work = hill ? workOf(session, day, "hill", 40, 4 + more) : workOf(session, day, "flying", 30, 3 + more);
    if (hill) {
        work.slopePercent = 6;
        work.surface = "grass";
        work.shoes = "flats";
    }
    work.restS = hill ? 150 : 360;
    work.effort = 9;
    return work;
}

/// Three and five bounds, two trials each; the second goes a little farther.
void bounds(Diary& diary, const Identifier& session, CivilDate day)
{
    for (const int count : {3, 5}) {
        for (const double share : {0.985, 1.0}) {
            const double gain = 1 + 0.05 * diary.body.progress();
            jump(diary, session, day, "bounds", diary.who.standingLongJump * (1.02 * count - 0.1) * gain * share,
                 count);
        }
    }
}

} // namespace

void sprintSession(Diary& diary, CivilDate day)
{
    constexpr int minutes = 16 * 60;
    const auto session = must(diary.logbook.openSession(diary.athlete, "track", Diary::at(day, minutes)));
    static_cast<void>(must(diary.logbook.addSprint(standing60(diary, session, day, minutes + 30))));
    auto work = workOfDay(diary, session, day);
    work.athlete = diary.athlete;
    static_cast<void>(must(diary.logbook.addTrackWork(std::move(work))));
    ++diary.tally.sessions;
}

void testDay(Diary& diary, CivilDate day)
{
    constexpr int minutes = 10 * 60;
    const auto session = must(diary.logbook.openSession(diary.athlete, "test", Diary::at(day, minutes)));
    double best = 99;
    for (int trial = 0; trial < 3; ++trial) {
        auto run = runOf(diary, session, day, minutes + 30 + 10 * trial);
        run.distance = 20;
        run.start = "flying";
        run.runIn = 30;
        run.time = toHundredths(20 / diary.body.topSpeed() * windFactor(run) * diary.body.random.normal(1.005, 0.005));
        run.effort = 10;
        run.test = true;
        best = std::min(best, run.time);
        static_cast<void>(must(diary.logbook.addSprint(std::move(run))));
    }
    diary.tally.flying20.emplace_back(day, best);
    for (int trial = 0; trial < 3; ++trial) {
        const double gain = 1 + 0.04 * diary.body.progress();
        jump(diary, session, day, "standing-long",
             diary.who.standingLongJump * gain * diary.body.random.normal(0.99, 0.012));
    }
    bounds(diary, session, day);
    ++diary.tally.sessions;
}

void compete(Diary& diary, const season::Competition& competition)
{
    const auto day = competition.date;
    const auto session = must(diary.logbook.openSession(diary.athlete, "track", Diary::at(day, 14 * 60)));
    auto run = runOf(diary, session, day, 15 * 60);
    run.competition = true;
    run.timing = "electronic";
    run.start = "block";
    run.distance = isIndoorSeason(day) ? 60 : diary.who.speed.raceLength;
    // Above 60 m speed fades; the bend costs time: starting values of the demo.
    const double fade = run.distance > 100 ? 1.055 : run.distance > 60 ? 1.01 : 1.0;
    constexpr double reaction = 0.16;
    run.time = toHundredths(reaction + diary.body.standingTime(run.distance) * fade * windFactor(run) *
                                           diary.body.random.normal(0.995, 0.004));
    run.effort = 10;
    run.note = competition.name;
    static_cast<void>(must(diary.logbook.addSprint(std::move(run))));
    if (diary.who.longJump > 0) {
        jump(diary, session, day, "long-jump",
             diary.who.longJump * (1 + 0.035 * diary.body.progress()) * diary.body.random.normal(1, 0.012));
    }
    ++diary.tally.sessions;
}

} // namespace fleetrung::squad
