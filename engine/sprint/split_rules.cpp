#include "engine/sprint/split_rules.hpp"

#include <algorithm>
#include <cmath>

#include "engine/base/numbers.hpp"

namespace fleetrung::sprint
{
namespace
{

constexpr double fastestRunner = 15;   // m/s, over any stretch
constexpr double fall = 0.015;         // of the fastest stretch's speed
constexpr double judgedStretch = 8;    // m; over a shorter one 0.01 s of timing looks like a fall
constexpr int leastSplits = 3;         // two unknowns and one to judge by
constexpr double lastAtLeast = 20;     // m, below it top speed is out of sight
constexpr double firstAtMost = 20;     // m, beyond it the acceleration is out of sight
constexpr int leastSplitsFree = 5;     // rules of the project, as the next two
constexpr double firstAtMostFree = 10; // m
constexpr double lastAtLeastFree = 30; // m

std::string metres(double distance)
{
    return shortestText(roundTo(distance, 100)) + " m";
}

} // namespace

bool offsetIsFree(const Start& start)
{
    return start.clock == Clock::Unknown || (start.clock == Clock::Gun && !start.reaction);
}

int unknowns(const Start& start)
{
    return offsetIsFree(start) ? 3 : 2;
}

Expected<std::vector<SplitResidual>> readSplits(std::span<const Split> splits)
{
    std::vector<SplitResidual> read;
    for (const auto& split : splits) {
        if (!std::isfinite(split.distance) || !std::isfinite(split.time) || split.distance < 0 || split.distance > 400)
            return fail(Code::InvalidInput, "split at " + metres(split.distance),
                        "give distances of 0 to 400 m and a time");
        if (split.distance > 0)
            read.push_back({split, 0, true, {}});
    }
    std::ranges::sort(read, {}, [](const SplitResidual& s) { return s.split.distance; });
    Split before{0, 0};
    for (std::size_t i = 0; i < read.size(); ++i) {
        const Split& now = read[i].split;
        const std::string place = "split at " + metres(now.distance);
        if (i > 0 && now.distance == before.distance)
            return fail(Code::InvalidInput, place, "stands there twice; take one out");
        if (now.time <= before.time)
            return fail(Code::InvalidInput, place, "is not later than the one before; check the times");
        if (i > 0 && (now.distance - before.distance) / (now.time - before.time) > fastestRunner)
            return fail(Code::InvalidInput, place, "would be faster than 15 m/s; check distance and time");
        before = now;
    }
    return read;
}

void leaveOutAfterPeak(std::vector<SplitResidual>& splits)
{
    std::vector<SplitResidual*> used;
    for (auto& split : splits)
        if (split.used)
            used.push_back(&split);
    const auto speedTo = [&used](std::size_t i) {
        const Split& from = used[i - 1]->split;
        const Split& to = used[i]->split;
        return (to.distance - from.distance) / (to.time - from.time);
    };
    double fastest = 0;
    bool over = false;
    for (std::size_t i = 1; i < used.size(); ++i) {
        if (used[i]->split.distance - used[i - 1]->split.distance < judgedStretch && !over)
            continue;
        const double slow = fastest * (1 - fall);
        // One slow stretch between faster ones is timing, not the end of the sprint.
        const bool comesBack = i + 1 < used.size() && speedTo(i + 1) >= slow;
        over = over || (speedTo(i) < slow && !comesBack);
        fastest = std::max(fastest, speedTo(i));
        if (over) {
            used[i]->used = false;
            used[i]->why = "the speed has begun to fall here";
        }
    }
}

int usedCount(const std::vector<SplitResidual>& splits)
{
    return static_cast<int>(std::ranges::count_if(splits, &SplitResidual::used));
}

Expected<void> checkPlacement(const std::vector<SplitResidual>& splits, const Start& start)
{
    const bool free = offsetIsFree(start);
    const int least = free ? leastSplitsFree : leastSplits;
    const int used = usedCount(splits);
    const std::string because =
        free ? "the start of the clock is not known against the first movement, so " : std::string();
    if (used < least)
        return fail(Code::NotAvailable, "splits",
                    because + integerText(least) + " splits are needed, and " + integerText(used) + " can be used");
    const auto isUsed = [](const SplitResidual& s) { return s.used; };
    const double first = std::ranges::find_if(splits, isUsed)->split.distance;
    const double last = std::find_if(splits.rbegin(), splits.rend(), isUsed)->split.distance;
    const double firstAt = free ? firstAtMostFree : firstAtMost;
    const double lastAt = free ? lastAtLeastFree : lastAtLeast;
    if (first > firstAt)
        return fail(Code::NotAvailable, "splits",
                    because + "a split within the first " + metres(firstAt) + " is needed");
    if (last < lastAt)
        return fail(Code::NotAvailable, "splits", because + "a split at " + metres(lastAt) + " or later is needed");
    return {};
}

} // namespace fleetrung::sprint
