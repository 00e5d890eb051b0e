#include "engine/strength/plates.hpp"

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <functional>
#include <limits>
#include <optional>
#include <utility>

#include "engine/base/numbers.hpp"

namespace fleetrung::strength
{
namespace
{

constexpr int hundredths = 100;
constexpr double heaviest = 1000;
constexpr int mostPairs = 50;
constexpr std::size_t mostKinds = 12;
constexpr int cannot = std::numeric_limits<int>::max();

/// Nothing where it is no whole number of hundredths.
std::optional<int> inHundredths(double weight)
{
    const double scaled = weight * hundredths;
    if (!std::isfinite(weight) || weight < 0 || weight > heaviest || std::abs(scaled - std::round(scaled)) > 1e-6)
        return std::nullopt;
    return static_cast<int>(std::lround(scaled));
}

struct Kind {
    int weight = 0; ///< hundredths
    int pairs = 0;
};

Expected<std::vector<Kind>> kindsOf(const Rack& rack)
{
    if (rack.plates.size() > mostKinds)
        return fail(Code::InvalidInput, "plates", "are more kinds than a rack holds");
    std::vector<Kind> kinds;
    for (const auto& plate : rack.plates) {
        const auto weight = inHundredths(plate.weight);
        if (!weight || *weight == 0 || plate.pairs < 0 || plate.pairs > mostPairs)
            return fail(Code::InvalidInput, "plates",
                        "need a weight above zero with at most two decimals, and 0 to " + integerText(mostPairs) +
                            " pairs");
        kinds.push_back({*weight, plate.pairs});
    }
    std::ranges::sort(kinds, {}, &Kind::weight); // so that the way back below takes the heaviest first
    return kinds;
}

/// Fewest plates for each weight of one side up to `most`, one row a kind: fewest[k][w] with the kinds before k only.
std::vector<std::vector<int>> fewestPlates(const std::vector<Kind>& kinds, int most)
{
    std::vector<std::vector<int>> fewest(kinds.size() + 1,
                                         std::vector<int>(static_cast<std::size_t>(most) + 1, cannot));
    fewest[0][0] = 0;
    for (std::size_t k = 0; k < kinds.size(); ++k)
        for (int weight = 0; weight <= most; ++weight)
            for (int count = 0; count <= kinds[k].pairs && count * kinds[k].weight <= weight; ++count) {
                const int before = fewest[k][static_cast<std::size_t>(weight - count * kinds[k].weight)];
                auto& best = fewest[k + 1][static_cast<std::size_t>(weight)];
                if (before != cannot)
                    best = std::min(best, before + count);
            }
    return fewest;
}

/// Of the ways with the fewest plates the one with most of the heaviest.
std::vector<double> platesOf(const std::vector<Kind>& kinds, const std::vector<std::vector<int>>& fewest, int weight)
{
    std::vector<double> side;
    for (std::size_t k = kinds.size(); k > 0; --k) {
        const auto& kind = kinds[k - 1];
        const int wanted = fewest[k][static_cast<std::size_t>(weight)];
        const auto leads = [&](int count) {
            const int before = fewest[k - 1][static_cast<std::size_t>(weight - count * kind.weight)];
            return before != cannot && before + count == wanted;
        };
        int count = std::min(kind.pairs, weight / kind.weight);
        while (!leads(count))
            --count;
        side.insert(side.end(), static_cast<std::size_t>(count), static_cast<double>(kind.weight) / hundredths);
        weight -= count * kind.weight;
    }
    return side;
}

} // namespace

Rack kilogramRack()
{
    return {20, {{25, 10}, {20, 4}, {15, 2}, {10, 4}, {5, 4}, {2.5, 2}, {1.25, 2}}};
}

Rack poundRack()
{
    return {45, {{45, 10}, {35, 2}, {25, 4}, {10, 4}, {5, 4}, {2.5, 2}}};
}

Expected<Loading> platesFor(double load, const Rack& rack)
{
    if (!std::isfinite(load) || load < 0 || load > heaviest)
        return fail(Code::InvalidInput, "load",
                    "a load from 0 to " + integerText(static_cast<int>(heaviest)) + " is needed");
    const auto bar = inHundredths(rack.bar);
    if (!bar)
        return fail(Code::InvalidInput, "bar", "its weight needs at most two decimals");
    const auto kinds = kindsOf(rack);
    if (!kinds)
        return tl::unexpected(kinds.error());
    const double wanted = load * hundredths;
    if (wanted < *bar)
        return fail(Code::NotAvailable, "load", "the bar alone is heavier; take a lighter bar");
    int largest = 0;
    for (const auto& kind : *kinds)
        largest = std::max(largest, kind.weight);
    const int most = static_cast<int>((wanted - *bar) / 2) + largest; // one plate beyond may be nearer
    const auto fewest = fewestPlates(*kinds, most);
    int best = 0;
    for (int weight = 0; weight <= most; ++weight)
        if (fewest.back()[static_cast<std::size_t>(weight)] != cannot &&
            std::abs(*bar + 2 * weight - wanted) < std::abs(*bar + 2 * best - wanted) - 1e-6)
            best = weight;
    return Loading{static_cast<double>(*bar + 2 * best) / hundredths, platesOf(*kinds, fewest, best)};
}

Expected<Loading> loadOf(std::vector<double> side, double bar)
{
    const auto barWeight = inHundredths(bar);
    if (!barWeight)
        return fail(Code::InvalidInput, "bar", "its weight needs at most two decimals");
    int total = *barWeight;
    for (const double plate : side) {
        const auto weight = inHundredths(plate);
        if (!weight || *weight == 0)
            return fail(Code::InvalidInput, "plates", "need a weight above zero with at most two decimals");
        total += 2 * *weight;
    }
    if (total > heaviest * hundredths)
        return fail(Code::InvalidInput, "load", "is more than a bar holds");
    std::ranges::sort(side, std::greater());
    return Loading{static_cast<double>(total) / hundredths, std::move(side)};
}

} // namespace fleetrung::strength
