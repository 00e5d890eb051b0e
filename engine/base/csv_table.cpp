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

/// Up to and including the next line end: LF, CR LF, or CR alone.
std::string_view takeLine(std::string_view& rest)
{
    auto end = rest.find_first_of("\r\n");
    if (end != std::string_view::npos && rest.substr(end, 2) == "\r\n")
        ++end;
    const auto line = rest.substr(0, end == std::string_view::npos ? rest.size() : end + 1);
    rest.remove_prefix(line.size());
    return line;
}

bool isBlank(std::string_view line)
{
    return line.find_first_not_of(" \t\r\n") == std::string_view::npos;
}

/// Owns libcsv's parser and hands on each row as it ends. The row's strings are used again for the next one, so that a
/// long file costs no allocation a cell.
class RowReader
{
public:
    RowReader(char delimiter, std::function<Expected<void>(const CsvRow&)> onRow) : onRow_(std::move(onRow))
    {
        csv_init(&parser_, CSV_STRICT | CSV_STRICT_FINI | CSV_APPEND_NULL);
        csv_set_delim(&parser_, static_cast<unsigned char>(delimiter));
    }
    ~RowReader() { csv_free(&parser_); }
    RowReader(const RowReader&) = delete;
    RowReader& operator=(const RowReader&) = delete;

    Expected<void> feedLine(std::string_view text, int line)
    {
        if (!inRow_)
            row_.line = line;
        inRow_ = inRow_ || !isBlank(text);
        if (csv_parse(&parser_, text.data(), text.size(), cellEnded, rowEnded, this) != text.size())
            return fail(Code::InvalidInput, lineText(line),
                        "a quotation mark stands where none may; double it inside a quoted cell");
        return std::move(outcome_);
    }
    Expected<void> finish()
    {
        if (csv_fini(&parser_, cellEnded, rowEnded, this) != 0)
            return fail(Code::InvalidInput, lineText(row_.line), "a quoted cell that begins here is never closed");
        return std::move(outcome_);
    }

private:
    static void cellEnded(void* text, std::size_t size, void* self)
    {
        auto& reader = *static_cast<RowReader*>(self);
        if (reader.used_ == reader.row_.cells.size())
            reader.row_.cells.emplace_back();
        reader.row_.cells[reader.used_++].assign(static_cast<const char*>(text), size);
    }
    static void rowEnded(int, void* self)
    {
        auto& reader = *static_cast<RowReader*>(self);
        reader.row_.cells.resize(reader.used_);
        reader.used_ = 0;
        reader.inRow_ = false;
        if (reader.outcome_)
            reader.outcome_ = reader.onRow_(reader.row_);
    }

    csv_parser parser_{};
    std::function<Expected<void>(const CsvRow&)> onRow_;
    CsvRow row_;
    std::size_t used_ = 0;
    bool inRow_ = false;
    Expected<void> outcome_;
};

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

/// Takes lines up to and including the header and gathers the comments above it; empty where there is no header.
std::string_view skipToHeader(std::string_view& rest, int& line, std::vector<CsvComment>& comments)
{
    while (!rest.empty()) {
        const auto text = takeLine(rest);
        ++line;
        if (text.front() == '#')
            comments.push_back({line, std::string(trimmedComment(text))});
        else if (!isBlank(text))
            return text;
    }
    return {};
}

std::string widthMessage(std::size_t found, std::size_t expected)
{
    return "this row has " + integerText(static_cast<std::int64_t>(found)) + " cells and the header has " +
           integerText(static_cast<std::int64_t>(expected)) + "; add or remove delimiters so that they agree";
}

bool startsDangerously(std::string_view text)
{
    // The last four are the full-width forms of = + - @ in UTF-8.
    constexpr std::array<std::string_view, 12> marks{"=",
                                                     "+",
                                                     "-",
                                                     "@",
                                                     "\t",
                                                     "\r",
                                                     std::string_view("\0", 1),
                                                     "'",
                                                     "\xEF\xBC\x9D",
                                                     "\xEF\xBC\x8B",
                                                     "\xEF\xBC\x8D",
                                                     "\xEF\xBC\xA0"};
    return std::any_of(marks.begin(), marks.end(),
                       [&](std::string_view mark) { return text.substr(0, mark.size()) == mark; });
}

} // namespace

Expected<void> readCsv(std::string_view bytes, const std::function<Expected<void>(const CsvHead&)>& onHead,
                       const std::function<Expected<void>(const CsvRow&)>& onRow, const CsvShape& shape)
{
    if (bytes.substr(0, 3) == "\xEF\xBB\xBF")
        bytes.remove_prefix(3);
    if (isBlank(bytes))
        return fail(Code::InvalidInput, "line 1", "the file is empty; it needs a header row and rows below it");
    if (bytes.find('\0') != std::string_view::npos)
        return fail(Code::InvalidInput, "", "this is not a text file; export the table as CSV in UTF-8");

    CsvHead head;
    auto rest = bytes;
    int line = 0;
    const auto headerLine = skipToHeader(rest, line, head.comments);
    if (headerLine.empty())
        return fail(Code::InvalidInput, lineText(line), "there is no header row that names the columns");
    head.delimiter = shape.delimiter.value_or(delimiterOf(headerLine));

    std::size_t width = 0; // 0 until the header has been read
    RowReader reader(head.delimiter, [&](const CsvRow& row) -> Expected<void> {
        if (width == 0) {
            width = row.cells.size();
            head.header = row;
            return onHead(head);
        }
        if (row.cells.size() == 1 && isBlank(row.cells.front()))
            return {};
        if (row.cells.size() != width && !shape.ragged)
            return fail(Code::InvalidInput, lineText(row.line), widthMessage(row.cells.size(), width));
        return onRow(row);
    });
    for (auto text = headerLine; !text.empty(); text = takeLine(rest), ++line)
        if (auto fed = reader.feedLine(text, line); !fed)
            return fed;
    return reader.finish();
}

Expected<CsvTable> parseCsv(std::string_view bytes)
{
    CsvTable table;
    const auto onHead = [&](const CsvHead& head) -> Expected<void> {
        for (const auto& comment : head.comments)
            table.comments.push_back(comment.text);
        table.delimiter = head.delimiter;
        table.header = head.header;
        return {};
    };
    const auto onRow = [&](const CsvRow& row) -> Expected<void> {
        table.rows.push_back(row);
        return {};
    };
    if (auto read = readCsv(bytes, onHead, onRow); !read)
        return tl::unexpected(read.error());
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
