// Drop jumps by box height: what each box gives, and at which the reactive strength index (RSI) is best.
#pragma once

#include <optional>
#include <span>
#include <vector>

#include "engine/base/civil_date.hpp"

namespace fleetrung::track
{

/// One drop jump. SI units; what is not known has no value.
struct DropJump {
    CivilDate day{};
    double box = 0; ///< m
    std::optional<double> contact, flight, height, rsi;
    bool heelsStruck = false;
};

struct BoxValues {
    double box = 0;
    int jumps = 0;                                      ///< in all
    CivilDate lastDay{};                                ///< of the medians
    std::optional<double> contact, flight, height, rsi; ///< medians of the last day
    std::optional<double> bestRsi;                      ///< of all jumps with contact within the limit
    bool withinLimit = false;                           ///< the last day's contact, and no heel struck on that day
};

/// By height of the box.
[[nodiscard]] std::vector<BoxValues> byBox(std::span<const DropJump> jumps, double contactLimit);

/// Contact hardly changes with the height of the box: boxes are ranked by RSI at contact within the limit (rules.md
/// 20). Null where no box is within it.
[[nodiscard]] const BoxValues* bestBox(std::span<const BoxValues> boxes);

} // namespace fleetrung::track
