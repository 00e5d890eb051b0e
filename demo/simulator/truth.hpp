// Exact metrics of a continuous vertical motion.
#pragma once

#include <functional>

#include "demo/simulator/path.hpp"
#include "demo/simulator/scene.hpp"
#include "demo/simulator/simulator.hpp"

namespace fleetrung::simulator
{

using Motion = std::function<Kinematics(double time)>;

/// The metrics of one repetition around its nominal instants, by root finding to 1e-10 s. Times are those of `motion`.
[[nodiscard]] StrokeTruth measureStroke(const Motion& motion, const RepetitionMark& mark, double gravity);

} // namespace fleetrung::simulator
