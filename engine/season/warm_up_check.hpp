// The warm-up check: the day's own adjustment, from two full-intent warm-up loads. It takes load or sets off the day,
// never puts any on, and never moves the ladder.
#pragma once

#include <optional>
#include <span>
#include <string>
#include <vector>

#include "engine/season/session_plan.hpp"

namespace fleetrung::season
{

/// Velocity (by the rung's metric: mean or peak) of the fastest valid repetition at one warm-up load of today.
struct WarmUpPoint {
    double loadKg = 0;
    double velocity = 0; ///< m/s
};

struct DayAdjustment {
    std::string ladder;
    bool known = false;    ///< false: too little to compare with; `reason` says what is missing
    double loadFactor = 1; ///< on the day's load
    int setsOff = 0;       ///< work sets taken off
    double setFactor = 1;  ///< then this share of the sets stays
    std::vector<EvidenceLine> evidence;
    std::string reason; ///< plain words
};

/// Both points slower than the athlete's own at that load by more than 1.5 typical errors: 5 % less load and one set
/// less; by more than 2.5: 10 % less and half the sets. What is usual at a load is the median over the stay's sessions
/// (three at least) of the velocity at that load; loads more than 3 % apart are joined by the load correction only.
/// Starting values of this project.
[[nodiscard]] DayAdjustment warmUpCheck(const DayInput& input, std::string_view ladder,
                                        std::span<const WarmUpPoint> today,
                                        const SeasonData& data = standardSeasonData());

/// The session with less load and fewer work sets in that lift; at least one work set stays.
[[nodiscard]] SessionPlan adjusted(SessionPlan session, const DayAdjustment& adjustment);

[[nodiscard]] Json dayAdjustmentJson(const DayAdjustment& adjustment);
[[nodiscard]] Expected<DayAdjustment> dayAdjustmentFromJson(const Json& json);

} // namespace fleetrung::season
