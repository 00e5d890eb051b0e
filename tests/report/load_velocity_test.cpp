// The line of velocity against load of a ladder, and its picture.
#include "engine/report/load_velocity.hpp"

#include <catch2/catch.hpp>

#include "mobile/plot/load_velocity_picture.hpp"
#include "mobile/plot/spoken_summary.hpp"

using namespace fleetrung;
using namespace fleetrung::plot;
using std::chrono::days;

namespace
{

constexpr CivilDate first = std::chrono::sys_days{std::chrono::year{2026} / 1 / 5};

report::Ladder squat()
{
    report::Ladder ladder;
    ladder.key = "squat";
    ladder.name = "Squat";
    ladder.rungs = {{"full-squat", "Full squat", {}}, {"half-squat", "Half squat", {}}};
    ladder.taken = {{0, first, first + days{34}}, {1, first + days{35}, first + days{90}}};
    for (int day = 0; day < 12; ++day) {
        const std::size_t rung = day < 6 ? 0 : 1;
        report::SessionLoads loads{first + days{7 * day}, rung, report::Side::Both, ladder.rungs[rung].key, {}};
        for (const double load : {60.0, 90.0, 120.0})
            loads.points.push_back({load, 1.3 + 0.1 * static_cast<double>(rung) - 0.0065 * load +
                                              (day % 2 == 0 ? 0.01 : -0.01) * (load > 80 ? 1 : -1)});
        ladder.loads.push_back(loads);
    }
    return ladder;
}

} // namespace

TEST_CASE("the line is of the rung of today alone, from its own sessions", "[loads]")
{
    const auto found = report::loadVelocities(squat());
    REQUIRE(found.size() == 1);
    CHECK(found[0].rung == 1);
    CHECK(found[0].sessions == 6);
    CHECK(found[0].points.size() == 18);
    CHECK(found[0].days.size() == 18);
    REQUIRE(found[0].curve);
    CHECK(found[0].curve->line.velocityAtZero == Approx(1.4).margin(0.03));
}

TEST_CASE("left and right have a line each", "[loads]")
{
    auto ladder = squat();
    for (std::size_t i = 0; i < ladder.loads.size(); ++i)
        ladder.loads[i].side = i % 2 == 0 ? report::Side::Left : report::Side::Right;
    const auto found = report::loadVelocities(ladder);
    REQUIRE(found.size() == 2);
    CHECK(found[0].side == report::Side::Left);
    CHECK(found[1].sessions == 3);
}

TEST_CASE("a rung not measured yet says what to lift, a ladder of jumps has no loads", "[loads]")
{
    auto ladder = squat();
    ladder.loads.resize(6); // on the full squat
    const auto found = report::loadVelocities(ladder);
    REQUIRE(found.size() == 1);
    CHECK(found[0].points.empty());
    REQUIRE_FALSE(found[0].curve);
    CHECK(found[0].curve.error().code == Code::NotAvailable);
    ladder.evidenceName = "contact time";
    CHECK(report::loadVelocities(ladder).empty());
}

TEST_CASE("the picture of loads stands in the unit asked for and says the 1RM", "[loads][plot]")
{
    const auto found = report::loadVelocities(squat()).front();
    const auto metric = loadVelocityPicture("Half squat", found.points, &*found.curve, {});
    CHECK(metric.x.unit == "kg");
    const auto pounds = loadVelocityPicture("Half squat", found.points, &*found.curve, {"lb", "pounds", 0.45359237});
    const auto at = [](const Plot& plot) {
        for (const auto& primitive : plot.primitives)
            if (const auto* mark = std::get_if<Mark>(&primitive); mark != nullptr && mark->role == Role::Latest)
                return mark->at.x;
        return 0.0;
    };
    CHECK(at(metric) == Approx(found.curve->line.estimatedMaximum));
    CHECK(at(pounds) == Approx(at(metric) / 0.45359237));
    CHECK_THAT(spokenSummary(metric), Catch::Contains("Estimated 1RM, 1 mark: "));
    CHECK(metric.x.from < 60);
    CHECK(metric.x.to > at(metric));
}

TEST_CASE("a finger on the loads means a day's point, which is ringed", "[loads][touch]")
{
    const auto found = report::loadVelocities(squat()).front();
    const auto picture = loadVelocityPicture("Half squat", found.points, &*found.curve, {});
    const auto& point = found.points[4];
    const auto hit = loadVelocityHit(picture, found.points, {}, {point.loadKg + 1, point.velocity});
    REQUIRE(hit);
    CHECK(found.points[*hit].loadKg == point.loadKg);
    CHECK_FALSE(loadVelocityHit(picture, found.points, {}, {point.loadKg, 0.05}));
    const auto chosen = loadVelocityPicture("Half squat", found.points, &*found.curve, {}, hit);
    CHECK_THAT(spokenSummary(chosen), Catch::Contains("Chosen: "));
}
