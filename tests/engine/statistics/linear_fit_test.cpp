#include <array>

#include <catch2/catch.hpp>

#include "engine/statistics/linear_fit.hpp"

using namespace fleetrung;
using namespace fleetrung::statistics;

TEST_CASE("Least squares reaches the certified values of the Norris data", "[statistics][published]")
{
    // NIST/ITL Statistical Reference Datasets, Norris, https://www.itl.nist.gov/div898/strd/ (certified values).
    const std::array x{0.2, 337.4, 118.2, 884.6, 10.1,  226.5, 666.3, 996.3, 448.6, 777.0, 558.2, 0.4,
                       0.6, 775.5, 666.9, 338.0, 447.5, 11.6,  556.0, 228.1, 995.8, 887.6, 120.2, 0.3,
                       0.3, 556.8, 339.1, 887.2, 999.0, 779.0, 11.1,  118.3, 229.2, 669.1, 448.9, 0.5};
    const std::array y{0.1, 338.8, 118.1, 888.0, 9.2,   228.1, 668.5, 998.5, 449.1, 778.9, 559.2, 0.3,
                       0.1, 778.1, 668.8, 339.3, 448.9, 10.8,  557.7, 228.3, 998.0, 888.8, 119.6, 0.3,
                       0.6, 557.6, 339.3, 888.0, 998.5, 778.9, 10.2,  117.6, 228.9, 668.4, 449.2, 0.2};
    const auto fit = fitLine(x, y);
    REQUIRE(fit);
    CHECK(fit->intercept == Approx(-0.262323073774029).epsilon(1e-9));
    CHECK(fit->slope == Approx(1.00211681802045).epsilon(1e-9));
    CHECK(fit->interceptError == Approx(0.23281823430153).epsilon(1e-9));
    CHECK(fit->slopeError == Approx(0.0004297968482).epsilon(1e-9));
    CHECK(fit->residualDeviation == Approx(0.884796396144373).epsilon(1e-9));
}

TEST_CASE("A line is refused where there is none", "[statistics]")
{
    CHECK(fitLine(std::array{1.0}, std::array{1.0}).error().code == Code::InvalidInput);
    CHECK(fitLine(std::array{2.0, 2.0}, std::array{1.0, 3.0}).error().code == Code::InvalidInput);
    CHECK(fitLine(std::array{2.0, 3.0}, std::array{1.0}).error().code == Code::InvalidInput);
}
