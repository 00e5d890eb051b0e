// Where an athlete stands on a ladder, and the path taken.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "engine/base/civil_date.hpp"

namespace fleetrung::season
{

struct Stay {
    std::string rung;
    CivilDate from; ///< first day on the rung
};

struct LadderState {
    std::string ladder;
    std::vector<Stay> path;            ///< by date, never empty; the last is where the athlete stands
    std::optional<double> probeLoadKg; ///< kg, kept for the whole stay on the rung
    std::optional<double> workLoadKg;  ///< kg, of the last work sets

    [[nodiscard]] const std::string& rung() const { return path.back().rung; }
    [[nodiscard]] CivilDate since() const { return path.back().from; }
};

} // namespace fleetrung::season
