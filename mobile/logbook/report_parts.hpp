// The parts of a season report, each from what it needs (private to mobile/logbook).
#pragma once

#include "engine/report/season_report.hpp"
#include "mobile/logbook/evidence.hpp"

namespace fleetrung::logbook
{

// report_log.cpp
[[nodiscard]] report::Session reportSession(const SessionView& session, const season::SeasonPlan& plan,
                                            const season::SeasonData& data);
[[nodiscard]] report::Sprint reportSprint(const store::Sprint& sprint);
[[nodiscard]] report::Jump reportJump(const store::Jump& jump);
[[nodiscard]] report::Wellness reportWellness(const store::Wellness& wellness);
[[nodiscard]] report::Decision reportDecision(const DecisionRecord& record, const season::SeasonData& data);

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
