// One season of one invented athlete, played day by day through the engine's public calls.
#pragma once

#include <map>
#include <optional>
#include <string>
#include <vector>

#include "engine/season/decision.hpp"
#include "engine/season/session_plan.hpp"
#include "tests/seasons/athlete.hpp"

namespace fleetrung::seasons
{

using season::Decision;
using season::LadderState;
using season::SeasonPlan;
using season::SessionPlan;

/// One lifting day on which the athlete came.
struct Day {
    CivilDate date;
    season::Wellness wellness;
    std::vector<LadderState> before; ///< states at its beginning
    SeasonPlan plan;                 ///< of that morning
    std::vector<Decision> decisions; ///< what the engine said
    std::vector<Decision> lived;     ///< what the athlete made of it
    SessionPlan session;
    std::map<std::string, double> trueGain; ///< by ladder: since entry on the rung, in true typical errors, at the
                                            ///< probe load, without noise and fatigue; where two sessions are known
};

struct Played {
    Athlete athlete;
    SeasonPlan first; ///< before the first session
    std::vector<Day> days;
    std::vector<LadderState> last; ///< where the season ended
    season::TrainingLog log;
    std::string failure; ///< of a call that should not fail; empty where none did
};

[[nodiscard]] Played playSeason(std::uint64_t seed);

/// Everything that happened, for people.
[[nodiscard]] std::string seasonText(const Played& played);

} // namespace fleetrung::seasons
