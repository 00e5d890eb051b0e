// All that the decisions of one day look at, put together from the store (private to mobile/logbook).
#pragma once

#include "mobile/logbook/evidence.hpp"

namespace fleetrung::logbook
{

/// A season's training up to the day before `today`, read once.
struct SeasonHistory {
    std::vector<SessionView> training; ///< by day
    std::vector<store::Jump> jumps;
    std::vector<store::Sprint> sprints;
};
[[nodiscard]] Expected<SeasonHistory> readHistory(const Logbook& logbook, const store::Season& season,
                                                  CivilDate before);

/// Work, drop-jump contacts, known maxima and speed tests before `before`. `evidence` by day.
[[nodiscard]] season::TrainingLog trainingLogOf(const LadderWalk& walk, const SeasonHistory& history,
                                                const std::vector<SessionEvidence>& evidence, CivilDate before);

/// What was said last of a day. What one entry leaves open an earlier one of the same day may say; a pain flag and a
/// refusal are taken back only by an entry that speaks of pain.
[[nodiscard]] season::Wellness wellnessOf(const std::vector<store::Wellness>& entries);

struct DaySources {
    LadderWalk walk;
    season::DayInput input;
};
[[nodiscard]] Expected<DaySources> readDay(const Logbook& logbook, const Identifier& season, CivilDate today,
                                           const std::vector<std::string>& stepByExposure = {});

} // namespace fleetrung::logbook
