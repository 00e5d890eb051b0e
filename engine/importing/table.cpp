#include "engine/importing/table.hpp"

#include <algorithm>
#include <map>

#include "engine/base/identifier.hpp"
#include "engine/base/numbers.hpp"
#include "engine/importing/cells.hpp"
#include "engine/importing/words.hpp"

namespace fleetrung::importing
{
namespace
{

constexpr std::size_t looked = 50; ///< rows by which the form of a file is told

/// The first lines with text, quoted cells emptied: a mark inside quotes parts nothing.
std::vector<std::string> firstLines(std::string_view text)
{
    std::vector<std::string> lines(1);
    bool quoted = false;
    for (const char c : text) {
        if (c == '"')
            quoted = !quoted;
        else if (!quoted && (c == '\n' || c == '\r')) {
            if (lines.back().find_first_not_of(" \t") == std::string::npos)
                lines.back().clear();
            else if (lines.size() == looked)
                return lines;
            else
                lines.emplace_back();
        } else if (!quoted)
            lines.back() += c;
    }
    if (lines.back().empty())
        lines.pop_back();
    return lines;
}

/// How many lines agree on how often the mark stands in them.
std::size_t agreement(const std::vector<std::string>& lines, char mark)
{
    std::map<std::ptrdiff_t, std::size_t> counts;
    for (const auto& line : lines)
        if (const auto count = std::ranges::count(line, mark); count > 0)
            ++counts[count];
    std::size_t most = 0;
    for (const auto& [count, agreeing] : counts)
        most = std::max(most, agreeing);
    return most;
}

/// The mark on which most lines agree; of equals the semicolon, since a decimal comma agrees as well.
char delimiterOf(std::string_view text)
{
    const auto lines = firstLines(text);
    char best = ',';
    std::size_t most = 0;
    for (const char mark : {'\t', ';', ','}) {
        const auto agreeing = agreement(lines, mark);
        if (agreeing > most) {
            most = agreeing;
            best = mark;
        }
    }
    return best;
}

std::size_t filled(const CsvRow& row)
{
    return static_cast<std::size_t>(
        std::ranges::count_if(row.cells, [](const std::string& cell) { return !trimmed(cell).empty(); }));
}

/// The most common number of cells among the first rows.
std::size_t usualWidth(const std::vector<CsvRow>& rows)
{
    std::map<std::size_t, std::size_t> counts;
    for (std::size_t i = 0; i < std::min(rows.size(), looked); ++i)
        ++counts[rows[i].cells.size()];
    std::size_t width = 0, most = 0;
    for (const auto& [cells, count] : counts)
        if (count >= most && cells > 1) {
            most = count;
            width = cells;
        }
    return width;
}

bool isDate(std::string_view cell)
{
    const auto date = dateCell(cell);
    return date && date->year > 1900;
}

/// The share of the rows below whose cell is a number or a date.
bool mostlyData(const std::vector<CsvRow>& rows, std::size_t column)
{
    std::size_t data = 0, text = 0;
    for (std::size_t i = 1; i < std::min(rows.size(), looked); ++i) {
        const auto& cell = rows[i].cells[column];
        if (!isBlank(cell))
            ++(looksNumeric(cell) || isDate(cell) || clockCell(cell) ? data : text);
    }
    return data > text;
}

bool knowsWord(const std::string& cell)
{
    return headerMeaning(cell, Kind::Runs).sureness == 3 || headerMeaning(cell, Kind::Sets).sureness == 3;
}

/// A header has a known word, or a word above a column of numbers.
bool beginsWithHeader(const std::vector<CsvRow>& rows)
{
    const auto& first = rows.front().cells;
    for (std::size_t column = 0; column < first.size(); ++column) {
        const auto& cell = first[column];
        if (isBlank(cell) || looksNumeric(cell) || isDate(cell) || clockCell(cell))
            continue;
        if (knowsWord(cell) || mostlyData(rows, column))
            return true;
    }
    return false;
}

bool isUnitRow(const CsvRow& row)
{
    bool any = false;
    for (const auto& cell : row.cells) {
        const auto text = trimmed(cell);
        if (text.empty() || text == "-" || text == "1" || text == "text")
            continue;
        if (unitNamed(text) == Unit::None)
            return false;
        any = true;
    }
    return any;
}

bool anyNumber(const std::vector<CsvRow>& rows)
{
    return std::ranges::any_of(rows, [](const CsvRow& row) {
        return std::ranges::any_of(row.cells, [](const auto& c) { return looksNumeric(c); });
    });
}

std::string lineOf(const CsvRow& row)
{
    return "line " + integerText(row.line);
}

Expected<std::vector<CsvRow>> cellsOf(std::string_view text, char delimiter)
{
    std::vector<CsvRow> rows;
    const auto keep = [&rows](const CsvRow& row) -> Expected<void> {
        if (row.cells.size() > mostColumns)
            return fail(Code::InvalidInput, lineOf(row), "has more than 500 cells; this is no log of runs or sets");
        if (filled(row) == 0)
            return {};
        auto& kept = rows.emplace_back(row);
        for (auto& cell : kept.cells)
            cell = unguardedText(trimmed(cell));
        return {};
    };
    auto read = readCsv(text, [&](const CsvHead& head) { return keep(head.header); }, keep,
                        {.delimiter = delimiter, .ragged = true});
    if (!read)
        return tl::unexpected(read.error());
    return rows;
}

} // namespace

Expected<Table> readTable(std::string_view bytes)
{
    const auto text = utf8Text(bytes);
    if (!text)
        return tl::unexpected(text.error());
    Table table;
    table.delimiter = delimiterOf(*text);
    auto rows = cellsOf(*text, table.delimiter);
    if (!rows)
        return tl::unexpected(rows.error());
    const auto width = usualWidth(*rows);
    if (width == 0)
        return fail(Code::InvalidInput, rows->empty() ? "line 1" : lineOf(rows->front()),
                    "there is one column only; the cells must be parted by commas, semicolons or tabs");
    const auto begin = std::ranges::find_if(
        *rows, [width](const CsvRow& row) { return row.cells.size() == width && filled(row) > 1; });
    if (begin == rows->end())
        return fail(Code::InvalidInput, lineOf(rows->front()), "there is no row with more than one filled cell");
    table.preamble = static_cast<int>(begin - rows->begin());
    rows->erase(rows->begin(), begin);
    for (auto& row : *rows)
        row.cells.resize(std::max(width, row.cells.size()));
    table.hasHeader = beginsWithHeader(*rows);
    for (std::size_t column = 0; column < width; ++column)
        table.header.push_back("column " + integerText(static_cast<std::int64_t>(column) + 1));
    if (table.hasHeader) {
        for (std::size_t column = 0; column < width; ++column)
            if (const auto& name = rows->front().cells[column]; !name.empty())
                table.header[column] = name;
        rows->erase(rows->begin());
    }
    if (rows->empty())
        return fail(Code::InvalidInput, "line 2", "there is a header and no row below it; export the rows as well");
    table.units.assign(width, {});
    if (table.hasHeader && isUnitRow(rows->front())) {
        table.units = rows->front().cells;
        table.units.resize(width);
        rows->erase(rows->begin());
    }
    if (!anyNumber(*rows))
        return fail(Code::InvalidInput, rows->empty() ? "line 2" : lineOf(rows->front()),
                    "neither this row nor any below it holds a number; choose a file with times or loads");
    table.rows = std::move(*rows);
    return table;
}

std::string headerHash(const Table& table)
{
    std::string text = table.hasHeader ? "header" : "no header";
    for (const auto& name : table.header)
        text += "\n" + folded(name);
    return contentHash({reinterpret_cast<const std::uint8_t*>(text.data()), text.size()});
}

} // namespace fleetrung::importing
