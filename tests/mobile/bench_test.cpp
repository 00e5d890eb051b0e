#include "bench_day.hpp"

using namespace fleetrung;
using namespace fleetrung::views;

TEST_CASE("The big number is the latest time to peak velocity in whole milliseconds", "[bench]")
{
    Bench bench;
    CHECK(bench.view.number() == QStringLiteral("–"));
    bench.view.addRepetition(repetition(0.2861, 0.62));
    CHECK(bench.view.number() == QStringLiteral("286"));
    CHECK(bench.view.velocity() == QStringLiteral("0.62 m/s"));
    CHECK(bench.view.range() == QStringLiteral("34 cm"));
    CHECK(bench.view.rangeNote() == QStringLiteral("rung 32–38"));
}

TEST_CASE("A repetition is inside, sooner or later than the band as both are printed", "[bench]")
{
    Bench bench;
    bench.view.addRepetition(repetition(0.3004, 0.62)); // prints 300: inside
    CHECK(bench.view.verdict() == BenchViewModel::Inside);
    bench.view.addRepetition(repetition(0.3006, 0.62)); // prints 301: outside
    CHECK(bench.view.verdict() == BenchViewModel::Later);
    CHECK(bench.view.verdictText() == QStringLiteral("1 ms later than the band"));
    bench.view.addRepetition(repetition(0.230, 0.62));
    CHECK(bench.view.verdict() == BenchViewModel::Sooner);
    CHECK(bench.view.verdictText() == QStringLiteral("10 ms sooner than the band"));
}

TEST_CASE("Of a ballistic lift the range ends at peak velocity", "[bench]")
{
    Preferences preferences;
    BenchViewModel view(&preferences);
    BenchDay day = dayWithHalfSquat();
    day.lifts.front().plan.lift = "hang-power-clean";
    view.showDay(day);
    view.openLift(QStringLiteral("squat"));
    auto clean = repetition(0.25, 1.1);
    clean.range = {0.69, 0.004};
    clean.displacementToPeak = {0.42, 0.004};
    view.addRepetition(clean);
    CHECK(view.range() == QStringLiteral("42 cm"));
    CHECK(view.rangeName() == QStringLiteral("range to peak"));
}

TEST_CASE("A drop jump cannot be started on the bar sensor, and the bench says where it is entered", "[bench]")
{
    Preferences preferences;
    BenchViewModel view(&preferences);
    BenchDay day = dayWithHalfSquat();
    view.showDay(day);
    view.openLift(QStringLiteral("squat"));
    view.showSensor(BenchViewModel::Ready);
    CHECK(view.canBegin());
    day.lifts.front().plan.metric = season::Metric::ContactTime;
    view.showDay(day);
    view.openLift(QStringLiteral("squat"));
    CHECK_FALSE(view.canBegin());
    CHECK(view.waitingText().contains(QStringLiteral("Track")));
}

TEST_CASE("A short drop squat is judged by the time of its drop", "[bench]")
{
    Preferences preferences;
    BenchViewModel view(&preferences);
    BenchDay day = dayWithHalfSquat();
    day.lifts.front().plan.metric = season::Metric::DropTime;
    day.lifts.front().plan.targetBand = {0.110, 0.160};
    view.showDay(day);
    view.openLift(QStringLiteral("squat"));
    auto drop = repetition(0.247, 0.26);
    drop.reversalTime = reps::Measured{0.135, 0.003};
    view.addRepetition(drop);
    CHECK(view.number() == QStringLiteral("135"));
    CHECK(view.verdict() == BenchViewModel::Inside);
}

TEST_CASE("A two-peaked repetition is said to be no evidence", "[bench]")
{
    Bench bench;
    auto twoPeaked = repetition(0.27, 0.4);
    twoPeaked.flags = static_cast<reps::Flags>(reps::Flag::TwoPeaked);
    bench.view.addRepetition(twoPeaked);
    CHECK(bench.view.verdict() == BenchViewModel::NoEvidence);
}

// Rule of the season's set stop: two in a row beyond the limit, or one beyond the limit and 5 points.
TEST_CASE("The set is stopped by loss of velocity, once, and never by the time to peak", "[bench]")
{
    Bench bench;
    int said = 0;
    QObject::connect(&bench.view, &BenchViewModel::stopReached, [&said] { ++said; });
    bench.view.addRepetition(repetition(0.280, 0.60));
    bench.view.addRepetition(repetition(0.420, 0.60));
    CHECK_FALSE(bench.view.stopNow());
    bench.view.addRepetition(repetition(0.280, 0.50)); // 16.7 %: one beyond 15
    CHECK_FALSE(bench.view.stopNow());
    bench.view.addRepetition(repetition(0.280, 0.50)); // the second in a row
    CHECK(bench.view.stopNow());
    bench.view.addRepetition(repetition(0.280, 0.40));
    CHECK(said == 1);
}

