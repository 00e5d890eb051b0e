// Which decision of a day counts, and what one entry of the day may take back of another.
#include "logbook_helper.hpp"

using namespace fleetrung;
using namespace fleetrung::logbook;
using namespace fleetrung::logbook::test;

namespace
{

const season::Decision& squatOf(const std::vector<season::Decision>& decisions)
{
    const auto found = std::ranges::find(decisions, "squat", &season::Decision::ladder);
    REQUIRE(found != decisions.end());
    return *found;
}

/// A day in the middle of training, so that the squat has something to hold.
CivilDate trainedUntil(Logbook& logbook, const Identifier& athlete, const Identifier& season)
{
    auto day = good(logbook.states(season, date("2025-12-01"))).at(0).since();
    for (int i = 0; i < 3; ++i, day += std::chrono::days{4})
        typedSession(logbook, athlete, day, 0.6, 0.5);
    return day;
}

store::Wellness entry(const Identifier& athlete, CivilDate day, std::int64_t second)
{
    store::Wellness row;
    row.athlete = athlete;
    row.asked = at(day, second);
    return row;
}

season::DecisionKind squatKind(const Logbook& logbook, const Identifier& season, CivilDate day)
{
    return squatOf(good(logbook.day(season, day)).decisions).kind;
}

} // namespace

TEST_CASE(
    "a decision that was replaced and taken once more on the same day counts again, and none of the three is lost")
{
    const Folder folder;
    auto logbook = openLogbook(folder);
    const auto [athlete, season] = fill(logbook);
    const auto today = trainedUntil(logbook, athlete, season);
    const auto first = squatOf(good(logbook.decide(season, at(today))));
    REQUIRE(first.kind == season::DecisionKind::Hold);

    auto hurt = entry(athlete, today, 60000);
    hurt.pain = 7;
    hurt.painWhere = "knee";
    good(logbook.addWellness(hurt));
    good(logbook.decide(season, at(today, 60100)));
    REQUIRE(squatKind(logbook, season, today) == season::DecisionKind::Rest);

    auto over = entry(athlete, today, 61000);
    over.pain = 0;
    good(logbook.addWellness(over));
    const auto third = squatOf(good(logbook.decide(season, at(today, 61100))));
    CHECK(third.kind == season::DecisionKind::Hold);
    CHECK(third.id != first.id);
    CHECK(squatKind(logbook, season, today) == season::DecisionKind::Hold);
    auto rows = good(logbook.rows().list<store::Decision>({.season = season, .ladder = "squat"}));
    REQUIRE(rows.size() == 3);
    CHECK(rows[0].ordinal == 1);
    CHECK(rows[2].ordinal == 3);
}

TEST_CASE("of two decisions of one instant the later taken counts, whatever their names")
{
    for (std::uint32_t firstId = 1; firstId < 6; ++firstId) {
        const Folder folder;
        auto logbook = openLogbook(folder, 1000 * firstId);
        const auto [athlete, season] = fill(logbook);
        const auto today = trainedUntil(logbook, athlete, season);
        good(logbook.inTransaction([&]() -> Expected<void> {
            good(logbook.decide(season, at(today)));
            auto hurt = entry(athlete, today, 57600);
            hurt.pain = 7;
            hurt.painWhere = "knee";
            good(logbook.addWellness(hurt));
            good(logbook.decide(season, at(today)));
            return {};
        }));
        CHECK(squatKind(logbook, season, today) == season::DecisionKind::Rest);
        CHECK(good(logbook.decisions(season)).size() == 2); // squat and hinge
    }
}

TEST_CASE("an entry of sleep alone leaves pain flags and a refusal standing, one that speaks of pain takes them back")
{
    const Folder folder;
    auto logbook = openLogbook(folder);
    const auto [athlete, season] = fill(logbook);
    const auto today = trainedUntil(logbook, athlete, season);
    auto limping = entry(athlete, today, 50000);
    limping.limping = true;
    limping.refused = true;
    good(logbook.addWellness(limping));
    auto slept = entry(athlete, today, 51000);
    slept.sleepHours = 9;
    good(logbook.addWellness(slept));
    const auto hurt = good(logbook.dayInput(season, today)).wellness;
    CHECK(hurt.limping);
    CHECK(hurt.refused);
    CHECK(hurt.sleepHours == 9.0);

    auto well = entry(athlete, today, 52000);
    well.pain = 0;
    good(logbook.addWellness(well));
    const auto after = good(logbook.dayInput(season, today)).wellness;
    CHECK_FALSE(after.limping);
    CHECK_FALSE(after.refused);
    CHECK(after.sleepHours == 9.0);
}

TEST_CASE("a load rounded to plates does not drift the carried work load upward")
{
    const Folder folder;
    auto logbook = openLogbook(folder);
    const auto [athlete, season] = fill(logbook);
    auto day = good(logbook.states(season, date("2025-12-01"))).at(0).since();
    const auto lift = [&](double loadKg) {
        const auto session = good(logbook.openSession(athlete, "strength", at(day)));
        TypedRepetitions five;
        five.count = 5;
        good(logbook.typeSet(squat(session, store::SetKind::Work, loadKg), five, at(day)));
        day += std::chrono::days{2};
        return *good(logbook.states(season, day)).at(0).workLoadKg;
    };
    CHECK(lift(98.4) == 98.4);
    CHECK(lift(97.5) == 98.4); // rounded down
    CHECK(lift(100) == 98.4);  // rounded up
    CHECK(lift(102.5) == 102.5);
    CHECK(lift(90) == 90);
}
