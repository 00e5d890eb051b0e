#include "helper.hpp"

using namespace fleetrung;
using namespace fleetrung::importing;
using namespace fleetrung::importing::test;

TEST_CASE("one row a set: all that a session log can say of it", "[sets]")
{
    const auto read =
        setsIn("Athlete,Date,Lift,Set,Load (kg),Reps,TPV (ms),Mean Velocity (m/s),Peak Velocity (m/s),RPE,"
               "Side,Rung,Kind\nAda,2026-03-01,Half squat,2,102.5,5,285,0.62,1.08,8.5,left,half,probe\n");
    REQUIRE(read.sets.size() == 1);
    const auto& set = read.sets[0];
    CHECK(set.lift == "Half squat");
    CHECK(set.attempt == "2");
    CHECK(set.loadKg == 102.5);
    CHECK(set.repetitions == 5);
    CHECK(set.timeToPeak == Approx(0.285));
    CHECK(set.meanVelocity == 0.62);
    CHECK(set.peakVelocity == 1.08);
    CHECK(set.effort == 8.5);
    CHECK(set.side == "left");
    CHECK(set.rung == "half");
    CHECK(set.kind == "probe");
}

TEST_CASE("pounds by the header or by choice, and a load without a unit is asked for", "[sets]")
{
    // 225 lb are 102.058 kg: NIST SP 811 (2008), appendix B.8, 1 lb = 0.453 592 37 kg.
    CHECK(setsIn("Name,Date,Lift,Weight (lbs),Reps\nAda,2026-03-01,Squat,225,5\n").sets[0].loadKg ==
          Approx(102.058).margin(0.001));
    const std::string open = "Name,Date,Lift,Weight,Reps\nAda,2026-03-01,Squat,225,5\n";
    const auto table = tableOf(open);
    CHECK(asked(table, propose(table, Kind::Sets).mapping) == std::vector{Ask::MassUnit});
    CHECK(setsIn(open, Unit::Pound).sets[0].loadKg == Approx(102.058).margin(0.001));
    CHECK(setsIn(open, Unit::Kilogram).sets[0].loadKg == 225);
    CHECK(setsIn("Name,Date,Lift,Weight,Reps\nAda,2026-03-01,Squat,225 lb,5\n", Unit::Kilogram).sets[0].loadKg ==
          Approx(102.058).margin(0.001));
}

TEST_CASE("a German, a Spanish and a French log are read as proposed", "[sets]")
{
    const auto german = setsIn("Sportler;Datum;\xC3\x9C"
                               "bung;Gewicht (kg);Wdh\nAda;1.3.2026;Kniebeuge;102,5;5\n");
    CHECK(german.sets[0].loadKg == 102.5);
    const auto spanish = setsIn("Nombre;Fecha;Ejercicio;Carga (kg);Repeticiones;Velocidad media (m/s)\n"
                                "Ada;1.3.2026;Sentadilla;102,5;5;0,62\n");
    CHECK(spanish.sets[0].meanVelocity == 0.62);
    const auto french = setsIn("Nom\tDate\tExercice\tCharge (kg)\tR\xC3\xA9p\xC3\xA9titions\tVitesse maximale\n"
                               "Ada\t1.3.2026\tSquat\t102,5\t5\t1,08\n");
    CHECK(french.sets[0].repetitions == 5);
    CHECK(french.sets[0].peakVelocity == 1.08);
}

TEST_CASE("a set without a lift, or with half a repetition, is named", "[sets]")
{
    const auto table = tableOf("Name,Date,Lift,Load (kg),Reps\nAda,2026-03-01,,100,5\nAda,2026-03-01,Squat,100,2.5\n"
                               "Ada,2026-03-01,Squat,100,\nAda,2026-03-01,Squat,-100,5\nAda,2026-03-01,Squat,100,5\n");
    const auto sets = readSets(table, propose(table, Kind::Sets).mapping, {today, {}});
    REQUIRE(sets);
    CHECK(sets->sets.size() == 1);
    CHECK(sentencesOf(sets->bad, table) == "line 2, column Lift: no lift is named\n"
                                           "line 3, column Reps: \"2.5\" is no number\n"
                                           "line 4, column Reps: the repetitions are missing\n"
                                           "line 5, column Load (kg): \"-100\" is beyond what can be; check the number "
                                           "and the column's unit\n");
}
