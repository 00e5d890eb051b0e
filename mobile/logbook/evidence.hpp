// What the sessions of a season say, as evidence for its decisions (private to mobile/logbook).
#pragma once

#include <vector>

#include "engine/strength/load_velocity.hpp"
#include "mobile/logbook/ladder_walk.hpp"

namespace fleetrung::logbook
{

struct SessionEvidence {
    season::SessionEvidence value;
    Identifier session; ///< zero for drop jumps that were entered without a session
};

/// By day; sessions before `before`. `training` by day, of the season.
[[nodiscard]] std::vector<SessionEvidence> evidenceOf(const LadderWalk& walk, const std::vector<SessionView>& training,
                                                      const std::vector<store::Jump>& jumps, CivilDate before);

/// The one-repetition maximum that the session tells of that rung.
[[nodiscard]] std::optional<season::Measured> maximumOf(const SessionView& session, const std::string& ladder,
                                                        const std::string& rung);

/// What a session's loads on one rung say of the line of velocity against load, as the 1RM is read from it.
struct SessionLoads {
    CivilDate day{};
    std::string ladder, rung;
    store::Side side{};
    std::string lift;                                ///< key
    std::vector<strength::LoadVelocityPoint> points; ///< the fastest measured repetition at each load, lightest first
};
[[nodiscard]] std::vector<SessionLoads> loadsOf(const std::vector<SessionView>& training);

/// Reads what `evidenceOf` needs.
[[nodiscard]] Expected<std::vector<SessionEvidence>> readEvidence(const Logbook& logbook, const LadderWalk& walk,
                                                                  CivilDate before);

} // namespace fleetrung::logbook
