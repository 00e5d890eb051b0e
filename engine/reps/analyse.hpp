// From a recording of one set to its repetitions. A pure function of its arguments: the same recording and lift give
// the same numbers bit for bit.
#pragma once

#include <string>
#include <vector>

#include "engine/base/error.hpp"
#include "engine/motion/sample.hpp"
#include "engine/reps/lift.hpp"
#include "engine/reps/repetition.hpp"
#include "engine/reps/trace.hpp"

namespace fleetrung::reps
{

/// Names the estimator and its settings: an analysis is kept with it, and made anew when it changes.
inline constexpr std::string_view analysisVersion = "1";

struct SetAnalysis {
    double samplingRate = 0; ///< Hz
    std::vector<Repetition> repetitions;
    SetSummary summary; ///< zeros where there are no repetitions
    MotionTrace trace;
};

/// Fails with NotAvailable for lifts that are told by contact time (drop jumps), with InvalidInput for fewer than 0.5 s
/// of samples or times that do not increase, and with NotAvailable where the rate is below 25 Hz or the specific force
/// is nowhere near gravity (place: which axis or sample; message: what to do). No repetition found is no failure.
[[nodiscard]] Expected<SetAnalysis> analyseSet(const motion::Recording& recording, const Lift& lift);

} // namespace fleetrung::reps
