// Where the labels of marks stand: never over a mark or another text, off the lines where there is room.
// Internal to this folder.
#pragma once

#include <functional>
#include <vector>

#include "mobile/plot/layout.hpp"

namespace fleetrung::plot
{

/// The label of the newest mark first; a label without room is left out.
[[nodiscard]] std::vector<PlacedText> placeMarkLabels(const Plot& plot, const Layout& layout, const QRectF& area,
                                                      const QFontMetricsF& metrics, const QFontMetricsF& strongMetrics,
                                                      const std::function<double(Role)>& radius);

} // namespace fleetrung::plot
