// The report in plain words: what happened, and what to be careful with.
#pragma once

#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "engine/report/season_report.hpp"

namespace fleetrung::report
{

/// Whole sentences in a fixed order: time and plan, work done, each ladder, sprints, jumps, days lost, pain.
/// Times to peak velocity are compared within one rung only, and a change is called one only beyond its uncertainty.
[[nodiscard]] std::vector<std::string> whatHappened(const SeasonReport& report);

/// Stand in every report.
[[nodiscard]] std::span<const std::string_view> standingCautions();

/// Week 1 is that of the season's first day, counted in sevens from it.
[[nodiscard]] int weekOf(const SeasonReport& report, CivilDate day);

} // namespace fleetrung::report
