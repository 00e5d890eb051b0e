#include "engine/report/csv_tables.hpp"

#include <iterator>
#include <utility>

#include "engine/report/columns.hpp"

namespace fleetrung::report
{
namespace
{

constexpr auto dictionaryName = "data_dictionary.csv";

Table dictionaryOf(std::vector<std::vector<std::string>> rows)
{
    rows.push_back({dictionaryName, "file", "", "table the column stands in"});
    rows.push_back({dictionaryName, "column", "", "name of the column, as in the header of the file"});
    rows.push_back({dictionaryName, "unit", "", "unit; 1 for counts, shares and scales, empty for text"});
    rows.push_back(
        {dictionaryName, "meaning", "", "what the column holds; an empty cell means not measured or not given"});
    return {dictionaryName, {"file", "column", "unit", "meaning"}, std::move(rows)};
}

} // namespace

std::vector<Table> csvTables(std::span<const SeasonReport> reports)
{
    auto described = planTables(reports);
    auto log = logTables(reports);
    described.insert(described.end(), std::make_move_iterator(log.begin()), std::make_move_iterator(log.end()));
    described.push_back(transferTable(reports));

    std::vector<Table> tables;
    std::vector<std::vector<std::string>> dictionary;
    for (auto& part : described) {
        tables.push_back(std::move(part.table));
        dictionary.insert(dictionary.end(), part.dictionary.begin(), part.dictionary.end());
    }
    tables.push_back(dictionaryOf(std::move(dictionary)));
    return tables;
}

std::string csvText(const Table& table)
{
    std::string text = csvRecord(table.header);
    for (const auto& row : table.rows)
        text += csvRecord(row);
    return text;
}

} // namespace fleetrung::report
