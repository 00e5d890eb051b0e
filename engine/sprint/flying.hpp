// A flying sprint: mean speed over a zone that is entered at speed. Gives no tau, no force, no power.
#pragma once

#include "engine/base/error.hpp"

namespace fleetrung::sprint
{

struct FlyingSpeed {
    double speed = 0; ///< m/s, mean over the zone
    double error = 0; ///< standard error from the timing error of both ends
};

/// `timingError`: standard error of one end [s]. Fails with InvalidInput for a zone or time that is not above zero, or
/// a speed beyond 15 m/s.
[[nodiscard]] Expected<FlyingSpeed> flyingSpeed(double zone, double time, double timingError);

} // namespace fleetrung::sprint
