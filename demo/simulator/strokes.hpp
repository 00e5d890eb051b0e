// The shape of a stroke: a list of acceleration levels, two of them solved so that the stroke ends at rest where it
// should.
#pragma once

#include <optional>
#include <vector>

#include "demo/simulator/path.hpp"

namespace fleetrung::simulator
{

/// One level of acceleration and the way to it from the level before.
struct Level {
    double time;         ///< s from the stroke's start
    double acceleration; ///< m/s2
    Ease ease = Ease::Smooth;
};

/// The first level stands at time 0.
using Stroke = std::vector<Level>;

/// Upward: from velocity zero to velocity zero over exactly `range`, greatest speed at exactly `peakTime` (with a
/// sticking region the later of two peaks).
struct Upward {
    double range, duration, peakTime; ///< m, s, s
    double startAcceleration = 0;     ///< m/s2, that of the reversal; 0 from a dead stop
    double brakeBefore = 0.45;        ///< acceleration just before the peak, relative to the braking just after it
    double endBrake = 0.4;            ///< braking left at the end, relative to its greatest
    double middle = 0.9;              ///< push half-way to the peak relative to the first push; below 0 it sticks
};

/// Downward from velocity zero to velocity zero.
struct Downward {
    double range, duration;       ///< m (positive), s
    double startAcceleration = 0; ///< m/s2
    double endAcceleration = 0;   ///< m/s2; 0 where a pause or a support follows
};

/// Nothing where such a stroke would turn round on its way, or (a bar is pushed, not pulled down) brake harder than
/// `greatestBrake` [m/s2]: the caller asks for a milder one.
[[nodiscard]] std::optional<Stroke> upwardStroke(const Upward& wanted, double greatestBrake);
[[nodiscard]] std::optional<Stroke> downwardStroke(const Downward& wanted, double greatestFall);

/// After an upward stroke that ended with `acceleration` < 0: the small dip in which the body comes to rest.
[[nodiscard]] Stroke settlingStroke(double acceleration, double duration);

/// A landing and take-off: force rises from nothing and ends in nothing, height is the same at both ends.
/// `landingSpeed` and `takeoffSpeed` are positive [m/s].
[[nodiscard]] Stroke contactStroke(double landingSpeed, double takeoffSpeed, double duration, double gravity);

/// From rest at the bottom of a dip (acceleration `startAcceleration`) up over `range` to take-off.
[[nodiscard]] Stroke takeoffStroke(double range, double takeoffSpeed, double duration, double startAcceleration,
                                   double gravity);

/// From a fall at `speed` (positive, acceleration -gravity) to rest.
[[nodiscard]] Stroke catchStroke(double speed, double duration, double startAcceleration);

/// From one velocity to another with a given change of height on the way; `start` and `end` accelerations given.
struct Reach {
    double duration;                   ///< s
    double startVelocity, endVelocity; ///< m/s
    double change;                     ///< m
    double start = 0, end = 0;         ///< m/s2
};
[[nodiscard]] Stroke reachingStroke(const Reach& wanted);

/// A toe that is pulled off the ground after the body has left it, and comes down at `landingSpeed` (positive) on
/// ground `rise` higher, `duration` later. `swing` [m/s2] is how the leg moves against the falling body on the way up.
[[nodiscard]] Stroke toeFlight(double duration, double landingSpeed, double rise, double swing, double gravity);

/// Appends the stroke; returns the path's height change.
double append(Path& path, const Stroke& stroke);

} // namespace fleetrung::simulator
