#include <array>
#include <cmath>

#include <catch2/catch.hpp>

#include "engine/sprint/force_velocity.hpp"
#include "engine/sprint/splits.hpp"

using namespace fleetrung;
using namespace fleetrung::sprint;

namespace
{

std::vector<Split> splitsOf(const Model& model, std::initializer_list<double> distances, double offset = 0)
{
    std::vector<Split> splits;
    for (const double d : distances)
        splits.push_back({d, offset + model.timeTo(d)});
    return splits;
}

// Berlin 2009, men's 100 m final, winner: time from the gun, reaction 0.146 s. Source: Graubner R, Nixdorf E, New Stud
// Athl 2011;26(1/2):19-53.
const std::vector<Split> berlin{{10, 1.89}, {20, 2.88}, {30, 3.78}, {40, 4.64}, {50, 5.47},
                                {60, 6.29}, {70, 7.10}, {80, 7.92}, {90, 8.75}, {100, 9.58}};

} // namespace

// Source: closed form, solved with Lambert's function (references, section 1, worked example).
TEST_CASE("times of a sprint with vmax 10 and tau 1.25 are those of the closed form", "[closed-form]")
{
    const Model model{10, 1.25};
    const std::array<std::array<double, 2>, 6> known{
        {{5, 1.312620}, {10, 1.997029}, {15, 2.592955}, {20, 3.149375}, {30, 4.206817}, {40, 5.230968}}};
    for (const auto& [distance, time] : known) {
        CHECK(model.timeTo(distance) == Approx(time).margin(1e-6));
        CHECK(model.distanceAt(model.timeTo(distance)) == Approx(distance).epsilon(1e-13));
    }
    CHECK(lambertW(-std::exp(-1.0)) == Approx(-1).margin(1e-7));
    CHECK(lambertW(-0.2) * std::exp(lambertW(-0.2)) == Approx(-0.2).epsilon(1e-14));
    CHECK(model.distanceAt(model.timeTo(1e-6)) == Approx(1e-6).epsilon(1e-9));
}

TEST_CASE("exact splits give back the sprint they came from", "[closed-form]")
{
    const auto fit = fitSplits(splitsOf({10, 1.25}, {5, 10, 15, 20, 30, 40}));
    REQUIRE(fit);
    CHECK(fit->model.vmax == Approx(10).margin(1e-3));
    CHECK(fit->model.tau == Approx(1.25).margin(1e-3));
    CHECK(fit->residualRms < 1e-6);
    CHECK(fit->notes.empty());
}

TEST_CASE("exact splits come back from every kind of start", "[closed-form]")
{
    const Model truth{9.2, 1.1};
    SplitOptions options;
    std::vector<Split> splits;
    SECTION("a gun and a known reaction")
    {
        options.start = {Clock::Gun, 0.15, 0};
        splits = splitsOf(truth, {5, 10, 20, 30}, 0.15);
    }
    SECTION("a gun and no reaction known")
    {
        options.start = {Clock::Gun, {}, 0};
        splits = splitsOf(truth, {5, 10, 20, 30, 40}, 0.21);
    }
    SECTION("a falling start, the clock started late")
    {
        options.start = {Clock::Unknown, {}, 0};
        splits = splitsOf(truth, {5, 10, 20, 30, 40}, -0.3);
    }
    SECTION("a beam half a metre in front of the start")
    {
        options.start = {Clock::Beam, {}, 0.5};
        for (const double d : {5.0, 10.0, 20.0, 30.0})
            splits.push_back({d, truth.timeTo(d + 0.5) - truth.timeTo(0.5)});
    }
    const auto fit = fitSplits(splits, options);
    REQUIRE(fit);
    CHECK(fit->model.vmax == Approx(9.2).margin(1e-3));
    CHECK(fit->model.tau == Approx(1.1).margin(1e-3));
}

// Expected values: references section 1, fits of the same splits with the same model by another program; measured top
// speed 12.34-12.35 m/s from the same report.
TEST_CASE("the splits of the 2009 final give top speed and tau as published", "[published]")
{
    const auto fit = fitSplits(berlin, {.start = {Clock::Gun, 0.146, 0}, .keepAfterPeak = true});
    REQUIRE(fit);
    CHECK(fit->model.vmax == Approx(12.214).margin(0.02));
    CHECK(fit->model.tau == Approx(1.238).margin(0.02));
    CHECK(fit->residualRms <= 0.011);
    CHECK(fit->model.vmax == Approx(12.345).epsilon(0.02));

    const auto free = fitSplits(berlin, {.start = {Clock::Gun, {}, 0}, .keepAfterPeak = true});
    REQUIRE(free);
    CHECK(free->model.vmax == Approx(12.2512).margin(0.005));
    CHECK(free->model.tau == Approx(1.30365).margin(0.005));
    CHECK(free->startOffset == Approx(0.1017).margin(0.003));

    const auto first60 = fitSplits(std::span(berlin).first(6), {.start = {Clock::Gun, 0.146, 0}});
    REQUIRE(first60);
    CHECK(first60->model.vmax == Approx(12.1472).margin(0.005));
    CHECK(first60->model.tau == Approx(1.22119).margin(0.005));
}

