// A ladder's line of velocity against load, of the season's sessions on the rung where the athlete stands.
#pragma once

#include <vector>

#include "engine/report/ladder_record.hpp"
#include "engine/strength/load_velocity_curve.hpp"

namespace fleetrung::report
{

struct LoadVelocity {
    std::size_t rung = 0;
    Side side = Side::Both;
    int sessions = 0;
    std::vector<CivilDate> days; ///< of each point
    std::vector<strength::LoadVelocityPoint> points;
    Expected<strength::LoadVelocityCurve> curve; ///< NotAvailable: what to lift next
};

/// One a side that was measured; of a ladder whose rung was not measured one without points, that says what is missing.
/// None for ladders without a load (drop jumps) or not begun.
[[nodiscard]] std::vector<LoadVelocity> loadVelocities(const Ladder& ladder);

} // namespace fleetrung::report
