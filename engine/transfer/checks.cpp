#include "engine/transfer/checks.hpp"

#include <algorithm>
#include <cmath>
#include <set>
#include <tuple>

namespace fleetrung::transfer
{
namespace
{

constexpr int mostWeeks = 60;

std::optional<Error> wrong(std::string place, std::string message)
{
    return Error{Code::InvalidInput, std::move(place), std::move(message)};
}

bool positive(double value)
{
    return std::isfinite(value) && value > 0;
}

std::string placeOf(const BarResult& result)
{
    return "bar result of " + dateText(result.day) + ", ladder '" + result.ladder + "', rung '" + result.rung + "'";
}

std::string placeOf(const SprintResult& result)
{
    return "sprint of " + dateText(result.day) + ", conditions '" + result.conditions + "'";
}

std::optional<Error> wrongAlone(const BarResult& result)
{
    if (result.ladder.empty() || result.rung.empty())
        return wrong(placeOf(result), "name its ladder and its rung: only results of one rung are compared");
    if (!positive(result.timeToPeak))
        return wrong(placeOf(result), "the time to peak velocity must be a number of seconds above zero");
    if (result.loadKg && !positive(*result.loadKg))
        return wrong(placeOf(result), "the load must be a number of kilograms above zero; leave it out if not known");
    if (!positive(result.priorErrorShare))
        return wrong(placeOf(result), "the typical error must be a share of the time above zero");
    return std::nullopt;
}

std::optional<Error> wrongAlone(const SprintResult& result)
{
    if (result.conditions.empty())
        return wrong(placeOf(result), "name the conditions: only times of the same conditions are compared");
    if (!positive(result.seconds))
        return wrong(placeOf(result), "the time must be a number of seconds above zero");
    return std::nullopt;
}

auto keyOf(const BarResult& result)
{
    return std::tuple(result.day, result.ladder, result.rung);
}

auto keyOf(const SprintResult& result)
{
    return std::tuple(result.day, result.conditions);
}

template <class Result> std::optional<Error> wrongAmong(std::span<const Result> results)
{
    std::set<decltype(keyOf(results.front()))> known;
    for (const auto& result : results) {
        if (auto found = wrongAlone(result))
            return found;
        if (!known.insert(keyOf(result)).second)
            return wrong(placeOf(result), "is there twice; give one value a day, the median of a probe set or the best "
                                          "or mean of a test");
    }
    return std::nullopt;
}

} // namespace

std::optional<Error> wrongIn(std::span<const BarResult> bar, std::span<const SprintResult> sprints)
{
    if (auto found = wrongAmong(bar))
        return found;
    if (auto found = wrongAmong(sprints))
        return found;
    std::set<CivilDate> days;
    for (const auto& result : bar)
        days.insert(result.day);
    for (const auto& result : sprints)
        days.insert(result.day);
    if (!days.empty() && daysBetween(*days.begin(), *days.rbegin()) > 7 * mostWeeks)
        return wrong(dateText(*days.begin()) + " to " + dateText(*days.rbegin()),
                     "is longer than 60 weeks; give the results of one season");
    return std::nullopt;
}

} // namespace fleetrung::transfer
