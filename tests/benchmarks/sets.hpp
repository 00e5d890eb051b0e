// Simulated sets of one length, for timing.
#pragma once

#include <cstdint>

#include "demo/simulator/simulator.hpp"
#include "engine/reps/lift.hpp"

namespace fleetrung::benchmarks
{

inline constexpr double setSeconds = 40;
inline constexpr double setRate = 200; // Hz

struct TimedSet {
    const reps::Lift* lift;
    motion::Recording recording;
};

/// The lifts in turn; six repetitions with everything around them, cut to exactly 40 s at 200 Hz.
[[nodiscard]] TimedSet fortySeconds(std::uint64_t number);

} // namespace fleetrung::benchmarks
