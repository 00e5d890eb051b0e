#include "mobile/plot/plot_value.hpp"

#include "mobile/plot/spoken_summary.hpp"

namespace fleetrung::plot
{

QString PlotValue::summary() const
{
    return QString::fromStdString(spokenSummary(plot));
}

} // namespace fleetrung::plot
