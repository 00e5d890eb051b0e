// Lifts as data: what the repetition finder must know of a lift. The ladders (engine/season) name lifts by their key.
#pragma once

#include <span>
#include <string_view>

namespace fleetrung::reps
{

/// How a repetition begins.
enum class Start {
    Eccentric, ///< the bar goes down first, then up (squats, hinges, bench press, hang cleans with a drop)
    Concentric ///< the bar goes up from a dead stop (pulls and cleans from the floor or blocks, step-ups, calf raises)
};

/// Which velocity is the evidence of a rung (rules: evidence 4).
enum class EvidenceMetric { MeanVelocity, PeakVelocity, DropTime, ContactTime };

/// Which assumptions the solver may make of where a stroke ends.
struct Returns {
    bool top;    ///< tops of all repetitions of a set are the same height (standing, lock-out)
    bool bottom; ///< bottoms are the same height (floor, blocks, pins, chest)
};

struct Lift {
    std::string_view key;  ///< "half-squat": stable, used in files and on the command line
    std::string_view name; ///< "Half squat"
    Start start;
    Returns returns;
    double minimumRange; ///< m; a shorter upward stroke is no repetition of this lift
    double maximumRange; ///< m; a longer one is none either
    double typicalRange; ///< m; a starting value before the athlete has repetitions of their own
    EvidenceMetric metric;
    bool ballistic;          ///< the concentric phase ends at take-off or release (acceleration <= -g)
    bool oneSided;           ///< left and right are kept apart
    double bodyShare;        ///< share of body mass that moves with the bar (0..1): the table of body_share.hpp
    bool secondPull = false; ///< pulled in two parts, with the knees going back under the bar between them
};

/// All lifts the engine knows, in ladder order; `free` (any vertical stroke of 5 cm or more) is the last.
[[nodiscard]] std::span<const Lift> allLifts();

/// Null where there is none of that key.
[[nodiscard]] const Lift* findLift(std::string_view key);

} // namespace fleetrung::reps
