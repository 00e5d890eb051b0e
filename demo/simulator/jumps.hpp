// Jumps worn on the waist: stepping off a box, landing, take-off, flight; and hops in a row.
#pragma once

#include "demo/simulator/gestures.hpp"
#include "demo/simulator/random.hpp"
#include "demo/simulator/scene.hpp"
#include "demo/simulator/simulator.hpp"

namespace fleetrung::simulator
{

void playJumps(const SetPlan& plan, const Gesture& gesture, Scene& scene, Random& random);

} // namespace fleetrung::simulator
