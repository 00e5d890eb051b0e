// Which weeks, sides and runs Trends shows, and the session behind a touched point.
#include <catch2/catch.hpp>

#include "mobile/views/trends_view_model.hpp"

using namespace fleetrung;
using namespace fleetrung::views;
using std::chrono::days;

namespace
{

constexpr CivilDate first = std::chrono::sys_days{std::chrono::year{2026} / 1 / 5};
constexpr CivilDate today = first + days{7 * 20};

plot::SeasonSpan span()
{
    return {.first = first, .last = first + days{7 * 29}, .today = today, .phases = {}, .races = {}};
}

LiftPoint liftPoint(int week, double seconds, const char* rung, plot::Side side = plot::Side::Both)
{
    LiftPoint point;
    point.day = first + days{7 * week};
    point.rung = rung;
    point.seconds = seconds;
    point.uncertainty = 0.006;
    point.side = side;
    return point;
}

RunPoint run(int week, double seconds, std::optional<double> wind, const char* timing, const char* surface = "track")
{
    RunPoint point;
    point.day = first + days{7 * week};
    point.seconds = seconds;
    point.windMps = wind;
    point.timing = timing;
    point.surface = surface;
    return point;
}

TrendsData data()
{
    TrendsData data;
    LadderTrend squat{.name = "Squat", .quantity = "time to peak velocity", .points = {}};
    squat.points = {liftPoint(1, 0.50, "Full"), liftPoint(4, 0.47, "Full"), liftPoint(14, 0.34, "Half"),
                    liftPoint(16, 0.33, "Half")};
    squat.points[2].loadKg = 120;
    squat.points[2].note = "slept badly";
    squat.points[2].sets = {{.kind = "probe",
                             .loadKg = 120,
                             .repetitions = 3,
                             .fastest = 0.62,
                             .velocityLoss = {},
                             .effort = {},
                             .note = {}},
                            {.kind = "work",
                             .loadKg = 140,
                             .repetitions = 5,
                             .fastest = {},
                             .velocityLoss = 0.12,
                             .effort = {},
                             .note = {}}};
    LadderTrend stepUp{.name = "Step-up", .quantity = "time to peak velocity", .points = {}};
    for (const int week : {2, 3})
        for (const auto side : {plot::Side::Left, plot::Side::Right})
            stepUp.points.push_back(liftPoint(week, side == plot::Side::Left ? 0.45 : 0.42, "35 cm", side));
    TestTrend flying{.name = "flying 20 m", .points = {}};
    flying.points = {run(1, 2.20, std::nullopt, "gates", "indoor"), run(8, 2.05, 3.1, "gates"),
                     run(14, 2.02, std::nullopt, "hand"), run(15, 2.10, 0.4, "gates")};
    data.season = {.name = "Outdoor 2026", .span = span(), .ladders = {squat, stepUp}, .tests = {flying}};
    return data;
}

QPointF placeOf(int week, double value)
{
    return {week + 0.5 / 7, value};
}

} // namespace

TEST_CASE("The last weeks hide what was before, and weeks keep their number", "[trends]")
{
    Preferences preferences;
    TrendsViewModel trends(&preferences);
    trends.show(data());
    CHECK(trends.lift()->plot().plot.strip.size() == 2);
    trends.choosePeriod(1);
    const auto shown = trends.lift()->plot().plot;
    REQUIRE(shown.strip.size() == 1);
    CHECK(shown.strip.front().name == "Half");
    CHECK(shown.x.from == 12); // eight weeks with today as their last day begin in the thirteenth week
    CHECK(shown.x.ticks.front().label == "week 13");
    CHECK(trends.sprint()->words().contains(QStringLiteral("2.02")));
}

TEST_CASE("Where the weeks hide everything it is said, and clearing shows it again", "[trends]")
{
    Preferences preferences;
    TrendsViewModel trends(&preferences);
    trends.show(data());
    trends.choosePeriod(1);
    trends.lift()->choose(1);
    CHECK(trends.lift()->hidden().contains(QStringLiteral("Nothing measured on this ladder since")));
    CHECK(trends.lift()->plot().isEmpty());
    trends.clearFilters();
    CHECK(trends.period() == 0);
    CHECK(trends.lift()->hidden().isEmpty());
    CHECK(trends.lift()->current() == 1);
}

