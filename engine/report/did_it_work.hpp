// Did it work, of one season report: its evidence on the rungs against its timed runs.
#pragma once

#include "engine/report/season_report.hpp"
#include "engine/transfer/transfer.hpp"

namespace fleetrung::report
{

/// The evidence of all ladders that are judged by the time to peak velocity, sides apart, median of a day; the best run
/// of a day in the same test, run-in, start, timing, surface and shoes, races apart. Runs with more than 1 m/s of wind
/// known are left out.
[[nodiscard]] Expected<transfer::Transfer> didItWork(const SeasonReport& report);

} // namespace fleetrung::report
