// What the season's view models say: steps of the stair, days by touch, a change of the season, how one is.
#include <catch2/catch.hpp>

#include "mobile/plot/pictures.hpp"
#include "mobile/views/day_picker.hpp"
#include "mobile/views/season_lifts_view_model.hpp"
#include "mobile/views/season_view_model.hpp"
#include "mobile/views/wellness_form.hpp"

using namespace fleetrung;
using namespace fleetrung::views;

namespace
{

CivilDate on(const char* text)
{
    return *parseDate(text);
}

season::SeasonSetup outdoor()
{
    season::SeasonSetup setup;
    setup.name = "Outdoor 2027";
    setup.start = on("2026-11-02");
    setup.competitions = {{on("2027-06-06"), "Championship", season::Priority::A, true}};
    setup.trainingDays = {1, 3, 5};
    setup.equipment = {"bar", "rack", "pins"};
    setup.ladders = {"squat"};
    return setup;
}

} // namespace

namespace
{

/// The lifts of a season on one of its days, and what was asked to be kept last.
struct Lifts {
    explicit Lifts(const char* today) : view(&preferences)
    {
        preferences.setLocale(QLocale(QLocale::English, QLocale::UnitedKingdom));
        QObject::connect(
            &view, &SeasonLiftsViewModel::seasonChanged, &view,
            [this](const season::SeasonSetup& setup, const season::SeasonSetup& before, const QString& text) {
                kept = setup;
                earlier = before;
                said = text;
            });
        const auto states = season::startStates(*season::planSeason(outdoor()));
        view.show(SeasonShown{*season::replanSeason(outdoor(), states, on(today)), states, on(today)});
    }

    int rowOf(const char* title)
    {
        const auto rows = view.ladders()->all();
        for (int i = 0; i < rows.size(); ++i)
            if (rows[i].value(QStringLiteral("title")) == QLatin1String(title))
                return i;
        FAIL("there is no ladder " << title);
        return -1;
    }

    Preferences preferences;
    SeasonLiftsViewModel view;
    season::SeasonSetup kept, earlier;
    QString said;
};

} // namespace

TEST_CASE("A ladder joins the season on the day it is chosen, and can leave it again", "[views][season]")
{
    Lifts lifts("2027-01-20");
    CHECK(lifts.view.ladders()->all().size() == 7); // the standard ones
    CHECK(lifts.rowOf("Squat") == 0);
    lifts.view.toggleLadder(lifts.rowOf("Hinge"));
    CHECK(lifts.kept.ladders == std::vector<std::string>{"squat", "hinge"});
    REQUIRE(lifts.kept.ladderStarts.size() == 1);
    CHECK(lifts.kept.ladderStarts[0].from == on("2027-01-20"));
    CHECK(lifts.earlier.ladders == std::vector<std::string>{"squat"}); // the way back
    // The next tap comes before the logbook has answered.
    lifts.view.raiseLadder(1);
    CHECK(lifts.kept.ladders == std::vector<std::string>{"hinge", "squat"});
    lifts.view.toggleLadder(lifts.rowOf("Hinge"));
    CHECK(lifts.kept.ladders == std::vector<std::string>{"squat"});
    CHECK(lifts.kept.ladderStarts.empty());
    CHECK(lifts.said.toStdString() == "Hinge is out of the season. Its sets stay in the log.");
    lifts.kept = {};
    lifts.view.toggleLadder(0);
    CHECK(lifts.kept.ladders.empty()); // nothing was asked for
    CHECK(lifts.view.problem().toStdString() == "choose at least one ladder");
}

