#include "engine/jumps/kink.hpp"

#include <algorithm>
#include <cmath>

#include <Eigen/Dense>

namespace fleetrung::jumps
{
namespace
{

constexpr double scale = 0.01; // s: powers of times of this size keep their digits

class Fit
{
public:
    Fit(std::span<const double> theTimes, std::span<const double> theValues, KinkShape theShape)
        : times(theTimes), values(theValues), shape(theShape)
    {
    }

    /// Sum of squares left over with the kink at `when`.
    [[nodiscard]] double left(double when) const
    {
        const auto rows = static_cast<Eigen::Index>(times.size());
        Eigen::MatrixXd design = Eigen::MatrixXd::Zero(rows, 1 + shape.before + shape.after);
        Eigen::VectorXd wanted(rows);
        for (Eigen::Index row = 0; row < rows; ++row) {
            const double x = (times[static_cast<std::size_t>(row)] - when) / scale;
            design(row, 0) = 1;
            double power = 1;
            const int first = x < 0 ? 1 : 1 + shape.before;
            const int degree = x < 0 ? shape.before : shape.after;
            for (int i = 0; i < degree; ++i)
                design(row, first + i) = power *= x;
            wanted[row] = values[static_cast<std::size_t>(row)];
        }
        const Eigen::VectorXd solution = design.colPivHouseholderQr().solve(wanted);
        return (wanted - design * solution).squaredNorm();
    }

private:
    std::span<const double> times, values;
    KinkShape shape;
};

} // namespace

std::optional<Kink> fitKink(std::span<const double> times, std::span<const double> values, double from, double to,
                            KinkShape shape, double noise)
{
    const auto unknowns = static_cast<std::size_t>(2 + shape.before + shape.after);
    if (times.size() < unknowns || !(to > from))
        return std::nullopt;
    const Fit fit(times, values, shape);
    constexpr int steps = 32;
    const double step = (to - from) / steps;
    double best = from;
    double least = fit.left(from);
    for (int i = 1; i <= steps; ++i) {
        const double left = fit.left(from + i * step);
        if (left < least) {
            least = left;
            best = from + i * step;
        }
    }
    double low = std::max(from, best - step);
    double high = std::min(to, best + step);
    for (int i = 0; i < 24; ++i) { // ternary search: one minimum is left inside
        const double a = low + (high - low) / 3;
        const double b = high - (high - low) / 3;
        if (fit.left(a) < fit.left(b))
            high = b;
        else
            low = a;
    }
    const double time = (low + high) / 2;
    least = fit.left(time);
    const auto free = static_cast<double>(std::max<std::size_t>(1, times.size() - unknowns));
    const double variance = std::max(noise * noise, least / free);
    const double h = 0.5 * step;
    const double curvature = std::max(0.0, (fit.left(time - h) + fit.left(time + h) - 2 * least) / (h * h));
    const double spread = curvature > 0 ? std::sqrt(2 * variance / curvature) : to - from;
    return Kink{time, std::min(spread, to - from)};
}

} // namespace fleetrung::jumps
