// The pictures of a season report: the report's values mapped onto the plot builders.
#pragma once

#include <string>
#include <vector>

#include "engine/report/season_report.hpp"
#include "mobile/plot/pictures.hpp"

namespace fleetrung::pdf
{

[[nodiscard]] plot::Plot stairOf(const report::SeasonReport& report, const report::Ladder& ladder);
[[nodiscard]] plot::Plot trendOf(const report::SeasonReport& report, const report::Ladder& ladder);
[[nodiscard]] plot::Plot sprintTrendOf(const report::SeasonReport& report, const std::string& test);

/// The speed over the way of a run that has a fit, and how far its splits lie from it.
[[nodiscard]] plot::Plot speedCurveOf(const report::SpeedCurve& curve);
[[nodiscard]] plot::Plot splitResidualsOf(const report::SpeedCurve& curve);

/// Names of the tests that were run, in the order of their first run.
[[nodiscard]] std::vector<std::string> sprintTests(const report::SeasonReport& report);

} // namespace fleetrung::pdf
