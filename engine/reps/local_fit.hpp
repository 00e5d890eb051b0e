// Values of a sampled signal at any instant, by least squares over its neighbours: symmetric, so no instant moves.
// Used inside reps/.
#pragma once

#include <span>

namespace fleetrung::reps
{

/// A signal: `values` at `times`, both of the same length, times increasing.
struct Signal {
    std::span<const double> times;
    std::span<const double> values;
};

struct LocalFit {
    double value;
    double slope;
    double noiseGain; ///< standard deviation of `value` for independent noise of standard deviation 1 in each sample
};

/// Quadratic through the samples within 10 ms of the instant, at least five of them.
[[nodiscard]] LocalFit fitAt(const Signal& signal, double time);

struct Extremum {
    double time;
    double value;
};

/// Greatest (direction +1) or least (-1) value between two instants: the extreme of a sliding mean over 20 ms, refined
/// on a local cubic.
[[nodiscard]] Extremum extremeBetween(const Signal& signal, double from, double to, int direction);

} // namespace fleetrung::reps
