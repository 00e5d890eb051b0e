// Plays one invented athlete's season through the logbook, day by day.
#pragma once

#include <functional>
#include <string>

#include "demo/squad/diary.hpp"

namespace fleetrung::squad
{

struct Played {
    Tally tally;
    std::string nextLift;      ///< lift key of the first bar lift planned for the day after; empty where there is none
    std::string nextRecording; ///< recording CSV of its first work set, so that Bench has a sensor to listen to
};

/// Throws std::runtime_error with the logbook's own words where anything fails. `progress` is told each day; what it
/// throws ends the playing.
[[nodiscard]] Played playSeason(logbook::Logbook& logbook, const Performer& performer,
                                const std::function<void(CivilDate)>& progress);

} // namespace fleetrung::squad
