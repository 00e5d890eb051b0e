// The picture in words, for a screen reader: title, axes, bands, lines, marks, where we are.
#pragma once

#include <string>

#include "mobile/plot/plot.hpp"

namespace fleetrung::plot
{

[[nodiscard]] std::string spokenSummary(const Plot& plot);

} // namespace fleetrung::plot
