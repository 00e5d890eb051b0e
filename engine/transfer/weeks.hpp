// From results to weekly ups and downs (private to engine/transfer).
#pragma once

#include <map>
#include <set>
#include <utility>

#include "engine/transfer/transfer.hpp"

namespace fleetrung::transfer
{

/// Fewer leave nothing to judge beside a line. Starting value of this project.
constexpr std::size_t fewestForALine = 4;

struct BarWeek {
    double slowness = 0;         ///< mean of z
    std::set<std::string> rungs; ///< ladder and rung
};
/// By number of the ISO week (its Monday, in weeks of the epoch).
using BarWeeks = std::map<int, BarWeek>;
using SprintWeeks = std::map<int, double>;

/// Conditions with too few results for a line.
struct Waiting {
    explicit Waiting(std::string name) : conditions(std::move(name)) {}

    std::string conditions;
    std::vector<int> weeks; ///< of each result
};

struct SprintSeries {
    SprintWeeks weeks;                   ///< mean share above the season's line
    std::vector<std::string> conditions; ///< those with a line
    std::vector<Waiting> waiting;
};

[[nodiscard]] BarWeeks barWeeks(std::span<const BarResult> bar);
[[nodiscard]] SprintSeries sprintSeries(std::span<const SprintResult> sprints);

} // namespace fleetrung::transfer