TEST_CASE("splits after the peak of speed are left out and named")
{
    const auto fit = fitSplits(berlin, {.start = {Clock::Gun, 0.146, 0}});
    REQUIRE(fit);
    CHECK(fit->residuals.back().used == false);
    CHECK(fit->residuals[6].used); // 60-70 m was the fastest stretch
    REQUIRE_FALSE(fit->notes.empty());
    CHECK(fit->notes.back().find("100 m") != std::string::npos);
}

// Source: references section 1, synthetic example: m 75 kg, h 1.80 m, 760 Torr, 20 degrees, still air, g 9.81.
TEST_CASE("force, velocity and power of the worked example", "[published]")
{
    const Runner runner{75, 1.80};
    const Air air{.temperature = 20, .pressure = 101325, .wind = 0, .gravity = 9.81};
    CHECK(dragFactor(runner, air) == Approx(0.280147).margin(1e-5));
    const auto profile = forceVelocity({10, 1.25}, 5.230968, runner, air);
    REQUIRE(profile);
    CHECK(profile->f0 == Approx(592.57).epsilon(0.005));
    CHECK(profile->v0 == Approx(10.46).epsilon(0.005));
    CHECK(profile->pmax == Approx(1549.6).epsilon(0.005));
    CHECK(profile->rfMax == Approx(0.54090).margin(0.002));
    CHECK(profile->drf == Approx(-0.06703).margin(0.0007));
}

TEST_CASE("one bad gate is named and left out")
{
    const Model truth{9.5, 1.15};
    for (std::size_t bad = 0; bad < 6; ++bad) {
        auto splits = splitsOf(truth, {5, 10, 15, 20, 30, 40});
        splits[bad].time += bad % 2 ? 0.12 : -0.12;
        const auto fit = fitSplits(splits);
        CAPTURE(splits[bad].distance, fit ? std::string() : describe(fit.error()));
        REQUIRE(fit);
        CHECK_FALSE(fit->residuals[bad].used);
        CHECK(fit->model.vmax == Approx(9.5).epsilon(0.01));
        CHECK(fit->residuals[bad].why.find("check this gate") != std::string::npos);
    }
}

TEST_CASE("splits that do not carry a sprint are refused with what is missing", "[error]")
{
    const Model model{9, 1.2};
    const auto tooFew = fitSplits(splitsOf(model, {10, 20}));
    REQUIRE_FALSE(tooFew);
    CHECK(tooFew.error().code == Code::NotAvailable);
    CHECK(tooFew.error().message.find("3 splits") != std::string::npos);
    const auto tooShort = fitSplits(splitsOf(model, {5, 10, 15}));
    REQUIRE_FALSE(tooShort);
    CHECK(tooShort.error().message.find("20 m") != std::string::npos);
    const auto tooLate = fitSplits(splitsOf(model, {30, 40, 50}));
    REQUIRE_FALSE(tooLate);
    const auto free = fitSplits(splitsOf(model, {5, 10, 20, 30}), {.start = {Clock::Gun, {}, 0}});
    REQUIRE_FALSE(free);
    CHECK(free.error().message.find("5 splits") != std::string::npos);
    const auto backwards = fitSplits(std::array<Split, 3>{{{10, 2.0}, {20, 1.9}, {30, 4.0}}});
    REQUIRE_FALSE(backwards);
    CHECK(backwards.error().code == Code::InvalidInput);
    CHECK(backwards.error().place == "split at 20 m");
}

// Standard errors must mean what they say: simulated timing noise, seeded.
TEST_CASE("the stated standard errors hold the truth as often as they should", "[property]")
{
    const Model truth{9.8, 1.2};
    std::uint64_t state = 20260214; // a small generator of our own: the same numbers on every machine
    INFO("seed " << state);
    const auto uniform = [&state] {
        state = state * 6364136223846793005ULL + 1442695040888963407ULL;
        return static_cast<double>(state >> 11) / 9007199254740992.0;
    };
    int inside = 0;
    constexpr int runs = 1000;
    double deviation = 0;
    for (int run = 0; run < runs; ++run) {
        auto splits = splitsOf(truth, {5, 10, 15, 20, 25, 30, 35, 40, 50, 60});
        for (auto& split : splits)
            split.time +=
                0.01 * std::sqrt(-2 * std::log(uniform() + 1e-300)) * std::cos(2 * 3.14159265358979 * uniform());
        const auto fit = fitSplits(splits, {.keepAfterPeak = true, .keepSuspects = true});
        REQUIRE(fit);
        inside += std::abs(fit->model.vmax - 9.8) <=
                  2.306 * fit->vmaxError; // 97.5 % point of Student t, 8 degrees of freedom (common tables)
        deviation += fit->residualDeviation / runs;
    }
    CHECK(inside >= 930);
    CHECK(inside <= 980);
    CHECK(deviation == Approx(0.01).epsilon(0.05));
}