TEST_CASE("A ladder of one's own begins as a copy, is fitted in inches, and is planned", "[views][season]")
{
    Lifts lifts("2026-11-02");
    lifts.preferences.setInches(true);
    auto& own = *lifts.view.own();
    lifts.view.beginOwn(lifts.rowOf("Step-up"));
    own.setName(QStringLiteral("  Step-up, stadium boxes "));
    REQUIRE(own.rungs()->count() == 5);
    auto form = own.rungForm(0);
    CHECK(form.value("name").toString() == QStringLiteral("Step-up, 45 cm"));
    form["box"] = QStringLiteral("18");
    form["rangeFrom"] = QStringLiteral("30");
    CHECK_FALSE(own.saveRung(0, form).value("rangeTo").toString().isEmpty()); // upside down
    form["rangeFrom"] = QStringLiteral("15,5");
    form["rangeTo"] = QStringLiteral("18.5");
    CHECK(own.saveRung(0, form).isEmpty());
    CHECK(own.ladder().rungs[0].name == "Step-up, 18 in"); // the box is kept as it was typed
    CHECK(own.ladder().rungs[0].range.low == Approx(15.5 * 0.0254));
    auto fresh = own.rungForm(-1);
    CHECK_FALSE(own.saveRung(-1, fresh).value("name").toString().isEmpty()); // it has no name yet
    fresh["name"] = QStringLiteral("Step-up, between");
    fresh["rangeFrom"] = QStringLiteral("9");
    fresh["rangeTo"] = QStringLiteral("13");
    fresh["earliest"] = 0;
    fresh["latest"] = 1;
    CHECK(own.saveRung(-1, fresh).isEmpty());
    CHECK(own.rungs()->count() == 6);
    CHECK(own.ladder().rungs.back().range.high <= own.ladder().rungs.front().range.high); // longest first
    for (std::size_t i = 1; i < 6; ++i)
        CHECK(own.ladder().rungs[i].range.high <= own.ladder().rungs[i - 1].range.high);
    own.save();
    INFO(own.problem().toStdString());
    REQUIRE(lifts.kept.ownLadders.size() == 1);
    CHECK(lifts.kept.ownLadders[0].name == "Step-up, stadium boxes");
    CHECK(lifts.kept.ladders.back() == lifts.kept.ownLadders[0].key);
    CHECK(lifts.kept.ladderStarts.empty()); // it is the season's first day
    const auto plan = season::planSeason(lifts.kept);
    REQUIRE(plan);
    CHECK(season::findLadderPlan(*plan, lifts.kept.ladders.back()) != nullptr);

    // Once training stands on a rung it stays; another may go.
    const auto states = season::startStates(*plan);
    lifts.view.show(SeasonShown{*season::replanSeason(lifts.kept, states, on("2026-12-01")), states, on("2026-12-01")});
    lifts.view.editOwn(lifts.rowOf("Step-up, stadium boxes"));
    const auto start = *own.ladder().indexOf(states.back().rung());
    CHECK(own.removeRung(start).toStdString() == "Training has been done on this rung. It stays.");
    CHECK(own.removeRung(start == 5 ? 4 : 5).isEmpty());
    own.save();
    CHECK(lifts.kept.ownLadders[0].rungs.size() == 5);
    lifts.view.editOwn(lifts.rowOf("Step-up, stadium boxes"));
    lifts.view.deleteOwn();
    CHECK(lifts.kept.ownLadders.empty());
    CHECK(lifts.kept.ladders == std::vector<std::string>{"squat"});
    CHECK(lifts.earlier.ownLadders.size() == 1);
}

TEST_CASE("A lift beside the ladders is added, changed and taken out", "[views][season]")
{
    Lifts lifts("2026-12-01");
    auto form = lifts.view.secondaryForm(-1);
    CHECK(form.value("days").toList() == QVariantList{0, 2, 4}); // the days with lifts
    CHECK(lifts.view.saveSecondary(-1, form).contains("name"));
    form["name"] = QStringLiteral("Hip thrust");
    form["repetitions"] = QStringLiteral("45");
    CHECK(lifts.view.saveSecondary(-1, form).contains("repetitions"));
    form["repetitions"] = QStringLiteral("8");
    form["days"] = QVariantList{};
    CHECK(lifts.view.saveSecondary(-1, form).contains("days"));
    form["days"] = QVariantList{1};
    CHECK(lifts.view.saveSecondary(-1, form).isEmpty());
    REQUIRE(lifts.kept.secondary.size() == 1);
    CHECK(lifts.kept.secondary[0].days == std::vector<int>{2});
    CHECK(lifts.view.secondary()->all().at(0).value("detail").toString() == QStringLiteral("3 × 8 · Tue"));
    form["sets"] = QStringLiteral("2");
    CHECK(lifts.view.saveSecondary(0, form).isEmpty());
    CHECK(lifts.kept.secondary.at(0).sets == 2);
    lifts.view.deleteSecondary(0);
    CHECK(lifts.kept.secondary.empty());
}

