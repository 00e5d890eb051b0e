// The best speed an athlete is known to have reached: what fast metres are a share of.
//
// It is the greatest of: mean speed over the zone of a flying run, mean speed between splits 10 m or more apart, top
// speed of a fit to splits, in the 12 months up to the day, the day itself among them. Left out: runs with more than
// 2.0 m/s of wind behind them (the limit for records in World Athletics' technical rules; from memory); a run whose
// wind is not known counts. A time by hand errs by a tenth at each end, which is 7 % of a flying 20 m: hand times count
// only where nothing better is known. Where no run shows a speed at all, it is estimated from the fastest whole run.
#pragma once

#include <span>

#include "engine/track/run.hpp"

namespace fleetrung::track
{

enum class SpeedSource { FlyingZone, Stretch, Fit, Estimated };

struct TopSpeed {
    double speed = 0; ///< m/s
    CivilDate day{};
    SpeedSource source = SpeedSource::Estimated;
    bool byHand = false;
};

/// A run and what it shows, worked out once.
struct KnownRun {
    Run run;
    std::optional<sprint::SprintFit> fit; ///< none for a flying run and for splits that carry none
    std::optional<TopSpeed> top;          ///< none for a time that cannot be
};
[[nodiscard]] KnownRun know(Run run);

constexpr double strongestWind = 2.0; ///< m/s

/// Nothing where no run counts.
[[nodiscard]] std::optional<TopSpeed> bestSpeed(std::span<const KnownRun> runs, CivilDate day);

constexpr double usualTau = 1.2;       ///< s; starting value of this project
constexpr double usualReaction = 0.16; ///< s, of a gun start whose reaction is not known; starting value
/// Top speed of v(t) = vmax (1 - exp(-t / tau)) that covers the distance in the time from the first movement.
[[nodiscard]] double speedFromTime(double distance, double movingTime, double tau = usualTau);
/// The same of a whole run: from a gun the reaction goes off, and what hand timing misses is added. 0 for no time.
[[nodiscard]] double estimatedSpeed(const Run& run);

/// "9.42 m/s, flying zone, 2026-05-16": for people.
[[nodiscard]] std::string describe(const TopSpeed& speed);

} // namespace fleetrung::track
