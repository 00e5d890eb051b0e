// A picture with its words in the language of the user: the plot builders write English, as the engine does.
#pragma once

#include "mobile/plot/plot_value.hpp"

namespace fleetrung::views
{

[[nodiscard]] plot::PlotValue shownPlot(plot::Plot plot);

} // namespace fleetrung::views
