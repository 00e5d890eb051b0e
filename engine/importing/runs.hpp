// The rows of a table as timed runs, ready to be stored. SI units; words of start, timing, surface and shoes are the
// store's keys.
#pragma once

#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "engine/base/identifier.hpp"
#include "engine/importing/mapping.hpp"

namespace fleetrung::importing
{

enum class Fault {
    TooManyCells, ///< more than the header has: a delimiter or decimal comma without quotes
    NotANumber,
    OutOfRange, ///< a slip of the finger: beyond the bounds that the forms have too
    NoDate,
    NotADate,
    FutureDay,
    NotAClock,
    NoTime,
    NoDistance,
    TimesDoNotRise,
    TooFast,        ///< beyond 13 m/s (from memory: 12.4 m/s is the greatest ever measured)
    GapInIntervals, ///< a time between two gates is missing: what follows has no beginning
    BeyondDistance, ///< a split behind the end of the run
    EndDisagrees,   ///< the split at the end is not the time of the run
    NoLift,
    NoRepetitions
};

struct BadRow {
    int line = 0;
    int column = -1; ///< of the table; -1: the row as a whole
    Fault fault{};
    std::string cell; ///< what stands there

    bool operator==(const BadRow&) const = default;
};
/// "line 12, column 10 m: "abc" is no number; ...". English.
[[nodiscard]] std::string describe(const BadRow& bad, const Table& table);

struct SplitTime {
    double distance = 0; ///< m from the start line
    double time = 0;     ///< s

    bool operator==(const SplitTime&) const = default;
};

/// What runs and sets share.
struct ReadRow {
    int line = 0;
    std::string athlete;                  ///< as the file calls them; empty where it does not
    std::optional<Identifier> athleteKey; ///< of this program's own export
    CivilDate day{};
    std::optional<int> clock; ///< s from the day's midnight, local; past 24 h where the training day lasts so long
    std::optional<int> offsetMinutes; ///< local minus UTC
    std::string attempt;              ///< number of the run or set on its day; empty where the file has none
    std::optional<double> effort;     ///< 1..10
    std::string note;                 ///< with the words that the store has no key for
};

struct ReadRun : ReadRow {
    double distance = 0;           ///< m; of a flying run the zone
    double time = 0;               ///< s
    std::vector<SplitTime> splits; ///< distances ascending
    std::string start, timing, surface, shoes;
    double runIn = 0;                  ///< m
    std::optional<double> wind;        ///< m/s
    std::optional<double> reaction;    ///< s
    std::optional<double> temperature; ///< deg C
    std::optional<double> contact;     ///< s
    std::optional<double> stepLength;  ///< m
    bool competition = false, trial = false;
};

struct Runs {
    std::vector<ReadRun> runs;
    std::vector<BadRow> bad; ///< one a run or row, in order of lines
};

struct Reading {
    CivilDate today{};                               ///< later days are faults
    std::function<bool(int done, int all)> progress; ///< called now and then; false cancels. May be empty
};

/// Refused where `questions` has any left, InvalidArgument where the mapping is no mapping of runs for this table,
/// Cancelled.
[[nodiscard]] Expected<Runs> readRuns(const Table& table, const Mapping& mapping, const Reading& reading);

} // namespace fleetrung::importing
