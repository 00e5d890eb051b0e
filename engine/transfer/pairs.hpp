// Weeks of the bar beside weeks of the sprint (private to engine/transfer).
#pragma once

#include "engine/transfer/rotation.hpp"
#include "engine/transfer/weeks.hpp"

namespace fleetrung::transfer
{

struct Series {
    BarWeeks bar;
    SprintSeries sprint;
};

struct LagPairs {
    Pairs pairs;
    std::vector<double> slowness; ///< of the bar, beside pairs.sprint
    std::set<std::string> rungs;
};

[[nodiscard]] LagPairs pairsAt(int lag, const Series& series);

/// What every lag needs before anything is said, and what it lacks.
struct Missing {
    int tests = 0;
    int rungs = 0;
    std::string where; ///< in which conditions these tests are
};
[[nodiscard]] Missing missingOf(const Series& series, std::span<const BarResult> bar);

} // namespace fleetrung::transfer
