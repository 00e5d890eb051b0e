// A season as the logbook tells it, as what Ladder and Trends draw.
#pragma once

#include "engine/report/season_report.hpp"
#include "mobile/logbook/values.hpp"
#include "mobile/views/ladder_view_model.hpp"
#include "mobile/views/trends_view_model.hpp"

namespace fleetrung::views
{

[[nodiscard]] LadderPageData ladderPage(const logbook::DayView& view, const report::SeasonReport& report,
                                        const std::vector<logbook::DecisionRecord>& decisions, CivilDate today);

[[nodiscard]] TrendsData trendsPage(const report::SeasonReport& report, CivilDate today);

} // namespace fleetrung::views
