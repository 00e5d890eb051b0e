// What the sessions of a stay on a rung say, in printed steps. Private to engine/season.
#pragma once

#include "engine/season/decide.hpp"

namespace fleetrung::season
{

/// All in ms or m/s, rounded to 1 ms and 0.001 m/s. Present only where three sessions carry the value.
struct TimeProgress {
    double baseline = 0; ///< ms, mean of the first three sessions
    double recent = 0;   ///< ms, mean of the last three
    double gain = 0;     ///< ms, baseline - recent: positive is sooner
    double error = 0;    ///< ms, typical error with the sensor's uncertainty in quadrature
    int sessions = 0;
};
[[nodiscard]] std::optional<TimeProgress> timeProgress(const LadderDay& day);

/// The last two sessions against the six before: what has changed lately, whichever way.
struct RecentChange {
    double later = 0; ///< ms, mean of the last two - median of the six before: negative is sooner
    double error = 0; ///< ms, typical error
    double limit = 0; ///< ms, beyond which a change is seen
};
[[nodiscard]] std::optional<RecentChange> recentChange(const LadderDay& day);

struct VelocityProgress {
    double change = 0; ///< m/s, mean of the last three - mean of the first three
    double error = 0;  ///< m/s, typical error with the sensor's uncertainty in quadrature
};
[[nodiscard]] std::optional<VelocityProgress> velocityProgress(const LadderDay& day);

/// Strength on this rung: mean of the last four sessions against mean of the first four, of e1RM where the rung's
/// strength is judged by it and every session has it, else of velocity at the probe load.
struct StrengthTrend {
    double change = 0;        ///< share
    double standardError = 0; ///< share: 0.71 typical errors
    bool lost = false;        ///< blocks a step
    bool levelled = false;    ///< sure to have grown by less than the rules' limit
};
/// Nothing with fewer than eight sessions or under 28 days.
[[nodiscard]] std::optional<StrengthTrend> strengthTrend(const LadderDay& day);

/// Typical error of time to peak on this rung [ms], from all sessions ever done on it.
[[nodiscard]] double timeError(const LadderDay& day, double baselineMs);

/// Typical error of the rung's velocity [m/s], likewise.
[[nodiscard]] double velocityError(const LadderDay& day);

/// "291 ms"
[[nodiscard]] std::string milliseconds(double value);

/// Evidence of the kind that the rung's metric names: mean velocity or peak velocity.
[[nodiscard]] const std::optional<Measured>& velocityOf(const SessionEvidence& session, Metric metric);

} // namespace fleetrung::season
