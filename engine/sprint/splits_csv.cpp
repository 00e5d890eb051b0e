#include "engine/sprint/splits_csv.hpp"

#include <algorithm>

#include "engine/base/csv_table.hpp"
#include "engine/base/numbers.hpp"

namespace fleetrung::sprint
{
namespace
{

Expected<std::size_t> columnNamed(const CsvTable& table, std::string_view name)
{
    const auto& cells = table.header.cells;
    const auto count = std::ranges::count(cells, name);
    if (count == 1)
        return static_cast<std::size_t>(std::ranges::find(cells, name) - cells.begin());
    const std::string place = "line " + integerText(table.header.line);
    if (count > 1)
        return fail(Code::InvalidInput, place, "names the column " + std::string(name) + " twice");
    return fail(Code::InvalidInput, place,
                "has no column " + std::string(name) + "; the header must name distance_m and time_s");
}

Expected<double> numberAt(const CsvTable& table, const CsvRow& row, std::size_t column, std::string_view name)
{
    if (const auto value = parseNumber(row.cells[column], table.decimalMark))
        return *value;
    return fail(Code::InvalidInput, "line " + integerText(row.line) + ", column " + std::string(name),
                "\"" + row.cells[column] + "\" is no number");
}

} // namespace

Expected<std::vector<Split>> importSplits(std::string_view bytes)
{
    const auto table = parseCsv(bytes);
    if (!table)
        return tl::unexpected(table.error());
    const auto distances = columnNamed(*table, "distance_m");
    if (!distances)
        return tl::unexpected(distances.error());
    const auto times = columnNamed(*table, "time_s");
    if (!times)
        return tl::unexpected(times.error());
    std::vector<Split> splits;
    for (const auto& row : table->rows) {
        const auto distance = numberAt(*table, row, *distances, "distance_m");
        if (!distance)
            return tl::unexpected(distance.error());
        const auto time = numberAt(*table, row, *times, "time_s");
        if (!time)
            return tl::unexpected(time.error());
        splits.push_back({*distance, *time});
    }
    return splits;
}

} // namespace fleetrung::sprint
