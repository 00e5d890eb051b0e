// The calendar file of a season plan (RFC 5545): written anew, or brought up to date where it is there already.
#pragma once

#include <string>

#include <CLI/App.hpp>

#include "engine/season/plan.hpp"
#include "platform/desk/failure.hpp"

namespace fleetrung::desk
{

struct CalendarOptions {
    std::string file; ///< empty: no calendar is wanted
    std::string from, at, stamp;
};

void addCalendarOptions(CLI::App& command, CalendarOptions& options);

/// Does nothing where no calendar is wanted, and leaves a file alone that holds the same bytes already. A file that is
/// no calendar of this season is refused and stays as it is.
[[nodiscard]] Result<void> writeCalendar(const CalendarOptions& options, const season::SeasonPlan& plan);

} // namespace fleetrung::desk
