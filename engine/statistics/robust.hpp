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

/// Where the slope lies with 95 % confidence, from the ranks of the pairwise slopes (Sen PK, Estimates of the
/// regression coefficient based on Kendall's tau, J Am Stat Assoc 1968;63:1379-1389, section 4, with its correction for
/// ties).
struct SlopeInterval {
    double low = 0, high = 0;
};
/// As theilSen; NaN where that is NaN.
[[nodiscard]] SlopeInterval theilSenInterval(std::span<const double> x, std::span<const double> y);

/// What a value is held against: the middle and the spread of those before it.
struct Baseline {
    double middle = 0;    ///< median
    double deviation = 0; ///< scaled median absolute deviation
    int count = 0;        ///< values it rests on
};
/// For each value the baseline of the `window` values before it, itself left out; count 0 where there is none yet.
[[nodiscard]] std::vector<Baseline> movingBaseline(std::span<const double> values, std::size_t window);

} // namespace fleetrung::statistics