TEST_CASE("A one-sided lift is shown by side, any other has no sides", "[trends]")
{
    Preferences preferences;
    TrendsViewModel trends(&preferences);
    trends.show(data());
    CHECK(trends.lift()->sides().isEmpty());
    trends.lift()->choose(1);
    CHECK(trends.lift()->sides().size() == 3);
    trends.lift()->chooseSide(1);
    for (const auto& primitive : trends.lift()->plot().plot.primitives)
        if (const auto* mark = std::get_if<plot::Mark>(&primitive))
            CHECK(mark->at.y == Approx(450));
    // The side looked at does not hide a lift that has none.
    trends.lift()->choose(0);
    CHECK(trends.lift()->hidden().isEmpty());
}

TEST_CASE("Runs by hand and with wind can be left out, and the bests are those of the others", "[trends]")
{
    Preferences preferences;
    TrendsViewModel trends(&preferences);
    trends.show(data());
    auto& sprint = *trends.sprint();
    REQUIRE(sprint.filters().size() == 2);
    CHECK(sprint.words().startsWith(QStringLiteral("Best 2.02 s")));
    sprint.toggleFilter(0);
    CHECK(sprint.words().startsWith(QStringLiteral("Best 2.05 s (wind +3.1 m/s)")));
    CHECK(sprint.leftOut().startsWith(QStringLiteral("3 of 4")));
    sprint.toggleFilter(1); // 2.20 indoors has no wind
    CHECK(sprint.words().startsWith(QStringLiteral("Best 2.10 s (wind +0.4 m/s)")));
    CHECK(sprint.leftOut().startsWith(QStringLiteral("2 of 4")));
    CHECK(sprint.chosenFilters() == QList<int>({0, 1}));
    sprint.toggleFilter(0);
    CHECK(sprint.leftOut().startsWith(QStringLiteral("2 of 4"))); // outdoors, by hand, no reading
}

TEST_CASE("A touched point tells its session with its sets", "[trends]")
{
    Preferences preferences;
    preferences.setLocale(QLocale(QLocale::English, QLocale::UnitedKingdom));
    TrendsViewModel trends(&preferences);
    trends.show(data());
    auto& lift = *trends.lift();
    CHECK(lift.chosenText().isEmpty());
    lift.touch(placeOf(14, 342));
    CHECK(lift.chosenText().contains(QStringLiteral("Half, 340 ms ± 6, 120 kg. Note: slept badly")));
    REQUIRE(lift.chosenDetails().size() == 2);
    CHECK(lift.chosenDetails()[0] == QStringLiteral("Probe set: 3 × 120 kg, fastest 0.62 m/s."));
    CHECK(lift.chosenDetails()[1] == QStringLiteral("Work: 5 × 140 kg, loss 12 %."));
    CHECK(lift.plot().summary().contains(QStringLiteral("Chosen: 340 milliseconds in week 15.")));
    lift.touch(placeOf(9, 250)); // nothing near
    CHECK(lift.chosenText().isEmpty());
}

TEST_CASE("Arrow keys go from point to point over a change of rung and stop at the ends", "[trends]")
{
    Preferences preferences;
    TrendsViewModel trends(&preferences);
    trends.show(data());
    auto& lift = *trends.lift();
    lift.step(-1); // nothing chosen: the newest
    CHECK(lift.chosenText().contains(QStringLiteral("330 ms")));
    lift.step(1);
    CHECK(lift.chosenText().contains(QStringLiteral("330 ms")));
    lift.step(-1);
    lift.step(-1);
    CHECK(lift.chosenText().contains(QStringLiteral("Full, 470 ms")));
    CHECK(lift.plot().summary().contains(QStringLiteral("Chosen: 470 milliseconds in week 5.")));
    lift.step(-1);
    lift.step(-1);
    CHECK(lift.chosenText().contains(QStringLiteral("500 ms")));
    lift.letGo();
    CHECK(lift.chosenText().isEmpty());
}

