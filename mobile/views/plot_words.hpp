// A picture with its words and numbers as the user has them: the plot builders write English, as the engine does.
#pragma once

#include "mobile/plot/plot_value.hpp"
#include "mobile/views/units.hpp"

namespace fleetrung::views
{

[[nodiscard]] plot::PlotValue shownPlot(plot::Plot plot, const Units& units);

} // namespace fleetrung::views
