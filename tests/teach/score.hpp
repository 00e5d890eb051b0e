// Whether a taught map is right: fresh bytes of the same sensor are read by it and by the map they were made with.
//
// Right means, over 20 s of other movement:
// - as many samples as the true map reads (within 1 %), of the same characteristics;
// - specific force within 0.3 m/s2 (rms) after the one rotation that fits best (any right-handed frame fixed to the
//   sensor is as good as its own);
// - angular rate, turned by the same rotation, within 4 % of its own rms and 0.03 rad/s; a gyroscope where there is one
//   and none where there is none;
// - the rate within 1 % of the sensor's;
// - a counter, or stamps, where the true map has one; lost samples as counted by the true map within 2 and 1 %; stamps
//   on a straight line against the true ones, of slope 1 within 0.5 %, within 3 ms rms.
// "What the sensor says" is the truth here, with its bias and scale error: these are calibration, not map.
#pragma once

#include <string>

#include "engine/sensor/packet_decoder.hpp"
#include "tests/teach/session.hpp"

namespace fleetrung::tests
{

enum class Outcome { Right, Repeat, Wrong };

struct Scored {
    Outcome outcome = Outcome::Wrong;
    std::string why;    ///< what was wrong, or what teaching said
    double force = 0;   ///< m/s2, rms
    double turning = 0; ///< rad/s, rms
    double seconds = 0; ///< that teaching took
};

/// One random layout from its seed, taught and scored.
[[nodiscard]] Scored scoreLayout(std::uint64_t seed);

struct Spoiled {
    sensor::Taught taught;
    Mistake mistake;
    std::string words; ///< of the layout
};
/// A random layout whose steps go wrong once.
[[nodiscard]] Spoiled spoilLayout(std::uint64_t seed, Spoil spoil);

[[nodiscard]] sensor::Taught teachLayout(std::uint64_t seed);

/// As in the seed's run, for a look at it.
[[nodiscard]] Layout layoutOf(std::uint64_t seed);

} // namespace fleetrung::tests
