#include "mobile/plot/pictures.hpp"

#include <algorithm>

#include <catch2/catch.hpp>

#include "mobile/pdf/report_pictures.hpp"
#include "mobile/plot/spoken_summary.hpp"
#include "tests/report/invented_season.hpp"

using namespace fleetrung;
using namespace fleetrung::plot;

namespace
{

template <class Kind> std::vector<Kind> all(const Plot& plot)
{
    std::vector<Kind> items;
    for (const auto& primitive : plot.primitives)
        if (const auto* item = std::get_if<Kind>(&primitive))
            items.push_back(*item);
    return items;
}

bool holds(const std::string& text, const std::string& part)
{
    return text.find(part) != std::string::npos;
}

} // namespace

TEST_CASE("ticks stand at one, two or five times a power of ten", "[plot]")
{
    CHECK(niceStep(0, 500, 6) == 100);
    CHECK(niceStep(0, 1, 5) == Approx(0.2));
    CHECK(niceStep(2.05, 2.20, 6) == Approx(0.05));
    CHECK(niceStep(3, 3, 5) == 1);
    const auto ticks = niceTicks(-0.7, 0.9, 4);
    REQUIRE(ticks.size() == 3);
    CHECK(ticks[0].label == "\xE2\x88\x92"
                            "0.5");
    CHECK(ticks[1].label == "0.0");
    CHECK(ticks[2].label == "0.5");
}

TEST_CASE("on the strike line each repetition stands at its time to peak velocity, in ms", "[plot]")
{
    StrikeLineInput input;
    input.targetBand = Span{0.24, 0.30};
    input.repetitions = {{.number = 1, .timeToPeak = 0.261, .uncertainty = 0.004},
                         {.number = 2, .timeToPeak = 0.286, .uncertainty = 0.004}};
    const auto plot = strikeLine(input);
    const auto marks = all<Mark>(plot);
    REQUIRE(marks.size() == 2);
    CHECK(marks[0].at.x == Approx(261));
    CHECK(marks[1].role == Role::Latest);
    CHECK(plot.x.from == 0);
    const auto said = spokenSummary(plot);
    CHECK(holds(said, "Target band: 240 to 300 milliseconds."));
    CHECK(holds(said, "1 at 261; 2 at 286"));
    CHECK(holds(said, "Latest: 286 milliseconds, inside the target band."));
    CHECK(holds(said, "for scale, not a goal"));
}

TEST_CASE("the strike line says when the latest repetition is outside the band, and which ones do not count", "[plot]")
{
    StrikeLineInput input;
    input.targetBand = Span{0.24, 0.30};
    input.repetitions = {{.number = 1, .timeToPeak = 0.25, .counts = false}, {.number = 2, .timeToPeak = 0.9}};
    const auto plot = strikeLine(input);
    CHECK(plot.x.to >= 900);
    const auto said = spokenSummary(plot);
    CHECK(holds(said, "1 at 250 (no evidence)"));
    CHECK(holds(said, "outside the target band"));
}

TEST_CASE("the axis of the strike line does not move while the first repetitions come in", "[plot]")
{
    StrikeLineInput input;
    const auto empty = strikeLine(input);
    input.repetitions = {{.number = 1, .timeToPeak = 0.3}};
    CHECK(strikeLine(input).x.to == empty.x.to);
    CHECK(strikeLine(input).y.to == empty.y.to);
}

TEST_CASE("times to peak velocity of different rungs are never joined", "[plot]")
{
    const auto report = invented::season();
    for (const auto& ladder : report.ladders) {
        const auto plot = pdf::trendOf(report, ladder);
        const auto lines = all<Line>(plot);
        CHECK(lines.size() >= ladder.taken.size());
        for (const auto& line : lines)
            for (const auto& part : plot.strip) {
                const bool begins = line.points.front().x >= part.xFrom && line.points.front().x < part.xTo;
                const bool ends = line.points.back().x >= part.xFrom && line.points.back().x < part.xTo;
                CHECK(begins == ends);
            }
        CHECK(all<Rule>(plot).size() == plot.strip.size() - 1);
    }
}

TEST_CASE("each stay on a rung has the target band of that rung alone", "[plot]")
{
    const auto report = invented::season();
    const auto& squat = report.ladders[0];
    const auto bands = all<Band>(pdf::trendOf(report, squat));
    REQUIRE(bands.size() == squat.taken.size());
    for (std::size_t i = 0; i < bands.size(); ++i) {
        CHECK(*bands[i].yFrom == Approx(squat.rungs[i].targetBand->from * 1000));
        CHECK(*bands[i].yTo == Approx(squat.rungs[i].targetBand->to * 1000));
        if (i > 0)
            CHECK(*bands[i].xFrom >= *bands[i - 1].xTo);
    }
}

