#include "helper.hpp"

using namespace fleetrung;
using namespace fleetrung::importing;
using namespace fleetrung::importing::test;

namespace
{

ColumnMeaning meaningOf(const std::string& header, Kind kind)
{
    const auto table = tableOf("who,x," + header + "\nAda,1.5,4.5\nBo,1.6,4.6\n");
    return propose(table, kind).mapping.columns[2];
}

} // namespace

TEST_CASE("headers of gates are read as distances", "[mapping]")
{
    struct Case {
        const char* header;
        double distance, from;
    };
    for (const auto& [header, distance, from] :
         {Case{"10 m", 10, 0}, Case{"10m", 10, 0}, Case{"0-10", 10, 0}, Case{"0-10 m", 10, 0}, Case{"Split 30", 30, 0},
          Case{"t_5m_s", 5, 0}, Case{"T30", 30, 0}, Case{"10-20 m", 20, 10},
          Case{"10\xE2\x80\x93"
               "20",
               20, 10},
          Case{"Zeit 60 m (s)", 60, 0}, Case{"Tiempo 30 metros", 30, 0}, Case{"Temps 30 m", 30, 0},
          Case{"36.58 m", 36.58, 0}, Case{"20 yd", 18.288, 0}, Case{"30 m sprint", 30, 0}}) {
        CAPTURE(header);
        const auto column = meaningOf(header, Kind::Runs);
        CHECK(column.meaning == Meaning::Split);
        CHECK(column.distance == Approx(distance));
        CHECK(column.from == Approx(from));
    }
    for (const auto* header : {"fast_metres_90_m", "avg speed 10 m", "v 0-10", "height_cm", "2026"}) {
        CAPTURE(header);
        const auto column = meaningOf(header, Kind::Runs);
        CHECK((column.meaning == Meaning::Ignore || column.distance == 2026));
    }
}

TEST_CASE("words of four languages are known", "[mapping]")
{
    struct Case {
        const char* header;
        Kind kind;
        Meaning meaning;
    };
    using enum Meaning;
    for (const auto& [header, kind, meaning] : {Case{"L\xC3\xA4ufer", Kind::Runs, Athlete},
                                                Case{"Nombre", Kind::Runs, Athlete},
                                                Case{"Athl\xC3\xA8te", Kind::Runs, Ignore},
                                                Case{"Datum", Kind::Runs, Date},
                                                Case{"Fecha", Kind::Sets, Date},
                                                Case{"Wind (m/s)", Kind::Runs, Wind},
                                                Case{"viento", Kind::Runs, Wind},
                                                Case{"wind_mps", Kind::Runs, Wind},
                                                Case{"Reaktionszeit (ms)", Kind::Runs, Reaction},
                                                Case{"Startart", Kind::Runs, Start},
                                                Case{"Schuhe", Kind::Runs, Shoes},
                                                Case{"Belag", Kind::Runs, Surface},
                                                Case{"\xC3\x9C"
                                                     "bung",
                                                     Kind::Sets, Lift},
                                                Case{"Ejercicio", Kind::Sets, Lift},
                                                Case{"Exercice", Kind::Sets, Lift},
                                                Case{"Gewicht (kg)", Kind::Sets, Load},
                                                Case{"Carga", Kind::Sets, Load},
                                                Case{"Poids [kg]", Kind::Sets, Load},
                                                Case{"Weight (lb)", Kind::Sets, Load},
                                                Case{"Wdh", Kind::Sets, Repetitions},
                                                Case{"Reps", Kind::Sets, Repetitions},
                                                Case{"TPV (ms)", Kind::Sets, TimeToPeak},
                                                Case{"Mean Velocity (m/s)", Kind::Sets, MeanVelocity},
                                                Case{"Velocidad m\xC3\xA1xima", Kind::Sets, PeakVelocity},
                                                Case{"RPE", Kind::Sets, Effort},
                                                Case{"C\xC3\xB4t\xC3\xA9", Kind::Sets, Side}}) {
        CAPTURE(header);
        const auto column = meaningOf(header, kind);
        if (meaning == Ignore) // the French word is folded to the English one
            CHECK((column.meaning == Athlete || column.meaning == Ignore));
        else
            CHECK(column.meaning == meaning);
    }
    CHECK(meaningOf("Weight (lb)", Kind::Sets).unit == Unit::Pound);
    CHECK(meaningOf("TPV (ms)", Kind::Sets).unit == Unit::Millisecond);
}

