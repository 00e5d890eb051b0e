// One repetition and its metrics. SI units. The motion is the vertical motion of the sensor, up positive: height h(t),
// velocity v(t), acceleration a(t) without gravity; g = 9.80665 m/s2.
#pragma once

#include <array>
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

/// Times after the concentric start over which "how soon" is told [s].
inline constexpr std::array<double, 4> earlyWindows{0.05, 0.10, 0.15, 0.20};

/// Lowest sampling rate [Hz] for what is told over an early window: ten samples in it (200 Hz for 50 ms), so that the
/// error of the onset, about 0.3 samples from a dead stop, stays below 3 % of the window. Starting value.
[[nodiscard]] constexpr double lowestRate(double window)
{
    return 10.0 / window;
}
/// Lowest sampling rate [Hz] for what rests on the shape of acceleration: a reversal of 0.1 s has ten samples.
inline constexpr double lowestShapeRate = 100.0;
/// Everything else is told from the lowest rate of the analysis (25 Hz) on.

/// One value a window of `earlyWindows`; none where the phase ended earlier or the rate is below the window's lowest.
using EarlyMetric = std::array<std::optional<Measured>, earlyWindows.size()>;

/// Two peaks of which the lower has at least this share of the higher make a repetition two-peaked (season rules,
/// evidence 5).
inline constexpr double twoPeakedShare = 0.9;

/// The other maximum of a concentric phase with two: it stands out by max(0.03 m/s, 8 % of the peak velocity).
struct OtherPeak {
    Measured time;     ///< s from concentric start
    Measured velocity; ///< m/s
};

/// Instants: e start of the descent, f greatest speed downward, s concentric start, p peak velocity, c concentric end.
/// s is the zero of velocity at a reversal, or the change point of acceleration after a dead stop. c is the zero of
/// velocity; for ballistic lifts the first instant after p with a <= -g, where there is one: take-off or release.
/// Where no source stands, the definition is common practice without one.
struct Repetition {
    // On the recording's own clock [s]
    double eccentricStart = 0; ///< e; equals s where the lift starts from a dead stop
    double concentricStart = 0;
    double peakTime = 0;
    double concentricEnd = 0;
    bool fromDeadStop = false;             ///< s was found after a rest, not where the bar turned round
    double concentricStartUncertainty = 0; ///< s, standard
    double accelerationUncertainty = 0;    ///< m/s2, standard: of a(t) over 20 ms, at the phase's greatest acceleration

    // Concentric phase
    Measured meanVelocity;           ///< m/s, (h(c) - h(s)) / (c - s)
    Measured meanPropulsiveVelocity; ///< m/s, the same from s to the first a < -g after p (c if none). Sanchez-Medina,
                                     ///< Perez, Gonzalez-Badillo, Int J Sports Med 2010;31:123-129 (from memory)
    Measured peakVelocity;           ///< m/s, v(p)
    Measured timeToPeakVelocity;     ///< s, p - s (TPV)
    Measured range;                  ///< m, h(c) - h(s) (ROM)
    Measured displacementToPeak;     ///< m, h(p) - h(s)
    Measured concentricDuration;     ///< s, c - s
    std::optional<OtherPeak> otherPeak;
    std::optional<Measured> peakAcceleration; ///< m/s2, greatest a in [s, p]; 100 Hz
    /// s, floor cleans: p - the start of the second pull, where a rises through a0 + (a1 - a0) / 10: a0 the least a
    /// between two that are greater by 0.5 m/s2 (the transition), a1 the greatest after it; 100 Hz
    std::optional<Measured> secondPullTime;

    // How soon: windows T from s on
    std::optional<Measured> velocityAt100ms; ///< m/s, v(s + 0.1) (v100); lowestRate(0.1)
    std::optional<Measured> velocityAt200ms; ///< m/s (v200); lowestRate(0.2)
    EarlyMetric meanAcceleration;            ///< m/s2, (v(s + T) - v(s)) / T

    // Descent and reversal; none from a dead stop without descent
    std::optional<Measured> eccentricPeakVelocity;    ///< m/s, v(f), negative
    std::optional<Measured> eccentricDuration;        ///< s
    std::optional<Measured> reversalTime;             ///< s, s - f, a pause included
    std::optional<Measured> brakingSlope;             ///< m/s3, a(s) / (s - f), as a(f) = 0; none with a pause; 100 Hz.
                                                      ///< As the mean slope of force in the braking phase of jumps:
                                                      ///< McMahon et al., Strength Cond J 2018;40(4):96-106 (memory)
    std::optional<Measured> peakReversalAcceleration; ///< m/s2, greatest a from f to s + 0.1 s (p if sooner); 100 Hz
    std::optional<Measured> dropStopTime; ///< s, drop squats: from f to the first zero of velocity (a pause left out)
    std::optional<Measured> stopDepth;    ///< m, drop squats: h(e) - h at that zero

    Flags flags = 0;
};

/// What happened over the set. Loss counts from the fastest repetition. Two-peaked repetitions say nothing of time to
/// peak velocity (season rules, evidence 5) and are left out of it; none where too few are left (1; 2 for a spread).
struct SetSummary {
    double velocityLoss = 0;                   ///< share (0..1): 1 - last / fastest, of the lift's evidence metric
    double velocityLossUncertainty = 0;        ///< the errors of two repetitions taken as independent
    std::optional<double> velocityVariation;   ///< share: coefficient of variation of the evidence metric
    std::optional<Measured> timeToPeakDrift;   ///< share: last TPV / smallest TPV - 1
    std::optional<double> meanTimeToPeak;      ///< s
    std::optional<double> spreadTimeToPeak;    ///< s, sample standard deviation
    std::optional<double> timeToPeakVariation; ///< share: spread / mean, the coefficient of variation
};

} // namespace fleetrung::reps