TEST_CASE("Days of the engine's texts are read in the user's form", "[views][units]")
{
    const Units british(QLocale(QLocale::English, QLocale::UnitedKingdom));
    CHECK(british.withLocalDates(QStringLiteral("from 2026-03-30 to 2026-04-01.")) ==
          QStringLiteral("from 30/03/2026 to 01/04/2026."));
    CHECK(british.withLocalDates(QStringLiteral("2026-02-30 is no day, 12026-03-301 no date")) ==
          QStringLiteral("2026-02-30 is no day, 12026-03-301 no date"));
}

TEST_CASE("The month begins its weeks as the locale does, over a leap day and a year's end", "[views][day]")
{
    Preferences preferences;
    DayPicker picker(&preferences);
    preferences.setLocale(QLocale(QLocale::English, QLocale::UnitedStates)); // Sunday first
    picker.show(on("2028-02-29"), on("2028-01-01"));
    CHECK(picker.weekdays().first() == QStringLiteral("Sun"));
    CHECK(picker.cells()->all().first().value(QStringLiteral("name")).toString() ==
          QStringLiteral("Sunday, January 30"));
    preferences.setLocale(QLocale(QLocale::German, QLocale::Germany)); // Monday first
    CHECK(picker.cells()->all().first().value(QStringLiteral("name")).toString() ==
          QStringLiteral("Montag, 31. Januar"));
    picker.move(1);
    CHECK(picker.day() == on("2028-03-01"));
    picker.show(on("2026-12-28"), on("2026-12-01"));
    picker.move(7);
    CHECK(picker.day() == on("2027-01-04"));
    picker.moveMonth(-1);
    CHECK(picker.day() == on("2027-01-04")); // looking at another month chooses nothing
    CHECK(picker.monthText() == QStringLiteral("Dezember 2026"));
}

TEST_CASE("A finger on the stair means the nearest stay, the path taken first", "[views][stair]")
{
    plot::StairInput input;
    input.rungs = {"Full", "Parallel", "Half"};
    input.season = {.first = on("2026-11-02"), .last = on("2027-06-06"), .today = {}, .phases = {}, .races = {}};
    input.taken = {{0, on("2026-11-02"), on("2027-01-03")}};
    input.planned = {{0, on("2026-11-02"), on("2026-12-20")}, {1, on("2026-12-21"), on("2027-03-01")}};
    const auto full = plot::stairHit(input, {3, 0.1});
    REQUIRE(full);
    CHECK(full->taken);
    const auto parallel = plot::stairHit(input, {12, 1.2});
    REQUIRE(parallel);
    CHECK_FALSE(parallel->taken);
    CHECK(parallel->stay == 1);
    CHECK_FALSE(plot::stairHit(input, {25, 2}));
}

TEST_CASE("A moved competition says which phases and steps move before it is kept", "[views][season]")
{
    Preferences preferences;
    preferences.setLocale(QLocale(QLocale::English, QLocale::UnitedKingdom));
    const auto fresh = season::planSeason(outdoor());
    REQUIRE(fresh);
    const auto states = season::startStates(*fresh);
    const auto today = on("2026-11-02");
    SeasonViewModel view(&preferences);
    view.show(SeasonShown{*season::replanSeason(outdoor(), states, today), states, today});
    int kept = 0;
    season::SeasonSetup last;
    QObject::connect(&view, &SeasonViewModel::seasonChanged, &view, [&](const auto& setup, const auto&, const auto&) {
        ++kept;
        last = setup;
    });

    view.editCompetition(0);
    CHECK(view.consequences()->all().first().value("text").toString() ==
          QStringLiteral("Nothing else in the plan moves."));
    view.day()->move(-56);
    CHECK(view.canSave());
    QString all;
    for (const auto& row : view.consequences()->all())
        all += row.value("text").toString() + QStringLiteral("\n");
    CAPTURE(all.toStdString());
    CHECK(all.contains(QStringLiteral("Taper: ")));
    CHECK(all.contains(QStringLiteral("Squat, Half squat: ")));
    CHECK(kept == 0);
    view.saveCompetition();
    CHECK(kept == 1);
    CHECK(last.competitions.front().date == on("2027-04-11"));

    view.editCompetition(0);
    view.setDraftMain(false);
    CHECK_FALSE(view.canSave()); // a season counts back from something
    view.editCompetition(-1);
    CHECK_FALSE(view.canSave()); // no name yet
    view.setDraftName(QStringLiteral(" Evening meet "));
    CHECK(view.canSave());
    view.saveCompetition();
    CHECK(last.competitions.size() == 2);
    CHECK(last.competitions.front().name == "Evening meet"); // by date
}

