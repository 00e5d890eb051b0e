#include "engine/track/fast_metres.hpp"

#include <cmath>

#include <catch2/catch.hpp>

using namespace fleetrung;
using namespace fleetrung::track;

namespace
{

const CivilDate may1 = *parseDate("2026-05-01");

KnownRun flying20(double time, CivilDate day = may1, std::optional<double> wind = {}, bool byHand = false)
{
    Run run;
    run.day = day;
    run.flying = true;
    run.distance = 20;
    run.runIn = 30;
    run.time = time;
    run.wind = wind;
    run.options.timing = byHand ? sprint::Timing::Hand : sprint::Timing::Electronic;
    return know(run);
}

Run standing(std::vector<double> marks, const sprint::Model& model)
{
    Run run;
    run.day = may1;
    for (const double distance : marks)
        run.splits.push_back({distance, model.timeTo(distance)});
    run.distance = marks.back();
    run.time = model.timeTo(marks.back());
    return run;
}

/// Berlin 2009, men's 100 m final, winner: time from the gun, reaction 0.146 s, wind +0.9. Source: Graubner R, Nixdorf
/// E, New Stud Athl 2011;26(1/2):19-53 (splits as quoted in teaching files).
Run berlin()
{
    Run run;
    run.day = may1;
    run.distance = 100;
    run.time = 9.58;
    run.wind = 0.9;
    run.options.start.clock = sprint::Clock::Gun;
    run.options.start.reaction = 0.146;
    run.splits = {{10, 1.89}, {20, 2.88}, {30, 3.78}, {40, 4.64}, {50, 5.47},
                  {60, 6.29}, {70, 7.10}, {80, 7.92}, {90, 8.75}, {100, 9.58}};
    return run;
}

} // namespace

TEST_CASE("best speed of the Berlin 2009 final is what its fit or its fastest ten metres show", "[best]")
{
    const auto best = bestSpeed(std::vector{know(berlin())}, may1);
    REQUIRE(best);
    // 60 to 70 m in 0.81 s are 12.35 m/s; published top speed 12.2-12.4 m/s depends on how it was smoothed.
    CHECK(best->speed >= 10 / 0.81 - 1e-9);
    CHECK(best->speed < 12.6);
}

TEST_CASE("best speed is the greatest of the twelve months up to the day, older runs are forgotten", "[best]")
{
    const std::vector runs{flying20(1.90, may1 - std::chrono::days{366}), flying20(2.00, may1 - std::chrono::days{30}),
                           flying20(2.10), flying20(1.80, may1 + std::chrono::days{1})};
    CHECK(bestSpeed(runs, may1)->speed == Approx(10.0));
    CHECK(bestSpeed(runs, may1 - std::chrono::days{1})->speed == Approx(20 / 1.90));
    CHECK_FALSE(bestSpeed(runs, may1 - std::chrono::days{400}));
}

TEST_CASE("a run with more than 2.0 m/s of wind behind it makes no best speed, into the wind it does", "[best]")
{
    CHECK(bestSpeed(std::vector{flying20(2.0, may1, 2.0), flying20(1.9, may1, 2.1)}, may1)->speed == Approx(10));
    CHECK(bestSpeed(std::vector{flying20(2.0), flying20(1.9, may1, -3.0)}, may1)->speed == Approx(20 / 1.9));
    CHECK_FALSE(bestSpeed(std::vector{flying20(1.9, may1, 2.1)}, may1));
}

TEST_CASE("a faster time by hand makes no best speed beside gates, and does where there is nothing else", "[best]")
{
    const auto byHand = flying20(1.8, may1, {}, true);
    CHECK(bestSpeed(std::vector{byHand, flying20(2.0)}, may1)->speed == Approx(10));
    const auto alone = bestSpeed(std::vector{byHand}, may1);
    CHECK(alone->byHand);
    CHECK(describe(*alone) == "11.11 m/s, flying zone, by hand, 2026-05-01");
}

TEST_CASE("splits ten metres apart show a speed, a shorter stretch does not", "[best]")
{
    Run run;
    run.day = may1;
    run.distance = 30;
    run.time = 4.2;
    run.splits = {{20, 3.2}, {25, 3.6}}; // 5 m in 0.4 s would be 12.5 m/s
    const auto top = know(run).top;
    REQUIRE(top);
    CHECK(top->source == SpeedSource::Stretch);
    CHECK(top->speed == Approx(10.0)); // 20 to 30 m in 1.0 s
}

TEST_CASE("the top speed estimated from distance and time gives that time back", "[best][closed-form]")
{
    const sprint::Model model{9.4, usualTau};
    const double distance = GENERATE(20.0, 30.0, 60.0, 150.0);
    CHECK(speedFromTime(distance, model.timeTo(distance)) == Approx(9.4).epsilon(1e-9));
}

