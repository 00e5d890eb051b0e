// What a squad's day is made from, for all athletes in a few queries: the rows of the day, and of the past only what
// says where each stands.
#pragma once

#include <vector>

#include "engine/store/records.hpp"

namespace fleetrung::store
{

/// A set on a ladder, without what a plan does not ask for.
struct SetLifted {
    Identifier athlete;
    CivilDate day{};
    Identifier session;
    Identifier set;
    std::string ladder;
    std::string rung;
    SetKind kind = SetKind::Work;
    double loadKg = 0;
    int repetitionsPlanned = 0;
    std::optional<int> repetitionsDone; ///< as typed; a set with a sensor has none
    std::optional<double> effort;
};

struct SquadRows {
    std::vector<Athlete> athletes;          ///< who have a season on the day, by group and name
    std::vector<Season> seasons;            ///< one of each, in their order: the one begun last
    std::vector<DecisionOutline> decisions; ///< before the day: moves, changed ones and lighter days, those that count
    std::vector<Decision> today;            ///< taken on the day, in the order taken
    std::vector<SetLifted> sets;            ///< of the last four weeks, without warm-ups, in the order lifted
    std::vector<Jump> jumps;                ///< of the last week
    std::vector<Document> checks;           ///< warm-up checks of the day
};

} // namespace fleetrung::store
