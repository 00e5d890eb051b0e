#include "engine/transfer/sentence.hpp"

#include <algorithm>
#include <cmath>

#include "engine/base/numbers.hpp"

namespace fleetrung::transfer
{
namespace
{

std::string counted(int count, const std::string& singular)
{
    return integerText(count) + " " + singular + (count == 1 ? "" : "s");
}

std::string whenOf(const Lag& lag)
{
    return lag.weeks == 0 ? "in the same week" : counted(lag.weeks, "week") + " later";
}

std::string timesOf(const std::vector<std::string>& conditions)
{
    return conditions.size() == 1 ? "sprint times (" + conditions.front() + ")"
                                  : "sprint times (each in its own conditions)";
}

std::string numbersOf(const Lag& lag)
{
    return "rank correlation " + fixedText(lag.correlation.value_or(0), 2) + " over " + counted(lag.pairs, "week") +
           " and " + counted(lag.rungs, "rung");
}

std::string chanceText(double chance)
{
    return "chance alone gives as much in " + (chance < 0.001 ? "less than 0.1" : fixedText(100 * chance, 1)) +
           " of 100 such seasons";
}

std::string togetherText(const Lag& lag, const std::string& times, double chance)
{
    return "In the weeks when the bar was quicker within a rung, " + times + " were better than the season's trend " +
           whenOf(lag) + ": " + numbersOf(lag) + "; " + chanceText(chance) +
           ". It shows that they moved together, not that one caused the other.";
}

std::string notShownText(const Lag& lag, const std::string& times, double chance)
{
    return "Not shown: when the bar was quicker within a rung, " + times +
           " were not better than the season's trend by more than chance (at best " + whenOf(lag) + ": " +
           numbersOf(lag) + "; " + chanceText(chance) + ").";
}

} // namespace

double strengthOf(const Lag& lag)
{
    return lag.correlation ? *lag.correlation * std::sqrt(lag.pairs - 1.0) : 0;
}

Extremes extremesOf(const Transfer& transfer)
{
    const auto [worst, best] = std::ranges::minmax_element(transfer.lags, {}, strengthOf);
    return {*best, *worst};
}

std::string notEnoughText(const Missing& missing)
{
    auto text = "Not enough: " + counted(missing.tests, "more test");
    if (missing.rungs > 0)
        text += ", on " + counted(missing.rungs, "more rung");
    text += missing.where.empty() ? ", all in the same conditions" : " (" + missing.where + ")";
    return text + ". Each counts in a further week, with the bar measured in that week and the four before.";
}

std::string judgedText(const Transfer& transfer, const std::vector<std::string>& conditions)
{
    const auto [best, worst] = extremesOf(transfer);
    const double chance = transfer.chance.value_or(1);
    if (transfer.verdict == Verdict::MovedTogether)
        return togetherText(best, timesOf(conditions), chance);
    if (!best.correlation && !worst.correlation)
        return "Not shown: beside their trends the bar or the sprint times did not vary.";
    auto text = notShownText(best, timesOf(conditions), chance);
    if (transfer.otherWay)
        text += " The strongest relation goes the other way: when the bar was quicker, times were slower " +
                whenOf(worst) + " (" + numbersOf(worst) + ").";
    return text + " That is no proof that there is no relation.";
}

std::string premiseText()
{
    return "That shorter ranges carry over better to sprinting is the working premise of the ladders, with evidence on "
           "both sides; one athlete's season does not settle it.";
}

} // namespace fleetrung::transfer
