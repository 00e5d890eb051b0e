// One row of a table seen through its mapping. Internal to this folder.
#pragma once

#include <array>
#include <optional>
#include <string>
#include <vector>

#include "engine/importing/runs.hpp"

namespace fleetrung::importing
{

/// Where each meaning stands: built once a table. Splits in order of their distance.
struct Places {
    std::array<int, meaningCount> column{}; ///< -1 where there is none
    std::vector<int> splits;

    explicit Places(const Mapping& mapping);
    [[nodiscard]] int of(Meaning meaning) const { return column[static_cast<std::size_t>(meaning)]; }
};

/// Cells by their meaning. The first fault is kept; what is read after it does not matter.
class RowReader
{
public:
    RowReader(const Table& table, const Mapping& mapping, const Places& places, const CsvRow& row);

    /// The text of the cell, trimmed; empty where there is no such column or nothing in it.
    [[nodiscard]] std::string_view text(Meaning meaning) const;
    [[nodiscard]] std::string_view textAt(int column) const;
    /// In SI units, between the bounds; nothing where the cell is blank.
    std::optional<double> number(Meaning meaning, double low, double high);
    std::optional<double> numberAt(int column, double low, double high);
    std::optional<int> wholeNumber(Meaning meaning, int low, int high);
    /// Athlete, day, clock, attempt, effort, note.
    void readShared(ReadRow& into, CivilDate today);
    /// The key for the cell's word, else `standard`; a word without a key goes into the note.
    std::string word(Meaning meaning, std::string (*keyOf)(std::string_view), std::string standard, ReadRow& into);
    bool yes(Meaning meaning) const;

    void blame(Fault fault, int column = -1);
    void blame(Fault fault, Meaning meaning) { blame(fault, places_.of(meaning)); }
    [[nodiscard]] const std::optional<BadRow>& bad() const { return bad_; }
    [[nodiscard]] const Places& places() const { return places_; }

private:
    void readDay(ReadRow& into, CivilDate today);

    const Table& table_;
    const Mapping& mapping_;
    const Places& places_;
    const CsvRow& row_;
    std::optional<BadRow> bad_;
};

/// Fails where a question is open or the mapping does not fit.
[[nodiscard]] Expected<void> checkReadable(const Table& table, const Mapping& mapping, Kind kind);
/// Cancelled where the caller wants no more.
[[nodiscard]] Expected<void> report(const Reading& reading, std::size_t done, std::size_t all);

} // namespace fleetrung::importing
