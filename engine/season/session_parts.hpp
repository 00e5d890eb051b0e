// The parts of a session's prescription. Private to engine/season.
#pragma once

#include "engine/season/session_plan.hpp"

namespace fleetrung::season
{

/// One ladder on one day.
struct LiftDay {
    const SeasonPlan& plan;
    const SeasonData& data;
    const TrainingLog& log;
    const Ladder& ladder;
    const Rung& rung;         ///< of today
    const LadderState* state; ///< null before the first session
    const Decision* decision; ///< null where none was taken
    const PhaseSpan& phase;
    CivilDate day;
    int contacts; ///< drop-jump contacts that may still be planned on that day
};

[[nodiscard]] bool isYoung(const SeasonPlan& plan, CivilDate day); ///< under 18
/// Down to what can be loaded with pairs of 1.25 kg plates.
[[nodiscard]] double toPlates(double loadKg);

struct ChosenLoad {
    std::optional<double> kg; ///< of the work sets, before the day's easing; none where nothing is known
    std::string reason;
};
[[nodiscard]] ChosenLoad chooseLoad(const LiftDay& lift);

/// Contacts that may be done on that day.
[[nodiscard]] int contactsLeft(const SeasonPlan& plan, const TrainingLog& log, CivilDate day, const Rules& rules);

/// Nothing where no longer rung is due.
[[nodiscard]] std::optional<MaintenanceSets> maintenanceFor(const LiftDay& lift);

[[nodiscard]] PlannedLift planLift(const LiftDay& lift);
/// A few light, fast repetitions before a competition; nothing where no load is known.
[[nodiscard]] std::optional<PlannedLift> planPrimer(const LiftDay& lift);

} // namespace fleetrung::season
