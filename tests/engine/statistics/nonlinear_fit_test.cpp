#include "engine/statistics/nonlinear_fit.hpp"

#include <array>
#include <cmath>

#include <catch2/catch.hpp>

#include "engine/statistics/linear_fit.hpp"

using namespace fleetrung;
using namespace fleetrung::statistics;

namespace
{

/// y = b1 (1 - exp(-b2 x)), the model of both data sets.
ResidualsAt saturation(const Eigen::VectorXd& x, const Eigen::VectorXd& y)
{
    return [x, y](const Eigen::VectorXd& b) {
        const Eigen::ArrayXd decay = (-b[1] * x.array()).exp();
        Residuals at{y.array() - b[0] * (1 - decay), Eigen::MatrixXd(x.size(), 2)};
        at.jacobian.col(0) = -(1 - decay);
        at.jacobian.col(1) = -b[0] * x.array() * decay;
        return at;
    };
}

Eigen::VectorXd vectorOf(std::initializer_list<double> values)
{
    return Eigen::Map<const Eigen::VectorXd>(values.begin(), static_cast<Eigen::Index>(values.size()));
}

} // namespace

// Source: NIST/ITL Statistical Reference Datasets, https://www.itl.nist.gov/div898/strd/, data set Misra1a (certified).
TEST_CASE("the certified values of Misra1a come out from both of its starts", "[published]")
{
    const auto x =
        vectorOf({77.6, 114.9, 141.1, 190.8, 239.9, 289.0, 332.8, 378.4, 434.8, 477.3, 536.8, 593.1, 689.1, 760.0});
    const auto y =
        vectorOf({10.07, 14.73, 17.94, 23.93, 29.61, 35.18, 40.02, 44.82, 50.76, 55.05, 61.01, 66.40, 75.47, 81.78});
    const auto start = GENERATE(std::array{500.0, 1e-4}, std::array{250.0, 5e-4});
    CAPTURE(start[0], start[1]);
    const auto fit = fitNonlinear(saturation(x, y), vectorOf({start[0], start[1]}));
    REQUIRE(fit);
    CHECK(fit->parameters[0] == Approx(2.3894212918E+02).epsilon(1e-6));
    CHECK(fit->parameters[1] == Approx(5.5015643181E-04).epsilon(1e-6));
    CHECK(fit->standardErrors[0] == Approx(2.7070075241E+00).epsilon(1e-6));
    CHECK(fit->standardErrors[1] == Approx(7.2668688436E-06).epsilon(1e-6));
    CHECK(fit->sumOfSquares == Approx(1.2455138894E-01).epsilon(1e-6));
    CHECK(fit->residualDeviation == Approx(1.0187876330E-01).epsilon(1e-6));
}

// Source: as above, data set BoxBOD (certified). From (1, 1) a plain method fails.
TEST_CASE("BoxBOD comes out as certified or is said not to have converged", "[published]")
{
    const auto x = vectorOf({1, 2, 3, 5, 7, 10});
    const auto y = vectorOf({109, 149, 149, 191, 213, 224});
    const bool easy = GENERATE(true, false);
    const auto fit = fitNonlinear(saturation(x, y), easy ? vectorOf({100, 0.75}) : vectorOf({1, 1}));
    CAPTURE(easy);
    if (easy)
        REQUIRE(fit);
    if (!fit) {
        CHECK((fit.error().code == Code::NotConverged || fit.error().code == Code::NotAvailable));
        return;
    }
    CHECK(fit->parameters[0] == Approx(2.1380940889E+02).epsilon(1e-6));
    CHECK(fit->parameters[1] == Approx(5.4723748542E-01).epsilon(1e-6));
    CHECK(fit->standardErrors[0] == Approx(1.2354515176E+01).epsilon(1e-6));
    CHECK(fit->standardErrors[1] == Approx(1.0455993237E-01).epsilon(1e-6));
    CHECK(fit->sumOfSquares == Approx(1.1680088766E+03).epsilon(1e-6));
    CHECK(fit->residualDeviation == Approx(1.7088072423E+01).epsilon(1e-6));
}

TEST_CASE("data that do not tell two unknowns apart give no numbers", "[error]")
{
    const auto x = vectorOf({1, 2, 3, 4});
    const auto fit = fitNonlinear(
        [&](const Eigen::VectorXd& b) {
            Residuals at{x * 2 - x * (b[0] + b[1]), Eigen::MatrixXd(4, 2)};
            at.jacobian << -x, -x;
            return at;
        },
        vectorOf({1, 1}));
    REQUIRE_FALSE(fit);
    CHECK(fit.error().code == Code::NotAvailable);
}

TEST_CASE("fewer measurements than unknowns are refused", "[error]")
{
    const auto fit = fitNonlinear(saturation(vectorOf({1}), vectorOf({1})), vectorOf({1, 1}));
    REQUIRE_FALSE(fit);
    CHECK(fit.error().code == Code::InvalidInput);
}
