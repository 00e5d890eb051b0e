// make_store FOLDER SEASON.json: a small store for the tests of the desk program, made through the logbook. All in it
// is invented: two athletes of one name, one of them with a season, lifts typed by hand, runs and decisions.
#include <fstream>
#include <iostream>
#include <sstream>

#include "mobile/logbook/logbook.hpp"

using namespace fleetrung;
using logbook::Logbook;

namespace
{

template <class T> T orStop(Expected<T> value)
{
    if (!value) {
        std::cerr << describe(value.error()) << '\n';
        std::exit(1);
    }
    return std::move(*value);
}

store::Moment evening(const char* day)
{
    const auto date = *parseDate(day);
    return {date.time_since_epoch().count() * 86400LL + 17 * 3600, 120, "Europe/Vienna", date};
}

store::Athlete athlete(const std::string& name, const std::string& event)
{
    store::Athlete row;
    row.name = name;
    row.event = event;
    row.born = parseDate("2001-04-12");
    row.bodyMassKg = 72.5;
    row.trainingYears = 6;
    return row;
}

void addTraining(Logbook& book, const Identifier& who, const char* day)
{
    const auto now = evening(day);
    store::LiftSet set;
    set.session = orStop(book.openSession(who, "strength", now));
    set.done = now;
    set.lift = "full-squat";
    set.ladder = "squat";
    set.rung = "full";
    set.kind = store::SetKind::Probe;
    set.loadKg = 97.5;
    set.note = "=1+1, \"quoted\"\nsecond line";
    logbook::TypedRepetitions typed;
    typed.count = 3;
    typed.meanVelocity = 0.62;
    typed.timeToPeak = 0.55;
    orStop(book.typeSet(set, typed, now));

    store::Sprint sprint;
    sprint.athlete = who;
    sprint.run = now;
    sprint.distance = 20;
    sprint.time = 2.04;
    sprint.start = "flying";
    sprint.runIn = 30;
    sprint.timing = "gates";
    sprint.windMps = -0.4;
    orStop(book.addSprint(sprint));
}

} // namespace

int main(int count, char** arguments)
{
    if (count != 3)
        return 2;
    const std::string folder = arguments[1];
    std::stringstream text;
    text << std::ifstream(arguments[2]).rdbuf();

    unsigned char next = 0;
    const auto newIdentifier = [&next] {
        Identifier id;
        id.bytes[0] = ++next;
        return id;
    };
    auto book = orStop(Logbook::open({folder + "/athletes.fleetrung", folder + "/captures.fleetrung"}, newIdentifier(),
                                     newIdentifier));
    const auto runner = orStop(book.addAthlete(athlete("Ylva Test", "200 m")));
    orStop(book.addAthlete(athlete("Twin", "60 m")));
    orStop(book.addAthlete(athlete("Twin", "long jump")));
    const auto setup = orStop(season::parseSetup(text.str()));
    const auto season = orStop(book.addSeason(runner, setup));
    for (const auto* day : {"2026-01-05", "2026-01-07", "2026-01-09"}) {
        orStop(book.decide(season, evening(day)));
        addTraining(book, runner, day);
    }
    return 0;
}
