// How the feet met the ground.
#pragma once

#include "engine/jumps/analyse.hpp"
#include "engine/jumps/signal.hpp"

namespace fleetrung::jumps
{

/// Heels that strike after the forefoot: a second sharp impact 20-90 ms after the landing. At the waist one of 3 g
/// beyond the force around it, on a shoe of 8 g (starting values of this project).
[[nodiscard]] bool heelsStrike(const Signal& signal, double landing, Worn worn);

} // namespace fleetrung::jumps
