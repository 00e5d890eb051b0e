// The report as RFC 4180 tables, one file a table, and a data dictionary of every column beside them.
// Columns carry their unit in the name (SI; loads in kg), times are ISO 8601 with offset, doubles print as the shortest
// text that reads back the same, text cells are guarded against spreadsheets, and what was not measured is an empty
// cell.
#pragma once

#include <span>
#include <string>
#include <vector>

#include "engine/report/season_report.hpp"

namespace fleetrung::report
{

struct Table {
    std::string fileName; ///< "repetitions.csv"
    std::vector<std::string> header;
    std::vector<std::vector<std::string>> rows; ///< cells as they stand in the file, before quoting
};

/// athletes, seasons, phases, competitions, plan, lost_days, decisions, evidence, wellness, sessions, sets,
/// repetitions, probes, sprints, splits, sprint_fits, jumps, did_it_work, and last data_dictionary (file, column, unit,
/// meaning). Every table is there, also without rows.
[[nodiscard]] std::vector<Table> csvTables(std::span<const SeasonReport> reports);

/// The bytes of the file: UTF-8, CRLF.
[[nodiscard]] std::string csvText(const Table& table);

} // namespace fleetrung::report
