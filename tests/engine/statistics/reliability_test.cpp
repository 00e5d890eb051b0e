#include <array>

#include <catch2/catch.hpp>

#include "engine/statistics/reliability.hpp"
#include "engine/statistics/robust.hpp"

using namespace fleetrung::statistics;

namespace
{
// Worked example of a methods textbook that uses the example data of Hopkins 2000:
// https://dhammarstrom.github.io/quant-methods/08-phys-lab-reliability.html
constexpr std::array firstTrial{62.0, 78.0, 81.0, 55.0, 66.0};
constexpr std::array secondTrial{67.0, 76.0, 87.0, 55.0, 63.0};
} // namespace

TEST_CASE("Typical error of the Hopkins example is 2.9", "[statistics][published]")
{
    const double error = typicalError(firstTrial, secondTrial);
    CHECK(error == Approx(2.8896).margin(1e-3));
    const double grandMean = (mean(firstTrial) + mean(secondTrial)) / 2;
    CHECK(100 * error / grandMean == Approx(4.188).margin(1e-3)); // as a coefficient of variation, %
    CHECK(minimalDetectableChange(error) == Approx(8.0097).margin(1e-3));
}

TEST_CASE("A change of 7 is not beyond the error of the Hopkins example, a change of 9 is", "[statistics][published]")
{
    const double limit = minimalDetectableChange(typicalError(firstTrial, secondTrial));
    CHECK_FALSE(7 > limit);
    CHECK(9 > limit);
}

TEST_CASE("The smallest worthwhile change is a fifth of the spread between athletes", "[statistics][published]")
{
    CHECK(smallestWorthwhileChange(sampleDeviation(firstTrial)) == Approx(2.1845).margin(1e-3));
    CHECK(smallestWorthwhileChange(5, 3) == Approx(0.8)); // the instrument's own spread is taken out: sqrt(25 - 9) / 5
    CHECK(smallestWorthwhileChange(3, 5) == 0);
}

TEST_CASE("Without sessions the typical error is the prior, sessions move it towards the athlete's own", "[statistics]")
{
    CHECK(typicalErrorWithPrior({}, 24) == 24);
    const std::array<double, 6> differences{10, -10, 10, -10, 10, -10};
    // TE^2 = (6 * 24^2 + 6 * 100 / 2) / 12 = 313
    CHECK(typicalErrorWithPrior(differences, 24) == Approx(std::sqrt(313.0)));
}

TEST_CASE("One wild session moves the typical error less than its square would", "[statistics]")
{
    const std::array<double, 7> differences{8, -9, 10, -8, 9, -10, 200};
    const double plain = std::sqrt((6 * 400 + (490.0 + 200 * 200) / 2) / 13);
    // Median 8, scaled deviation 1.4826 * 16: the 200 is drawn in to 8 + 3 * 23.72 = 79.2.
    CHECK(typicalErrorWithPrior(differences, 20) ==
          Approx(std::sqrt((2400 + (490 + 79.165 * 79.165) / 2) / 13)).epsilon(1e-4));
    CHECK(typicalErrorWithPrior(differences, 20) < 0.6 * plain);
}

TEST_CASE("A spread needs two values", "[statistics]")
{
    CHECK(std::isnan(sampleDeviation(std::array{4.0})));
    CHECK(std::isnan(typicalError(std::array{4.0, 5.0}, std::array{4.0})));
}
