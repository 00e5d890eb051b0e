#include "engine/transfer/transfer.hpp"

#include <cmath>

#include "engine/statistics/rank_correlation.hpp"
#include "engine/transfer/checks.hpp"
#include "engine/transfer/pairs.hpp"
#include "engine/transfer/sentence.hpp"

namespace fleetrung::transfer
{
namespace
{

constexpr int fewestToShow = 3; // pairs; below it a rank correlation is 1 or -1

Lag lagOf(int weeks, const LagPairs& found, int resamples)
{
    Lag lag;
    lag.weeks = weeks;
    lag.pairs = static_cast<int>(found.slowness.size());
    lag.rungs = static_cast<int>(found.rungs.size());
    const double correlation = statistics::rankCorrelation(found.slowness, found.pairs.sprint);
    if (lag.pairs < fewestToShow || std::isnan(correlation))
        return lag;
    lag.correlation = correlation;
    const auto seed = static_cast<std::uint64_t>(weeks);
    const auto interval = statistics::rankCorrelationInterval(found.slowness, found.pairs.sprint, seed, resamples);
    if (!std::isnan(interval.low)) {
        lag.low = interval.low;
        lag.high = interval.high;
    }
    return lag;
}

void judge(Transfer& transfer, const Series& series, const std::vector<LagPairs>& found)
{
    std::vector<double> bar;
    for (const auto& [number, week] : series.bar)
        bar.push_back(week.slowness);
    std::vector<Pairs> lags;
    for (const auto& lag : found)
        lags.push_back(lag.pairs);
    const auto chance = chanceOf(bar, lags, claimAt);
    transfer.chance = chance.share;
    for (auto& lag : transfer.lags)
        if (lag.pairs > 1)
            lag.chanceReaches = chance.reach / std::sqrt(lag.pairs - 1.0);
    const auto extremes = extremesOf(transfer);
    transfer.strongest = extremes.best.weeks;
    transfer.otherWay = strengthOf(extremes.worst) < 0 && -strengthOf(extremes.worst) > strengthOf(extremes.best);
    const bool together = *transfer.chance <= claimAt && strengthOf(extremes.best) > 0 && !transfer.otherWay;
    transfer.verdict = together ? Verdict::MovedTogether : Verdict::NotShown;
}

} // namespace

Expected<Transfer> didItWork(std::span<const BarResult> bar, std::span<const SprintResult> sprints, int resamples)
{
    if (const auto wrong = wrongIn(bar, sprints))
        return tl::unexpected(*wrong);
    const Series series{barWeeks(bar), sprintSeries(sprints)};
    Transfer transfer;
    std::vector<LagPairs> found;
    for (int weeks = 0; weeks <= longestLag; ++weeks) {
        found.push_back(pairsAt(weeks, series));
        transfer.lags.push_back(lagOf(weeks, found.back(), resamples));
    }
    const auto missing = missingOf(series, bar);
    transfer.testsMissing = missing.tests;
    transfer.rungsMissing = missing.rungs;
    if (missing.tests == 0)
        judge(transfer, series, found);
    transfer.sentence = missing.tests > 0 ? notEnoughText(missing) : judgedText(transfer, series.sprint.conditions);
    transfer.premise = premiseText();
    return transfer;
}

} // namespace fleetrung::transfer
