#include "engine/reps/local_fit.hpp"

#include <algorithm>
#include <cmath>

#include <Eigen/Cholesky>
#include <Eigen/Core>

namespace fleetrung::reps
{
namespace
{

constexpr double halfWidth = 0.010; // s

std::size_t indexAt(const Signal& signal, double time)
{
    const auto after = std::upper_bound(signal.times.begin(), signal.times.end(), time);
    return after == signal.times.begin() ? 0 : static_cast<std::size_t>(after - signal.times.begin()) - 1;
}

/// Samples [first, last] within `half` of an instant, widened to at least `least` of them where there are so many.
struct Neighbours {
    std::size_t first, last;
};

Neighbours neighboursOf(const Signal& signal, double time, double half, std::size_t least)
{
    const auto& times = signal.times;
    std::size_t first = indexAt(signal, time), last = first;
    if (last + 1 < times.size() && times[last + 1] - time < time - times[last])
        first = ++last;
    constexpr double rounding = 1e-9;
    while (first > 0 && time - times[first - 1] <= half + rounding)
        --first;
    while (last + 1 < times.size() && times[last + 1] - time <= half + rounding)
        ++last;
    while (last - first + 1 < least && (first > 0 || last + 1 < times.size())) {
        const bool before =
            first > 0 && (last + 1 == times.size() || time - times[first - 1] <= times[last + 1] - time);
        before ? --first : ++last;
    }
    return {first, last};
}

/// Coefficients in u = (t - time) / scale, and how noise enters the first of them.
template <int Terms> struct Polynomial {
    Eigen::Matrix<double, Terms, 1> coefficients;
    double scale;
    double noiseGain;
};

template <int Terms> Polynomial<Terms> fitted(const Signal& signal, double time, const Neighbours& near)
{
    using Matrix = Eigen::Matrix<double, Terms, Terms>;
    using Vector = Eigen::Matrix<double, Terms, 1>;
    const double scale = std::max({signal.times[near.last] - time, time - signal.times[near.first], 1e-6});
    Matrix normal = Matrix::Zero();
    Vector right = Vector::Zero();
    for (std::size_t i = near.first; i <= near.last; ++i) {
        Vector row;
        double power = 1;
        for (int k = 0; k < Terms; ++k, power *= (signal.times[i] - time) / scale)
            row[k] = power;
        normal += row * row.transpose();
        right += signal.values[i] * row;
    }
    const Eigen::LDLT<Matrix> factors(normal);
    return {factors.solve(right), scale, std::sqrt(std::max(0.0, factors.solve(Vector(Vector::Unit(0)))[0]))};
}

/// Mean of the samples within `halfWidth` of sample i.
double slidingMean(const Signal& signal, std::size_t i)
{
    const auto near = neighboursOf(signal, signal.times[i], halfWidth, 1);
    double sum = 0;
    for (std::size_t k = near.first; k <= near.last; ++k)
        sum += signal.values[k];
    return sum / static_cast<double>(near.last - near.first + 1);
}

} // namespace

LocalFit fitAt(const Signal& signal, double time)
{
    const auto near = neighboursOf(signal, time, halfWidth, 5);
    if (near.last - near.first < 2)
        return {signal.values[near.first], 0, 1};
    const auto fit = fitted<3>(signal, time, near);
    return {fit.coefficients[0], fit.coefficients[1] / fit.scale, fit.noiseGain};
}

Extremum extremeBetween(const Signal& signal, double from, double to, int direction)
{
    std::size_t best = indexAt(signal, from);
    double greatest = direction * slidingMean(signal, best);
    const std::size_t last = indexAt(signal, to);
    for (std::size_t i = best + 1; i <= last; ++i) {
        const double mean = direction * slidingMean(signal, i);
        if (mean > greatest) {
            greatest = mean;
            best = i;
        }
    }
    const double middle = signal.times[best];
    const auto near = neighboursOf(signal, middle, 2 * halfWidth, 7);
    if (near.last - near.first < 4)
        return {middle, signal.values[best]};
    const auto fit = fitted<4>(signal, middle, near);
    const auto& c = fit.coefficients;
    // c1 + 2 c2 u + 3 c3 u^2 = 0, the root near the middle, in the form that bears c3 = 0.
    const double discriminant = c[2] * c[2] - 3 * c[1] * c[3];
    double u = 0;
    if (direction * c[2] < 0 && discriminant >= 0)
        u = -c[1] / (c[2] + std::copysign(std::sqrt(discriminant), c[2]));
    const double time = std::clamp(middle + fit.scale * std::clamp(u, -0.5, 0.5), std::min(from, to), to);
    u = (time - middle) / fit.scale;
    return {time, c[0] + u * (c[1] + u * (c[2] + u * c[3]))};
}

} // namespace fleetrung::reps
