// Everything that moves during one recording, as a continuous function of time, and where the repetitions are in it.
#pragma once

#include <vector>

#include <Eigen/Core>

#include "demo/simulator/path.hpp"
#include "demo/simulator/random.hpp"

namespace fleetrung::simulator
{

/// A short ring after an impact: displacement amplitude * (4s(1-s))^4 * sin(2 pi cycles s), s = 0..1. It ends where it
/// began.
struct Ring {
    double start, duration;    ///< s
    Eigen::Vector3d amplitude; ///< m
    double cycles;
};

/// One steady oscillation of the body that holds the bar.
struct Oscillation {
    Eigen::Vector3d amplitude; ///< m
    double frequency;          ///< rad/s
    double phase;              ///< rad
};

/// From here on the bar is held by a person (towards 1) or lies on a support (towards 0).
struct Grip {
    double start, duration, from, to;
};

/// Nominal instants of a repetition; truth.cpp finds the exact ones of the point asked for.
struct RepetitionMark {
    double eccentricStart, concentricStart, concentricEnd; ///< s
    bool fromRest;     ///< begins where the bar stood still, not where it turned round
    bool endsInFlight; ///< take-off or release instead of velocity zero
    bool partial;
};

struct JumpMark {
    double landing = 0, takeoff = 0, secondLanding = 0; ///< s; landing: none from standing; secondLanding 0: none
    double landingSpeed = 0, takeoffSpeed = 0;          ///< m/s, of the body
    bool fromStanding = false;
};

/// Position, velocity and acceleration of one point, and attitude with its first two time derivatives.
struct Pose {
    Eigen::Vector3d position, velocity, acceleration;
    Eigen::Matrix3d attitude, attitudeRate, attitudeAcceleration; ///< bar axes -> world
};

struct Scene {
    Path vertical;
    Path forward;
    Path pitch; ///< rad, about the y axis beside the tilt of the stroke: a foot that turns
    std::vector<Ring> rings;
    std::vector<Oscillation> oscillations;
    std::vector<Grip> grips;
    std::vector<RepetitionMark> repetitions;
    std::vector<JumpMark> jumps;
    double reference = 0;     ///< m, height from which sway and tilt count
    double strokeRange = 0.5; ///< m over which they reach their size
    double swayForward = 0;   ///< m
    double tilt = 0;          ///< rad, about the bar
    double roll = 0;          ///< rad
    double yaw = 0;           ///< rad
    Eigen::Vector3d mount =
        Eigen::Vector3d::Zero(); ///< m, where the sensor is worn, from the point that the paths move

    double endsAt = 0; ///< s; 0 = where the vertical path ends

    [[nodiscard]] double duration() const { return endsAt > 0 ? endsAt : vertical.end(); }
    [[nodiscard]] Pose at(double time) const;
    /// Vertical motion of a point `lever` away from the bar's centre (bar axes).
    [[nodiscard]] Kinematics pointAt(double time, const Eigen::Vector3d& lever) const;
};

/// Tremor (8-12 Hz, together 0.02-0.05 m/s2 a axis) and breathing sway (0.2-0.4 Hz, a few mm); common practice, no
/// source.
[[nodiscard]] std::vector<Oscillation> livingOscillations(Random& random);

} // namespace fleetrung::simulator
