// How a table of runs is laid out: which rows make one run, and whether its times count from the start. Internal to
// this folder.
#pragma once

#include "engine/importing/cells.hpp"
#include "engine/importing/row_reader.hpp"

namespace fleetrung::importing
{

/// Rows (places in `table.rows`) that make one run each, where a row is a split: those of one athlete, day, clock time
/// and number, in the order of the file; where the distance does not grow, the next run begins.
[[nodiscard]] std::vector<std::vector<std::size_t>> runsOfRows(const Table& table, const Mapping& mapping);

/// A row is a split where there are distance, time, no column a split, and most runs made so have two rows or more.
[[nodiscard]] RowForm rowForm(const Table& table, const Mapping& mapping);

struct FormFound {
    SplitForm form = SplitForm::Cumulative;
    int rows = 0;        ///< that say so
    std::string example; ///< "1.85, 1.12, 1.02"
};
/// Cumulative where the times rise and nobody would be faster than 13 m/s; by most rows, and where they do not tell by
/// headers such as "10-20". Wide rows or long ones, as `mapping.form` says.
[[nodiscard]] FormFound splitForm(const Table& table, const Mapping& mapping);

} // namespace fleetrung::importing
