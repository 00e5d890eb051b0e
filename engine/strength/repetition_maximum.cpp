#include "engine/strength/repetition_maximum.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <utility>

#include "engine/base/numbers.hpp"

namespace fleetrung::strength
{
namespace
{

constexpr int longestSet = 10; ///< beyond it the published formulas part ways
constexpr int brzyckiEnd = 37; ///< where its denominator reaches zero

/// Source: NSCA training load chart (repetitions, % of 1RM).
constexpr std::array<std::pair<int, double>, 11> chart{
    {{1, 100}, {2, 95}, {3, 93}, {4, 90}, {5, 87}, {6, 85}, {7, 83}, {8, 80}, {9, 77}, {10, 75}, {12, 70}}};

Expected<void> checkSet(double loadKg, int repetitions)
{
    if (!std::isfinite(loadKg) || loadKg <= 0)
        return fail(Code::InvalidInput, "load", "a load above zero is needed");
    if (repetitions < 1)
        return fail(Code::InvalidInput, "repetitions", "at least one repetition is needed");
    return {};
}

} // namespace

Expected<double> maximumBy(Formula formula, double loadKg, int repetitions)
{
    if (const auto checked = checkSet(loadKg, repetitions); !checked)
        return tl::unexpected(checked.error());
    if (repetitions == 1)
        return loadKg;
    if (repetitions >= brzyckiEnd && (formula == Formula::Brzycki || formula == Formula::Lander))
        return fail(Code::InvalidInput, "repetitions", "this formula ends at 36 repetitions; test with a heavier load");
    const double w = loadKg, r = repetitions;
    switch (formula) {
    case Formula::Epley:
        return w * (1 + r / 30);
    case Formula::Brzycki:
        return 36 * w / (brzyckiEnd - r);
    case Formula::Lander:
        return 100 * w / (101.3 - 2.67123 * r);
    case Formula::Lombardi:
        return w * std::pow(r, 0.10);
    case Formula::OConner:
        return w * (1 + 0.025 * r);
    case Formula::Mayhew:
        return 100 * w / (52.2 + 41.9 * std::exp(-0.055 * r));
    case Formula::Wathen:
        return 100 * w / (48.8 + 53.8 * std::exp(-0.075 * r));
    }
    return fail(Code::InvalidInput, "formula", "is none of those known");
}

Expected<double> epley(double loadKg, int repetitions)
{
    return maximumBy(Formula::Epley, loadKg, repetitions);
}

Expected<double> brzycki(double loadKg, int repetitions)
{
    return maximumBy(Formula::Brzycki, loadKg, repetitions);
}

Expected<MaximumRange> maximumRange(double loadKg, int repetitions)
{
    if (const auto shown = estimatedMaximum(loadKg, repetitions); !shown)
        return tl::unexpected(shown.error());
    MaximumRange range{std::numeric_limits<double>::infinity(), 0};
    for (const auto formula : allFormulas)
        if (const auto maximum = maximumBy(formula, loadKg, repetitions)) {
            range.low = std::min(range.low, *maximum);
            range.high = std::max(range.high, *maximum);
        }
    return range;
}

Expected<double> estimatedMaximum(double loadKg, int repetitions, int repetitionsLeft)
{
    if (repetitionsLeft < 0)
        return fail(Code::InvalidInput, "repetitions left", "repetitions left cannot be fewer than none");
    if (repetitions + repetitionsLeft > longestSet)
        return fail(Code::NotAvailable, "repetitions",
                    "a set of more than " + integerText(longestSet) +
                        " possible repetitions says too little of 1RM; test with a heavier load");
    return brzycki(loadKg, repetitions + repetitionsLeft);
}

Expected<double> chartShare(int repetitions)
{
    for (const auto& [count, percent] : chart)
        if (count == repetitions)
            return percent / 100;
    return fail(Code::NotAvailable, "repetitions", "the chart has 1 to 10 and 12 repetitions");
}

Expected<std::vector<ChartRow>> loadChart(double maximumKg)
{
    if (!std::isfinite(maximumKg) || maximumKg <= 0)
        return fail(Code::InvalidInput, "maximum", "a maximum above zero is needed");
    std::vector<ChartRow> rows;
    for (const auto& [count, percent] : chart)
        rows.push_back({count, percent / 100, maximumKg * percent / 100});
    return rows;
}

} // namespace fleetrung::strength
