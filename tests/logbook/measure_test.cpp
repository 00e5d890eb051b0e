// Measurements, for the machine at hand: run by name (`logbook_tests "[.measure]"`), they state times and bound
// nothing.
#include "logbook_helper.hpp"

#include <chrono>
#include <iostream>

using namespace fleetrung;
using namespace fleetrung::logbook;
using namespace fleetrung::logbook::test;

namespace
{

template <class Work> void timed(const char* what, Work work)
{
    const auto begin = std::chrono::steady_clock::now();
    work();
    const std::chrono::duration<double, std::milli> took = std::chrono::steady_clock::now() - begin;
    std::cout << what << ": " << took.count() << " ms\n";
}

/// 150 sessions of 20 sets of 5 repetitions, every number typed.
void fillSeason(Logbook& logbook, const Identifier& athlete, CivilDate first)
{
    good(logbook.inTransaction([&]() -> Expected<void> {
        for (int i = 0; i < 150; ++i) {
            const auto day = first + std::chrono::days{2 * i};
            const auto session = good(logbook.openSession(athlete, "strength", at(day)));
            for (int k = 0; k < 20; ++k) {
                auto set = squat(session,
                                 k < 3    ? store::SetKind::WarmUp
                                 : k == 3 ? store::SetKind::Probe
                                          : store::SetKind::Work,
                                 80);
                set.ordinal = k + 1;
                good(logbook.typeSet(set, {.count = 5, .meanVelocity = 0.5, .timeToPeak = 0.5}, at(day)));
            }
        }
        return {};
    }));
}

} // namespace

TEST_CASE("store time of every page for a squad of 200 with three seasons each", "[.measure]")
{
    const Folder folder;
    auto logbook = openLogbook(folder);
    const auto [athlete, season] = fill(logbook);
    for (int year = 0; year < 3; ++year)
        fillSeason(logbook, athlete, date("2025-12-01") - std::chrono::days{365 * year});
    good(logbook.inTransaction([&]() -> Expected<void> {
        for (int i = 1; i < 200; ++i) {
            const auto other = good(logbook.addAthlete(longJumper()));
            good(logbook.addSeason(other, thirtyWeeks()));
            for (int k = 0; k < 450; ++k) {
                store::Session row;
                row.id = numbered(static_cast<std::uint32_t>(1000000 + 1000 * i + k));
                row.athlete = other;
                row.begun = at(date("2024-01-01") + std::chrono::days{2 * k});
                row.kind = "strength";
                good(logbook.rows().insert(row));
            }
        }
        return {};
    }));
    const auto today = date("2026-06-20");
    for (int round = 0; round < 2; ++round) {
        timed("squad", [&] { CHECK(good(logbook.squad(today)).size() == 200); });
        timed("day (Bench, Ladder)", [&] { good(logbook.day(season, today)); });
        timed("decide", [&] { good(logbook.decide(season, at(today))); });
        timed("weeks (Trends)", [&] { good(logbook.weeks(season, "squat", today)); });
        timed("season report", [&] { good(logbook.seasonReport(athlete, season, today)); });
        timed("sprints (Track)", [&] { good(logbook.sprints(athlete)); });
    }
}
