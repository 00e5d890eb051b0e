// Delimited text to rows of text cells (RFC 4180 quoting, through libcsv), with the line each row began on.
#pragma once

#include <functional>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "engine/base/error.hpp"

namespace fleetrung
{

struct CsvRow {
    int line = 0; ///< 1-based line of the file on which the row begins
    std::vector<std::string> cells;
};

/// A line before the header that begins with '#', without the mark and the spaces around.
struct CsvComment {
    int line = 0;
    std::string text;
};

/// What stands above the rows.
struct CsvHead {
    std::vector<CsvComment> comments;
    char delimiter = ','; ///< found from the header: the most frequent of tab, semicolon, comma
    CsvRow header;
};

struct CsvTable {
    std::vector<std::string> comments; ///< the texts of the head's comments
    char delimiter = ',';
    char decimalMark = '.'; ///< ',' where the delimiter is a semicolon and numbers carry commas
    CsvRow header;
    std::vector<CsvRow> rows; ///< empty lines are left out
};

/// Reads a whole file. A UTF-8 byte-order mark is skipped. Fails with InvalidInput (place "line N") on an empty file, a
/// quote that never closes, bytes that are no text, and on a row whose number of cells is not the header's.
[[nodiscard]] Expected<CsvTable> parseCsv(std::string_view bytes);

/// What a caller knows of a file, or lets pass.
struct CsvShape {
    std::optional<char> delimiter = {}; ///< none: found from the header
    bool ragged = false;                ///< rows may have more or fewer cells than the header
};

/// The same row by row, for large files: `onHead` once, then `onRow` for every row in order. The row lives only during
/// the call. An error that one of them returns ends the reading and is returned; so do the errors of `parseCsv`.
[[nodiscard]] Expected<void> readCsv(std::string_view bytes,
                                     const std::function<Expected<void>(const CsvHead&)>& onHead,
                                     const std::function<Expected<void>(const CsvRow&)>& onRow,
                                     const CsvShape& shape = {});

/// One RFC 4180 record with CRLF. Text is quoted only where it must be.
[[nodiscard]] std::string csvRecord(std::span<const std::string> cells);

/// A text cell made safe for spreadsheets: where it begins with = + - @, tab, CR, NUL, a full-width form of these, or
/// an apostrophe, an apostrophe is put in front. `unguardedText` takes it off. Never used on numbers. Source: OWASP
/// ASVS 5.0, 1.2.10.
[[nodiscard]] std::string guardedText(std::string_view text);
[[nodiscard]] std::string unguardedText(std::string_view text);

} // namespace fleetrung
