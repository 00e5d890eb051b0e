// The season plan: phases, and for every ladder the stair - from which day to which day each rung is planned.
#pragma once

#include <span>
#include <string>
#include <vector>

#include "engine/base/identifier.hpp"
#include "engine/season/ladder_state.hpp"
#include "engine/season/phases.hpp"

namespace fleetrung::season
{

struct PlannedRung {
    std::string rung;
    CivilDate from;
    CivilDate to;     ///< inclusive
    CivilDate latest; ///< last day on this rung: the day after, the next must have begun
    int macrocycle = 0;
    bool taken = false; ///< what happened, not what is planned
};

/// A rung that is never planned, and why (no box of that height, body mass, age).
struct OmittedRung {
    std::string rung;
    std::string reason;
};

struct LadderPlan {
    std::string ladder;
    std::vector<PlannedRung> rungs; ///< by date
    std::vector<OmittedRung> omitted;
};

struct SeasonPlan {
    Identifier id; ///< hash of all inputs: the same inputs give the same plan, byte for byte
    SeasonSetup setup;
    CivilDate end; ///< last day of the season
    std::vector<PhaseSpan> phases;
    std::vector<LadderPlan> ladders; ///< in the order chosen
    std::vector<std::string> notes;  ///< too little time, missing equipment, caps: plain words
};

/// The plan before the first session.
[[nodiscard]] Expected<SeasonPlan> planSeason(const SeasonSetup& setup, const SeasonData& data = standardSeasonData());

/// The plan from `today` on, given where the athlete stands; days before are the path taken.
[[nodiscard]] Expected<SeasonPlan> replanSeason(const SeasonSetup& setup, std::span<const LadderState> states,
                                                CivilDate today, const SeasonData& data = standardSeasonData());

/// Null where the ladder was not chosen.
[[nodiscard]] const LadderPlan* findLadderPlan(const SeasonPlan& plan, std::string_view ladder);
/// The rung planned (or taken) on that day; null outside the season and in transition.
[[nodiscard]] const PlannedRung* rungOn(const LadderPlan& plan, CivilDate day);
/// 1-based week of the season (the first holds the start date; weeks begin on the setup's day), and how many there are.
[[nodiscard]] int weekOf(const SeasonPlan& plan, CivilDate day);
[[nodiscard]] int weekCount(const SeasonPlan& plan);

/// Where an athlete stands on the first day: on each ladder's first planned rung.
[[nodiscard]] std::vector<LadderState> startStates(const SeasonPlan& plan);

/// The ladders of a day, fastest first; they point into the plan or the data.
struct DayTurns {
    CivilDate day;
    std::vector<const Ladder*> ladders;
};
/// Every day with lifts of the whole season, by date, in one pass.
[[nodiscard]] std::vector<DayTurns> turnsOf(const SeasonPlan& plan, const SeasonData& data = standardSeasonData());

[[nodiscard]] Json planJson(const SeasonPlan& plan, const SeasonData& data = standardSeasonData());
/// The same for people: phases, stair and notes as tables.
[[nodiscard]] std::string planText(const SeasonPlan& plan, const SeasonData& data = standardSeasonData());

} // namespace fleetrung::season
