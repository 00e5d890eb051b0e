// Nonlinear least squares with standard errors: Levenberg and Marquardt's method with Nielsen's damping (Madsen,
// Nielsen, Tingleff, Methods for non-linear least squares problems, 2nd ed., Technical University of Denmark 2004,
// algorithm 3.16). What does not settle, or settles where the data do not tell the parameters apart, is an error, never
// a number.
#pragma once

#include <functional>

#include <Eigen/Core>

#include "engine/base/error.hpp"

namespace fleetrung::statistics
{

/// Residuals (value minus model) and their derivatives by the parameters, one row a residual.
struct Residuals {
    Eigen::VectorXd value;
    Eigen::MatrixXd jacobian;
};
using ResidualsAt = std::function<Residuals(const Eigen::VectorXd& parameters)>;

struct NonlinearFit {
    Eigen::VectorXd parameters;
    Eigen::MatrixXd covariance;     ///< residualDeviation^2 (J'J)^-1; zero where there are no degrees of freedom
    Eigen::VectorXd standardErrors; ///< roots of its diagonal
    Eigen::VectorXd residuals;
    Eigen::VectorXd leverage; ///< diagonal of J (J'J)^-1 J', of each residual
    double sumOfSquares = 0;
    double residualDeviation = 0; ///< sqrt(RSS / (n - p)); 0 where n = p
    int iterations = 0;
};

/// Fails with InvalidInput for fewer residuals than parameters, with NotConverged where the steps do not settle within
/// `mostIterations`, and with NotAvailable where the residuals do not determine the parameters.
[[nodiscard]] Expected<NonlinearFit> fitNonlinear(const ResidualsAt& residualsAt, const Eigen::VectorXd& start,
                                                  int mostIterations = 500);

} // namespace fleetrung::statistics
