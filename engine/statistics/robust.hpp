// Statistics that one odd session cannot bend. Empty input is a broken precondition and gives NaN.
#pragma once

#include <span>
#include <vector>

namespace fleetrung::statistics
{

[[nodiscard]] double mean(std::span<const double> values);
[[nodiscard]] double median(std::span<const double> values);

/// Median of the distances from the median, times 1.4826 so that it estimates the standard deviation of normal data.
[[nodiscard]] double medianAbsoluteDeviation(std::span<const double> values);

/// Each value drawn in to within `limit` (scaled) median absolute deviations of the median. Where the deviation is zero
/// (more than half of the values equal) nothing is changed: there is no scale to judge by.
[[nodiscard]] std::vector<double> winsorised(std::span<const double> values, double limit);

struct TheilSenLine {
    double slope = 0;     ///< median of the slopes of all pairs with different x
    double intercept = 0; ///< median of y - slope x
};

/// Theil 1950, Sen 1968. `x` and `y` have the same length, with at least two different x; else NaN.
[[nodiscard]] TheilSenLine theilSen(std::span<const double> x, std::span<const double> y);

} // namespace fleetrung::statistics
