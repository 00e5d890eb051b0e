// The rows of a table as sets of a lift, ready to be stored. SI units, loads in kg.
#pragma once

#include "engine/importing/runs.hpp"

namespace fleetrung::importing
{

struct ReadSet : ReadRow {
    std::string lift; ///< as the file calls it: `liftWords` gives its key
    std::string rung; ///< likewise
    std::string side = "both";
    std::string kind = "work"; ///< "warm-up", "probe", "work", "maintenance"
    double loadKg = 0;
    int repetitions = 0;
    std::optional<double> timeToPeak;   ///< s
    std::optional<double> meanVelocity; ///< m/s
    std::optional<double> peakVelocity; ///< m/s
    std::optional<double> range;        ///< m
    std::optional<double> boxHeight;    ///< m
};

struct Sets {
    std::vector<ReadSet> sets;
    std::vector<BadRow> bad;
};

/// As readRuns.
[[nodiscard]] Expected<Sets> readSets(const Table& table, const Mapping& mapping, const Reading& reading);

} // namespace fleetrung::importing
