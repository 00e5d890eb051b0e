// Work on the track, from the form to the logbook and back to the weeks that the page shows.
#include "phone.hpp"

using namespace fleetrung;
using namespace fleetrung::views;

namespace
{

QVariantMap sled(const char* day, int runs)
{
    return {{QStringLiteral("kind"), 2},
            {QStringLiteral("repetitions"), QString::number(runs)},
            {QStringLiteral("distance"), QStringLiteral("30")},
            {QStringLiteral("load"), QStringLiteral("10")},
            {QStringLiteral("rest"), QStringLiteral("2,5")},
            {QStringLiteral("effort"), QStringLiteral("8")},
            {QStringLiteral("slope"), QStringLiteral("6")},
            {QStringLiteral("day"), QString::fromLatin1(day)}};
}

/// Untimed flying sprints over 30 m.
QVariantMap flying(const char* effort)
{
    return {{QStringLiteral("kind"), 1},
            {QStringLiteral("repetitions"), QStringLiteral("5")},
            {QStringLiteral("distance"), QStringLiteral("30")},
            {QStringLiteral("effort"), QString::fromLatin1(effort)},
            {QStringLiteral("day"), QStringLiteral("2025-12-01")}};
}

class Phone : public PhoneOverLogbook
{
public:
    Phone()
    {
        work().setShown(true);
        settle();
    }

    TrackWorkViewModel& work() { return *app().trackWork(); }
    void add(const QVariantMap& form)
    {
        REQUIRE(work().addWork(form).isEmpty());
        settle();
    }
    QString row(int index, const char* role)
    {
        return work().rows()->all()[index].value(QString::fromLatin1(role)).toString();
    }
    QString week(int index, const char* role)
    {
        return work().weeks()->all()[index].value(QString::fromLatin1(role)).toString();
    }
};

} // namespace

TEST_CASE("Work that is typed stands in the list and in its week", "[track][work]")
{
    Phone phone;
    const int before = phone.work().rows()->count();
    phone.add(sled("2025-12-01", 6));
    REQUIRE(phone.work().rows()->count() == before + 1);
    CHECK(phone.row(0, "title") == QStringLiteral("Resisted sprints"));
    CHECK(phone.row(0, "value") == QStringLiteral("6 × 30 m"));
    CHECK(phone.row(0, "detail").contains(QStringLiteral("sled 10 kg")));
    CHECK(phone.row(0, "detail").contains(QStringLiteral("rest 2.5 min")));
    CHECK_FALSE(phone.row(0, "detail").contains(QStringLiteral("slope"))); // of hills only
    CHECK(phone.week(0, "title") == QStringLiteral("This week"));
    CHECK(phone.week(0, "value") == QStringLiteral("180 m"));
    CHECK(phone.week(0, "detail").contains(QStringLiteral("resisted 180 m")));
}

TEST_CASE("Work is deleted and brought back, its week with it", "[track][work]")
{
    Phone phone;
    phone.add(sled("2025-12-01", 6));
    const int all = phone.work().rows()->count();
    phone.work().remove(phone.row(0, "key"));
    phone.settle();
    CHECK(phone.work().rows()->count() == all - 1);
    REQUIRE(phone.app().noticeCanUndo());
    phone.app().undo();
    phone.settle();
    REQUIRE(phone.work().rows()->count() == all);
    CHECK(phone.row(0, "value") == QStringLiteral("6 × 30 m"));
    phone.add(sled("2025-12-01", 4));
    phone.app().undo(); // of the adding
    phone.settle();
    CHECK(phone.work().rows()->count() == all);
}

TEST_CASE("A week far above the four before it is said, with by how much", "[track][work]")
{
    Phone phone;
    for (const char* day : {"2025-11-03", "2025-11-10", "2025-11-17", "2025-11-24"})
        phone.add(sled(day, 20));      // 600 m each
    phone.add(sled("2025-12-01", 28)); // 840 m
    CHECK(phone.week(0, "flag") == QStringLiteral("40 % more metres than the mean of the four weeks before"));
    CHECK(phone.week(1, "flag").isEmpty());
}

TEST_CASE("Untimed flying sprints at effort 9 or above count as fast metres, easier ones do not", "[track][work]")
{
    Phone phone;
    REQUIRE(phone
                .app() // flying 20 m in 2.00 s: a best speed of 10 m/s
                .track()
                ->addRun({{QStringLiteral("distance"), QStringLiteral("20")},
                          {QStringLiteral("runIn"), QStringLiteral("30")},
                          {QStringLiteral("time"), QStringLiteral("2.00")},
                          {QStringLiteral("start"), 4},
                          {QStringLiteral("timing"), 1},
                          {QStringLiteral("day"), QStringLiteral("2025-12-01")}})
                .isEmpty());
    phone.settle();
    const QString own = QStringLiteral("fast: 20 m, of them 20 m at 95 %");
    CHECK(phone.week(0, "detail") == own);
    phone.add(flying("8"));
    CHECK(phone.week(0, "detail") == own);
    CHECK_FALSE(phone.row(0, "detail").contains(QStringLiteral("fast")));
    phone.add(flying("9,5"));
    CHECK(phone.week(0, "detail") == QStringLiteral("fast: about 170 m, of them 170 m at 95 %"));
    bool told = false;
    for (const auto& row : phone.work().rows()->all())
        told = told || row.value(QStringLiteral("detail")).toString().contains(QStringLiteral("fast: about 150 m"));
    CHECK(told);
    CHECK(phone.week(0, "value") == QStringLiteral("350 m")); // run-in and zone of the timed one, 2 x 150 m
}

TEST_CASE("The form says what is wrong with each field and keeps nothing", "[track][work]")
{
    Phone phone;
    const int before = phone.work().rows()->count();
    auto form = sled("2026-03-01", 0);
    form[QStringLiteral("distance")] = QStringLiteral("far");
    form[QStringLiteral("effort")] = QStringLiteral("11");
    const auto problems = phone.work().addWork(form);
    for (const char* field : {"repetitions", "distance", "effort", "day"})
        CHECK(problems.contains(QString::fromLatin1(field)));
    auto tooFast = flying("9");
    tooFast[QStringLiteral("bestTime")] = QStringLiteral("2,1"); // 30 m at 14.3 m/s
    CHECK(phone.work().addWork(tooFast).contains(QStringLiteral("bestTime")));
    tooFast[QStringLiteral("bestTime")] = QStringLiteral("31");
    CHECK(phone.work().addWork(tooFast).contains(QStringLiteral("bestTime")));
    phone.settle();
    CHECK(phone.work().rows()->count() == before);
}

TEST_CASE("The form begins with what stayed the same since the last work", "[track][work]")
{
    Phone phone;
    phone.add(sled("2025-12-01", 6));
    const auto begins = phone.work().beginWork();
    CHECK(begins.value(QStringLiteral("kind")).toInt() == 2);
    CHECK(begins.value(QStringLiteral("repetitions")) == QStringLiteral("6"));
    CHECK(begins.value(QStringLiteral("distance")) == QStringLiteral("30"));
    CHECK(begins.value(QStringLiteral("load")) == QStringLiteral("10"));
    CHECK(begins.value(QStringLiteral("rest")) == QStringLiteral("2.50"));
}
