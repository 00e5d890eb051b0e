#include "engine/statistics/rank_correlation.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numeric>
#include <random>

#include "engine/statistics/robust.hpp"

namespace fleetrung::statistics
{
namespace
{

constexpr double notANumber = std::numeric_limits<double>::quiet_NaN();

double correlation(std::span<const double> x, std::span<const double> y)
{
    const double meanX = mean(x), meanY = mean(y);
    double xx = 0, yy = 0, xy = 0;
    for (std::size_t i = 0; i < x.size(); ++i) {
        xx += (x[i] - meanX) * (x[i] - meanX);
        yy += (y[i] - meanY) * (y[i] - meanY);
        xy += (x[i] - meanX) * (y[i] - meanY);
    }
    return xx > 0 && yy > 0 ? xy / std::sqrt(xx * yy) : notANumber;
}

/// Knuth's constants (MMIX); its upper bits are even enough to draw places by.
using Draws = std::linear_congruential_engine<std::uint64_t, 6364136223846793005U, 1442695040888963407U, 0>;

std::size_t place(Draws& draws, std::size_t count)
{
    const auto upper = draws() >> 32U;
    return static_cast<std::size_t>((upper * count) >> 32U);
}

/// Between neighbours, as most libraries do: the value at (n - 1) share.
double percentile(const std::vector<double>& sorted, double share)
{
    const double at = share * static_cast<double>(sorted.size() - 1);
    const auto below = static_cast<std::size_t>(at);
    const auto above = std::min(below + 1, sorted.size() - 1);
    return sorted[below] + (at - static_cast<double>(below)) * (sorted[above] - sorted[below]);
}

} // namespace

std::vector<double> ranks(std::span<const double> values)
{
    std::vector<std::size_t> order(values.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::sort(order.begin(), order.end(), [&](auto a, auto b) { return values[a] < values[b]; });
    std::vector<double> result(values.size());
    for (std::size_t first = 0; first < order.size();) {
        std::size_t next = first + 1;
        while (next < order.size() && !(values[order[first]] < values[order[next]]))
            ++next;
        for (std::size_t i = first; i < next; ++i)
            result[order[i]] = static_cast<double>(first + 1 + next) / 2;
        first = next;
    }
    return result;
}

double rankCorrelation(std::span<const double> x, std::span<const double> y)
{
    if (x.size() != y.size() || x.size() < 2)
        return notANumber;
    return correlation(ranks(x), ranks(y));
}

CorrelationInterval rankCorrelationInterval(std::span<const double> x, std::span<const double> y, std::uint64_t seed,
                                            int resamples)
{
    if (std::isnan(rankCorrelation(x, y)))
        return {notANumber, notANumber};
    Draws draws(seed);
    std::vector<double> found, drawnX(x.size()), drawnY(x.size());
    for (int i = 0; i < resamples; ++i) {
        for (std::size_t k = 0; k < x.size(); ++k) {
            const auto from = place(draws, x.size());
            drawnX[k] = x[from];
            drawnY[k] = y[from];
        }
        if (const double one = rankCorrelation(drawnX, drawnY); !std::isnan(one))
            found.push_back(one);
    }
    if (found.empty())
        return {notANumber, notANumber};
    std::sort(found.begin(), found.end());
    return {percentile(found, 0.025), percentile(found, 0.975)};
}

} // namespace fleetrung::statistics
