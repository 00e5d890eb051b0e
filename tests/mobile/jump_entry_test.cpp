// Jumps as they are typed: trial by trial, kept as jumps of their own, and the boxes they are compared by.
#include "phone.hpp"

using namespace fleetrung;
using namespace fleetrung::views;

namespace
{

QVariantMap drop(const char* box, const char* contact, const char* flight)
{
    return {{QStringLiteral("kind"), 0},
            {QStringLiteral("box"), QString::fromLatin1(box)},
            {QStringLiteral("contact"), QString::fromLatin1(contact)},
            {QStringLiteral("flight"), QString::fromLatin1(flight)},
            {QStringLiteral("shoes"), 1},
            {QStringLiteral("surface"), 1},
            {QStringLiteral("test"), 1},
            {QStringLiteral("day"), QStringLiteral("2025-12-01")}};
}

QVariantMap along(int kind, int bounds, const char* distance)
{
    return {{QStringLiteral("kind"), kind},
            {QStringLiteral("bounds"), bounds},
            {QStringLiteral("distance"), QString::fromLatin1(distance)},
            {QStringLiteral("day"), QStringLiteral("2025-12-01")}};
}

class Phone : public PhoneOverLogbook
{
public:
    Phone()
    {
        track().setJumpsShown(true);
        track().beginJumps();
    }

    TrackViewModel& track() { return *app().track(); }
    JumpEntry& entry() { return *track().jumpEntry(); }
    QString row(int index, const char* role)
    {
        return track().jumps()->all()[index].value(QString::fromLatin1(role)).toString();
    }
};

} // namespace

TEST_CASE("A drop jump needs box, contact, and flight or height", "[track][jump]")
{
    Phone phone;
    auto problems = phone.entry().addTrial(drop("", "", ""));
    for (const char* field : {"box", "contact", "flight"})
        CHECK(problems.contains(QString::fromLatin1(field)));
    CHECK(phone.entry().addTrial(drop("30", "1820", "520")).contains(QStringLiteral("contact")));
    CHECK(phone.entry().addTrial(drop("30", "182", "520")).isEmpty());
    CHECK(phone.entry().trials()->count() == 1);
}

TEST_CASE("Three trials are kept as three jumps of the test day, with one undo", "[track][jump]")
{
    Phone phone;
    const int before = phone.track().jumps()->count();
    REQUIRE(phone.entry().addTrial(drop("30", "180", "500")).isEmpty());
    CHECK(phone.entry().summary().isEmpty()); // of one there is no mean
    REQUIRE(phone.entry().addTrial(drop("30", "200", "500")).isEmpty());
    // 9.80665 x 0.5^2 / 8 = 0.3065 m; over 0.180 and 0.200 s
    CHECK(phone.entry().summary() == QStringLiteral("Best RSI 1.70, mean RSI 1.62"));
    CHECK(phone.entry().save(drop("30", "190", "510")).isEmpty()); // the third still stands in the fields
    phone.settle();
    REQUIRE(phone.track().jumps()->count() == before + 3);
    CHECK(phone.row(0, "title") == QStringLiteral("Drop jump"));
    CHECK(phone.row(0, "detail").contains(QStringLiteral("box 30 cm · test day")));
    CHECK(phone.row(0, "detail").contains(QStringLiteral("RSI ")));
    CHECK(phone.row(0, "detail").contains(QStringLiteral("indoor · flats")));
    CHECK_FALSE(phone.row(0, "value").isEmpty()); // height worked out from the flight
    phone.app().undo();
    phone.settle();
    CHECK(phone.track().jumps()->count() == before);
}

TEST_CASE("Nothing typed saves nothing and says what is missing", "[track][jump]")
{
    Phone phone;
    const int before = phone.track().jumps()->count();
    CHECK(phone.entry().save(drop("30", "", "")).contains(QStringLiteral("contact")));
    auto tomorrow = drop("30", "180", "500");
    tomorrow[QStringLiteral("day")] = QStringLiteral("2025-12-02");
    CHECK(phone.entry().save(tomorrow).contains(QStringLiteral("day")));
    phone.settle();
    CHECK(phone.track().jumps()->count() == before);
}

TEST_CASE("Bounds are counted, and their distance must fit their number", "[track][jump]")
{
    Phone phone;
    CHECK(phone.entry().addTrial(along(4, 1, "2,4")).contains(QStringLiteral("distance"))); // five in 2.4 m
    REQUIRE(phone.entry().addTrial(along(4, 1, "13,05")).isEmpty());
    REQUIRE(phone.entry().addTrial(along(4, 1, "13,45")).isEmpty());
    CHECK(phone.entry().summary() == QStringLiteral("Best 13.45 m, mean 13.25 m"));
    CHECK(phone.entry().save(along(4, 1, "")).isEmpty());
    phone.settle();
    CHECK(phone.row(0, "title") == QStringLiteral("5 × Bounds"));
    CHECK(phone.row(0, "value").endsWith(QStringLiteral(" m")));
    const auto begins = phone.track().beginJumps();
    CHECK(begins.value(QStringLiteral("kind")).toInt() == 4);
    CHECK(begins.value(QStringLiteral("bounds")).toInt() == 1);
}

TEST_CASE("Boxes are ranked by reactive strength at contact within the limit", "[track][jump]")
{
    Phone phone;
    REQUIRE(phone.entry().addTrial(drop("30", "180", "500")).isEmpty());
    CHECK(phone.entry().addTrial(drop("40", "190", "530")).contains(QStringLiteral("box"))); // best and mean are of one
    REQUIRE(phone.entry().save(drop("30", "", "")).isEmpty());
    for (const auto& jump : {drop("40", "190", "530"), drop("50", "265", "640")}) {
        phone.track().beginJumps();
        REQUIRE(phone.entry().save(jump).isEmpty());
    }
    phone.settle();
    QStringList best;
    QStringList slow;
    for (const auto& box : phone.track().boxes()->all()) {
        if (box.value(QStringLiteral("best")).toBool())
            best += box.value(QStringLiteral("title")).toString();
        if (box.value(QStringLiteral("slow")).toBool())
            slow += box.value(QStringLiteral("title")).toString();
    }
    CHECK(best == QStringList{QStringLiteral("Box 40 cm")}); // 50 cm has a higher RSI, but 265 ms on the ground
    CHECK(slow == QStringList{QStringLiteral("Box 50 cm")});
}

TEST_CASE("Before drop jumps the limits stand in sight, in the user's units", "[track][jump]")
{
    Phone phone;
    CHECK(phone.entry().caution().contains(QStringLiteral("At most 40 contacts in a session and 80 in seven days")));
    CHECK(phone.entry().caution().contains(QStringLiteral("Under 18: at most 24, from at most 30 cm")));
    CHECK(phone.entry().caution().contains(QStringLiteral("Heavier than 100 kg: no box above 46 cm")));
}

TEST_CASE("A jump is deleted and brought back", "[track][jump]")
{
    Phone phone;
    REQUIRE(phone.entry().save(drop("30", "180", "500")).isEmpty());
    phone.settle();
    const int all = phone.track().jumps()->count();
    phone.track().remove(phone.row(0, "key"));
    phone.settle();
    CHECK(phone.track().jumps()->count() == all - 1);
    phone.undo();
    CHECK(phone.track().jumps()->count() == all);
}
