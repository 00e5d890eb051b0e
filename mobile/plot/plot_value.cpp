#include "mobile/plot/plot_value.hpp"

namespace fleetrung::plot
{

QString PlotValue::summary() const
{
    return QString::fromStdString(spokenSummary(plot, phrases));
}

} // namespace fleetrung::plot
