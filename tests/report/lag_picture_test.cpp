#include "mobile/plot/lag_picture.hpp"

#include <catch2/catch.hpp>

#include "mobile/plot/spoken_summary.hpp"

using namespace fleetrung;
using namespace fleetrung::plot;

namespace
{

std::vector<transfer::Lag> lags()
{
    std::vector<transfer::Lag> lags(5);
    for (int weeks = 0; weeks <= 4; ++weeks) {
        auto& lag = lags[static_cast<std::size_t>(weeks)];
        lag.weeks = weeks;
        lag.pairs = 18 - weeks;
        lag.correlation = weeks == 2 ? 0.7 : 0.1 * weeks - 0.2;
        lag.low = *lag.correlation - 0.2;
        lag.high = *lag.correlation + 0.2;
        lag.chanceReaches = 0.55 + 0.01 * weeks;
    }
    return lags;
}

std::vector<Mark> marksOf(const Plot& plot)
{
    std::vector<Mark> marks;
    for (const auto& primitive : plot.primitives)
        if (const auto* mark = std::get_if<Mark>(&primitive))
            marks.push_back(*mark);
    return marks;
}

} // namespace

TEST_CASE("every lag has its mark with the weeks with both, the one beyond chance is filled", "[plot]")
{
    const auto plot = lagPicture(lags());
    const auto marks = marksOf(plot);
    REQUIRE(marks.size() == 5);
    CHECK(marks[3].at.x == 3);
    CHECK(marks[3].label == "15");
    for (const auto& mark : marks)
        CHECK((mark.shape == Shape::Dot) == (mark.at.x == 2));
    CHECK(plot.y.ticks.front().at == -1);
    CHECK(plot.y.ticks.back().at == 1);
}

TEST_CASE("the lags are said with their weeks, and what chance alone reaches", "[plot]")
{
    const auto said = spokenSummary(lagPicture(lags()));
    CAPTURE(said);
    CHECK_THAT(said, Catch::Contains("2 weeks, 16 with both at 0.70"));
    CHECK_THAT(said, Catch::Contains("Chance reaches: lowest 0.55, highest 0.59."));
}

TEST_CASE("where chance reaches beyond one, its line stays in the picture", "[plot]")
{
    auto few = lags();
    for (auto& lag : few)
        lag.chanceReaches = 1.4;
    for (const auto& primitive : lagPicture(few).primitives)
        if (const auto* line = std::get_if<Line>(&primitive); line != nullptr && line->role == Role::Planned)
            for (const auto& point : line->points)
                CHECK(point.y == 1);
}

TEST_CASE("a lag without correlation has no mark, and without any the picture says so", "[plot]")
{
    auto some = lags();
    some[1].correlation.reset();
    CHECK(marksOf(lagPicture(some)).size() == 4);
    for (auto& lag : some)
        lag.correlation.reset();
    CHECK_FALSE(lagPicture(some).empty.empty());
}
