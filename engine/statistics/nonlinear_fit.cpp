#include "engine/statistics/nonlinear_fit.hpp"

#include <algorithm>
#include <cmath>

#include <Eigen/QR>

namespace fleetrung::statistics
{
namespace
{

constexpr double smallestStep = 1e-12;     // relative to the parameters
constexpr double restingStep = 1e-7;       // likewise, of an undamped step: the fit has come to rest
constexpr double leastDetermined = 1e-10;  // least over greatest pivot of the scaled derivatives
constexpr double smallestGradient = 1e-13; // relative to residuals and derivatives: their cosine

/// The step that the damped linear problem gives: min |J h + r|^2 + damping |D h|^2, solved by orthogonal factors,
/// since J'J would lose half of the digits.
Eigen::VectorXd dampedStep(const Residuals& at, const Eigen::VectorXd& scale, double damping)
{
    const auto rows = at.jacobian.rows();
    const auto columns = at.jacobian.cols();
    Eigen::MatrixXd stacked = Eigen::MatrixXd::Zero(rows + columns, columns);
    stacked.topRows(rows) = at.jacobian;
    stacked.bottomRows(columns) = (std::sqrt(damping) * scale).asDiagonal();
    Eigen::VectorXd right = Eigen::VectorXd::Zero(rows + columns);
    right.head(rows) = -at.value;
    return stacked.colPivHouseholderQr().solve(right);
}

bool finite(const Residuals& at)
{
    return at.value.allFinite() && at.jacobian.allFinite();
}

/// Cosine of the angle between the residuals and the derivative closest to them; 0 at a least-squares solution.
double gradientCosine(const Residuals& at)
{
    const double length = at.value.norm();
    double greatest = 0;
    for (Eigen::Index i = 0; i < at.jacobian.cols(); ++i) {
        const double column = at.jacobian.col(i).norm();
        if (column > 0 && length > 0)
            greatest = std::max(greatest, std::abs(at.jacobian.col(i).dot(at.value)) / column / length);
    }
    return greatest;
}

/// `scale`: the greatest lengths that the derivatives had on the way; where one has all but vanished the parameter ran
/// off.
Expected<NonlinearFit> described(const Residuals& at, const Eigen::VectorXd& parameters, const Eigen::VectorXd& scale,
                                 int iterations)
{
    const auto n = at.value.size();
    const auto p = parameters.size();
    const Eigen::VectorXd lengths = at.jacobian.colwise().norm();
    if ((lengths.array() <= leastDetermined * scale.array()).any())
        return fail(Code::NotAvailable, {}, "the data do not determine the parameters");
    const Eigen::MatrixXd scaled = at.jacobian * lengths.cwiseInverse().asDiagonal();
    const auto factors = scaled.colPivHouseholderQr();
    const Eigen::MatrixXd upper = factors.matrixR().topLeftCorner(p, p);
    if (std::abs(upper(p - 1, p - 1)) < leastDetermined * std::abs(upper(0, 0)))
        return fail(Code::NotAvailable, {}, "the data do not determine the parameters");

    NonlinearFit fit;
    fit.parameters = parameters;
    fit.residuals = at.value;
    fit.sumOfSquares = at.value.squaredNorm();
    fit.iterations = iterations;
    fit.residualDeviation = n > p ? std::sqrt(fit.sumOfSquares / static_cast<double>(n - p)) : 0;
    const Eigen::MatrixXd inverse =
        upper.triangularView<Eigen::Upper>().solve(Eigen::MatrixXd::Identity(p, p)); // of R, permuted below
    const Eigen::MatrixXd unpermuted = factors.colsPermutation() * inverse;
    const Eigen::MatrixXd root = lengths.cwiseInverse().asDiagonal() * unpermuted;
    fit.covariance = root * root.transpose() * (fit.residualDeviation * fit.residualDeviation);
    fit.standardErrors = fit.covariance.diagonal().cwiseSqrt();
    fit.leverage = (at.jacobian * root).rowwise().squaredNorm();
    return fit;
}

} // namespace

Expected<NonlinearFit> fitNonlinear(const ResidualsAt& residualsAt, const Eigen::VectorXd& start, int mostIterations)
{
    Eigen::VectorXd parameters = start;
    Residuals at = residualsAt(parameters);
    if (at.value.size() < parameters.size())
        return fail(Code::InvalidInput, {}, "fewer measurements than unknowns");
    if (!finite(at))
        return fail(Code::NotConverged, {}, "the fit cannot begin: the model has no value at its start");
    Eigen::VectorXd scale = at.jacobian.colwise().norm(); // parameters of unlike size are damped alike
    double damping = 1e-3;
    double raise = 2;
    for (int iteration = 1; iteration <= mostIterations; ++iteration) {
        scale = scale.cwiseMax(at.jacobian.colwise().norm().transpose());
        if (scale.minCoeff() <= 0)
            return fail(Code::NotAvailable, {}, "the data do not determine the parameters");
        const Eigen::VectorXd step = dampedStep(at, scale, damping);
        const bool settled = step.norm() <= smallestStep * (parameters.norm() + smallestStep);
        const Residuals next = residualsAt(parameters + step);
        const double gain = finite(next) ? at.value.squaredNorm() - next.value.squaredNorm() : -1;
        const double foreseen =
            at.value.squaredNorm() - (at.value + at.jacobian * step).squaredNorm(); // of the linear model
        if (gain > 0) {
            parameters += step;
            at = next;
            const double share = foreseen > 0 ? gain / foreseen : 1;
            damping *= std::max(1.0 / 3, 1 - std::pow(2 * share - 1, 3));
            raise = 2;
        }
        if (at.value.norm() == 0 || gradientCosine(at) < smallestGradient)
            return described(at, parameters, scale, iteration);
        // A short step may only mean strong damping, and sums of squares tell parameters apart to half of their digits:
        // where the undamped step is short too, it is the last one, and it is taken.
        if (settled || gain <= 0) {
            const Eigen::VectorXd last = dampedStep(at, scale, 0);
            if (last.norm() <= restingStep * parameters.norm())
                return described(residualsAt(parameters + last), parameters + last, scale, iteration);
        }
        if (gain <= 0) {
            damping *= raise;
            raise *= 2;
            if (!std::isfinite(damping))
                break;
        }
    }
    return fail(Code::NotConverged, {}, "the fit did not settle");
}

} // namespace fleetrung::statistics
