// How often chance alone would do as well (private to engine/transfer).
#pragma once

#include <cstddef>
#include <span>
#include <vector>

namespace fleetrung::transfer
{

/// The pairs of one lag.
struct Pairs {
    std::vector<std::size_t> bar; ///< places in the series of the bar's weeks
    std::vector<double> sprint;   ///< of the week the lag later
};

struct Chance {
    double share = 1; ///< of all turns, in which the largest of all lags is at least that of the series as it was
    double reach = 0; ///< the largest is above it in at most the share of turns that was asked for
};

/// Of all turns of the three blocks, no turn included; the largest is of rank correlation x sqrt(pairs - 1). Only
/// values move; weeks without the bar stay without, so that a lag keeps its pairs.
[[nodiscard]] Chance chanceOf(std::span<const double> bar, std::span<const Pairs> lags, double mostAbove);

} // namespace fleetrung::transfer
