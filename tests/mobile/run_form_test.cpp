#include <catch2/catch.hpp>

#include "mobile/views/track_view_model.hpp"

using namespace fleetrung;
using namespace fleetrung::views;

namespace
{

CivilDate day(const char* text)
{
    return *parseDate(text);
}

void press(SplitEntry& entry, const char* keys)
{
    for (const char* key = keys; *key != 0; ++key)
        entry.press(*key == '.' ? entry.point() : QString(QLatin1Char(*key)));
}

/// Adds a split where the distance that is offered is the right one.
bool split(SplitEntry& entry, const char* keys)
{
    press(entry, keys);
    return entry.add(entry.distance());
}

QVariantMap filled(TrackViewModel& view, const QVariantMap& more)
{
    QVariantMap form = view.beginRun();
    form.insert(QStringLiteral("day"), QStringLiteral("2026-03-28"));
    for (auto field = more.begin(); field != more.end(); ++field)
        form.insert(field.key(), field.value());
    return form;
}

struct Typed {
    Preferences preferences;
    TrackViewModel view{&preferences};
    std::vector<store::Sprint> runs;

    Typed()
    {
        QObject::connect(&view, &TrackViewModel::runAdded, [this](const store::Sprint& run) {
            runs.push_back(run);
            view.show(QStringLiteral("A"), day("2026-03-30"), runs, {});
        });
        view.show(QStringLiteral("A"), day("2026-03-30"), {}, {});
    }
};

} // namespace

TEST_CASE("The digits of the stopwatch are hundredths, and with a point what was typed", "[track][splits]")
{
    Preferences preferences;
    SplitEntry entry(&preferences);
    entry.begin({});
    press(entry, "189");
    CHECK(Units::parse(entry.time()) == 1.89);
    entry.erase();
    CHECK(Units::parse(entry.time()) == 0.18);
    entry.erase();
    entry.erase();
    press(entry, "1.894");
    CHECK(entry.add(QStringLiteral("10")));
    CHECK(entry.splits().back().time == 1.894);
    press(entry, ".9");
    CHECK(Units::parse(entry.time()) == 0.9);
}

TEST_CASE("The next distance is that of the last run with splits, else ten metres on, and never beyond the run",
          "[track][splits]")
{
    Preferences preferences;
    SplitEntry entry(&preferences);
    entry.begin({5, 10, 30});
    entry.setRun(QStringLiteral("36"));
    CHECK(entry.distance() == QStringLiteral("5"));
    CHECK(split(entry, "130"));
    CHECK(split(entry, "199"));
    CHECK(entry.distance() == QStringLiteral("30"));
    CHECK(split(entry, "421"));
    CHECK(entry.distance() == QStringLiteral("36"));
    entry.takeOffLast();
    CHECK(entry.splits().size() == 2);
    CHECK(entry.distance() == QStringLiteral("30"));
    entry.begin({});
    CHECK(entry.splits().empty());
    CHECK(entry.distance() == QStringLiteral("10"));
}

TEST_CASE("A split that cannot be is not taken, and the field at fault says why", "[track][splits][error]")
{
    Preferences preferences;
    SplitEntry entry(&preferences);
    entry.begin({});
    CHECK_FALSE(entry.add(QStringLiteral("10")));
    CHECK_FALSE(entry.timeProblem().isEmpty());
    CHECK(split(entry, "189"));
    press(entry, "180");
    CHECK_FALSE(entry.add(QStringLiteral("20")));
    CHECK(entry.timeProblem().contains(QStringLiteral("later")));
    entry.erase();
    entry.erase();
    entry.erase();
    press(entry, "288");
    CHECK_FALSE(entry.add(QStringLiteral("10")));
    CHECK(entry.distanceProblem().contains(QStringLiteral("beyond")));
    CHECK_FALSE(entry.add(QStringLiteral("40")));
    CHECK(entry.timeProblem().contains(QStringLiteral("15 m/s")));
    CHECK(entry.splits().size() == 1);
    CHECK(entry.add(QStringLiteral("20")));
}

TEST_CASE("A run with splits to its end needs no time of its own, and one that contradicts them is not taken",
          "[track][splits]")
{
    Typed typed;
    QVariantMap form = filled(typed.view, {{QStringLiteral("distance"), QStringLiteral("30")}});
    SplitEntry& entry = *typed.view.splits();
    entry.setRun(QStringLiteral("30"));
    CHECK(split(entry, "189"));
    CHECK(split(entry, "288"));
    CHECK(typed.view.addRun(form).contains(QStringLiteral("time")));
    CHECK(split(entry, "378"));
    form[QStringLiteral("time")] = QStringLiteral("3,9");
    CHECK(typed.view.addRun(form).contains(QStringLiteral("time")));
    form[QStringLiteral("time")] = QString();
    CHECK(typed.view.addRun(form).isEmpty());
    REQUIRE(typed.runs.size() == 1);
    CHECK(typed.runs[0].time == 3.78);
    CHECK(typed.runs[0].splits.size() == 3);
}

TEST_CASE("The next run begins with what stayed the same, without time and wind", "[track]")
{
    Typed typed;
    CHECK(typed.view
              .addRun(filled(typed.view, {{QStringLiteral("distance"), QStringLiteral("60")},
                                          {QStringLiteral("time"), QStringLiteral("7,12")},
                                          {QStringLiteral("wind"), QStringLiteral("+0,8")},
                                          {QStringLiteral("start"), 1},
                                          {QStringLiteral("surface"), 1},
                                          {QStringLiteral("timing"), 1},
                                          {QStringLiteral("shoes"), 1},
                                          {QStringLiteral("test"), true},
                                          {QStringLiteral("beam"), QStringLiteral("0,5")},
                                          {QStringLiteral("altitude"), QStringLiteral("320")},
                                          {QStringLiteral("contact"), QStringLiteral("104")},
                                          {QStringLiteral("stepLength"), QStringLiteral("218")}}))
              .isEmpty());
    REQUIRE(typed.runs.size() == 1);
    const auto& run = typed.runs[0];
    CHECK(run.shoes == "flats");
    CHECK(run.test);
    CHECK(run.beamM == 0.5);
    CHECK(*run.contactS == Approx(0.104));
    CHECK(*run.stepLengthM == Approx(2.18));
    const QVariantMap next = typed.view.beginRun();
    CHECK(next[QStringLiteral("distance")] == QStringLiteral("60"));
    CHECK(next[QStringLiteral("start")] == 1);
    CHECK(next[QStringLiteral("shoes")] == 1);
    CHECK(next[QStringLiteral("altitude")] == QStringLiteral("320"));
    CHECK_FALSE(next.contains(QStringLiteral("wind")));
    CHECK_FALSE(next.contains(QStringLiteral("time")));
}

TEST_CASE("What a start does not have is not kept with it", "[track]")
{
    Typed typed;
    CHECK(typed.view
              .addRun(filled(typed.view, {{QStringLiteral("distance"), QStringLiteral("30")},
                                          {QStringLiteral("time"), QStringLiteral("4.1")},
                                          {QStringLiteral("start"), 2},
                                          {QStringLiteral("timing"), 1},
                                          {QStringLiteral("reaction"), QStringLiteral("0.15")},
                                          {QStringLiteral("beam"), QStringLiteral("0.5")}}))
              .isEmpty());
    REQUIRE(typed.runs.size() == 1);
    CHECK(typed.runs[0].start == "falling");
    CHECK_FALSE(typed.runs[0].reactionS.has_value());
    CHECK_FALSE(typed.runs[0].beamM.has_value());
}
