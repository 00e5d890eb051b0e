#include "engine/base/csv_table.hpp"

#include <algorithm>
#include <array>

#include <csv.h>

#include "engine/base/numbers.hpp"

namespace fleetrung
{
namespace
{

std::string lineText(int line)
{
    return "line " + integerText(line);
}

/// Owns libcsv's parser and gathers what its callbacks report.
class RowReader
{
public:
    explicit RowReader(char delimiter)
    {
        csv_init(&parser_, CSV_STRICT | CSV_STRICT_FINI | CSV_APPEND_NULL);
        csv_set_delim(&parser_, static_cast<unsigned char>(delimiter));
    }
    ~RowReader() { csv_free(&parser_); }
    RowReader(const RowReader&) = delete;
    RowReader& operator=(const RowReader&) = delete;

    bool feedLine(std::string_view text, int line)
    {
        if (open_.cells.empty() && !inRow_)
            open_.line = line;
        inRow_ = true;
        return csv_parse(&parser_, text.data(), text.size(), onCell, onRow, this) == text.size();
    }
    bool finish() { return csv_fini(&parser_, onCell, onRow, this) == 0; }
    [[nodiscard]] int openLine() const { return open_.line; }
    std::vector<CsvRow> takeRows() { return std::move(rows_); }

private:
    static void onCell(void* text, std::size_t size, void* self)
    {
        static_cast<RowReader*>(self)->open_.cells.emplace_back(static_cast<const char*>(text), size);
    }
    static void onRow(int, void* self)
    {
        auto& reader = *static_cast<RowReader*>(self);
        reader.rows_.push_back(std::move(reader.open_));
        reader.open_ = {};
        reader.inRow_ = false;
    }

    csv_parser parser_{};
    CsvRow open_;
    bool inRow_ = false;
    std::vector<CsvRow> rows_;
};

std::string_view takeLine(std::string_view& rest)
{
    const auto end = rest.find('\n');
    const auto line = rest.substr(0, end == std::string_view::npos ? rest.size() : end + 1);
    rest.remove_prefix(line.size());
    return line;
}

bool isBlank(std::string_view line)
{
    return line.find_first_not_of(" \t\r\n") == std::string_view::npos;
}

char delimiterOf(std::string_view header)
{
    char best = ',';
    std::ptrdiff_t most = 0;
    for (const char candidate : {'\t', ';', ','}) {
        const auto count = std::count(header.begin(), header.end(), candidate);
        if (count > most) {
            most = count;
            best = candidate;
        }
    }
    return best;
}

bool usesDecimalComma(const CsvTable& table)
{
    if (table.delimiter != ';')
        return false;
    for (const auto& row : table.rows)
        for (const auto& cell : row.cells)
            if (cell.find(',') != std::string::npos && parseNumber(cell, ','))
                return true;
    return false;
}

std::string_view trimmedComment(std::string_view line)
{
    const auto first = line.find_first_not_of("# \t");
    const auto last = line.find_last_not_of(" \t\r\n");
    return first == std::string_view::npos || last < first ? std::string_view() : line.substr(first, last - first + 1);
}

bool startsDangerously(std::string_view text)
{
    // The last four are the full-width forms of = + - @ in UTF-8.
    constexpr std::array<std::string_view, 12> marks{
        "=", "+", "-", "@", "\t", "\r", std::string_view("\0", 1), "'", "\xEF\xBC\x9D", "\xEF\xBC\x8B", "\xEF\xBC\x8D",
        "\xEF\xBC\xA0"};
    return std::any_of(marks.begin(), marks.end(), [&](std::string_view mark) { return text.substr(0, mark.size()) == mark; });
}

} // namespace

Expected<CsvTable> parseCsv(std::string_view bytes)
{
    if (bytes.substr(0, 3) == "\xEF\xBB\xBF")
        bytes.remove_prefix(3);
    if (isBlank(bytes))
        return fail(Code::InvalidInput, "line 1", "the file is empty; it needs a header row and rows of numbers");
    if (bytes.find('\0') != std::string_view::npos)
        return fail(Code::InvalidInput, "", "this is not a text file; export the table as CSV");

    CsvTable table;
    int line = 0;
    auto rest = bytes;
    std::string_view header;
    while (!rest.empty()) {
        header = takeLine(rest);
        ++line;
        if (header.substr(0, 1) == "#")
            table.comments.emplace_back(trimmedComment(header));
        else if (!isBlank(header))
            break;
        header = {};
    }
    if (header.empty())
        return fail(Code::InvalidInput, lineText(line), "there is no header row that names the columns");
    table.delimiter = delimiterOf(header);

    RowReader reader(table.delimiter);
    for (auto text = header; !text.empty(); text = takeLine(rest), ++line)
        if (!reader.feedLine(text, line))
            return fail(Code::InvalidInput, lineText(line), "a quotation mark stands where none may; double it inside a cell");
    if (!reader.finish())
        return fail(Code::InvalidInput, lineText(reader.openLine()), "a quoted cell that begins here is never closed");

    table.rows = reader.takeRows();
    table.header = std::move(table.rows.front());
    table.rows.erase(table.rows.begin());
    std::erase_if(table.rows, [](const CsvRow& row) { return row.cells.size() == 1 && isBlank(row.cells.front()); });
    for (const auto& row : table.rows)
        if (row.cells.size() != table.header.cells.size())
            return fail(Code::InvalidInput, lineText(row.line),
                        "this row has " + integerText(static_cast<std::int64_t>(row.cells.size())) +
                            " cells and the header has " +
                            integerText(static_cast<std::int64_t>(table.header.cells.size())));
    if (usesDecimalComma(table))
        table.decimalMark = ',';
    return table;
}

std::string csvRecord(std::span<const std::string> cells)
{
    std::string record;
    for (std::size_t i = 0; i < cells.size(); ++i) {
        if (i > 0)
            record += ',';
        if (cells[i].find_first_of(",\"\r\n") == std::string::npos) {
            record += cells[i];
            continue;
        }
        record += '"';
        for (const char c : cells[i]) {
            if (c == '"')
                record += '"';
            record += c;
        }
        record += '"';
    }
    return record + "\r\n";
}

std::string guardedText(std::string_view text)
{
    return startsDangerously(text) ? "'" + std::string(text) : std::string(text);
}

std::string unguardedText(std::string_view text)
{
    const bool guarded = text.substr(0, 1) == "'" && startsDangerously(text.substr(1));
    return std::string(guarded ? text.substr(1) : text);
}

} // namespace fleetrung
