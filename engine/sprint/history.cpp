#include "engine/sprint/history.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <vector>

#include "engine/statistics/robust.hpp"

namespace fleetrung::sprint
{
namespace
{

constexpr std::size_t looksBack = 3; // runs

/// Standard deviation of the median of one, two or three values that each have 1: of three normal values the variance
/// is 1 - sqrt(3) / pi (order statistics, from memory; the test draws it).
constexpr std::array<double, looksBack> medianError{1.0, 0.70711, 0.66983};

Change changeAgainst(const DatedSpeed& now, std::span<const DatedSpeed> last)
{
    std::vector<double> speeds;
    double squares = 0;
    for (const auto& one : last) {
        speeds.push_back(one.speed);
        squares += one.error * one.error;
    }
    const double typical = std::sqrt(squares / static_cast<double>(last.size()));
    Change change;
    change.usual = statistics::median(speeds);
    change.runs = static_cast<int>(last.size());
    change.change = now.speed - change.usual;
    change.error = std::hypot(now.error, medianError.at(last.size() - 1) * typical);
    change.beyond = std::abs(change.change) > 2 * change.error;
    return change;
}

} // namespace

HistoryComparison compareWithHistory(const DatedSpeed& now, std::span<const DatedSpeed> before)
{
    HistoryComparison comparison{.best = now, .isBest = true, .change = {}};
    for (const auto& one : before)
        if (one.speed > comparison.best.speed) {
            comparison.best = one;
            comparison.isBest = false;
        }
    if (!before.empty())
        comparison.change = changeAgainst(now, before.last(std::min(before.size(), looksBack)));
    return comparison;
}

} // namespace fleetrung::sprint
