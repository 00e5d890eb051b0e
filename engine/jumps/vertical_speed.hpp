// Vertical speed of the sensor from the last rest to an instant.
#pragma once

#include <optional>

#include "engine/jumps/physics.hpp"
#include "engine/jumps/signal.hpp"

namespace fleetrung::jumps
{

struct VerticalSpeed {
    Measured speed;     ///< m/s, up positive
    double slowest = 0; ///< m/s, most negative on the way
    double lowest = 0;  ///< m, deepest place on the way, relative to the rest
};

/// Nothing where no rest ends within 8 s before. `when` must lie at a landing or a take-off: the force is taken as
/// nothing there. The uncertainty holds the accelerometer's offset across gravity as the sensor leans, its scale, the
/// sampling of the force's edges, and without gyroscope a lean of some degrees.
[[nodiscard]] std::optional<VerticalSpeed> verticalSpeed(const Signal& signal, double when);

} // namespace fleetrung::jumps