TEST_CASE("a decimal mark that may be one of thousands is asked for", "[mapping]")
{
    const auto open = tableOf("Name;Date;30 m\nAda;2026-03-01;4,215\nBo;2026-03-01;4,301\n");
    auto mapping = propose(open, Kind::Runs).mapping;
    CHECK_FALSE(mapping.decimalMark);
    CHECK(asked(open, mapping) == std::vector{Ask::DecimalMark});
    CHECK(firstQuestion(open, mapping).find("\"4,301\" may be read in two ways") == 0);
    CHECK(readRuns(open, mapping, {today, {}}).error().code == Code::Refused);

    mapping.decimalMark = ',';
    CHECK(runsOf(open, answered(open, mapping).mapping).runs[0].time == 4.215);
    mapping.decimalMark = '.'; // then they are thousands, of milliseconds
    CHECK(runsOf(open, answered(open, mapping).mapping).runs[0].time == 4.215);

    const auto sure = tableOf("Name;Date;30 m\nAda;2026-03-01;4,215\nBo;2026-03-01;4,3\n");
    const auto proposal = propose(sure, Kind::Runs);
    CHECK(proposal.mapping.decimalMark == ',');
    CHECK(told(proposal, Told::DecimalComma));
    CHECK(runsOf(sure, proposal.mapping).runs[0].time == 4.215);

    // Both marks in one cell leave no doubt, both as decimal marks in two cells are a contradiction.
    CHECK(propose(tableOf("Name,x,Load (kg)\nA,1.5,\"1,234.5\"\n"), Kind::Sets).mapping.decimalMark == '.');
    CHECK_FALSE(propose(tableOf("Name;10 m;30 m\nA;1,85;4.21\n"), Kind::Runs).mapping.decimalMark);
}

TEST_CASE("an order of day and month that the file leaves open is asked for", "[mapping]")
{
    const auto open = tableOf("Name,Date,30 m\nAda,3/4/2026,4.21\nBo,5/4/2026,4.30\n");
    auto mapping = propose(open, Kind::Runs).mapping;
    CHECK(asked(open, mapping) == std::vector{Ask::DateOrder});
    mapping.dateOrder = DateOrder::MonthDay;
    CHECK(dateText(runsOf(open, mapping).runs[0].day) == "2026-03-04");
    mapping.dateOrder = DateOrder::DayMonth;
    CHECK(dateText(runsOf(open, mapping).runs[0].day) == "2026-04-03");

    const auto told1 = tableOf("Name,Date,30 m\nAda,3/4/2026,4.21\nBo,3/24/2026,4.30\n");
    const auto proposal = propose(told1, Kind::Runs);
    CHECK(proposal.mapping.dateOrder == DateOrder::MonthDay);
    CHECK(told(proposal, Told::MonthDay));
    CHECK(propose(tableOf("Name,Date,30 m\nAda,24/3/26,4.21\n"), Kind::Runs).mapping.dateOrder == DateOrder::DayMonth);
    // Points are day, month, year wherever they are written; ISO needs no word.
    const auto clear = tableOf("Name,Date,30 m\nAda,3.4.2026,4.21\nBo,2026-04-05,4.30\n");
    CHECK(questions(clear, propose(clear, Kind::Runs).mapping).empty());
    CHECK(dateText(runsIn("Name,Date,30 m\nAda,3.4.2026,4.21\n").runs[0].day) == "2026-04-03");
}

TEST_CASE("gates that are only counted are asked for their distance", "[mapping]")
{
    const auto table = tableOf("Name,Date,Split 1,Split 2,Split 3\nAda,2026-03-01,1.85,2.98,4.02\n");
    auto mapping = propose(table, Kind::Runs).mapping;
    CHECK(asked(table, mapping) == std::vector{Ask::SplitDistance, Ask::SplitDistance, Ask::SplitDistance});
    for (std::size_t i = 0; i < 3; ++i)
        mapping.columns[2 + i].distance = 10.0 * static_cast<double>(i + 1);
    CHECK(runsOf(table, mapping).runs[0].splits == std::vector<SplitTime>{{10, 1.85}, {20, 2.98}, {30, 4.02}});
}

TEST_CASE("a file without dates is asked for its day, one without times for its columns", "[mapping]")
{
    const auto table = tableOf("Name,30 m\nAda,4.2\n");
    auto mapping = propose(table, Kind::Runs).mapping;
    CHECK(asked(table, mapping) == std::vector{Ask::Day});
    mapping.day = parseDate("2026-03-01");
    CHECK(dateText(runsOf(table, mapping).runs[0].day) == "2026-03-01");
    const auto nothing = tableOf("Name,height\nAda,180\n");
    CHECK(asked(nothing, propose(nothing, Kind::Runs).mapping) == std::vector{Ask::NothingToRead});
}