TEST_CASE("Undo takes back the last repetition and remembers it for the logbook", "[bench]")
{
    Bench bench;
    bench.view.addRepetition(repetition(0.281, 0.62));
    bench.view.addRepetition(repetition(0.295, 0.60));
    bench.view.undoRepetition();
    CHECK(bench.view.repetitionCount() == 1);
    CHECK(bench.view.number() == QStringLiteral("281"));
    REQUIRE(bench.view.undone().size() == 1);
    CHECK(bench.view.undone().front().timeToPeakVelocity.value == 0.295);
}

TEST_CASE("A typed set takes a decimal comma and comes out in kilograms and seconds", "[bench][locale]")
{
    Bench bench;
    std::optional<TypedSet> typed;
    QObject::connect(&bench.view, &BenchViewModel::setTyped, [&typed](const TypedSet& set) { typed = set; });
    QVariantMap form{{QStringLiteral("kind"), 1},
                     {QStringLiteral("load"), QStringLiteral("142,5")},
                     {QStringLiteral("repetitions"), QStringLiteral("3")},
                     {QStringLiteral("velocity"), QStringLiteral("0,61")},
                     {QStringLiteral("time"), QStringLiteral("288")},
                     {QStringLiteral("effort"), QString()}};
    CHECK(bench.view.typeSet(form).isEmpty());
    REQUIRE(typed.has_value());
    CHECK(typed->kind == store::SetKind::Probe);
    CHECK(typed->loadKg == 142.5);
    CHECK(typed->repetitions == 3);
    CHECK(*typed->meanVelocity == 0.61);
    CHECK(*typed->timeToPeak == Approx(0.288));
    CHECK_FALSE(typed->effort.has_value());
}

TEST_CASE("A typed set with a slip of the finger is not taken", "[bench][error]")
{
    Bench bench;
    int taken = 0;
    QObject::connect(&bench.view, &BenchViewModel::setTyped, [&taken] { ++taken; });
    const QVariantMap problems = bench.view.typeSet(
        {{QStringLiteral("load"), QStringLiteral("1400")}, {QStringLiteral("repetitions"), QStringLiteral("0")}});
    CHECK(problems.contains(QStringLiteral("load")));
    CHECK(problems.contains(QStringLiteral("repetitions")));
    CHECK(taken == 0);
}

TEST_CASE("Pounds change every load on the page", "[bench][units]")
{
    Bench bench;
    CHECK(bench.view.loadText() == QStringLiteral("140 kg"));
    bench.preferences.setPounds(true);
    CHECK(bench.view.loadText() == QStringLiteral("308.6 lb"));
    CHECK(bench.view.lifts()->all().constFirst().value(QStringLiteral("load")).toString() ==
          QStringLiteral("308.6 lb"));
}

TEST_CASE("Before the set stand the plates of each side, in the unit of the room", "[bench]")
{
    Bench bench;
    bench.view.setLoad(QStringLiteral("142.5"));
    CHECK(bench.view.platesText() == QStringLiteral("Each side 25 + 25 + 10 + 1.25. Bar 20 kg."));
    bench.view.setLoad(QStringLiteral("101"));
    CHECK(bench.view.platesText() ==
          QStringLiteral("Nearest with whole plates: 100 kg. Each side 25 + 15. Bar 20 kg."));
    bench.view.setLoad(QStringLiteral("20"));
    CHECK(bench.view.platesText() == QStringLiteral("The bar alone, 20 kg."));
    bench.view.setLoad(QStringLiteral("12"));
    CHECK(bench.view.platesText() == QStringLiteral("Lighter than the bar of 20 kg: a lighter bar, or dumbbells."));
    bench.preferences.setBar(2);
    CHECK(bench.view.platesText() == QStringLiteral("Nearest with whole plates: 12.5 kg. Each side 1.25. Bar 10 kg."));
    bench.view.setLoad(QStringLiteral("no number"));
    CHECK(bench.view.platesText().isEmpty());
    bench.preferences.setBar(0);
    bench.preferences.setPounds(true);
    bench.view.setLoad(QStringLiteral("225"));
    CHECK(bench.view.platesText() == QStringLiteral("Each side 45 + 45. Bar 45 lb."));
}

TEST_CASE("A typed set says what it tells of 1RM, and how far the formulas differ", "[bench]")
{
    const Bench bench;
    const auto said = [&](const char* load, const char* repetitions, const char* effort) {
        return bench.view.maximumText({{QStringLiteral("load"), QString::fromUtf8(load)},
                                       {QStringLiteral("repetitions"), QString::fromUtf8(repetitions)},
                                       {QStringLiteral("effort"), QString::fromUtf8(effort)}});
    };
    // Five repetitions of 100 kg, none left: the values of tests/engine/strength/repetition_maximum_test.cpp.
    CHECK(said("100", "5", "10") == QStringLiteral("1RM about 113 kg; by seven formulas 113 to 119 kg."));
    CHECK(said("100", "5", "").isEmpty());                  // how many were left is not known
    CHECK(said("100", "3", "8") == said("100", "5", "10")); // two were left
    CHECK(said("100", "1", "10") == QStringLiteral("1RM 100 kg."));
    CHECK(said("100", "12", "10") == QStringLiteral("More than ten possible repetitions say too little of 1RM."));
    CHECK(said("", "5", "10").isEmpty());
    CHECK(said("100", "x", "10").isEmpty());
}

