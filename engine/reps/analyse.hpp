// From a recording of one set to its repetitions. A pure function of its arguments: the same recording and lift give
// the same numbers bit for bit.
#pragma once

#include <string>
#include <vector>

#include "engine/base/error.hpp"
#include "engine/motion/intake.hpp"
#include "engine/motion/sample.hpp"
#include "engine/reps/lift.hpp"
#include "engine/reps/repetition.hpp"
#include "engine/reps/trace.hpp"

namespace fleetrung::reps
{

/// Names the estimator and its settings: an analysis is kept with it, and made anew when it changes.
inline constexpr std::string_view analysisVersion = "2";

/// A repetition that was seen and cannot be measured: more than 60 ms without samples, or 20 ms and more of clipped
/// readings, inside its concentric phase.
struct RefusedRepetition {
    double concentricStart, concentricEnd; ///< s, as far as they can be told
    motion::Fault fault;
    std::string reason; ///< one sentence
};

struct SetAnalysis {
    double samplingRate = 0;                      ///< Hz
    motion::Quality quality = motion::Quality::A; ///< A or B: what is C is refused
    std::vector<motion::Finding> findings;        ///< what is wrong with the recording
    std::vector<Repetition> repetitions;
    std::vector<RefusedRepetition> refused; ///< none of them is among the repetitions or in the summary
    SetSummary summary;                     ///< zeros where there are no repetitions
    MotionTrace trace;
};

/// Fails with NotAvailable for lifts that are told by contact time (drop jumps), with InvalidInput for fewer than 0.5 s
/// of samples or times that do not increase, and with NotAvailable for what motion::screen refuses (place: which axis
/// or sample; message: what to do) and where the specific force is nowhere near gravity. No repetition found is no
/// failure.
[[nodiscard]] Expected<SetAnalysis> analyseSet(const motion::Recording& recording, const Lift& lift);

} // namespace fleetrung::reps
