// One repetition and its metrics. SI units. The motion is the vertical motion of the sensor, up positive.
#pragma once

#include <cstdint>
#include <optional>
#include <string_view>
#include <vector>

namespace fleetrung::reps
{

/// A value and its standard uncertainty (same unit).
struct Measured {
    double value = 0;
    double uncertainty = 0;
};

/// What a reader must know before trusting a repetition. A set of flags.
enum class Flag : std::uint32_t {
    Clipped = 1U << 0U,     ///< a reading reached the end of the sensor's range inside the repetition
    Gap = 1U << 1U,         ///< more than 60 ms without samples inside the repetition
    NoStillness = 1U << 2U, ///< nothing in the capture stood still: velocities are less certain
    ShortRange = 1U << 3U,  ///< range well below the set's median: a partial repetition
    Bounced = 1U << 4U,     ///< an impact at the start of the concentric phase
    TwoPeaked = 1U << 5U,   ///< two velocity peaks of nearly the same height: no evidence for time to peak velocity
    NoGyroscope = 1U << 6U, ///< orientation was taken as fixed
};

using Flags = std::uint32_t;
[[nodiscard]] constexpr bool has(Flags flags, Flag flag)
{
    return (flags & static_cast<Flags>(flag)) != 0;
}
[[nodiscard]] constexpr Flags operator|(Flags flags, Flag flag)
{
    return flags | static_cast<Flags>(flag);
}
/// "clipped", "gap", "no-stillness", "short-range", "bounced", "two-peaked", "no-gyroscope".
[[nodiscard]] std::vector<std::string_view> flagNames(Flags flags);

struct Repetition {
    // Instants on the recording's own clock [s]
    double eccentricStart = 0; ///< equals concentricStart where the lift starts from a dead stop
    double concentricStart = 0;
    double peakTime = 0;
    double concentricEnd = 0;

    Measured meanVelocity;           ///< m/s, over the concentric phase
    Measured meanPropulsiveVelocity; ///< m/s, concentric start to the first instant with acceleration < -g (whole phase
                                     ///< if none)
    Measured peakVelocity;           ///< m/s
    Measured timeToPeakVelocity;     ///< s, concentric start to peak velocity (TPV)
    Measured range;                  ///< m, vertical displacement over the concentric phase (ROM)
    Measured displacementToPeak;     ///< m
    Measured concentricDuration;     ///< s
    Measured velocityAt100ms;        ///< m/s, 0.1 s after concentric start (v100)
    Measured velocityAt200ms;        ///< m/s (v200)
    std::optional<Measured> eccentricPeakVelocity; ///< m/s, negative; none from a dead stop
    std::optional<Measured> eccentricDuration;     ///< s
    std::optional<Measured> reversalTime;          ///< s, eccentric peak velocity to concentric start

    Flags flags = 0;
};

/// What happened over the set. Loss counts from the fastest repetition.
struct SetSummary {
    double velocityLoss = 0;     ///< share (0..1): 1 - last / fastest, of the lift's evidence metric
    double timeToPeakDrift = 0;  ///< share: last TPV / smallest TPV - 1
    double meanTimeToPeak = 0;   ///< s
    double spreadTimeToPeak = 0; ///< s, sample standard deviation
};

} // namespace fleetrung::reps
