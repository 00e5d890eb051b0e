// Jumps worn on the waist or a shoe: off a box, from standing, and hops in a row; and what can go wrong in them.
#pragma once

#include "demo/simulator/gestures.hpp"
#include "demo/simulator/random.hpp"
#include "demo/simulator/scene.hpp"
#include "demo/simulator/simulator.hpp"

namespace fleetrung::simulator
{

void playJumps(const SetPlan& plan, const Gesture& gesture, Scene& scene, Random& random);

} // namespace fleetrung::simulator
