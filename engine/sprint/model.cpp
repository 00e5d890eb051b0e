#include "engine/sprint/model.hpp"

#include <cmath>
#include <numbers>

namespace fleetrung::sprint
{

double Model::speedAt(double time) const
{
    return -vmax * std::expm1(-time / tau);
}

double Model::distanceAt(double time) const
{
    return vmax * (time + tau * std::expm1(-time / tau));
}

double Model::accelerationAt(double time) const
{
    return vmax / tau * std::exp(-time / tau);
}

double Model::timeTo(double distance) const
{
    if (distance <= 0)
        return 0;
    // u + exp(-u) - 1 = z for u = t / tau: closed by W, then polished, since near the start W loses half of its digits.
    const double z = distance / (vmax * tau);
    double u = z < 1e-3 ? std::sqrt(2 * z) : 1 + z + lambertW(-std::exp(-1 - z));
    for (int i = 0; i < 4; ++i)
        u -= (u + std::expm1(-u) - z) / -std::expm1(-u);
    return tau * u;
}

double lambertW(double x)
{
    // Near the branch point by the series in p = sqrt(2 (e x + 1)), elsewhere from x itself; then Halley's steps.
    const double p = std::sqrt(std::fmax(0, 2 * (std::numbers::e * x + 1)));
    double w = -1 + p - p * p / 3 + 11 * p * p * p / 72;
    for (int i = 0; i < 20; ++i) {
        const double e = std::exp(w);
        const double f = w * e - x;
        const double slope = e * (w + 1);
        if (slope == 0)
            break;
        const double step = f / (slope - (w + 2) * f / (2 * w + 2));
        w -= step;
        if (std::abs(step) < 1e-15)
            break;
    }
    return w;
}

} // namespace fleetrung::sprint
