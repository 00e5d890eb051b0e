// What the season's view models say: steps of the stair, days by touch, a change of the season, how one is.
#include <catch2/catch.hpp>

#include "mobile/plot/pictures.hpp"
#include "mobile/views/day_picker.hpp"
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
