// Load across, velocity up: the season's points of one lift, the athlete's line through them and the 1RM it points to.
#pragma once

#include <optional>
#include <span>
#include <string>

#include "engine/strength/load_velocity_curve.hpp"
#include "mobile/plot/plot.hpp"

namespace fleetrung::plot
{

struct LoadUnit {
    std::string name = "kg";
    std::string spoken = "kilograms";
    double kilograms = 1; ///< that one of it has
};

/// Without a curve the points alone. `chosen`: the point that stands out.
[[nodiscard]] Plot loadVelocityPicture(const std::string& lift, std::span<const strength::LoadVelocityPoint> points,
                                       const strength::LoadVelocityCurve* curve, const LoadUnit& unit,
                                       std::optional<std::size_t> chosen = {});

/// The point that a finger at that place of that picture means (load across in the unit, m/s up).
[[nodiscard]] std::optional<std::size_t> loadVelocityHit(const Plot& picture,
                                                         std::span<const strength::LoadVelocityPoint> points,
                                                         const LoadUnit& unit, Point place);

} // namespace fleetrung::plot
