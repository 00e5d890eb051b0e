// The picture in words, for a screen reader: title, axes, bands, lines, marks, where we are.
#pragma once

#include <string>

#include "mobile/plot/plot.hpp"

namespace fleetrung::plot
{

/// What is said around a picture's own words, with places %1, %2 ... for them. English as it stands.
struct SpokenPhrases {
    std::string decimalMark = ".";
    std::string week = "week %1";
    std::string weeks = "week %1 to %2";
    std::string range = "%1 from %2 to %3"; ///< of an axis
    std::string across = "Across: %1.";
    std::string up = "Up: %1.";
    std::string band = "%1: %2 to %3.";
    std::string tread = "%1 from %2"; ///< of a stair: a rung and its first week
    std::string stair = "%1: %2.";
    std::string extremes = "%1: lowest %2, highest %3.";
    std::string noEvidence = "%1 (no evidence)";
    std::string markAt = "%1 at %2";
    std::string markIn = "%1 in %2";
    std::string oneMark = "%1, 1 mark: %2.";
    std::string marks = "%1, %2 marks: %3.";
    std::string ends = "first %1; last %2; lowest %3, highest %4";
    std::string nowOn = "Now on %1.";
    std::string latest = "Latest: %1.";
    std::string latestInside = "Latest: %1, inside the target band.";
    std::string latestOutside = "Latest: %1, outside the target band.";
    std::string inWeek = "In %1: %2.";
    std::string chosen = "Chosen: %1 in %2.";
};

[[nodiscard]] std::string spokenSummary(const Plot& plot, const SpokenPhrases& phrases = {});

} // namespace fleetrung::plot
