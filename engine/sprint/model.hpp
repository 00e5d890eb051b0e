// The speed of a sprint from standstill to top speed: v(t) = vmax (1 - exp(-t / tau)), t from the first movement.
// Attributed to Furusawa, Hill, Parkinson 1927; used on split times by Samozino et al., Scand J Med Sci Sports
// 2016;26:648-658, doi:10.1111/sms.12490. It is no exact law: with the ten splits of one 100 m final, vmax moves by 0.3
// % and tau by 5 % when the offset of the start is left free instead of known. What was fitted is said with every
// result.
#pragma once

namespace fleetrung::sprint
{

struct Model {
    double vmax = 0; ///< m/s
    double tau = 0;  ///< s

    [[nodiscard]] double speedAt(double time) const;        ///< m/s
    [[nodiscard]] double distanceAt(double time) const;     ///< m
    [[nodiscard]] double accelerationAt(double time) const; ///< m/s2
    /// s from the first movement to that distance [m]: t = tau (c + W(-exp(-c))), c = 1 + d / (vmax tau), W the
    /// principal branch of Lambert's function. 0 for a distance of 0 or less.
    [[nodiscard]] double timeTo(double distance) const;
};

/// Principal branch of Lambert's W for -1/e <= x <= 0: w exp(w) = x.
[[nodiscard]] double lambertW(double x);

} // namespace fleetrung::sprint
