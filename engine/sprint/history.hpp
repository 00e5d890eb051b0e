// A fit against the athlete's earlier ones of the same start. The standard errors are those of the splits alone: what a
// body does from day to day comes on top, so "beyond" says that timing does not explain a change, not that training
// does.
#pragma once

#include <optional>
#include <span>

#include "engine/base/civil_date.hpp"

namespace fleetrung::sprint
{

struct DatedSpeed {
    CivilDate day{};
    double speed = 0; ///< m/s
    double error = 0; ///< standard error
};

struct Change {
    double usual = 0;    ///< m/s, median of the last three before (or of the one or two there are)
    int runs = 0;        ///< how many of them
    double change = 0;   ///< m/s, now less usual
    double error = 0;    ///< standard, of the change
    bool beyond = false; ///< more than twice its standard error
};

struct HistoryComparison {
    DatedSpeed best;              ///< of all, the run itself among them
    bool isBest = false;          ///< the run itself
    std::optional<Change> change; ///< none without an earlier run
};

/// `before`: in order of days.
[[nodiscard]] HistoryComparison compareWithHistory(const DatedSpeed& now, std::span<const DatedSpeed> before);

} // namespace fleetrung::sprint
