// Plays one invented athlete's season through the logbook, day by day.
#pragma once

#include <functional>
#include <string>

#include "demo/squad/diary.hpp"

namespace fleetrung::squad
{

/// Throws std::runtime_error with the logbook's own words where anything fails. `progress` is told each month.
[[nodiscard]] Tally playSeason(logbook::Logbook& logbook, const Performer& performer,
                               const std::function<void(const std::string&)>& progress);

} // namespace fleetrung::squad
