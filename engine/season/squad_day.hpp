// A squad's day: who is due for what, and how they share the racks.
#pragma once

#include <span>
#include <string>
#include <vector>

#include "engine/base/identifier.hpp"
#include "engine/season/session_plan.hpp"

namespace fleetrung::season
{

/// One athlete who has a session today.
struct DueAthlete {
    Identifier athlete;
    std::string name;
    std::string group; ///< training group; empty where none was given
    SessionPlan session;
};

/// Athletes who lift the same at one rack, lightest first so that plates are only added.
struct RackTurn {
    int round = 0; ///< 0 = first lift of the session, 1 = second, ...
    int rack = 0;  ///< from 0
    std::string ladder;
    std::string rung;
    std::vector<Identifier> athletes; ///< in the order in which they lift
};

/// Shares `racks` racks out among those who lift, groups kept together, round by round. Everybody gets every lift of
/// theirs; nobody stands at two racks in one round. Lifts without a bar (drop jumps) need no rack: rack -1. The same
/// input gives the same turns.
[[nodiscard]] std::vector<RackTurn> shareRacks(std::span<const DueAthlete> due, int racks);

} // namespace fleetrung::season
