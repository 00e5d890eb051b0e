// Force, impulse and power of one repetition, for a known load.
//
// The system is a point mass m = load + share of body mass (body_share.hpp) that moves with the bar: F = m (a + g). It
// is no muscle force and no force plate: legs and trunk move otherwise than the bar, most of all in cleans, and before
// the bar moves a dead stop shows nothing of the force that grows up to its weight. m is taken as exact.
// Instants s, p, c and f as in repetition.hpp; g = 9.80665 m/s2.
#pragma once

#include "engine/base/error.hpp"
#include "engine/reps/lift.hpp"
#include "engine/reps/repetition.hpp"
#include "engine/reps/trace.hpp"

namespace fleetrung::reps
{

struct Loading {
    double loadKg;     ///< on the bar, the bar included
    double bodyMassKg; ///< only its share of the lift counts; 0 where unknown
};

struct ForceMetrics {
    double systemMass = 0;              ///< kg
    std::optional<Measured> peakForce;  ///< N, m (peak acceleration + g); 100 Hz
    Measured meanForce;                 ///< N, s to c: m (g + (v(c) - v(s)) / (c - s)); from rest to rest the weight
    Measured meanForceToPeak;           ///< N, s to p: m (g + v(p) / (p - s))
    EarlyMetric impulse;                ///< N s, integral of F over [s, s + T] = m (v(s + T) - v(s) + g T)
    EarlyMetric netImpulse;             ///< N s, the same less the weight's: m (v(s + T) - v(s))
    EarlyMetric rateOfForceDevelopment; ///< N/s, (F(s + T) - m g) / T, from a dead stop only: windows from the onset
                                        ///< after Maffiuletti et al., Eur J Appl Physiol 2016;116:1091-1116
    Measured meanPower;                 ///< W, mean of F v over s to c = m (g (h(c) - h(s)) + v(c)^2 / 2) / (c - s)
    std::optional<Measured> peakPower;  ///< W, greatest F v in [s, c]; 100 Hz
    std::optional<Measured> brakingForceSlope; ///< N/s, m times the braking slope of acceleration
};

/// kg; the load plus the lift's share of body mass.
[[nodiscard]] double systemMass(const Lift& lift, const Loading& loading);

/// `repetition` must be of `trace` and not read back from a store, which keeps no early windows. Fails with
/// InvalidArgument where the load is not a mass, body mass is unknown and the lift moves a share of it, or the
/// repetition does not lie in the trace.
[[nodiscard]] Expected<ForceMetrics> forceMetrics(const MotionTrace& trace, const Repetition& repetition,
                                                  const Lift& lift, const Loading& loading);

} // namespace fleetrung::reps
