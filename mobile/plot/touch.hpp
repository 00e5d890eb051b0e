// A finger on a picture: which point it means, and how that point stands out. Internal to this folder.
#pragma once

#include <cstddef>
#include <optional>
#include <span>
#include <string>

#include "mobile/plot/plot.hpp"

namespace fleetrung::plot
{

/// The point nearest to a place of the picture, within a fingertip of it.
[[nodiscard]] std::optional<std::size_t> nearestPoint(const Plot& plot, std::span<const Point> points, Point place);

/// A ring round a point that is there already. `label` is left out where the newest value has its own.
void addChosen(Plot& plot, Point at, std::string label);

} // namespace fleetrung::plot
