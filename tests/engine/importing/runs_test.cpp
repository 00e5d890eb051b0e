#include "helper.hpp"

using namespace fleetrung;
using namespace fleetrung::importing;
using namespace fleetrung::importing::test;
using Splits = std::vector<SplitTime>;

TEST_CASE("one row a run: all that a gate's export can say of it", "[runs]")
{
    const auto read =
        runsIn("Athlete;Datum;Uhrzeit;Versuch;10 m;20 m;30 m;Wind;Zeitnahme;Startart;Reaktionszeit (ms);"
               "Belag;Schuhe;RPE;Bemerkung\n"
               "Ada Muster;1.3.2026;17:05;2;1,85;2,98;4,02;+0,8;Lichtschranke;Startblock;152;Halle;Spikes;"
               "7;\"leicht; locker\"\n");
    REQUIRE(read.bad.empty());
    REQUIRE(read.runs.size() == 1);
    const auto& run = read.runs[0];
    CHECK(run.athlete == "Ada Muster");
    CHECK(dateText(run.day) == "2026-03-01");
    CHECK(run.clock == 17 * 3600 + 5 * 60);
    CHECK(run.attempt == "2");
    CHECK(run.splits == Splits{{10, 1.85}, {20, 2.98}, {30, 4.02}});
    CHECK(run.distance == 30);
    CHECK(run.time == 4.02);
    CHECK(run.wind == Approx(0.8));
    CHECK(run.timing == "gates");
    CHECK(run.start == "block");
    CHECK(run.reaction == Approx(0.152));
    CHECK(run.surface == "indoor");
    CHECK(run.shoes == "spikes");
    CHECK(run.effort == 7.0);
    CHECK(run.note == "leicht; locker");
}

TEST_CASE("one row a split: athlete, run, distance, time", "[runs]")
{
    const std::string text = "Athlete,Date,Run,Distance (m),Time (s)\n"
                             "Ada,2026-03-01,1,0,0\nAda,2026-03-01,1,10,1.85\nBo,2026-03-01,1,10,1.95\n"
                             "Ada,2026-03-01,1,30,4.02\nBo,2026-03-01,1,30,4.22\nAda,2026-03-01,2,10,1.83\n"
                             "Ada,2026-03-01,2,30,3.99\n";
    const auto table = tableOf(text);
    const auto proposal = propose(table, Kind::Runs);
    CHECK(told(proposal, Told::SplitRows));
    const auto read = runsOf(table, proposal.mapping);
    INFO(sentencesOf(read.bad, table));
    REQUIRE(read.runs.size() == 3);
    CHECK(read.runs[0].splits == Splits{{10, 1.85}, {30, 4.02}});
    CHECK(read.runs[1].athlete == "Bo");
    CHECK(read.runs[2].attempt == "2");
    CHECK(read.runs[2].time == 3.99);
}

TEST_CASE("without a number, a run begins where the distance does not grow", "[runs]")
{
    const auto read = runsIn("Name,Date,Dist,Time\nAda,2026-03-01,10,1.85\nAda,2026-03-01,30,4.02\n"
                             "Ada,2026-03-01,10,1.83\nAda,2026-03-01,30,3.99\n");
    REQUIRE(read.runs.size() == 2);
    CHECK(read.runs[1].splits == Splits{{10, 1.83}, {30, 3.99}});
}

TEST_CASE("times that do not rise count from the gate before, and that is told", "[runs]")
{
    const std::string intervals =
        "Name,Date,0-10,10-20,20-30\nAda,2026-03-01,1.85,1.13,1.04\nBo,2026-03-01,1.9,1.2,1.1\n";
    const auto table = tableOf(intervals);
    const auto proposal = propose(table, Kind::Runs);
    CHECK(proposal.mapping.splits == SplitForm::Interval);
    CHECK(told(proposal, Told::IntervalSplits));
    CHECK(runsOf(table, proposal.mapping).runs[0].splits == Splits{{10, 1.85}, {20, 2.98}, {30, 4.02}});

    const auto rising = tableOf("Name,Date,10,20,30\nAda,2026-03-01,1.85,2.98,4.02\n");
    CHECK(told(propose(rising, Kind::Runs), Told::CumulativeSplits));
    // Rising, but nobody covers 15 m in 0.9 s: gates of unequal distance.
    const auto unequal = tableOf("Name,Date,5 m,20 m,50 m\nAda,2026-03-01,1.1,2.0,3.3\n");
    CHECK(propose(unequal, Kind::Runs).mapping.splits == SplitForm::Interval);
}

TEST_CASE("times without a unit are told apart by their size", "[runs]")
{
    const auto table = tableOf("Name,Date,10 m,30 m\nAda,2026-03-01,1850,4021\n");
    const auto proposal = propose(table, Kind::Runs);
    CHECK(told(proposal, Told::Milliseconds));
    CHECK(runsOf(table, proposal.mapping).runs[0].splits == Splits{{10, 1.85}, {30, 4.021}});
    CHECK(runsIn("Name,Date,400 m\nAda,2026-03-01,1:02.35\n").runs[0].time == Approx(62.35));
    CHECK(runsIn("Name,Date,30 m\nAda,2026-03-01,4.21 s\n").runs[0].time == Approx(4.21));
}

