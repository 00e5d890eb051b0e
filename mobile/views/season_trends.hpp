// A season as the logbook tells it, as the points of Trends. Runs on the thread of the logbook.
#pragma once

#include "engine/report/season_report.hpp"
#include "mobile/logbook/logbook.hpp"
#include "mobile/views/trends_view_model.hpp"

namespace fleetrung::views
{

[[nodiscard]] SeasonTrends seasonTrends(const report::SeasonReport& report, CivilDate today);

/// Without the athlete's name.
[[nodiscard]] Expected<TrendsData> trendsPage(const logbook::Logbook& logbook, const logbook::SeasonRecord& season,
                                              const report::SeasonReport& report, CivilDate today);

/// Seasons that ended before the one of today, in order of time. Takes as long as a report of each.
[[nodiscard]] Expected<std::vector<SeasonTrends>> earlierTrends(const logbook::Logbook& logbook,
                                                                const Identifier& athlete, CivilDate today);

} // namespace fleetrung::views
