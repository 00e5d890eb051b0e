// Where the athlete is in the air, to the sample.
#pragma once

#include <vector>

#include "engine/jumps/signal.hpp"

namespace fleetrung::jumps
{

struct Flight {
    std::size_t first; ///< first sample in the air
    std::size_t last;  ///< last sample in the air
    bool pushed;       ///< begins with a push-off; else a fall off something
    bool landed;       ///< ends with a landing that was recorded
};

/// The specific force stays below 2.5 m/s2 for 50 ms to 1.1 s. A push-off: before it the force has given at least half
/// of the upward speed that such a flight takes.
[[nodiscard]] std::vector<Flight> waistFlights(const Signal& signal);

/// From the fastest rise of the heel to the next sharp impact, if the foot comes down as fast as a body does that fell
/// for half that time; a foot that is swung in walking comes down slowly. Needs a gyroscope and a rest.
[[nodiscard]] std::vector<Flight> shoeFlights(const Signal& signal);

/// Rate at which the foot turns away from how it stands flat [rad/s]: positive as the heel rises.
[[nodiscard]] std::vector<double> heelRate(const Signal& signal);

inline constexpr double shortestFlight = 0.05; ///< s
inline constexpr double longestFlight = 1.1;   ///< s: 1.5 m high; an empty plate or a sensor in hand lasts longer

} // namespace fleetrung::jumps
