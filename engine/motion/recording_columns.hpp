// Column names of a recording CSV and where they stand in one header. Internal to this folder.
#pragma once

#include <array>
#include <optional>
#include <span>
#include <string>
#include <string_view>

#include "engine/base/csv_table.hpp"
#include "engine/motion/recording_csv.hpp"

namespace fleetrung::motion
{

/// One of our column names and the factor from its unit to SI.
struct ColumnName {
    std::string_view text;
    double toSi;
};

/// The names one quantity may have, one for each unit we read.
using ColumnNames = std::span<const ColumnName>;

[[nodiscard]] ColumnNames timeNames();
[[nodiscard]] ColumnNames sampleNames();
[[nodiscard]] ColumnNames accelerometerNames(std::size_t axis); ///< 0 x, 1 y, 2 z
[[nodiscard]] ColumnNames gyroscopeNames(std::size_t axis);

/// True for every name above.
[[nodiscard]] bool isColumnName(std::string_view name);

/// "time_s or time_ms or time_us".
[[nodiscard]] std::string listed(ColumnNames names);

/// Where a quantity stands in each row, and how to bring it to SI.
struct Column {
    std::size_t index = 0;
    double toSi = 1;
    std::string name; ///< as in the file: that is where the reader will look
};

/// Finds the columns of the quantities in one header.
class ColumnFinder
{
public:
    ColumnFinder(const CsvRow& header, const ColumnMap& map) : header_(header), map_(map) {}

    /// The one column that carries the quantity; nothing where there is none; a failure where two do.
    [[nodiscard]] Expected<std::optional<Column>> find(ColumnNames names) const;

    /// The same, but none is a failure; `advice` says what else would do.
    [[nodiscard]] Expected<Column> require(ColumnNames names, std::string_view advice) const;

private:
    [[nodiscard]] std::string_view mappedName(ColumnNames names) const;
    [[nodiscard]] std::string_view nameInFile(std::string_view ours, ColumnNames names) const;
    [[nodiscard]] std::string headerText() const;

    const CsvRow& header_;
    const ColumnMap& map_;
};

// Texts of messages.

/// Without the blanks around.
[[nodiscard]] std::string_view trimmed(std::string_view text);

/// Text out of a file: short, and without bytes that would upset a terminal.
[[nodiscard]] std::string printable(std::string_view text, std::size_t longest);

/// The same in quotation marks.
[[nodiscard]] std::string inQuotes(std::string_view text);

/// "line 3, column acc_x_mps2".
[[nodiscard]] std::string placeOf(int line, std::string_view column = {});

} // namespace fleetrung::motion
