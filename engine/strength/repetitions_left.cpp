#include "engine/strength/repetitions_left.hpp"

#include <algorithm>
#include <cmath>
#include <vector>

#include "engine/statistics/robust.hpp"

namespace fleetrung::strength
{
namespace
{

constexpr double smallestLoss = 0.05;
constexpr std::size_t fewestSets = 5;
constexpr double shareError = 0.15, ownShareError = 0.10;
constexpr double smallestShare = 0.05; ///< so that the range ends somewhere

double leftAt(double share, int repetitions)
{
    return repetitions * (1 / std::clamp(share, smallestShare, 1.0) - 1);
}

} // namespace

double lossAtHalf(std::string_view lift)
{
    return lift.find("press") != std::string_view::npos ? 0.30 : 0.20;
}

std::optional<double> ownLossAtHalf(std::span<const ToldSet> sets)
{
    std::vector<double> halves;
    for (const auto& set : sets)
        if (set.repetitions >= 2 && set.left >= 0 && set.loss >= smallestLoss && set.loss <= 1)
            halves.push_back(set.loss * (set.repetitions + set.left) / (2.0 * set.repetitions));
    if (halves.size() < fewestSets)
        return std::nullopt;
    return statistics::median(halves);
}

Expected<RepetitionsLeft> repetitionsLeft(int repetitions, double loss, std::string_view lift,
                                          std::optional<double> own)
{
    if (repetitions < 2)
        return fail(Code::InvalidInput, "repetitions", "a loss needs two repetitions at least");
    if (!(loss >= 0 && loss <= 1) || (own && !(*own > 0)))
        return fail(Code::InvalidInput, "loss", "a share of the fastest repetition's velocity from 0 to 1 is needed");
    if (loss < smallestLoss)
        return fail(Code::NotAvailable, "loss", "the set has hardly slowed down: it does not tell how many are left");
    const double share = loss / own.value_or(lossAtHalf(lift)) / 2;
    const double error = own ? ownShareError : shareError;
    return RepetitionsLeft{leftAt(share, repetitions), leftAt(std::min(share, 1.0) + error, repetitions),
                           leftAt(std::min(share, 1.0) - error, repetitions), own.has_value()};
}

} // namespace fleetrung::strength
