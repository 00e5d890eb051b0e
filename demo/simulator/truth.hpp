// Exact metrics of a continuous vertical motion.
#pragma once

#include <functional>

#include "demo/simulator/gestures.hpp"
#include "demo/simulator/path.hpp"
#include "demo/simulator/scene.hpp"
#include "demo/simulator/simulator.hpp"

namespace fleetrung::simulator
{

using Motion = std::function<Kinematics(double time)>;

/// The metrics of one repetition around its nominal instants, by root finding to 1e-10 s; definitions as in
/// engine/reps/repetition.hpp and phases.hpp. Times are those of `motion`. A ballistic stroke ends at the first
/// acceleration of -gravity after its peak, where there is one.
[[nodiscard]] StrokeTruth measureStroke(const Motion& motion, const RepetitionMark& mark, double gravity,
                                        bool ballistic = false);

/// Whether the bar is let fly: cleans and high pulls.
[[nodiscard]] bool isBallistic(const Gesture& gesture);

} // namespace fleetrung::simulator
