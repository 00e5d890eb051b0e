#include <algorithm>
#include <map>

#include "engine/base/numbers.hpp"
#include "engine/importing/table.hpp"

namespace fleetrung::importing
{
namespace
{

std::optional<std::size_t> columnOf(const Table& table, std::string_view name)
{
    const auto found = std::ranges::find(table.header, name);
    return found == table.header.end() ? std::nullopt
                                       : std::optional(static_cast<std::size_t>(found - table.header.begin()));
}

using RowsById = std::map<std::string, std::vector<const CsvRow*>>;

/// One column a distance, in metres: what a run's splits look like in a wide table.
void addSplits(Table& table, const RowsById& rows, std::size_t id, std::size_t distance, std::size_t time)
{
    std::map<double, std::size_t> columns;
    for (const auto& [key, splits] : rows)
        for (const auto* split : splits)
            if (const auto metres = parseNumber(split->cells[distance]))
                columns.emplace(*metres, 0);
    for (auto& [metres, column] : columns) {
        column = table.header.size();
        table.header.push_back("split " + shortestText(metres) + " m (s)");
    }
    table.units.resize(table.header.size());
    for (auto& row : table.rows) {
        row.cells.resize(table.header.size());
        const auto found = rows.find(row.cells[id]);
        if (found == rows.end())
            continue;
        for (const auto* split : found->second)
            if (const auto metres = parseNumber(split->cells[distance]))
                row.cells[columns[*metres]] = split->cells[time];
    }
}

/// What the one row of that id says more.
void addColumns(Table& table, const Table& other, const RowsById& rows, std::size_t id)
{
    std::vector<std::size_t> added;
    for (std::size_t column = 0; column < other.header.size(); ++column)
        if (!columnOf(table, other.header[column])) {
            added.push_back(column);
            table.header.push_back(other.header[column]);
        }
    table.units.resize(table.header.size());
    for (auto& row : table.rows) {
        const auto found = rows.find(row.cells[id]);
        row.cells.resize(table.header.size() - added.size());
        for (const auto column : added)
            row.cells.push_back(found == rows.end() ? std::string() : found->second.front()->cells[column]);
    }
}

} // namespace

std::vector<std::string> companions(const Table& table)
{
    const auto has = [&table](std::string_view name) { return columnOf(table, name).has_value(); };
    if (has("sprint_id") && has("athlete_id") && has("time_s"))
        return {"splits.csv", "athletes.csv"};
    if (has("set_id") && has("session_id") && has("load_kg"))
        return {"sessions.csv", "athletes.csv"};
    return {};
}

Expected<Table> joined(Table table, const Table& other)
{
    for (std::size_t id = 0; id < table.header.size(); ++id) {
        const auto there = columnOf(other, table.header[id]);
        if (!table.header[id].ends_with("_id") || !there)
            continue;
        RowsById rows;
        for (const auto& row : other.rows)
            rows[row.cells[*there]].push_back(&row);
        const auto distance = columnOf(other, "distance_m"), time = columnOf(other, "time_s");
        const bool many = std::ranges::any_of(rows, [](const auto& entry) { return entry.second.size() > 1; });
        if (distance && time && other.header.size() == 3)
            addSplits(table, rows, id, *distance, *time);
        else if (many)
            return fail(Code::InvalidInput, "column " + table.header[id],
                        "stands in several rows of the other file; choose the file that has one row for each");
        else
            addColumns(table, other, rows, id);
        return table;
    }
    return fail(Code::InvalidInput, "",
                "the two files share no column whose name ends in _id; they do not belong together");
}

} // namespace fleetrung::importing
