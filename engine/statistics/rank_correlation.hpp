// Whether two measures rise and fall together, by their ranks: no unit, no straight line asked for.
// Source: Spearman C, The proof and measurement of association between two things, Am J Psychol 1904;15:72-101; ties
// share their mean rank (common practice, no source).
#pragma once

#include <cstdint>
#include <span>
#include <vector>

namespace fleetrung::statistics
{

/// Ranks from 1; equal values share their mean rank.
[[nodiscard]] std::vector<double> ranks(std::span<const double> values);

/// -1 ... 1. NaN for unequal lengths, fewer than two pairs, or where all values of one are the same.
[[nodiscard]] double rankCorrelation(std::span<const double> x, std::span<const double> y);

struct CorrelationInterval {
    double low = 0, high = 0;
};
/// 95 %, from the percentiles of `resamples` draws of as many pairs with replacement (Efron B, Bootstrap methods:
/// another look at the jackknife, Ann Stat 1979;7:1-26). Draws in which one measure does not vary are left out. The
/// same seed gives the same interval. NaN where the correlation is NaN; with fewer than ten pairs it is too narrow.
[[nodiscard]] CorrelationInterval rankCorrelationInterval(std::span<const double> x, std::span<const double> y,
                                                          std::uint64_t seed, int resamples = 2000);

} // namespace fleetrung::statistics
