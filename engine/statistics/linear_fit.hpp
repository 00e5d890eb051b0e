// Least squares line with its standard errors.
#pragma once

#include <span>

#include "engine/base/error.hpp"

namespace fleetrung::statistics
{

/// y = intercept + slope x.
struct LinearFit {
    double intercept = 0;
    double slope = 0;
    double interceptError = 0;    ///< standard error; 0 with two points (nothing to judge by)
    double slopeError = 0;        ///< standard error
    double residualDeviation = 0; ///< sqrt(RSS / (n - 2))
    double meanX = 0;
    int count = 0;
};

/// Fails with InvalidInput for fewer than two points, unequal lengths, or where all x are the same.
[[nodiscard]] Expected<LinearFit> fitLine(std::span<const double> x, std::span<const double> y);

} // namespace fleetrung::statistics
