#include "engine/strength/load_velocity_curve.hpp"

#include <cmath>

#include <catch2/catch.hpp>

using namespace fleetrung;
using namespace fleetrung::strength;

namespace
{

/// 1.4 m/s without load, 0.3 m/s at 160 kg, a day-to-day wander of 0.02 m/s.
std::vector<LoadVelocityPoint> season()
{
    std::vector<LoadVelocityPoint> points;
    for (int day = 0; day < 8; ++day)
        for (const double load : {60.0, 90.0, 120.0})
            points.push_back({load, 1.4 - 1.1 / 160 * load + 0.02 * std::sin(1.7 * day + load)});
    return points;
}

} // namespace

TEST_CASE("The season's line points to the 1RM, and its interval holds it", "[strength]")
{
    const auto curve = loadVelocityCurve(season(), "full-squat");
    REQUIRE(curve);
    const double truth = (1.4 - 0.29) / (1.1 / 160); // the full squat's 0.29 m/s
    CHECK(curve->line.estimatedMaximum == Approx(truth).epsilon(0.02));
    REQUIRE(curve->line.maximumLow);
    CHECK(*curve->line.maximumLow < truth);
    CHECK(*curve->line.maximumHigh > truth);
}

TEST_CASE("One odd load of a season does not bend its line", "[strength]")
{
    auto points = season();
    const auto before = loadVelocityCurve(points, "full-squat");
    points[5].velocity = 0.2; // a set that was stopped short
    const auto after = loadVelocityCurve(points, "full-squat");
    REQUIRE((before && after));
    CHECK(after->line.estimatedMaximum == Approx(before->line.estimatedMaximum).epsilon(0.015));
}

TEST_CASE("The band lies about the line, is narrowest among the points and wider towards the 1RM", "[strength]")
{
    const auto curve = loadVelocityCurve(season(), "full-squat");
    REQUIRE(curve);
    REQUIRE(curve->band.size() == 7);
    double narrowest = 1e9;
    for (const auto& reach : curve->band) {
        const double onLine = (reach.velocity - curve->line.velocityAtZero) / curve->line.slope;
        CHECK(reach.low < onLine);
        CHECK(onLine < reach.high);
        narrowest = std::min(narrowest, reach.high - reach.low);
    }
    const auto& last = curve->band.back();
    CHECK(last.velocity == Approx(0.29));
    CHECK(last.high - last.low > 1.3 * narrowest);
    CHECK(last.low == Approx(*curve->line.maximumLow));
}

TEST_CASE("A lift without a published velocity at 1RM has a line and points to no 1RM", "[strength]")
{
    const auto curve = loadVelocityCurve(season(), "quarter-squat");
    const auto squat = loadVelocityCurve(season(), "full-squat");
    REQUIRE((curve && squat));
    CHECK_FALSE(curve->slowest);
    CHECK(curve->line.slope == Approx(squat->line.slope));
    CHECK(curve->line.velocityAtZero == Approx(squat->line.velocityAtZero));
}

TEST_CASE("Too few loads are refused with what to lift next, none as well", "[strength][error]")
{
    for (const auto& points :
         {std::vector<LoadVelocityPoint>{}, std::vector<LoadVelocityPoint>{{100, 0.6}, {105, 0.55}}}) {
        const auto curve = loadVelocityCurve(points, "full-squat");
        REQUIRE_FALSE(curve);
        CHECK(curve.error().code == Code::NotAvailable);
        CHECK_THAT(curve.error().message, Catch::Contains("two loads at least 10 % apart"));
    }
}
