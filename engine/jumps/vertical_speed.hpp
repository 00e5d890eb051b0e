// Vertical speed of the sensor from the last rest to an instant.
#pragma once

#include <optional>

#include "engine/jumps/physics.hpp"
#include "engine/jumps/signal.hpp"

namespace fleetrung::jumps
{

struct VerticalSpeed {
    Measured speed; ///< m/s, up positive
    double sinking =
        0; ///< m/s, most negative in the 0.3 s before the last rise: a body that rests in its squat has little
};

/// Nothing where no rest ends within 8 s before. `when` must lie at a landing or a take-off: the force is taken as
/// nothing there. The uncertainty holds the accelerometer's offset across gravity as the sensor leans, its scale, the
/// sampling of the force's edges, and without gyroscope a lean of some degrees.
[[nodiscard]] std::optional<VerticalSpeed> verticalSpeed(const Signal& signal, double when);

} // namespace fleetrung::jumps
