#include <sys/wait.h>
#include <unistd.h>

#include "mobile/logbook/import.hpp"
#include "tests/logbook/logbook_helper.hpp"

using namespace fleetrung;
using namespace fleetrung::logbook;
using namespace fleetrung::logbook::test;

namespace
{

importing::ReadRun run(const std::string& name, const char* day, double time, std::vector<importing::SplitTime> splits)
{
    importing::ReadRun one;
    one.athlete = name;
    one.day = date(day);
    one.distance = 30;
    one.time = time;
    one.splits = std::move(splits);
    one.start = "standing";
    one.timing = "gates";
    one.wind = 0.3;
    return one;
}

importing::ReadSet set(const std::string& name, const char* day, const std::string& lift, double loadKg,
                       int repetitions)
{
    importing::ReadSet one;
    one.athlete = name;
    one.day = date(day);
    one.lift = lift;
    one.loadKg = loadKg;
    one.repetitions = repetitions;
    one.meanVelocity = 0.6;
    one.timeToPeak = 0.3;
    return one;
}

ImportPlan planFor(const std::vector<std::string>& names, const std::vector<store::Athlete>& squad)
{
    ImportPlan plan;
    for (auto& [name, choice] : matchNames(names, squad))
        plan.names[name] = choice;
    plan.lifts = {{"Half squat", "half-squat"}, {"Squat machine", "free"}, {"Curl", ""}};
    plan.momentOf = [](CivilDate day, int second) { return at(day, second); };
    return plan;
}

std::vector<store::Athlete> squadOf(const Logbook& logbook)
{
    std::vector<store::Athlete> squad;
    for (const auto& summary : good(logbook.squad(date("2026-03-01"))))
        squad.push_back(summary.athlete);
    return squad;
}

const std::vector<importing::ReadRun> threeRuns{run("marle oddvik", "2026-03-01", 4.02, {{10, 1.85}, {30, 4.02}}),
                                                run("marle oddvik", "2026-03-01", 4.05, {{10, 1.86}, {30, 4.05}}),
                                                run("Bo", "2026-03-01", 4.40, {})};

} // namespace

TEST_CASE("imported runs stand in the log, and a second import adds nothing", "[import]")
{
    const Folder folder;
    auto logbook = openLogbook(folder);
    const auto who = fill(logbook).athlete;
    const auto plan = planFor(namesIn(threeRuns), squadOf(logbook));
    const auto first = good(importRuns(logbook, threeRuns, plan));
    CHECK(first.added == 2);
    CHECK(first.skipped == 1); // Bo is not in the squad
    CHECK(first.duplicates == 0);
    const auto runs = good(logbook.sprints(who));
    REQUIRE(runs.size() == 2);
    CHECK(runs[0].time == 4.02); // the order of the file
    CHECK(runs[0].splits == std::vector<store::Split>{{10, 1.85}, {30, 4.02}});
    CHECK(runs[0].windMps == 0.3);
    CHECK(runs[0].run.trainingDay == date("2026-03-01"));

    const auto again = good(importRuns(logbook, threeRuns, plan));
    CHECK(again.added == 0);
    CHECK(again.duplicates == 2);
    CHECK(again.receipt.empty());
    CHECK(good(logbook.sprints(who)).size() == 2);
}

TEST_CASE("a run that was typed before, and one twice in the file, are duplicates", "[import]")
{
    const Folder folder;
    auto logbook = openLogbook(folder);
    const auto who = fill(logbook).athlete;
    store::Sprint typed;
    typed.athlete = who;
    typed.run = at(date("2026-03-01"));
    typed.distance = 30;
    typed.time = 4.02;
    typed.splits = {{10, 1.85}, {30, 4.02}};
    good(logbook.addSprint(typed));
    auto runs = threeRuns;
    runs.push_back(runs[1]);
    const auto count = good(importRuns(logbook, runs, planFor(namesIn(runs), squadOf(logbook))));
    CHECK(count.added == 1);
    CHECK(count.duplicates == 2);
    // The same time at another hour is another run.
    auto later = std::vector{runs[1]};
    later[0].clock = 17 * 3600;
    later.push_back(later[0]);
    later[1].clock = 18 * 3600;
    CHECK(good(importRuns(logbook, later, planFor(namesIn(later), squadOf(logbook)))).added == 1);
}

TEST_CASE("undo takes back the whole import, and it can be imported again", "[import]")
{
    const Folder folder;
    auto logbook = openLogbook(folder);
    const auto who = fill(logbook).athlete;
    auto plan = planFor(namesIn(threeRuns), squadOf(logbook));
    plan.names["Bo"] = {NameChoice::Add, {}};
    const auto count = good(importRuns(logbook, threeRuns, plan));
    CHECK(count.added == 3);
    CHECK(count.receipt.athletes.size() == 1);
    CHECK(squadOf(logbook).size() == 2);
    good(undoImport(logbook, count.receipt));
    CHECK(good(logbook.sprints(who)).empty());
    CHECK(squadOf(logbook).size() == 1);
    auto again = threeRuns;
    again[0].wind = 1.1;
    CHECK(good(importRuns(logbook, again, plan)).added == 3);
    CHECK(good(logbook.sprints(who))[0].windMps == 1.1);
}

TEST_CASE("an athlete who was added and trained since stays at the undo", "[import]")
{
    const Folder folder;
    auto logbook = openLogbook(folder);
    auto plan = planFor({}, {});
    plan.names["Bo"] = {NameChoice::Add, {}};
    const auto count = good(importRuns(logbook, threeRuns, plan));
    good(logbook.openSession(count.receipt.athletes[0], "strength", at(date("2026-03-02"))));
    good(undoImport(logbook, count.receipt));
    CHECK(squadOf(logbook).size() == 1);
}

