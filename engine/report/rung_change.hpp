// How the time to peak velocity changed within one stay of one side on one rung. Rungs are never compared: a shorter
// range is quicker anyway.
#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include "engine/report/ladder_record.hpp"

namespace fleetrung::report
{

struct RungChange {
    std::size_t rung = 0;
    Side side = Side::Both;
    CivilDate first{};
    CivilDate last{};
    int sessions = 0;
    double entry = 0;        ///< s, mean of the first three sessions on the rung
    double latest = 0;       ///< s, mean of the last three
    double typicalError = 0; ///< s, from successive sessions at most 14 days apart, with the ladder's prior

    /// Entry and latest are told apart with one-sided 95 % confidence: the standard error of their difference is 0.82
    /// TE.
    [[nodiscard]] bool quicker() const { return entry - latest >= 1.35 * typicalError; }
    [[nodiscard]] bool slower() const { return latest - entry >= 1.35 * typicalError; }
};

/// One for each stay and side with at least six sessions that gave a time, in order of days. A new stay begins when the
/// rung changes.
[[nodiscard]] std::vector<RungChange> rungChanges(const Ladder& ladder);

} // namespace fleetrung::report
