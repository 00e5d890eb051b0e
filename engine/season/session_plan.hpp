// What to lift on one day.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "engine/season/decision.hpp"

namespace fleetrung::season
{

struct PlannedSet {
    int repetitions = 0;
    std::optional<double> loadKg; ///< kg; none where no load is known yet: the note says how to find it
};

/// Heavy sets of a longer rung that was left, to keep its strength.
struct MaintenanceSets {
    std::string rung;
    std::vector<PlannedSet> sets;
    std::string reason;
};

/// One answer to "why this today?".
struct Why {
    std::string about; ///< "lift", "rung", "load", "sets", "probe", "set stop", "maintenance"
    std::string text;  ///< plain words
};

struct PlannedLift {
    std::string ladder;
    std::string rung;
    std::string lift; ///< lift key
    std::vector<PlannedSet> warmUp;
    std::optional<PlannedSet> probe; ///< three repetitions, full intent, before the work sets
    std::vector<PlannedSet> work;
    double restSeconds = 0;
    double setStop = 0; ///< velocity loss from the fastest repetition (share) at which the set ends
    Metric metric = Metric::MeanVelocity;
    Band targetBand;                   ///< s
    Band range;                        ///< m
    std::vector<std::string> cautions; ///< caution keys
    std::string note;
    std::optional<MaintenanceSets> maintenance;
    std::optional<double> boxHeight; ///< m, of the box the athlete has
    int contacts = 0;                ///< drop-jump contacts planned
    int contactLimit = 0;            ///< contacts that may be done today; 0 for lifts without a limit
    bool primer = false;             ///< light and fast, before a competition: no probe, no evidence
    std::vector<Why> why;
};

struct SessionPlan {
    CivilDate day;
    PhaseKind phase = PhaseKind::GeneralPreparation;
    bool sprintDay = false;               ///< sprints come first, the lifts after
    bool sprintsForbidden = false;        ///< pain: no sprinting, whatever day it is
    std::vector<PlannedLift> lifts;       ///< fastest first; empty on a day without lifts
    std::vector<SecondaryLift> secondary; ///< logged and counted as load, never laddered
    std::vector<std::string> notes;       ///< why nothing is lifted, which lifts rest and why
};

/// Lifts of `day` from the plan, the states at its beginning and the day's decisions (which may be empty: then nothing
/// is adjusted). Loads and contacts stay within what `log` allows; without a log the last work load is kept.
[[nodiscard]] SessionPlan planSession(const SeasonPlan& plan, const std::vector<LadderState>& states,
                                      const std::vector<Decision>& decisions, CivilDate day,
                                      const SeasonData& data = standardSeasonData(), const TrainingLog& log = {});

/// True where the plan puts lifts on that day, whatever the day's decisions.
[[nodiscard]] bool isLiftingDay(const SeasonPlan& plan, CivilDate day);

[[nodiscard]] Json sessionJson(const SessionPlan& session, const SeasonData& data = standardSeasonData());

} // namespace fleetrung::season
