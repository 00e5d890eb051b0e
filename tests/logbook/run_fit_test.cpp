#include <catch2/catch.hpp>

#include "mobile/logbook/run_fit.hpp"

using namespace fleetrung;
using namespace fleetrung::logbook;

namespace
{

/// Berlin 2009, men's 100 m final, winner: time from the gun, reaction 0.146 s. Source: Graubner R, Nixdorf E, New Stud
/// Athl 2011;26(1/2):19-53 (splits as quoted in teaching files).
store::Sprint berlin()
{
    store::Sprint run;
    run.start = "block";
    run.timing = "electronic";
    run.distance = 100;
    run.time = 9.58;
    run.reactionS = 0.146;
    run.windMps = 0.9;
    run.splits = {{10, 1.89}, {20, 2.88}, {30, 3.78}, {40, 4.64}, {50, 5.47},
                  {60, 6.29}, {70, 7.10}, {80, 7.92}, {90, 8.75}, {100, 9.58}};
    run.run.trainingDay = CivilDate{std::chrono::days{14472}};
    return run;
}

store::Athlete tall()
{
    store::Athlete athlete;
    athlete.bodyMassKg = 75;
    athlete.statureM = 1.80;
    return athlete;
}

/// vmax 10 m/s, tau 1.25 s: times of the closed form, to a microsecond.
store::Sprint synthetic()
{
    store::Sprint run;
    run.start = "standing";
    run.timing = "gates";
    run.distance = 40;
    run.time = 5.230968;
    run.splits = {{5, 1.312620}, {10, 1.997029}, {15, 2.592955}, {20, 3.149375}, {30, 4.206817}, {40, 5.230968}};
    return run;
}

} // namespace

TEST_CASE("A run from blocks with its reaction typed has no free offset, without it the offset is fitted", "[run-fit]")
{
    auto run = berlin();
    const auto known = fitRun(run, {}, true);
    REQUIRE(known);
    CHECK_FALSE(known->fit.offsetFree);
    // TEST 1c of the references, all ten splits.
    CHECK(known->fit.model.vmax == Approx(12.214).margin(0.02));
    CHECK(known->fit.model.tau == Approx(1.238).margin(0.02));
    // As it stands the speed falls at the end: the last stretches are left out, and top speed is nearer the
    // laser's 12.34.
    const auto toPeak = fitRun(run, {});
    REQUIRE(toPeak);
    CHECK_FALSE(toPeak->fit.residuals.back().used);
    CHECK(toPeak->fit.model.vmax == Approx(12.34).epsilon(0.02));
    run.reactionS.reset();
    const auto free = fitRun(run, {}, true);
    REQUIRE(free);
    CHECK(free->fit.offsetFree);
    CHECK(free->fit.model.vmax == Approx(12.2512).margin(0.002));
    CHECK(free->fit.startOffset == Approx(0.1017).margin(0.002));
}

TEST_CASE("The start and the timing of a run say what its clock knows", "[run-fit]")
{
    const auto clockOf = [](const char* start, const char* timing, std::optional<double> beam = {}) {
        store::Sprint run;
        run.start = start;
        run.timing = timing;
        run.beamM = beam;
        return splitOptions(run).start.clock;
    };
    CHECK(clockOf("block", "gates") == sprint::Clock::Gun);
    CHECK(clockOf("standing", "video") == sprint::Clock::FirstMovement);
    CHECK(clockOf("standing", "gates") == sprint::Clock::FirstMovement);
    CHECK(clockOf("standing", "gates", 0.5) == sprint::Clock::Beam);
    CHECK(clockOf("standing", "electronic") == sprint::Clock::Gun);
    CHECK(clockOf("standing", "hand") == sprint::Clock::Unknown);
    CHECK(clockOf("falling", "gates") == sprint::Clock::Unknown);
    CHECK(clockOf("rolling", "gates") == sprint::Clock::Unknown);
}

TEST_CASE("Force and power stand in the air of the run, and say what of it was assumed", "[run-fit]")
{
    auto run = synthetic();
    const auto fit = fitRun(run, tall());
    REQUIRE(fit);
    // TEST 1a and 1b of the references: still air, 20 degrees, the sea, 75 kg, 1.80 m.
    CHECK(fit->fit.model.vmax == Approx(10).margin(1e-3));
    CHECK(fit->fit.model.tau == Approx(1.25).margin(1e-3));
    REQUIRE(fit->force);
    CHECK(fit->force->forceVelocity.f0 == Approx(592.6).epsilon(0.005));
    CHECK(fit->force->forceVelocity.pmax == Approx(1549.6).epsilon(0.005));
    CHECK(fit->force->forceVelocity.rfMax == Approx(0.5409).margin(0.002));
    CHECK(fit->force->assumedTemperature);
    CHECK(fit->force->assumedAltitude);
    CHECK(fit->force->assumedWind);
    run.temperatureC = 31;
    run.altitudeM = 2250;
    run.windMps = 1.8;
    const auto thin = fitRun(run, tall());
    REQUIRE(thin->force);
    CHECK(thin->force->forceVelocity.v0 < fit->force->forceVelocity.v0);
    CHECK_FALSE(thin->force->assumedAltitude);
    const auto nobody = fitRun(run, {});
    REQUIRE_FALSE(nobody->force);
    CHECK_THAT(nobody->force.error().message, Catch::Contains("body mass"));
}

TEST_CASE("A flying start gives no fit, and too few splits say what is missing", "[run-fit]")
{
    auto run = synthetic();
    run.splits.resize(2);
    const auto few = fitRun(run, tall());
    REQUIRE_FALSE(few);
    CHECK_THAT(few.error().message, Catch::Contains("3 splits are needed"));
    run.start = "flying";
    CHECK_THAT(fitRun(run, tall()).error().message, Catch::Contains("no acceleration"));
}

TEST_CASE("A run is compared with earlier runs of the same start alone", "[run-fit]")
{
    std::vector<store::Sprint> all;
    for (int i = 0; i < 4; ++i) {
        auto run = synthetic();
        run.run.trainingDay = CivilDate{std::chrono::days{20000 + 7 * i}};
        if (i == 1)
            run.start = "falling";
        all.push_back(run);
    }
    const auto compared = compareRun(all[2], *fitRun(all[2], {}), all, {});
    REQUIRE(compared.change);
    CHECK(compared.change->runs == 1);
    CHECK(compared.change->change == Approx(0).margin(1e-6));
}

TEST_CASE("A flying run states its speed with the error of its timing, and the best of all flying runs", "[run-fit]")
{
    store::Sprint run;
    run.start = "flying";
    run.timing = "gates";
    run.distance = 20;
    run.time = 2.0;
    run.run.trainingDay = CivilDate{std::chrono::days{20010}};
    auto faster = run;
    faster.time = 1.9;
    faster.run.trainingDay = CivilDate{std::chrono::days{20000}};
    const std::vector<store::Sprint> all{faster, run};
    const auto flown = flyingRun(run, all);
    REQUIRE(flown);
    CHECK(flown->speed.speed == Approx(10));
    CHECK(flown->speed.error == Approx(10 * 0.005 * std::sqrt(2.0) / 2.0));
    CHECK_FALSE(flown->history.isBest);
    CHECK(flown->history.best.speed == Approx(20 / 1.9));
    run.timing = "hand";
    CHECK(flyingRun(run, all)->speed.error > 0.5);
}
