#include "engine/transfer/pairs.hpp"

#include <algorithm>

namespace fleetrung::transfer
{
namespace
{

int laddersOf(std::span<const BarResult> bar)
{
    std::set<std::string> ladders;
    for (const auto& result : bar)
        ladders.insert(result.ladder);
    return std::max(1, static_cast<int>(ladders.size()));
}

/// A further week brings a pair at every lag, and at best one rung of every ladder.
Missing missingFrom(const Series& series, int testsForALine, int ladders)
{
    Missing missing{.tests = testsForALine, .rungs = 0, .where = {}};
    for (int lag = 0; lag <= longestLag; ++lag) {
        const auto found = pairsAt(lag, series);
        missing.tests = std::max(missing.tests, fewestPairs - static_cast<int>(found.slowness.size()));
        missing.rungs = std::max(missing.rungs, fewestRungs - static_cast<int>(found.rungs.size()));
    }
    missing.tests = std::max(missing.tests, (missing.rungs + ladders - 1) / ladders);
    return missing;
}

/// With one of the waiting conditions brought to a line, its weeks count too.
Missing missingWith(const Waiting& waiting, Series series, int ladders)
{
    for (const int week : waiting.weeks)
        series.sprint.weeks.try_emplace(week, 0);
    auto missing = missingFrom(series, static_cast<int>(fewestForALine - waiting.weeks.size()), ladders);
    missing.where = waiting.conditions;
    return missing;
}

} // namespace

LagPairs pairsAt(int lag, const Series& series)
{
    LagPairs found;
    std::size_t place = 0;
    for (const auto& [week, bar] : series.bar) {
        if (const auto sprint = series.sprint.weeks.find(week + lag); sprint != series.sprint.weeks.end()) {
            found.pairs.bar.push_back(place);
            found.pairs.sprint.push_back(sprint->second);
            found.slowness.push_back(bar.slowness);
            found.rungs.insert(bar.rungs.begin(), bar.rungs.end());
        }
        ++place;
    }
    return found;
}

Missing missingOf(const Series& series, std::span<const BarResult> bar)
{
    const int ladders = laddersOf(bar);
    auto least = missingFrom(series, series.sprint.conditions.empty() ? static_cast<int>(fewestForALine) : 0, ladders);
    least.where = series.sprint.conditions.size() == 1 ? series.sprint.conditions.front() : "";
    // The tests to come are in the conditions that need the fewest.
    if (least.tests > 0)
        for (const auto& waiting : series.sprint.waiting)
            if (auto one = missingWith(waiting, series, ladders); one.tests < least.tests)
                least = std::move(one);
    return least;
}

} // namespace fleetrung::transfer
