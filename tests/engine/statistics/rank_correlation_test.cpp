#include <algorithm>
#include <array>
#include <cmath>
#include <vector>

#include <catch2/catch.hpp>

#include "engine/statistics/rank_correlation.hpp"
#include "engine/statistics/robust.hpp"

using namespace fleetrung::statistics;

namespace
{

// Twenty sessions with ties, invented; what SciPy says of them stands below (tests/reference/make_statistics.py, SciPy
// 1.10.1).
const std::vector<double> days{0, 3, 7, 10, 14, 17, 21, 21, 24, 28, 31, 35, 38, 42, 45, 49, 52, 56, 59, 63};
const std::vector<double> times{212, 209, 214, 208, 207, 209, 203, 206, 204, 199,
                                203, 201, 196, 198, 199, 193, 196, 190, 194, 191};
const std::vector<double> sprints{3.02, 2.98, 3.05, 3.01, 3.0,  2.99, 2.97, 3.03, 2.96, 2.98,
                                  2.95, 3.0,  2.94, 2.97, 2.99, 2.93, 2.96, 2.95, 2.94, 2.96};

} // namespace

TEST_CASE("Equal values share their mean rank", "[statistics]")
{
    CHECK(ranks(std::array{30.0, 10.0, 20.0, 10.0}) == std::vector<double>{4, 1.5, 3, 1.5});
}

TEST_CASE("The rank correlation is SciPy's, ties among them", "[statistics]")
{
    CHECK(rankCorrelation(days, times) == Approx(-0.9563094617190251).margin(1e-12));
    CHECK(rankCorrelation(sprints, times) == Approx(0.7781577073305559).margin(1e-12));
    CHECK(std::isnan(rankCorrelation(std::array{1.0, 1.0}, std::array{1.0, 2.0})));
    CHECK(std::isnan(rankCorrelation(std::array{1.0}, std::array{1.0})));
}

TEST_CASE("The interval of a rank correlation is near SciPy's bootstrap, and the same for the same seed",
          "[statistics]")
{
    // SciPy's percentile bootstrap with 20,000 draws: 0.526 to 0.907. Other draws differ by a few hundredths.
    for (const std::uint64_t seed : {1, 2, 3}) {
        CAPTURE(seed);
        const auto interval = rankCorrelationInterval(sprints, times, seed);
        CHECK(interval.low == Approx(0.526).margin(0.04));
        CHECK(interval.high == Approx(0.907).margin(0.02));
        const auto again = rankCorrelationInterval(sprints, times, seed);
        CHECK(again.low == interval.low);
        CHECK(again.high == interval.high);
    }
    CHECK(std::isnan(rankCorrelationInterval(std::array{1.0, 1.0}, std::array{1.0, 2.0}, 1).low));
}

TEST_CASE("The interval of a Theil-Sen slope is SciPy's, with and without ties", "[statistics]")
{
    const std::array x{1.0, 2.0, 3.0, 4.0, 5.0, 6.0};
    const std::array y{2.1, 3.9, 6.2, 7.8, 10.1, 30.0};
    CHECK(theilSenInterval(x, y).low == Approx(1.8).margin(1e-9));
    CHECK(theilSenInterval(x, y).high == Approx(11.1).margin(1e-9));
    CHECK(theilSen(days, times).slope == Approx(-1.0 / 3).margin(1e-12));
    CHECK(theilSenInterval(days, times).low == Approx(-0.4107142857142857).margin(1e-12));
    CHECK(theilSenInterval(days, times).high == Approx(-0.2857142857142857).margin(1e-12));
    CHECK(std::isnan(theilSenInterval(std::array{1.0, 1.0}, std::array{2.0, 3.0}).low));
}

TEST_CASE("A moving baseline is the middle of what came before, never of the value itself", "[statistics]")
{
    const auto baselines = movingBaseline(std::array{10.0, 12.0, 11.0, 99.0, 11.0}, 3);
    REQUIRE(baselines.size() == 5);
    CHECK(baselines[0].count == 0);
    CHECK(baselines[1].middle == 10);
    CHECK(baselines[3].middle == 11); // of 10, 12, 11
    CHECK(baselines[3].count == 3);
    CHECK(baselines[4].middle == 12); // of 12, 11, 99
    CHECK(baselines[3].deviation == Approx(1.4826).epsilon(1e-4));
}