TEST_CASE("Pain needs a place, and what was not said stays unsaid", "[views][wellness]")
{
    const Units units(QLocale(QLocale::English, QLocale::UnitedKingdom));
    CHECK(readWellness({{"pain", 4}, {"region", -1}}, units).error().contains("region"));
    const auto said = readWellness({{"pain", 4}, {"region", 0}, {"soreness", -1}, {"sleep", "7,5"}}, units);
    REQUIRE(said);
    CHECK(*said->pain == 4);
    CHECK_FALSE(said->painWhere.empty());
    CHECK_FALSE(said->soreness);
    CHECK(*said->sleepHours == 7.5);
    const auto elsewhere =
        readWellness({{"pain", 4}, {"region", static_cast<int>(painRegionNames().size()) - 1}}, units);
    CHECK(elsewhere->painWhere.empty()); // everywhere: it counts for all lifts
    CHECK(wellnessWords(*said, units).startsWith(QStringLiteral("slept 7.5 h · pain 4, ")));
}

namespace
{

/// The season that stands, as the page would keep and show it after each change.
struct EditedSeason {
    Preferences preferences;
    SeasonViewModel view{&preferences};
    season::SeasonSetup setup = outdoor();
    QString said;

    EditedSeason()
    {
        show();
        QObject::connect(&view, &SeasonViewModel::seasonChanged,
                         [this](const season::SeasonSetup& now, const season::SeasonSetup&, const QString& text) {
                             setup = now;
                             said = text;
                             show();
                         });
    }

    void show()
    {
        const auto plan = season::planSeason(setup);
        REQUIRE(plan);
        view.show(SeasonShown{*plan, season::startStates(*plan), on("2026-12-01")});
    }
};

} // namespace

TEST_CASE("Days of the week are put into the plan and taken out by a tap", "[views][season]")
{
    EditedSeason season;
    CHECK(season.view.liftDays() == QVariantList({0, 2, 4}));
    season.view.toggleLiftDay(5); // Saturday
    CHECK(season.setup.trainingDays == std::vector<int>{1, 3, 5, 6});
    season.view.toggleLiftDay(2);
    CHECK(season.setup.trainingDays == std::vector<int>{1, 5, 6});
    CHECK(season.view.liftDays() == QVariantList({0, 4, 5}));
    season.view.toggleSprintDay(1);
    CHECK(season.setup.sprintDays == std::vector<int>{2});
}

TEST_CASE("The last day with lifts stays, and the page says why", "[views][season]")
{
    EditedSeason season;
    for (const int day : {0, 2})
        season.view.toggleLiftDay(day);
    season.said.clear();
    season.view.toggleLiftDay(4);
    CHECK(season.setup.trainingDays == std::vector<int>{5});
    CHECK(season.said.isEmpty());
    CHECK_FALSE(season.view.problem().isEmpty());
}

TEST_CASE("What the weight room has decides which rungs are planned", "[views][season]")
{
    EditedSeason season;
    CHECK(season.view.equipment() == QVariantList({0, 1, 2}));
    season.view.toggleEquipment(2); // no pins
    CHECK(season.setup.equipment == std::vector<std::string>{"bar", "rack"});
    season.view.toggleEquipment(3);
    CHECK(season.setup.equipment == std::vector<std::string>{"bar", "rack", "blocks"});
}

TEST_CASE("A session's length is a whole number of minutes a person can spend", "[views][season]")
{
    EditedSeason season;
    CHECK_FALSE(season.view.setSessionMinutes(QStringLiteral("long")).isEmpty());
    CHECK_FALSE(season.view.setSessionMinutes(QStringLiteral("5")).isEmpty());
    CHECK(season.setup.sessionMinutes == 90);
    CHECK(season.view.setSessionMinutes(QStringLiteral("75")).isEmpty());
    CHECK(season.setup.sessionMinutes == 75);
    CHECK(season.view.sessionMinutes() == QStringLiteral("75"));
}
