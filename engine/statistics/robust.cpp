#include "engine/statistics/robust.hpp"

#include <algorithm>
#include <cmath>
#include <limits>

namespace fleetrung::statistics
{
namespace
{

constexpr double notANumber = std::numeric_limits<double>::quiet_NaN();
/// 1 / Phi^-1(3/4): makes the median absolute deviation of normal data its standard deviation.
constexpr double normalScale = 1.4826022185056018;
constexpr double normal975 = 1.959963984540054; // Phi^-1(0.975)

std::vector<double> pairwiseSlopes(std::span<const double> x, std::span<const double> y)
{
    std::vector<double> slopes;
    if (x.size() == y.size())
        for (std::size_t i = 0; i < x.size(); ++i)
            for (std::size_t j = i + 1; j < x.size(); ++j)
                if (x[i] != x[j])
                    slopes.push_back((y[j] - y[i]) / (x[j] - x[i]));
    return slopes;
}

double tieTerm(double equal)
{
    return equal * (equal - 1) * (2 * equal + 5);
}

double tieTerms(std::span<const double> values)
{
    std::vector<double> sorted(values.begin(), values.end());
    std::sort(sorted.begin(), sorted.end());
    double sum = 0;
    for (auto first = sorted.begin(); first != sorted.end();) {
        const auto next = std::upper_bound(first, sorted.end(), *first);
        sum += tieTerm(static_cast<double>(next - first));
        first = next;
    }
    return sum;
}

} // namespace

double mean(std::span<const double> values)
{
    if (values.empty())
        return notANumber;
    double sum = 0;
    for (const double value : values)
        sum += value;
    return sum / static_cast<double>(values.size());
}

double median(std::span<const double> values)
{
    if (values.empty())
        return notANumber;
    std::vector<double> sorted(values.begin(), values.end());
    std::sort(sorted.begin(), sorted.end());
    const auto middle = sorted.size() / 2;
    return sorted.size() % 2 == 1 ? sorted[middle] : (sorted[middle - 1] + sorted[middle]) / 2;
}

double medianAbsoluteDeviation(std::span<const double> values)
{
    const double centre = median(values);
    std::vector<double> distances;
    distances.reserve(values.size());
    for (const double value : values)
        distances.push_back(std::abs(value - centre));
    return normalScale * median(distances);
}

std::vector<double> winsorised(std::span<const double> values, double limit)
{
    std::vector<double> drawnIn(values.begin(), values.end());
    const double centre = median(values);
    const double reach = limit * medianAbsoluteDeviation(values);
    if (!(reach > 0))
        return drawnIn;
    for (double& value : drawnIn)
        value = std::clamp(value, centre - reach, centre + reach);
    return drawnIn;
}

TheilSenLine theilSen(std::span<const double> x, std::span<const double> y)
{
    const auto slopes = pairwiseSlopes(x, y);
    if (slopes.empty())
        return {notANumber, notANumber};
    const double slope = median(slopes);
    std::vector<double> intercepts;
    for (std::size_t i = 0; i < x.size(); ++i)
        intercepts.push_back(y[i] - slope * x[i]);
    return {slope, median(intercepts)};
}

SlopeInterval theilSenInterval(std::span<const double> x, std::span<const double> y)
{
    auto slopes = pairwiseSlopes(x, y);
    if (slopes.empty())
        return {notANumber, notANumber};
    std::sort(slopes.begin(), slopes.end());
    const auto count = static_cast<double>(x.size());
    const double variance = (tieTerm(count) - tieTerms(x) - tieTerms(y)) / 18;
    const double reach = normal975 * std::sqrt(std::max(variance, 0.0));
    const auto last = static_cast<double>(slopes.size() - 1);
    const auto all = static_cast<double>(slopes.size());
    // Halves go to the even number, as the reference library rounds.
    const double upper = std::min(std::nearbyint((all + reach) / 2), last);
    const double lower = std::max(std::nearbyint((all - reach) / 2) - 1, 0.0);
    return {slopes[static_cast<std::size_t>(lower)], slopes[static_cast<std::size_t>(upper)]};
}

std::vector<Baseline> movingBaseline(std::span<const double> values, std::size_t window)
{
    std::vector<Baseline> baselines;
    baselines.reserve(values.size());
    for (std::size_t i = 0; i < values.size(); ++i) {
        const auto before = values.subspan(i - std::min(i, window), std::min(i, window));
        baselines.push_back(before.empty() ? Baseline{}
                                           : Baseline{median(before), medianAbsoluteDeviation(before),
                                                      static_cast<int>(before.size())});
    }
    return baselines;
}

} // namespace fleetrung::statistics
