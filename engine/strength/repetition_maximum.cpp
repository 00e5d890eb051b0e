#include "engine/strength/repetition_maximum.hpp"

#include <array>
#include <cmath>
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

Expected<double> epley(double loadKg, int repetitions)
{
    if (const auto checked = checkSet(loadKg, repetitions); !checked)
        return tl::unexpected(checked.error());
    return repetitions == 1 ? loadKg : loadKg * (1 + repetitions / 30.0);
}

Expected<double> brzycki(double loadKg, int repetitions)
{
    if (const auto checked = checkSet(loadKg, repetitions); !checked)
        return tl::unexpected(checked.error());
    if (repetitions >= brzyckiEnd)
        return fail(Code::InvalidInput, "repetitions", "this formula ends at 36 repetitions; test with a heavier load");
    return 36 * loadKg / (brzyckiEnd - repetitions);
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

} // namespace fleetrung::strength
