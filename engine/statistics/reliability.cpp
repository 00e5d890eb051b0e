#include "engine/statistics/reliability.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>
#include <vector>

#include "engine/statistics/robust.hpp"

namespace fleetrung::statistics
{
namespace
{

constexpr double normal95 = 1.96;
constexpr double worthwhileShare = 0.2;
constexpr double winsorLimit = 3;

} // namespace

double sampleDeviation(std::span<const double> values)
{
    if (values.size() < 2)
        return std::numeric_limits<double>::quiet_NaN();
    const double centre = mean(values);
    double sum = 0;
    for (const double value : values)
        sum += (value - centre) * (value - centre);
    return std::sqrt(sum / static_cast<double>(values.size() - 1));
}

double typicalError(std::span<const double> first, std::span<const double> second)
{
    if (first.size() != second.size())
        return std::numeric_limits<double>::quiet_NaN();
    std::vector<double> differences;
    for (std::size_t i = 0; i < first.size(); ++i)
        differences.push_back(second[i] - first[i]);
    return sampleDeviation(differences) / std::numbers::sqrt2;
}

double typicalErrorWithPrior(std::span<const double> differences, double prior, double weight)
{
    double sum = 0;
    for (const double difference : winsorised(differences, winsorLimit))
        sum += difference * difference;
    const auto count = static_cast<double>(differences.size());
    return std::sqrt((weight * prior * prior + sum / 2) / (weight + count));
}

double minimalDetectableChange(double error)
{
    return normal95 * std::numbers::sqrt2 * error;
}

double smallestWorthwhileChange(double deviationBetween, double instrumentError)
{
    const double variance = deviationBetween * deviationBetween - instrumentError * instrumentError;
    return worthwhileShare * std::sqrt(std::max(0.0, variance));
}

} // namespace fleetrung::statistics
