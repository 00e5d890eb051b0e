// Delimited text to rows of text cells (RFC 4180 quoting, through libcsv), with the line each row began on.
#pragma once

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

struct CsvTable {
    std::vector<std::string> comments; ///< lines before the header that begin with '#', without the mark and spaces
    char delimiter = ',';              ///< found from the header: the most frequent of tab, semicolon, comma
    char decimalMark = '.';            ///< ',' where the delimiter is a semicolon and numbers carry commas
    CsvRow header;
    std::vector<CsvRow> rows; ///< empty lines are left out
};

/// Reads a whole file. A UTF-8 byte-order mark is skipped. Fails with InvalidInput (place "line N") on an empty file, a
/// quote that never closes, bytes that are no text, and on a row whose number of cells is not the header's.
[[nodiscard]] Expected<CsvTable> parseCsv(std::string_view bytes);

/// One RFC 4180 record with CRLF. Text is quoted only where it must be.
[[nodiscard]] std::string csvRecord(std::span<const std::string> cells);

/// A text cell made safe for spreadsheets: where it begins with = + - @, tab, CR, NUL, a full-width form of these, or an
/// apostrophe, an apostrophe is put in front. `unguardedText` takes it off. Never used on numbers.
/// Source: OWASP ASVS 5.0, 1.2.10.
[[nodiscard]] std::string guardedText(std::string_view text);
[[nodiscard]] std::string unguardedText(std::string_view text);

} // namespace fleetrung