TEST_CASE("the stair says where it was planned to be and where it is", "[plot]")
{
    const auto report = invented::season();
    const auto said = spokenSummary(pdf::stairOf(report, report.ladders[0]));
    CHECK(holds(said, "Squat ladder. Across: week 1 to 29."));
    CHECK(holds(said, "Planned: Full squat from week 1, Parallel squat from week 7,"));
    CHECK(holds(said, "Taken: Full squat from week 1, Parallel squat from week 8, Half squat from week 14, Quarter "
                      "squat from week 18."));
    CHECK(holds(said, "Regional championships, Ostermoor (main), week 29"));
    CHECK(holds(said, "Now on Quarter squat."));
}

TEST_CASE("a pause in the plan breaks the planned line", "[plot]")
{
    const auto day = [](std::string_view text) { return *parseDate(text); };
    StairInput input;
    input.rungs = {"Full", "Half"};
    input.season.first = day("2026-01-05");
    input.season.last = day("2026-06-28");
    input.planned = {{0, day("2026-01-05"), day("2026-02-01")},
                     {1, day("2026-02-02"), day("2026-03-01")},
                     {0, day("2026-03-16"), day("2026-05-03")}};
    const auto lines = all<Line>(stair(input));
    CHECK(std::count_if(lines.begin(), lines.end(), [](const Line& line) { return line.role == Role::Planned; }) == 2);
}

TEST_CASE("a thinned trace keeps every peak", "[plot]")
{
    VelocityTraceInput input;
    for (int i = 0; i < 8000; ++i) {
        input.time.push_back(i * 0.005);
        input.velocity.push_back(i % 1000 == 500 ? 1.5 : 0.0);
    }
    const auto plot = velocityTrace(input);
    for (const auto& line : all<Line>(plot)) {
        if (line.role != Role::Taken)
            continue;
        CHECK(line.points.size() <= 2 * input.mostPoints);
        CHECK(std::count_if(line.points.begin(), line.points.end(),
                            [](const Point& point) { return point.y == 1.5; }) == 8);
    }
}

TEST_CASE("the curve of a sprint ends at its top speed and names the stretches and what was left out", "[plot]")
{
    // Berlin 2009, men's 100 m final, winner (Graubner, Nixdorf, New Stud Athl 2011;26:19-53), time from the gun.
    const std::vector<sprint::Split> splits{{10, 1.89}, {20, 2.88}, {30, 3.78}, {40, 4.64}, {50, 5.47},
                                            {60, 6.29}, {70, 7.10}, {80, 7.92}, {90, 8.75}, {100, 9.58}};
    const auto fit = sprint::fitSplits(splits, {.start = {.clock = sprint::Clock::Gun, .reaction = 0.146}});
    REQUIRE(fit);
    const auto input = sprintCurveInput(*fit, 0);
    CHECK(input.curve.front().y == 0);
    CHECK(input.curve.back().y == Approx(fit->model.vmax).epsilon(0.001));
    REQUIRE(input.stretches.size() == splits.size());
    CHECK(input.stretches[6].speed == Approx(10 / 0.81)); // 60 to 70 m, the fastest
    CHECK(input.stretches[0].speed == Approx(10 / (1.89 - 0.146)));
    CHECK_FALSE(input.stretches.back().used);
    const auto said = spokenSummary(sprintCurve(input));
    CHECK(holds(said, "60 to 70 m at 12.35"));
    CHECK(holds(said, "left out of the fit"));
    const auto residuals = spokenSummary(splitResiduals(input));
    CHECK(holds(residuals, "Across: way from 0 to 100 metres."));
    CHECK(holds(residuals, "Above the line: later than fitted."));
}

TEST_CASE("a picture with nothing to show says so", "[plot]")
{
    CHECK(holds(spokenSummary(sprintCurve({})), "No fit."));
    CHECK(holds(spokenSummary(splitResiduals({})), "No fit."));
    TpvTrendInput trend;
    trend.lift = "Squat";
    CHECK(holds(spokenSummary(tpvTrend(trend)), "No probe sets yet."));
    CHECK(holds(spokenSummary(sprintTrend({})), "No runs yet."));
    CHECK(holds(spokenSummary(velocityTrace({})), "No recording."));
    CHECK_FALSE(spokenSummary(strikeLine({})).empty());
    CHECK_FALSE(spokenSummary(stair({})).empty());
}
