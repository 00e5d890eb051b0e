// What was run on a track, as the track log counts it. SI units.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "engine/base/civil_date.hpp"
#include "engine/sprint/splits.hpp"

namespace fleetrung::track
{

/// One timed run.
struct Run {
    CivilDate day{};
    bool flying = false;
    double distance = 0; ///< m; of a flying run the zone
    double runIn = 0;    ///< m before the zone of a flying run
    double time = 0;     ///< s
    std::vector<sprint::Split> splits;
    sprint::SplitOptions options; ///< start and timing
    std::optional<double> wind;   ///< m/s along the run, tail wind positive

    [[nodiscard]] bool byHand() const { return options.timing == sprint::Timing::Hand; }
};

enum class WorkKind { Sprints, Flying, Resisted, Hill, Easy };
[[nodiscard]] std::optional<WorkKind> workKindNamed(std::string_view name); ///< "sprints", "flying", "resisted", ...
[[nodiscard]] std::string_view nameOf(WorkKind kind);

/// Runs that are counted, timed or not: 6 x 30 m behind a sled.
struct Work {
    CivilDate day{};
    WorkKind kind = WorkKind::Easy;
    double distance = 0; ///< m of one run; of a flying run the zone
    int repetitions = 1;
    std::optional<double> bestTime; ///< s, of one run
    std::optional<double> effort;   ///< 1-10
    bool byHand = false;            ///< the best time

    [[nodiscard]] double metres() const { return distance * repetitions; }
};

} // namespace fleetrung::track
