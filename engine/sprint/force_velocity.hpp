// Force, velocity and power of a sprint from its model: the simple method of Samozino et al. 2016
// (doi:10.1111/sms.12490; equations from memory). Horizontal force F = m a + k (v - wind)^2, k = rho Af Cd / 2,
// rho = 1.293 (pressure / 760 Torr) (273 / (273 + T)), Af = 0.2025 h^0.725 m^0.425 0.266, Cd = 0.9; the line of F over
// v is fitted at evenly spaced times; v0 = F0 / -slope, Pmax = F0 v0 / 4; ratio RF = F / sqrt(F^2 + (m g)^2), its
// greatest value from 0.3 s on, and its slope over v from there (DRF).
#pragma once

#include "engine/base/error.hpp"
#include "engine/sprint/model.hpp"

namespace fleetrung::sprint
{

struct Runner {
    double mass;    ///< kg
    double stature; ///< m
};

struct Air {
    double temperature = 20;  ///< degrees Celsius
    double pressure = 101325; ///< Pa
    double wind = 0;          ///< m/s, positive from behind
    double gravity = 9.80665; ///< m/s2
};

/// Pressure [Pa] at that height above the sea [m] in the International Standard Atmosphere (ISO 2533): 101325 (1
/// - 2.25577e-5 h)^5.25588.
[[nodiscard]] double pressureAtHeight(double height);

/// k [kg/m].
[[nodiscard]] double dragFactor(const Runner& runner, const Air& air);

struct ForceVelocity {
    double f0 = 0;    ///< N
    double v0 = 0;    ///< m/s
    double pmax = 0;  ///< W
    double slope = 0; ///< N s/m
    double rfMax = 0; ///< 0..1
    double drf = 0;   ///< per m/s
};

/// `lastTime`: the line is fitted from the first movement to there [s] (the last split). Fails with InvalidInput for a
/// mass, stature, pressure or temperature that nobody and no place has.
[[nodiscard]] Expected<ForceVelocity> forceVelocity(const Model& model, double lastTime, const Runner& runner,
                                                    const Air& air = {});

} // namespace fleetrung::sprint
