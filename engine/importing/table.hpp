// A file of unknown origin as a table of text cells: which bytes are text, what parts its cells, where its header
// stands, and a row of units below it. What a column means is decided later (mapping.hpp).
#pragma once

#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "engine/base/csv_table.hpp"
#include "engine/base/error.hpp"

namespace fleetrung::importing
{

/// Larger files are refused: no log of runs or sets comes near.
inline constexpr std::size_t mostBytes = std::size_t{64} << 20U;
inline constexpr std::size_t mostColumns = 500;

struct Table {
    char delimiter = ',';
    bool hasHeader = true;
    std::vector<std::string> header; ///< "column 3" where the file names none
    std::vector<std::string> units;  ///< of a row of units below the header; empty cells where there are none
    std::vector<CsvRow> rows;        ///< at least as wide as the header; guards against spreadsheets taken off
    int preamble = 0;                ///< lines above the header that are no part of the table
};

/// UTF-8 (with or without byte-order mark) or UTF-16 with one, to UTF-8. InvalidInput for an empty file, bytes that are
/// no text, and more than `mostBytes`; the place is "line N" where there is one.
[[nodiscard]] Expected<std::string> utf8Text(std::string_view bytes);

/// Delimiter (comma, semicolon, tab), header, units and rows are found from the file. InvalidInput (place "line N") for
/// what `utf8Text` refuses, a quote that never closes, a single column, no row, and rows without any number.
[[nodiscard]] Expected<Table> readTable(std::string_view bytes);

/// This program's own export keeps runs and their splits, sets and their sessions, in files of their own. Names of
/// those that belong to the table: {"splits.csv"}, {"sessions.csv", "athletes.csv"}; empty for any other file.
[[nodiscard]] std::vector<std::string> companions(const Table& table);

/// The table with what the other one says of the same id (the first column that both have and whose name ends in
/// "_id"): its further columns; or, where it has many rows an id with distance_m and time_s, a column a distance. A
/// table that shares no id is refused (InvalidInput).
[[nodiscard]] Expected<Table> joined(Table table, const Table& other);

/// Names the header: what is the same in two files of one origin, whatever their rows. 64 hexadecimal digits.
[[nodiscard]] std::string headerHash(const Table& table);

} // namespace fleetrung::importing
