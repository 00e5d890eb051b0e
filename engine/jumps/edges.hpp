// The instants of landing and take-off, between samples.
#pragma once

#include "engine/jumps/flights.hpp"
#include "engine/jumps/physics.hpp"

namespace fleetrung::jumps
{

/// Where force sets in after the flight [s].
[[nodiscard]] Measured waistLanding(const Signal& signal, const Flight& flight);
/// Where force ends before the flight [s].
[[nodiscard]] Measured waistTakeoff(const Signal& signal, const Flight& flight);

/// The impact of a shoe rises within few milliseconds: between two samples, or where it can be seen to rise [s].
[[nodiscard]] Measured shoeLanding(const Signal& signal, const Flight& flight);
/// Where the heel's rise breaks off [s].
[[nodiscard]] Measured shoeTakeoff(const Signal& signal, const Flight& flight, const std::vector<double>& heelRate);

} // namespace fleetrung::jumps
