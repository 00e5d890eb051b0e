// What the sessions of a season say, as evidence for its decisions (private to mobile/logbook).
#pragma once

#include <vector>

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

/// Reads what `evidenceOf` needs.
[[nodiscard]] Expected<std::vector<SessionEvidence>> readEvidence(const Logbook& logbook, const LadderWalk& walk,
                                                                  CivilDate before);

} // namespace fleetrung::logbook
