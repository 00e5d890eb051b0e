// The stair of one ladder as steps that can be asked about: the stays taken, then what the plan has ahead.
#pragma once

#include <vector>

#include "engine/report/season_report.hpp"
#include "mobile/logbook/values.hpp"
#include "mobile/views/step_view_model.hpp"

namespace fleetrung::views
{

/// Of the setup's own ladders, else of the standard ones; the key where there is no such rung.
[[nodiscard]] std::string rungName(const season::SeasonSetup& setup, const std::string& ladder,
                                   const std::string& rung);
/// True where the entry only goes on with the rung before it: taken until today, planned from tomorrow on.
[[nodiscard]] bool goesOn(const std::vector<season::PlannedRung>& rungs, std::size_t index);
[[nodiscard]] std::optional<DecisionAnswer> answerOf(const season::SeasonSetup& setup,
                                                     const logbook::DecisionRecord& record);
[[nodiscard]] std::vector<std::string> cautionTexts(const std::vector<std::string>& keys);

[[nodiscard]] std::vector<StairStep> stairSteps(const report::Ladder& ladder, const season::SeasonPlan& plan,
                                                const std::vector<logbook::DecisionRecord>& decisions, CivilDate today);

} // namespace fleetrung::views
