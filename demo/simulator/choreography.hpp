// From a plan to everything that moves: rack work, repetitions, rests.
#pragma once

#include "demo/simulator/gestures.hpp"
#include "demo/simulator/random.hpp"
#include "demo/simulator/scene.hpp"
#include "demo/simulator/simulator.hpp"

namespace fleetrung::simulator
{

/// The plan must be valid; throws std::domain_error where no stroke of that range and speed exists. `wobble` is the
/// rotation about the bar over one stroke [rad].
[[nodiscard]] Scene choreograph(const SetPlan& plan, const Gesture& gesture, double wobble, Random& random);

} // namespace fleetrung::simulator