TEST_CASE("imported sets go into the day's session, with their values and their rung", "[import]")
{
    const Folder folder;
    auto logbook = openLogbook(folder);
    const auto who = fill(logbook).athlete;
    std::vector sets{set("Marle Oddvik", "2026-03-02", "Half squat", 100, 5),
                     set("Marle Oddvik", "2026-03-02", "Half squat", 100, 5),
                     set("Marle Oddvik", "2026-03-04", "Squat machine", 80, 8),
                     set("Marle Oddvik", "2026-03-04", "Curl", 20, 8)};
    const auto plan = planFor(namesIn(sets), squadOf(logbook));
    const auto count = good(importSets(logbook, sets, plan));
    CHECK(count.added == 3); // two sets alike are two sets
    CHECK(count.skipped == 1);
    CHECK(count.receipt.sessions.size() == 2);
    const auto sessions = good(logbook.sessions(who));
    REQUIRE(sessions.size() == 2);
    CHECK(sessions[0].season); // the season that holds the day
    const auto squats = good(logbook.sets(sessions[0].id));
    REQUIRE(squats.size() == 2);
    CHECK(squats[1].row.ordinal == 2);
    CHECK(squats[0].row.ladder == "squat");
    CHECK(squats[0].row.rung == "half");
    CHECK(squats[0].done == 5);
    CHECK(squats[0].meanTimeToPeak == Approx(0.3));
    CHECK(good(logbook.sets(sessions[1].id))[0].row.note == "Squat machine");

    CHECK(good(importSets(logbook, sets, plan)).duplicates == 3);
    good(undoImport(logbook, count.receipt));
    CHECK(good(logbook.sessions(who)).empty());
    CHECK(good(importSets(logbook, sets, plan)).added == 3);
    CHECK(good(logbook.sets(good(logbook.sessions(who))[0].id)).size() == 2);
}

TEST_CASE("sets with the same number on one day are twice in the file", "[import]")
{
    const Folder folder;
    auto logbook = openLogbook(folder);
    fill(logbook);
    auto one = set("Marle Oddvik", "2026-03-02", "Half squat", 100, 5);
    one.attempt = "1";
    const std::vector sets{one, one};
    const auto count = good(importSets(logbook, sets, planFor(namesIn(sets), squadOf(logbook))));
    CHECK(count.added == 1);
    CHECK(count.duplicates == 1);
}

TEST_CASE("a dry run and a stopped import leave the log as it was", "[import]")
{
    const Folder folder;
    auto logbook = openLogbook(folder);
    const auto who = fill(logbook).athlete;
    std::vector<importing::ReadRun> many;
    for (int i = 0; i < 200; ++i)
        many.push_back(run(i % 2 == 0 ? "Marle Oddvik" : "Bo", "2026-03-01", 4 + 0.001 * i, {}));
    auto plan = planFor(namesIn(many), squadOf(logbook));
    plan.names["Bo"] = {NameChoice::Add, {}};
    plan.dryRun = true;
    CHECK(good(importRuns(logbook, many, plan)).added == 200);
    CHECK(good(logbook.sprints(who)).empty());
    plan.dryRun = false;
    plan.progress = [](int done, int all) { return all == 200 && done < 100; };
    CHECK(codeOf(importRuns(logbook, many, plan)) == Code::Cancelled);
    CHECK(good(logbook.sprints(who)).empty());
    CHECK(squadOf(logbook).size() == 1);
}

TEST_CASE("a program that is killed in the middle of an import has written nothing of it", "[import]")
{
    const Folder folder;
    Identifier who;
    {
        auto logbook = openLogbook(folder);
        who = fill(logbook).athlete;
    }
    const pid_t child = fork();
    REQUIRE(child >= 0);
    if (child == 0) {
        auto logbook = openLogbook(folder, 1000);
        std::vector<importing::ReadRun> many;
        for (int i = 0; i < 400; ++i)
            many.push_back(run("Marle Oddvik", "2026-03-01", 4 + 0.001 * i, {}));
        auto plan = planFor(namesIn(many), squadOf(logbook));
        plan.progress = [](int done, int) { return done < 300 || kill(getpid(), SIGKILL) == 0; };
        static_cast<void>(importRuns(logbook, many, plan));
        _exit(0); // not reached: the import was to be killed
    }
    int status = 0;
    REQUIRE(waitpid(child, &status, 0) == child);
    REQUIRE(WIFSIGNALED(status));
    auto logbook = openLogbook(folder, 5000);
    CHECK(good(logbook.sprints(who)).empty());
    CHECK(good(logbook.verify()).empty());
    CHECK(good(importRuns(logbook, threeRuns, planFor(namesIn(threeRuns), squadOf(logbook)))).added == 2);
}

TEST_CASE("two athletes of one name are not told apart by themselves", "[import]")
{
    const Folder folder;
    auto logbook = openLogbook(folder);
    auto twin = longJumper();
    const auto first = good(logbook.addAthlete(twin));
    good(logbook.addAthlete(twin));
    const auto squad = squadOf(logbook);
    CHECK(matchNames({"Marle Oddvik"}, squad)[0].second.kind == NameChoice::Skip);
    CHECK(matchNames({identifierText(first)}, squad)[0].second.athlete == first);
    CHECK(matchNames({"M. O."}, squad, {{"M. O.", identifierText(first)}})[0].second.athlete == first);
}