TEST_CASE("A touched run tells wind, timing and surface", "[trends]")
{
    Preferences preferences;
    TrendsViewModel trends(&preferences);
    trends.show(data());
    trends.sprint()->touch(placeOf(8, 2.05));
    CHECK(trends.sprint()->chosenText().contains(QStringLiteral("2.05 s, wind +3.1 m/s, gates, track.")));
    trends.choosePeriod(1); // it is hidden now
    CHECK(trends.sprint()->chosenText().isEmpty());
}

TEST_CASE("The line of loads is that of the ladder looked at, in the user's unit", "[trends]")
{
    Preferences preferences;
    auto shown = data();
    report::LoadVelocity found;
    for (int day = 0; day < 4; ++day)
        for (const double load : {60.0, 90.0, 120.0}) {
            found.points.push_back({load, 1.3 - 0.0065 * load + (day % 2 == 0 ? 0.01 : -0.01) * (load > 80 ? 1 : -1)});
            found.days.push_back(first + days{day});
        }
    found.sessions = 4;
    found.curve = strength::loadVelocityCurve(found.points, "half-squat");
    report::LoadVelocity none;
    none.curve = strength::loadVelocityCurve({}, "step-up");
    shown.season.loads = {{"Squat", "Half squat", {found}}, {"Step-up", "Step-up 35 cm", {none}}};
    TrendsViewModel trends(&preferences);
    trends.show(shown);
    auto& loads = *trends.loads();
    CHECK(loads.title() == QStringLiteral("Half squat: load and velocity"));
    CHECK(loads.maximum().startsWith(QStringLiteral("Estimated 1RM 149 kg (95 %: "))); // (1.3 - 0.33) / 0.0065
    CHECK(loads.words().startsWith(QStringLiteral("From 4 sessions")));
    CHECK(loads.words().contains(QStringLiteral("12 points")));
    CHECK(loads.missing().isEmpty());
    loads.step(-1);
    CHECK(loads.chosenText().endsWith(QStringLiteral("120 kg, 0.51 m/s.")));
    CHECK(loads.plot().summary().contains(QStringLiteral("Chosen: 0.51")));
    trends.lift()->choose(1);
    CHECK(loads.title() == QStringLiteral("Step-up 35 cm: load and velocity"));
    CHECK_FALSE(loads.hasPoints());
    CHECK(loads.maximum().isEmpty());
    CHECK(loads.missing().contains(QStringLiteral("two loads at least 10 % apart")));
    preferences.setPounds(true);
    trends.lift()->choose(0);
    CHECK(loads.maximum().contains(QStringLiteral("lb")));
}

TEST_CASE("Seasons before are asked for once and stand before this one", "[trends]")
{
    Preferences preferences;
    TrendsViewModel trends(&preferences);
    auto now = data();
    trends.show(now);
    CHECK(trends.periods().size() == 2);
    now.hasEarlier = true;
    trends.show(now);
    REQUIRE(trends.periods().size() == 3);
    int asked = 0;
    QObject::connect(&trends, &TrendsViewModel::earlierAsked, [&asked] { ++asked; });
    trends.choosePeriod(2);
    CHECK(asked == 1);
    SeasonTrends indoor = now.season;
    indoor.name = "Indoor 2025";
    indoor.span = {.first = first - days{140}, .last = first - days{1}, .today = today, .phases = {}, .races = {}};
    for (auto& ladder : indoor.ladders)
        for (auto& point : ladder.points)
            point.day -= days{140};
    indoor.tests.clear();
    trends.showEarlier({indoor});
    CHECK(asked == 1);
    const auto shown = trends.lift()->plot().plot;
    CHECK(shown.strip.size() == 4);
    CHECK(shown.x.to == Approx(50).margin(1)); // 20 weeks before, 30 of this season
    CHECK(trends.periodNote().contains(QStringLiteral("Weeks are counted from")));
}
