#include "engine/transfer/weeks.hpp"

#include <algorithm>
#include <cmath>

#include "engine/base/numbers.hpp"
#include "engine/statistics/reliability.hpp"
#include "engine/statistics/robust.hpp"

namespace fleetrung::transfer
{
namespace
{

// Starting values of this project (the season rules have them too).
constexpr double leastPriorError = 0.010; // s
constexpr int mostDaysBetween = 14;       // of two sessions whose difference tells the typical error
constexpr double sameLoad = 0.03;         // share
constexpr int longestBreak = 28;          // days; who comes back later begins another stay

constexpr double stepsPerUnit = 1e9; // the last digits of sums in another order would make ranks of nothing

using Stay = std::vector<BarResult>;

int weekOf(CivilDate day)
{
    constexpr int thursdayToMonday = 3; // the epoch was a Thursday
    return static_cast<int>(
        std::chrono::floor<std::chrono::weeks>(day + std::chrono::days{thursdayToMonday}).time_since_epoch().count());
}

bool continues(const Stay& stay, const BarResult& next)
{
    const auto& first = stay.front();
    if (daysBetween(stay.back().day, next.day) > longestBreak)
        return false;
    return !first.loadKg || !next.loadKg || std::abs(*next.loadKg - *first.loadKg) <= sameLoad * *first.loadKg;
}

std::vector<Stay> staysOf(std::span<const BarResult> bar)
{
    std::map<std::pair<std::string, std::string>, std::vector<BarResult>> rungs;
    for (const auto& result : bar)
        rungs[{result.ladder, result.rung}].push_back(result);
    std::vector<Stay> stays;
    for (auto& [rung, results] : rungs) {
        std::ranges::sort(results, {}, &BarResult::day);
        stays.push_back({results.front()});
        for (std::size_t i = 1; i < results.size(); ++i) {
            if (!continues(stays.back(), results[i]))
                stays.emplace_back();
            stays.back().push_back(results[i]);
        }
    }
    return stays;
}

double typicalErrorOf(const Stay& stay, double level)
{
    std::vector<double> differences;
    for (std::size_t i = 1; i < stay.size(); ++i)
        if (daysBetween(stay[i - 1].day, stay[i].day) <= mostDaysBetween)
            differences.push_back(stay[i].timeToPeak - stay[i - 1].timeToPeak);
    return statistics::typicalErrorWithPrior(differences,
                                             std::max(stay.front().priorErrorShare * level, leastPriorError));
}

/// What the line over days foretells for each of them.
template <class Result> std::vector<double> lineOver(const std::vector<Result>& results, double Result::*value)
{
    std::vector<double> days, values;
    for (const auto& result : results) {
        days.push_back(daysBetween(results.front().day, result.day));
        values.push_back(result.*value);
    }
    const auto line = statistics::theilSen(days, values);
    for (std::size_t i = 0; i < days.size(); ++i)
        values[i] = line.intercept + line.slope * days[i];
    return values;
}

} // namespace

BarWeeks barWeeks(std::span<const BarResult> bar)
{
    std::map<int, std::vector<double>> scores;
    BarWeeks weeks;
    for (const auto& stay : staysOf(bar)) {
        if (stay.size() < fewestForALine)
            continue;
        const auto line = lineOver(stay, &BarResult::timeToPeak);
        const double error = typicalErrorOf(stay, statistics::median(line));
        for (std::size_t i = 0; i < stay.size(); ++i) {
            const int week = weekOf(stay[i].day);
            scores[week].push_back((stay[i].timeToPeak - line[i]) / error);
            weeks[week].rungs.insert(stay[i].ladder + "\n" + stay[i].rung);
        }
    }
    for (auto& [week, found] : weeks)
        found.slowness = roundTo(statistics::mean(scores[week]), stepsPerUnit);
    return weeks;
}

SprintSeries sprintSeries(std::span<const SprintResult> sprints)
{
    std::map<std::string, std::vector<SprintResult>> conditions;
    for (const auto& sprint : sprints)
        conditions[sprint.conditions].push_back(sprint);
    SprintSeries series;
    std::map<int, std::vector<double>> shares;
    for (auto& [condition, results] : conditions) {
        std::ranges::sort(results, {}, &SprintResult::day);
        if (results.size() < fewestForALine) {
            auto& waiting = series.waiting.emplace_back(condition);
            for (const auto& result : results)
                waiting.weeks.push_back(weekOf(result.day));
            continue;
        }
        series.conditions.push_back(condition);
        const auto line = lineOver(results, &SprintResult::seconds);
        for (std::size_t i = 0; i < results.size(); ++i)
            shares[weekOf(results[i].day)].push_back((results[i].seconds - line[i]) / line[i]);
    }
    for (const auto& [week, found] : shares)
        series.weeks[week] = roundTo(statistics::mean(found), stepsPerUnit);
    return series;
}

} // namespace fleetrung::transfer
