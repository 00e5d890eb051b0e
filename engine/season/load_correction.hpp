// How time and velocity go with load on one rung, from pairs of loads within one session. Slopes across sessions would
// mix in what the athlete gained meanwhile, and are never used. Private to engine/season.
#pragma once

#include <optional>
#include <span>

#include "engine/season/evidence.hpp"

namespace fleetrung::season
{

struct LoadSlope {
    double perKg = 0;         ///< s/kg or m/s per kg
    double standardError = 0; ///< of it, from the spread between sessions
};

struct LoadSlopes {
    std::optional<LoadSlope> time;
    std::optional<LoadSlope> velocity;
};

/// Nothing where pairs or sessions are too few (rules: load_correction_*). `sessions` of one rung.
[[nodiscard]] LoadSlopes loadSlopes(std::span<const SessionEvidence> sessions, const Rules& rules);

[[nodiscard]] bool nearLoad(double loadKg, double wantedKg, const Rules& rules);

/// The session as if lifted at `wantedKg`, the error of the correction added; itself where the load is near enough.
/// Nothing where it is too far off or nothing could be corrected.
[[nodiscard]] std::optional<SessionEvidence> atLoad(const SessionEvidence& session, double wantedKg, Metric metric,
                                                    const LoadSlopes& slopes, const Rules& rules);

/// The value at another load; nothing where that is too far off.
[[nodiscard]] std::optional<Measured> corrected(const Measured& measured, double loadKg, double wantedKg,
                                                const std::optional<LoadSlope>& slope, const Rules& rules);

} // namespace fleetrung::season
