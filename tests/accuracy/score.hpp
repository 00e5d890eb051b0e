// Compares the analysis of one simulated set with its truth.
#pragma once

#include <array>
#include <cmath>
#include <optional>
#include <string>
#include <vector>

#include "engine/reps/analyse.hpp"
#include "tests/accuracy/situation.hpp"

namespace fleetrung::accuracy
{

/// A metric by its name, unit of print, and where it stands in analysis and truth.
struct Metric {
    std::string_view name;
    std::string_view unit;
    double scale; ///< from SI to that unit
    std::optional<reps::Measured> (*measured)(const reps::Repetition&);
    std::optional<double> (*truth)(const simulator::StrokeTruth&); ///< none where the repetition has no such thing
    bool ofPeak;                                                   ///< ill-defined where a lift has two peaks
};

inline constexpr std::size_t metricCount = 9;
enum MetricIndex : std::size_t {
    meanVelocity,
    peakVelocity,
    timeToPeak,
    range,
    meanPropulsive,
    velocity100,
    displacementToPeak,
    duration,
    eccentricPeak
};
[[nodiscard]] const std::array<Metric, metricCount>& allMetrics();

struct Difference {
    double error;       ///< analysis - truth, SI
    double uncertainty; ///< stated
    [[nodiscard]] double sigmas() const { return std::abs(error) / uncertainty; }
    [[nodiscard]] bool covered() const { return std::abs(error) <= 1.96 * uncertainty; }
};

/// One true repetition.
struct Judged {
    bool found = false;
    bool refused = false; ///< seen, and named as one that cannot be measured
    bool deadStop = false;
    bool partial = false, twoPeaked = false;               ///< truth
    bool flaggedPartial = false, flaggedTwoPeaked = false; ///< analysis
    reps::Flags flags = 0;
    std::array<std::optional<Difference>, metricCount> difference;
};

/// Live against final, one announced repetition.
struct LiveJudged {
    double delay;                                      ///< s of signal from its concentric end to its announcement
    std::array<std::optional<bool>, metricCount> kept; ///< |final - announced| <= 2 sqrt(P_live - P_final)
};

struct SetScore {
    Situation situation;
    std::vector<Judged> repetitions;
    std::vector<double> invented; ///< instant of the peak of each, s
    std::string refusal;          ///< what the engine said where it gave nothing
    std::vector<LiveJudged> live;
    std::size_t liveMissed = 0; ///< repetitions of the final analysis that were never announced
};

/// Where a draw cannot be lifted by any body, the next one of the same situation is taken.
[[nodiscard]] SetScore judge(Situation situation, bool withLive);

} // namespace fleetrung::accuracy