TEST_CASE("a flying zone counts whole where its mean speed reaches the share of best speed", "[fast]")
{
    const auto best = flying20(2.0).top; // 10 m/s
    const auto at = [&](double time) { return fastMetres(flying20(time), best); };
    CHECK(at(2.0).at95 == 20);
    CHECK(at(2.0).basis == Basis::Measured);
    CHECK(at(20 / 9.5).at95 == 20);
    CHECK(at(20 / 9.49).at95 == 0);
    CHECK(at(20 / 9.49).at90 == 20);
    CHECK(at(20 / 8.99).at90 == 0);
}

TEST_CASE("a run with splits counts from where the fitted speed reaches the share", "[fast][closed-form]")
{
    const sprint::Model model{10, 1.25};
    const auto known = know(standing({5, 10, 20, 30, 40, 60}, model));
    REQUIRE(known.fit);
    const auto fast = fastMetres(known, known.top);
    // v reaches 0.9 vmax after t = tau ln 10, at d = vmax (t - 0.9 tau).
    const double from90 = 10 * (1.25 * std::log(10.0) - 1.25 * 0.9);
    const double from95 = 10 * (1.25 * std::log(20.0) - 1.25 * 0.95);
    CHECK(fast.at90 == Approx(60 - from90).epsilon(1e-3));
    CHECK(fast.at95 == Approx(60 - from95).epsilon(1e-3));
    CHECK(fast.basis == Basis::Fitted);
}

TEST_CASE("beyond the splits of the fit each stretch counts by its own mean speed", "[fast]")
{
    const auto known = know(berlin());
    REQUIRE(known.fit);
    const auto fast = fastMetres(known, known.top);
    // All ten-metre stretches from 20 m on were run at 11.1 m/s or more: 90 % of 12.35 m/s is reached between 20 and
    // 40 m, and no stretch after that falls below it.
    CHECK(fast.at90 > 60);
    CHECK(fast.at90 < 80);
    CHECK(fast.at95 < fast.at90);
    CHECK(fast.at95 > 45);
}

TEST_CASE("a run without splits is estimated and says so", "[fast]")
{
    const sprint::Model model{10, usualTau};
    auto run = standing({60}, model);
    run.splits.clear();
    const auto fast = fastMetres(know(run), flying20(2.0).top);
    const double from90 = 10 * usualTau * (std::log(10.0) - 0.9);
    CHECK(fast.at90 == Approx(60 - from90).epsilon(1e-6));
    CHECK(fast.basis == Basis::Estimated);
    CHECK_FALSE(fast.why.empty());
}

TEST_CASE("an easy run over a long distance counts no fast metres", "[fast]")
{
    Run run;
    run.day = may1;
    run.distance = 150;
    run.time = 22; // 6.8 m/s in the mean
    CHECK(fastMetres(know(run), flying20(2.0).top).at90 == 0);
}

TEST_CASE("untimed work counts fast metres by effort 9 in sprints and flying runs alone", "[fast]")
{
    const auto best = flying20(2.0).top;
    const auto of = [&](WorkKind kind, std::optional<double> effort) {
        Work work{may1, kind, 30, 4, {}, effort, false};
        return fastMetres(work, best);
    };
    CHECK(of(WorkKind::Flying, 9).at95 == 120);
    CHECK(of(WorkKind::Flying, 8.5).at90 == 0);
    CHECK(of(WorkKind::Flying, {}).at90 == 0);
    const double from90 = 10 * usualTau * (std::log(10.0) - 0.9);
    CHECK(of(WorkKind::Sprints, 10).at90 == Approx(4 * (30 - from90)));
    CHECK(of(WorkKind::Sprints, 10).basis == Basis::Estimated);
    for (const auto kind : {WorkKind::Resisted, WorkKind::Hill, WorkKind::Easy}) {
        CHECK(of(kind, 10).at90 == 0);
        CHECK_FALSE(of(kind, 10).why.empty());
    }
}

TEST_CASE("without any known speed there are no fast metres, and the reason is said", "[fast]")
{
    const auto fast = fastMetres(Work{may1, WorkKind::Flying, 30, 4, 3.0, 10.0, false}, {});
    CHECK(fast.at90 == 0);
    CHECK(fast.basis == Basis::None);
    CHECK(fast.why == "no run of the last 12 months tells a best speed");
}

TEST_CASE("a time that cannot be counts nothing and makes no best speed", "[fast]")
{
    for (const double time : {0.0, -1.0, 0.5}) {
        CAPTURE(time);
        const auto known = flying20(time);
        CHECK_FALSE(known.top);
        CHECK(fastMetres(known, flying20(2.0).top).at90 == 0);
    }
}