TEST_CASE("a mapping comes back from its text as it was", "[mapping]")
{
    const auto table = tableOf("Name,Date,10-20 m,Wind\nAda,3/4/2026,1.85,0.3\n");
    auto mapping = propose(table, Kind::Runs).mapping;
    mapping.dateOrder = DateOrder::MonthDay;
    mapping.splits = SplitForm::Interval;
    mapping.day = parseDate("2026-03-01");
    mapping.start = "block";
    mapping.athletes["Ada"] = "00112233445566778899aabbccddeeff";
    mapping.lifts["Kniebeuge"] = "full-squat";
    const auto read = parseMapping(mappingText(mapping));
    REQUIRE(read);
    CHECK(*read == mapping);
    for (const auto* damaged : {"", "[]", "{}", R"({"version":1})", R"({"version":1,"kind":"jumps","columns":[]})",
                                R"({"version":1,"kind":"runs","columns":[{"meaning":"load"}]})",
                                R"({"version":1,"kind":"runs","columns":[{"meaning":"split","distance_m":-3}]})"}) {
        CAPTURE(damaged);
        const auto refused = parseMapping(damaged);
        REQUIRE_FALSE(refused);
        CHECK(refused.error().code == Code::InvalidInput);
        CHECK_FALSE(refused.error().place.empty());
    }
}

TEST_CASE("a remembered mapping leaves nothing to ask of the next file with that header", "[mapping]")
{
    const auto first = tableOf("Wer;Wann;Tor A;Tor B\nAda;3/4/2026;1,850;4,215\n");
    auto mapping = propose(first, Kind::Runs).mapping;
    const auto say = [&](std::size_t column, const ColumnMeaning& meaning) {
        mapping = withMeaning(first, mapping, column, meaning).mapping;
    };
    say(0, {Meaning::Athlete});
    say(1, {Meaning::Date});
    say(2, {Meaning::Split, Unit::Second, 10});
    say(3, {Meaning::Split, Unit::Second, 30});
    CHECK(asked(first, mapping) == std::vector{Ask::DecimalMark, Ask::DateOrder});
    mapping.decimalMark = ',';
    mapping.dateOrder = DateOrder::DayMonth;
    const auto kept = mappingText(mapping);

    const auto next = tableOf("Wer;Wann;Tor A;Tor B\nBo;5/6/2026;1,902;4,404\n");
    REQUIRE(headerHash(next) == headerHash(first));
    const auto again = remembered(next, *parseMapping(kept));
    REQUIRE(again);
    CHECK(questions(next, *again).empty());
    const auto runs = runsOf(next, *again);
    CHECK(runs.runs[0].athlete == "Bo");
    CHECK(dateText(runs.runs[0].day) == "2026-06-05");
    CHECK(runs.runs[0].splits == std::vector<SplitTime>{{10, 1.902}, {30, 4.404}});

    // What the file itself says for certain comes before what was kept.
    const auto sure = tableOf("Wer;Wann;Tor A;Tor B\nBo;5/16/2026;1.90;4.40\n");
    const auto corrected = remembered(sure, *parseMapping(kept));
    REQUIRE(corrected);
    CHECK(corrected->decimalMark == '.');
    CHECK(corrected->dateOrder == DateOrder::MonthDay);
    CHECK_FALSE(remembered(tableOf("a,b\n1,2\n"), mapping));
}

TEST_CASE("lifts of exactly a known name or key need no hand", "[mapping]")
{
    const std::vector<KnownLift> known{{"half-squat", "Half squat"}, {"bench-press", "Bench press"}};
    const auto table =
        tableOf("Lift,Load (kg),Reps\nHALF SQUAT,100,5\nbench-press,60,5\nKniebeuge,90,5\nHALF SQUAT,100,5\n");
    auto mapping = propose(table, Kind::Sets).mapping;
    using Words = std::vector<std::pair<std::string, std::string>>;
    CHECK(liftWords(table, mapping, known) ==
          Words{{"HALF SQUAT", "half-squat"}, {"bench-press", "bench-press"}, {"Kniebeuge", ""}});
    mapping.lifts["Kniebeuge"] = "half-squat";
    CHECK(liftWords(table, mapping, known)[2].second == "half-squat");
}