TEST_CASE("flying runs, and a test's name instead of a distance", "[runs]")
{
    const auto read = runsIn("Name,Date,Test,Time,run-in (m)\nAda,2026-03-01,Flying 20 m,2.04,30\n"
                             "Ada,2026-03-01,60 m block start,7.61,\n");
    REQUIRE(read.runs.size() == 2);
    CHECK(read.runs[0].start == "flying");
    CHECK(read.runs[0].distance == 20);
    CHECK(read.runs[0].runIn == 30);
    CHECK(read.runs[0].splits.empty());
    CHECK(read.runs[1].start == "block");
    CHECK(read.runs[1].distance == 60);
}

TEST_CASE("a column called time that holds clock times is the time of day", "[runs]")
{
    const auto read = runsIn("Name,Date,Time,30 m\nAda,2026-03-01,17:05:12,4.21\n");
    REQUIRE(read.runs.size() == 1);
    CHECK(read.runs[0].clock == 17 * 3600 + 5 * 60 + 12);
    const auto stamp = runsIn("Name,Timestamp,30 m\nAda,2026-03-01T17:05:12+02:00,4.21\n");
    CHECK(stamp.runs[0].offsetMinutes == 120);
    CHECK(runsIn("Name,Date,clock,30 m\nAda,2026-03-01,5:05 PM,4.2\n").runs[0].clock == 17 * 3600 + 5 * 60);
}

TEST_CASE("a bad row is named with line, column and cause, and leaves the others alone", "[runs]")
{
    struct Case {
        const char* row;
        const char* said;
    };
    for (const auto& [row, said] :
         {Case{"Ada,2026-03-01,1.85,abc,0", "line 3, column 30 m: \"abc\" is no number"},
          Case{"Ada,2026-13-01,1.85,4.02,0", "line 3, column Date: \"2026-13-01\" is no day"},
          Case{"Ada,2027-01-01,1.85,4.02,0", "line 3, column Date: \"2027-01-01\" has not come yet"},
          Case{"Ada,,1.85,4.02,0", "line 3, column Date: there is no date"},
          Case{"Ada,2026-03-01,4.02,1.85,0", "line 3, column 30 m: the times do not rise"},
          Case{"Ada,2026-03-01,1.85,1.90,0", "line 3: that is faster than anyone has run"},
          Case{"Ada,2026-03-01,,,0", "line 3: there is no time"},
          Case{"Ada,2026-03-01,1.85,4.02,99", "line 3, column Wind: \"99\" is beyond what can be"},
          Case{"Ada,2026-03-01,1.85,4.02,0,9", "line 3: the row has more cells than the header"}}) {
        CAPTURE(row);
        const auto table = tableOf("Name,Date,10 m,30 m,Wind\nBo,2026-03-01,1.95,4.22,\n" + std::string(row) +
                                   "\nCy,2026-03-01,1.97,4.25,\n");
        const auto read = runsOf(table, propose(table, Kind::Runs).mapping);
        CHECK(read.runs.size() == 2);
        CHECK(sentencesOf(read.bad, table).find(said) == 0);
    }
}

TEST_CASE("a gate that failed leaves a hole, but not where times count from the gate before", "[runs]")
{
    CHECK(runsIn("Name,Date,10 m,20 m,30 m\nAda,2026-03-01,1.85,-,4.02\n").runs[0].splits ==
          Splits{{10, 1.85}, {30, 4.02}});
    const auto table = tableOf("Name,Date,0-10,10-20,20-30\nAda,2026-03-01,1.85,,1.04\nBo,2026-03-01,1.9,1.2,1.1\n");
    const auto read = runsOf(table, propose(table, Kind::Runs).mapping);
    CHECK(read.runs.size() == 1);
    CHECK(sentencesOf(read.bad, table).find("line 2, column 20-30: a time before this one is missing") == 0);
}

TEST_CASE("a word the log has no key for is kept in the note", "[runs]")
{
    CHECK(runsIn("Name,Date,30 m,Surface\nAda,2026-03-01,4.2,sand\n").runs[0].note == "Surface: sand");
}

TEST_CASE("a hundred thousand rows are read, and can be stopped", "[runs]")
{
    std::string text = "Name,Date,10 m,20 m,30 m,Wind\n";
    for (int i = 0; i < 100000; ++i)
        text += "Athlete " + std::to_string(i % 40) + ",2026-03-01,1.85,2.98,4.0" + std::to_string(i % 10) + ",0.3\n";
    const auto table = tableOf(text);
    const auto mapping = propose(table, Kind::Runs).mapping;
    int calls = 0;
    const auto read =
        readRuns(table, mapping, {today, [&calls](int, int all) { return ++calls > 0 && all == 100000; }});
    REQUIRE(read);
    CHECK(read->runs.size() == 100000);
    CHECK(calls >= 100);
    const auto stopped = readRuns(table, mapping, {today, [](int done, int) { return done < 1000; }});
    REQUIRE_FALSE(stopped);
    CHECK(stopped.error().code == Code::Cancelled);
}
