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

/// Share of all turns of the three blocks, no turn included, in which the largest rank correlation x sqrt(pairs - 1) of
/// all lags is at least that of the series as it was. Only values move; weeks without the bar stay without, so that a
/// lag keeps its pairs.
[[nodiscard]] double chanceOf(std::span<const double> bar, std::span<const Pairs> lags);

} // namespace fleetrung::transfer
