// The instant between samples at which a curve breaks: a polynomial before it, another after it, equal at it.
#pragma once

#include <optional>
#include <span>

namespace fleetrung::jumps
{

struct Kink {
    double time = 0;        ///< s
    double uncertainty = 0; ///< s, from what the two curves leave over
};

/// Degrees of the two polynomials (1-3).
struct KinkShape {
    int before, after;
};

/// Least squares over the given points, the kink between `from` and `to`. `noise` is the least standard deviation to
/// believe of one value. Nothing where there are too few points on either side.
[[nodiscard]] std::optional<Kink> fitKink(std::span<const double> times, std::span<const double> values, double from,
                                          double to, KinkShape shape, double noise);

} // namespace fleetrung::jumps
