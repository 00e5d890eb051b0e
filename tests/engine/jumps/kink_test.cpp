#include <catch2/catch.hpp>

#include <cmath>
#include <vector>

#include "engine/jumps/kink.hpp"

using namespace fleetrung::jumps;

TEST_CASE("A kink between two samples is found to a hundredth of the interval where the curves are what is fitted",
          "[jumps]")
{
    for (const double kink : {0.0503, 0.0524, 0.0541}) {
        std::vector<double> times, values;
        for (int i = 0; i < 20; ++i) {
            const double t = 0.005 * i;
            times.push_back(t);
            values.push_back(t < kink ? 0.2 + 3 * t : 0.2 + 3 * t + 1500 * (t - kink) - 9000 * std::pow(t - kink, 2));
        }
        const auto found = fitKink(times, values, 0.050, 0.055, {1, 2}, 1e-6);
        REQUIRE(found);
        CHECK(found->time == Approx(kink).margin(5e-5));
        CHECK(found->uncertainty < 5e-5);
    }
}

TEST_CASE("Fewer points than unknowns give no kink", "[jumps]")
{
    const std::vector<double> times{0, 1, 2, 3};
    CHECK_FALSE(fitKink(times, times, 1, 2, {1, 2}, 1));
}
