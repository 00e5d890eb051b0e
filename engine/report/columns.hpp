// A table as a list of columns, each with its unit, its meaning and how a row gives its cell: header, rows and data
// dictionary come from the one list and cannot drift apart. Internal to this folder.
#pragma once

#include <functional>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "engine/base/csv_table.hpp"
#include "engine/base/numbers.hpp"
#include "engine/report/csv_tables.hpp"

namespace fleetrung::report
{

template <class Row> struct Column {
    std::string name;
    std::string unit; ///< "" for text, "1" for counts and shares
    std::string meaning;
    std::function<std::string(const Row&)> cell;
};

/// A table and its part of the data dictionary (file, column, unit, meaning).
struct DescribedTable {
    Table table;
    std::vector<std::vector<std::string>> dictionary;
};

template <class Row>
DescribedTable describe(const std::string& fileName, const std::vector<Column<Row>>& columns,
                        const std::vector<Row>& rows)
{
    DescribedTable out;
    out.table.fileName = fileName;
    for (const auto& column : columns) {
        out.table.header.push_back(column.name);
        out.dictionary.push_back({fileName, column.name, column.unit, column.meaning});
    }
    for (const auto& row : rows) {
        auto& cells = out.table.rows.emplace_back();
        for (const auto& column : columns)
            cells.push_back(column.cell(row));
    }
    return out;
}

inline std::string numberCell(const std::optional<double>& value)
{
    return value ? shortestText(*value) : std::string();
}

/// Fast metres, to the tenth; empty where no best speed is known.
inline std::string fastCell(const track::FastMetres& fast, double metres)
{
    return fast.basis == track::Basis::None ? std::string() : shortestText(roundTo(metres, 10));
}

inline std::string valueCell(const Measurement& value)
{
    return numberCell(value.value);
}

inline std::string uncertaintyCell(const Measurement& value)
{
    return numberCell(value.uncertainty);
}

inline std::string yesNo(bool value)
{
    return value ? "yes" : "no";
}

[[nodiscard]] std::string sideCell(Side side);

/// The tables of what was planned and decided, those of what was done, and those of the track.
[[nodiscard]] std::vector<DescribedTable> planTables(std::span<const SeasonReport> reports);
[[nodiscard]] std::vector<DescribedTable> logTables(std::span<const SeasonReport> reports);
[[nodiscard]] std::vector<DescribedTable> trackTables(std::span<const SeasonReport> reports);
/// One row a run with splits from a start.
[[nodiscard]] DescribedTable sprintFitTable(std::span<const SeasonReport> reports);
/// Work on the track, and its weeks.
[[nodiscard]] std::vector<DescribedTable> trackWorkTables(std::span<const SeasonReport> reports);
/// One row a season and lag.
[[nodiscard]] DescribedTable transferTable(std::span<const SeasonReport> reports);

} // namespace fleetrung::report
