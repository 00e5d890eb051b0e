// The parts of a season report, each from what it needs (private to mobile/logbook).
#pragma once

#include "engine/report/season_report.hpp"
#include "mobile/logbook/evidence.hpp"
#include "mobile/logbook/track_log.hpp"

namespace fleetrung::logbook
{

// report_log.cpp
[[nodiscard]] report::Session reportSession(const SessionView& session, const season::SeasonPlan& plan,
                                            const season::SeasonData& data);
[[nodiscard]] report::Wellness reportWellness(const store::Wellness& wellness);
[[nodiscard]] report::Decision reportDecision(const DecisionRecord& record, const season::SeasonData& data);

// report_track.cpp
[[nodiscard]] report::Moment reportMoment(const Moment& moment);
[[nodiscard]] report::Sprint reportSprint(const store::Sprint& sprint, const TrackLog& log,
                                          const store::Athlete& athlete);
[[nodiscard]] report::TrackWork reportWork(const store::TrackWork& work, const TrackLog& log);
[[nodiscard]] report::Jump reportJump(const store::Jump& jump);
/// The weeks between the two days, against the ISO weekdays on which sprints are planned.
[[nodiscard]] std::vector<report::TrackWeek> reportWeeks(const TrackLog& log, const std::vector<int>& sprintDays,
                                                         CivilDate from, CivilDate to);

// report_plan.cpp
/// `first` is the plan before the first session; the path taken comes from the states of `today`.
[[nodiscard]] report::Ladder reportLadder(const season::LadderPlan& first, const season::LadderState& state,
                                          const std::vector<SessionEvidence>& evidence,
                                          const std::vector<SessionLoads>& loads, CivilDate today,
                                          const season::SeasonData& seasonData);
[[nodiscard]] std::vector<report::PlanLine> planLines(const LadderWalk& walk, const season::SeasonPlan& plan,
                                                      const std::vector<SessionView>& training,
                                                      const std::vector<store::LostDay>& lostDays,
                                                      const std::vector<DecisionRecord>& decisions,
                                                      const season::TrainingLog& log, CivilDate today);

} // namespace fleetrung::logbook
