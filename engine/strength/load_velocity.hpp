// The athlete's own line of velocity against load on one lift, and the 1RM it points to. Own lines only: published
// general equations for the squat differ from each other by more than 10 % of 1RM.
#pragma once

#include <optional>
#include <span>
#include <string_view>

#include "engine/base/error.hpp"

namespace fleetrung::strength
{

struct LoadVelocityPoint {
    double loadKg = 0;   ///< kg
    double velocity = 0; ///< m/s, mean velocity of the best repetition at that load
};

struct LoadVelocityProfile {
    double slope = 0;            ///< m/s per kg, negative
    double velocityAtZero = 0;   ///< m/s (v0)
    double loadAtZero = 0;       ///< kg (L0), where the line reaches zero velocity
    double estimatedMaximum = 0; ///< kg, e1RM: load at `velocityAtMaximum`
    double standardError = 0;    ///< kg, of e1RM; 0 with two loads
    double velocityAtMaximum = 0;
};

/// Needs two loads at least 10 % apart, with velocity falling as load grows: else NotAvailable, and the message says
/// what to lift next. InvalidInput for numbers that cannot be (negative load, velocity <= 0).
[[nodiscard]] Expected<LoadVelocityProfile> fitLoadVelocity(std::span<const LoadVelocityPoint> points,
                                                            double velocityAtMaximum);

struct MaximumVelocity {
    std::string_view lift; ///< lift key
    double velocity;       ///< m/s, mean (propulsive) velocity of the repetition at 1RM
    double spread;         ///< m/s, between athletes
    std::string_view source;
};

/// Velocity at 1RM by lift, each with its source; none for lifts without a published value.
[[nodiscard]] std::optional<MaximumVelocity> velocityAtMaximum(std::string_view lift);

} // namespace fleetrung::strength
