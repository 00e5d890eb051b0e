// Reads a scene with a sensor: samples, errors, clock, radio.
#pragma once

#include "demo/simulator/random.hpp"
#include "demo/simulator/scene.hpp"
#include "demo/simulator/simulator.hpp"

namespace fleetrung::simulator
{

/// Samples and their noiseless vertical motion, all of them.
struct Readings {
    motion::Recording recording;
    TrueMotion motion;
};

[[nodiscard]] Readings readScene(const Scene& scene, const SensorPlan& plan, const Part& part, double gravity,
                                 Random& random);

/// Cuts the readings into packets, loses, doubles and swaps some, and lets the clock step; what was lost leaves
/// `readings` too. `burstAt` [s on the recording's clock] is where the plan's burst of loss begins.
[[nodiscard]] std::vector<Packet> transmit(Readings& readings, const SensorPlan& plan, double burstAt, Random& random);

} // namespace fleetrung::simulator
