// A season's line of velocity against load on one lift as it is drawn: the robust line and where it may lie.
#pragma once

#include <span>
#include <string_view>
#include <vector>

#include "engine/strength/load_velocity.hpp"

namespace fleetrung::strength
{

struct LoadVelocityCurve {
    /// Loads between which the athlete's line reaches that velocity, with 95 % confidence.
    struct Reach {
        double velocity = 0; ///< m/s
        double low = 0;      ///< kg
        double high = 0;     ///< kg
    };

    LoadVelocityProfile line;               ///< robust; without `slowest` its 1RM says nothing
    std::optional<MaximumVelocity> slowest; ///< of the lift, where one is published
    double fastest = 0;                     ///< m/s, of the points: where the picture begins
    std::vector<Reach> band;                ///< by velocity, fastest first; empty where the slope is not beyond doubt
};

/// Of points pooled over sessions; `lift` names the velocity at 1RM. Fails as fitLoadVelocity.
[[nodiscard]] Expected<LoadVelocityCurve> loadVelocityCurve(std::span<const LoadVelocityPoint> points,
                                                            std::string_view lift);

} // namespace fleetrung::strength
