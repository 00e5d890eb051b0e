// The jumps in a recording of a sensor worn on the body: drop jumps, counter-movement and squat jumps, hops in a row.
//
// Waist: in flight the specific force is nearly nothing, which nothing else in a gym does for 50 ms. Shoe: the foot is
// swung in flight, so its take-off is told by the foot's turning, which is fastest as the toes leave (common practice,
// no source), and its flight by the speed at which it comes down. Instants lie between samples: where the force before
// and after them, each on its own curve, meet. They are instants of the sensor: what soft tissue adds is not in the
// stated uncertainty.
#pragma once

#include <optional>
#include <vector>

#include "engine/base/error.hpp"
#include "engine/jumps/jump.hpp"
#include "engine/motion/gravity.hpp"
#include "engine/motion/sample.hpp"

namespace fleetrung::jumps
{

enum class Worn { Waist, Shoe };

struct Request {
    /// Only these; else what the recording shows. Counter-movement and squat jumps are asked for together, and told
    /// apart by how fast the body sinks; on a shoe they cannot be, and are called what was asked for.
    std::optional<Kind> kind;
    Worn worn = Worn::Waist;
    std::optional<double> box; ///< m
    /// m/s2, for heights. The standard value is within 0.3 % of the local one everywhere on the ground; a sensor's own
    /// reading at rest is not (20 mg of offset are 2 %), so it is used to find zero, not for this.
    double gravity = motion::standardGravity;
    double gravityUncertainty = 0.012; ///< m/s2; local values run from 9.78 to 9.83
};

struct JumpAnalysis {
    double samplingRate = 0; ///< Hz
    double gravity = 0;      ///< m/s2, as requested: heights rest on it
    std::optional<Measured>
        restForce;           ///< m/s2, length of the specific force while standing still; none without stillness
    std::vector<Jump> jumps; ///< in time
};

/// Fails with InvalidInput for a recording too short, not finite or not increasing in time; with NotAvailable below 80
/// Hz (a contact is 0.2 s), and for a shoe without gyroscope or without a moment of standing still.
[[nodiscard]] Expected<JumpAnalysis> analyseJumps(const motion::Recording& recording, const Request& request);

} // namespace fleetrung::jumps
