// A season as the logbook tells it, as what Ladder draws.
#pragma once

#include "engine/report/season_report.hpp"
#include "mobile/logbook/values.hpp"
#include "mobile/views/ladder_view_model.hpp"

namespace fleetrung::views
{

[[nodiscard]] LadderPageData ladderPage(const logbook::DayView& view, const report::SeasonReport& report,
                                        const std::vector<logbook::DecisionRecord>& decisions, CivilDate today);

[[nodiscard]] plot::SeasonSpan spanOf(const report::SeasonReport& report, CivilDate today);

/// "Half squat" -> "Half" on the Squat ladder: the axis has no room to say the ladder's name again.
[[nodiscard]] std::string shortName(const std::string& rung, const std::string& ladder);

} // namespace fleetrung::views
