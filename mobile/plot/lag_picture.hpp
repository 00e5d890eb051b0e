// Did it work: rank correlation of bar and sprint by lag, against what chance alone reaches.
#pragma once

#include <span>

#include "engine/transfer/transfer.hpp"
#include "mobile/plot/plot.hpp"

namespace fleetrung::plot
{

/// Lags across in weeks, correlation up from -1 to 1, each with its interval and the weeks with both beside it. A lag
/// beyond what chance reaches is a filled mark. Lags without a correlation have no mark.
[[nodiscard]] Plot lagPicture(std::span<const transfer::Lag> lags);

} // namespace fleetrung::plot
