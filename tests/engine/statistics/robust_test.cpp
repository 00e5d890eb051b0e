#include <array>

#include <catch2/catch.hpp>

#include "engine/statistics/robust.hpp"

using namespace fleetrung::statistics;

TEST_CASE("The median is the middle of the sorted values, or the mean of the two middle ones", "[statistics]")
{
    CHECK(median(std::array{3.0, 1.0, 2.0}) == 2);
    CHECK(median(std::array{4.0, 1.0, 3.0, 2.0}) == 2.5);
    CHECK(std::isnan(median({})));
}

TEST_CASE("The scaled median absolute deviation ignores one wild value", "[statistics]")
{
    // Deviations from 3 are 2 1 0 1 97: their median is 1.
    CHECK(medianAbsoluteDeviation(std::array{1.0, 2.0, 3.0, 4.0, 100.0}) == Approx(1.4826).epsilon(1e-4));
}

TEST_CASE("Winsorising draws the wild value in and leaves the others", "[statistics]")
{
    const auto drawnIn = winsorised(std::array{1.0, 2.0, 3.0, 4.0, 100.0}, 3);
    CHECK(drawnIn[0] == 1);
    CHECK(drawnIn[4] == Approx(3 + 3 * 1.4826).epsilon(1e-4));
    CHECK(winsorised(std::array{5.0, 5.0, 5.0, 9.0}, 3)[3] == 9);
}

TEST_CASE("Theil-Sen is not bent by the last point as least squares is", "[statistics]")
{
    // Example computed from the definition: 15 pairwise slopes with median 2.066667; least squares gives 4.562857.
    const std::array x{1.0, 2.0, 3.0, 4.0, 5.0, 6.0};
    const std::array y{2.1, 3.9, 6.2, 7.8, 10.1, 30.0};
    const auto line = theilSen(x, y);
    CHECK(line.slope == Approx(2.0666667).margin(1e-7));
    CHECK(line.intercept == Approx(-0.116667).margin(1e-6)); // median of y - slope x
    CHECK(std::isnan(theilSen(std::array{1.0, 1.0}, std::array{2.0, 3.0}).slope));
}
