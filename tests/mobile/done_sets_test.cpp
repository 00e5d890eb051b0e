// A set that is done is put right: the whole way from the page's call to the logbook and back.
#include "phone.hpp"

using namespace fleetrung;
using namespace fleetrung::views;

namespace
{

/// The program on a day of full squats, with one typed set of three repetitions.
class Phone : public PhoneOverLogbook
{
public:
    Phone()
    {
        bench().openLift(QStringLiteral("squat"));
        REQUIRE(bench().openedLift() != nullptr);
        REQUIRE(bench()
                    .typeSet({{QStringLiteral("kind"), 0},
                              {QStringLiteral("load"), QStringLiteral("100")},
                              {QStringLiteral("repetitions"), QStringLiteral("3")},
                              {QStringLiteral("velocity"), QStringLiteral("0.6")},
                              {QStringLiteral("time"), QStringLiteral("400")}})
                    .isEmpty());
        settle();
        REQUIRE(done().sets()->count() == 1);
        done().open(done().sets()->all()[0].value(QStringLiteral("key")).toString());
        REQUIRE(done().repetitions()->count() == 3);
    }

    BenchViewModel& bench() { return *app().bench(); }
    DoneSetsViewModel& done() { return *app().doneSets(); }
    QString repetition(int index, const char* role)
    {
        return done().repetitions()->all()[index].value(QString::fromLatin1(role)).toString();
    }
    QString set(const char* role) { return done().sets()->all()[0].value(QString::fromLatin1(role)).toString(); }
};

} // namespace

TEST_CASE("A done set tells what it was, in the words of the bench")
{
    Phone phone;
    CHECK(phone.done().countText() == QStringLiteral("1 set done today"));
    CHECK(phone.set("title") == QStringLiteral("Full squat, 100 kg"));
    CHECK(phone.set("detail") == QStringLiteral("work set · 3 repetitions · 400 ms"));
    CHECK(phone.repetition(0, "detail") == QStringLiteral("400 ms · 0.60 m/s"));
    CHECK(phone.done().text().contains(QStringLiteral("Typed in.")));
}

TEST_CASE("A repetition that was none is struck out, counts no more, and comes back by undo")
{
    Phone phone;
    phone.done().strikeOut(phone.repetition(1, "key"), true);
    phone.settle();
    CHECK(phone.set("detail") == QStringLiteral("work set · 2 repetitions · 400 ms"));
    CHECK(phone.repetition(1, "detail").endsWith(QStringLiteral("struck out")));
    CHECK(phone.app().noticeCanUndo());
    phone.undo();
    CHECK(phone.set("detail") == QStringLiteral("work set · 3 repetitions · 400 ms"));
}

TEST_CASE("A repetition that the sensor missed is added, with what is known of it")
{
    Phone phone;
    const auto problems = phone.done().add({{QStringLiteral("velocity"), QStringLiteral("12")}});
    CHECK(problems.contains(QStringLiteral("velocity")));
    CHECK(phone.done().repetitions()->count() == 3);
    REQUIRE(phone.done().add({{QStringLiteral("time"), QStringLiteral("460")}}).isEmpty());
    phone.settle();
    REQUIRE(phone.done().repetitions()->count() == 4);
    CHECK(phone.repetition(3, "detail") == QStringLiteral("460 ms"));
    CHECK(phone.set("detail").contains(QStringLiteral("4 repetitions")));
    phone.undo();
    CHECK(phone.set("detail").contains(QStringLiteral("3 repetitions")));
}

TEST_CASE("A repetition said to be no evidence stays in the count")
{
    Phone phone;
    phone.done().countAsEvidence(phone.repetition(2, "key"), false);
    phone.settle();
    CHECK(phone.repetition(2, "detail").endsWith(QStringLiteral("no evidence")));
    CHECK(phone.set("detail").contains(QStringLiteral("3 repetitions")));
    phone.undo();
    CHECK(phone.repetition(2, "detail") == QStringLiteral("400 ms · 0.60 m/s"));
}

TEST_CASE("Load, kind and effort of a done set are changed, and changed back")
{
    Phone phone;
    QVariantMap form = phone.done().form();
    CHECK(form.value(QStringLiteral("load")).toString() == QStringLiteral("100"));
    form[QStringLiteral("load")] = QStringLiteral("ten");
    CHECK(phone.done().save(form).contains(QStringLiteral("load")));
    form[QStringLiteral("load")] = QStringLiteral("102.5");
    form[QStringLiteral("kind")] = 1;
    form[QStringLiteral("effort")] = QStringLiteral("8");
    REQUIRE(phone.done().save(form).isEmpty());
    phone.settle();
    CHECK(phone.set("title") == QStringLiteral("Full squat, 102.5 kg"));
    CHECK(phone.set("detail").startsWith(QStringLiteral("probe set")));
    CHECK(phone.done().form().value(QStringLiteral("effort")).toString() == QStringLiteral("8"));
    phone.undo();
    CHECK(phone.set("title") == QStringLiteral("Full squat, 100 kg"));
    CHECK(phone.set("detail").startsWith(QStringLiteral("work set")));
}

TEST_CASE("A deleted set is gone from the day, and the plan counts it no more, until undo")
{
    Phone phone;
    CHECK(phone.bench().openedLift()->setsDone == 1);
    phone.done().remove();
    phone.settle();
    CHECK(phone.done().sets()->count() == 0);
    CHECK(phone.done().key().isEmpty());
    CHECK(phone.done().countText().isEmpty());
    CHECK(phone.bench().openedLift()->setsDone == 0);
    phone.undo();
    CHECK(phone.done().sets()->count() == 1);
    CHECK(phone.bench().openedLift()->setsDone == 1);
}

TEST_CASE("Of a set that was typed without a value the count is put right by itself")
{
    Phone phone;
    REQUIRE(phone.bench()
                .typeSet({{QStringLiteral("kind"), 0},
                          {QStringLiteral("load"), QStringLiteral("100")},
                          {QStringLiteral("repetitions"), QStringLiteral("5")}})
                .isEmpty());
    phone.settle();
    REQUIRE(phone.done().sets()->count() == 2);
    phone.done().open(phone.done().sets()->all()[1].value(QStringLiteral("key")).toString());
    CHECK(phone.done().onlyCounted());
    QVariantMap form = phone.done().form();
    CHECK(form.value(QStringLiteral("repetitions")).toString() == QStringLiteral("5"));
    form[QStringLiteral("repetitions")] = QStringLiteral("4");
    REQUIRE(phone.done().save(form).isEmpty());
    phone.settle();
    CHECK(phone.done().text().contains(QStringLiteral("4 repetitions")));
}

TEST_CASE("A load shown in pounds and left alone stays the load that was lifted")
{
    Phone phone;
    Preferences pounds;
    pounds.setPounds(true);
    DoneSetsViewModel done(&pounds);
    DoneSet one{.set = {}, .name = "Half squat"};
    one.set.row.id.bytes[15] = 9;
    one.set.row.ladder = "squat";
    one.set.row.loadKg = 101.3;
    one.set.measured = true;
    done.show({one});
    done.open(QString::fromStdString(identifierText(one.set.row.id)));
    double kept = 0;
    QObject::connect(&done, &DoneSetsViewModel::setSaid, &done,
                     [&](const store::LiftSet& now, const store::LiftSet&) { kept = now.loadKg; });
    REQUIRE(done.save(done.form()).isEmpty());
    CHECK(kept == 101.3);
}