TEST_CASE("The load chart goes by the typed 1RM", "[bench]")
{
    const Bench bench;
    const auto rows = bench.view.loadChart(QStringLiteral("140"));
    REQUIRE(rows.size() == 11);
    const auto five = rows.at(4).toMap();
    CHECK(five[QStringLiteral("title")] == QStringLiteral("5 repetitions"));
    CHECK(five[QStringLiteral("detail")] == QStringLiteral("87 % of 1RM"));
    CHECK(five[QStringLiteral("value")] == QStringLiteral("121.8 kg")); // NSCA training load chart, row 140
    CHECK(bench.view.loadChart(QString()).isEmpty());
}

TEST_CASE("The loss of a set tells roughly how many are left, and says that it is a guess", "[bench]")
{
    Bench bench;
    for (const double velocity : {0.70, 0.68, 0.66, 0.62})
        bench.view.addRepetition(repetition(0.28, velocity));
    // Loss 11.4 %: share done 0.286, half done at 20 % (from memory): 10 left.
    CHECK(bench.view.leftText() ==
          QStringLiteral("By the loss about 10 left (5 to 15): a guess. The stop rests on the loss."));
}

TEST_CASE("What stands large is the athlete's choice for each ladder", "[bench][large]")
{
    Bench bench;
    bench.view.addRepetition(repetition(0.2861, 0.62));
    CHECK(bench.view.largeChoices() ==
          QStringList({QStringLiteral("Time to peak velocity"), QStringLiteral("Mean velocity")}));
    CHECK_FALSE(bench.view.velocityIsLarge());
    CHECK(bench.view.beside() == QStringLiteral("0.62 m/s"));
    bench.view.setVelocityIsLarge(true);
    CHECK(bench.view.number() == QStringLiteral("0.62"));
    CHECK(bench.view.numberUnit() == QStringLiteral("m/s, mean velocity"));
    CHECK(bench.view.beside() == QStringLiteral("286 ms"));
    CHECK(bench.view.besideNote() == QStringLiteral("± 4 ms"));
    CHECK(bench.view.verdict() == BenchViewModel::Inside); // the band judges the time, whatever stands large
    BenchDay other = dayWithHalfSquat();
    other.lifts.front().plan.ladder = "clean";
    other.lifts.front().name = "Clean";
    bench.view.leaveLift();
    bench.view.showDay(other);
    bench.view.openLift(QStringLiteral("clean"));
    CHECK_FALSE(bench.view.velocityIsLarge()); // another ladder
    bench.view.showDay(dayWithHalfSquat());
    bench.view.openLift(QStringLiteral("squat"));
    CHECK(bench.view.velocityIsLarge());
    bench.view.setVelocityIsLarge(false);
    CHECK_FALSE(bench.view.velocityIsLarge());
}

TEST_CASE("Repetitions that are not saved yet are lost neither by a way back nor by another lift", "[bench]")
{
    Bench bench;
    int told = 0;
    int left = 0;
    QObject::connect(&bench.view, &BenchViewModel::endFirst, [&told] { ++told; });
    QObject::connect(&bench.view, &BenchViewModel::liftLeft, [&left] { ++left; });
    bench.view.addRepetition(repetition(0.2861, 0.62));
    bench.view.openLift(QStringLiteral("clean")); // beside the set, where the window is wide
    bench.view.goBack();
    CHECK(told == 2);
    CHECK(left == 0);
    CHECK(bench.view.repetitionCount() == 1);
    bench.view.setReplaying(true); // a stored set is only watched
    bench.view.goBack();
    CHECK(left == 1);
}

TEST_CASE("A kind of set and a load that the athlete chose stay when the day is read anew", "[bench]")
{
    Bench bench;
    bench.view.setKind(BenchViewModel::WarmUp);
    bench.view.setLoad(QStringLiteral("72.5"));
    bench.view.showDay(dayWithHalfSquat());             // a warm-up set was saved
    CHECK(bench.view.kind() == BenchViewModel::WarmUp); // else the next one would be kept as the probe set
    CHECK(bench.view.load() == QStringLiteral("72.5"));
    bench.view.setKind(BenchViewModel::Work);
    CHECK(bench.view.load() != QStringLiteral("72.5")); // each kind has its own load
    bench.view.openLift(QStringLiteral("squat"));
    bench.view.showDay(dayWithHalfSquat());
    CHECK(bench.view.load() == bench.view.plannedLoad());
}
