// What the columns of a table mean: proposed from the words of its header, changed by the user, kept as JSON under
// `headerHash` so that the next file of that kind needs no question.
//
// Nothing is guessed in silence: what the file leaves open is a question, what was concluded from its numbers is a
// remark.
#pragma once

#include <map>
#include <optional>
#include <string>
#include <vector>

#include "engine/base/civil_date.hpp"
#include "engine/base/error.hpp"
#include "engine/importing/table.hpp"

namespace fleetrung::importing
{

enum class Kind { Runs, Sets };

enum class Meaning {
    Ignore,
    Athlete,    ///< name
    AthleteKey, ///< identifier of this program
    Date,       ///< with or without a clock time
    Clock,
    Note,
    Effort,  ///< 1..10
    Key,     ///< what names a run or a set in the file
    Attempt, ///< number of the run on its day; of a set: its number in the session
    // Runs
    Split,
    Distance,
    Time,
    Wind,
    Timing,
    Start,
    RunIn,
    Reaction,
    Surface,
    Shoes,
    Test,
    Temperature,
    Competition,
    Trial,
    Contact,
    StepLength,
    // Sets
    Lift,
    Load,
    Repetitions,
    TimeToPeak,
    MeanVelocity,
    PeakVelocity,
    Range,
    Side,
    Rung,
    SetKind,
    BoxHeight
};
inline constexpr int meaningCount = static_cast<int>(Meaning::BoxHeight) + 1;
[[nodiscard]] std::string_view meaningKey(Meaning meaning); ///< "time-to-peak"
[[nodiscard]] bool belongsTo(Meaning meaning, Kind kind);

enum class Unit { None, Second, Millisecond, Metre, Centimetre, Yard, Kilogram, Pound, MetrePerSecond };
[[nodiscard]] std::string_view unitKey(Unit unit); ///< "ms", "lb"; empty for None
[[nodiscard]] double siFactor(Unit unit);          ///< to s, m, kg, m/s; 1 for None

struct ColumnMeaning {
    Meaning meaning = Meaning::Ignore;
    Unit unit = Unit::None; ///< None: from the numbers, or a question
    double distance = 0;    ///< m from the start line, of a split; 0: not known yet
    double from = 0;        ///< m, of a split "10-20": where it begins

    bool operator==(const ColumnMeaning&) const = default;
};

enum class DateOrder { DayMonth, MonthDay }; ///< of 3/4/2026; other forms leave no doubt
enum class RowForm { RunPerRow, SplitPerRow };
enum class SplitForm { Cumulative, Interval }; ///< from the start, or from the split before

struct Mapping {
    Kind kind = Kind::Runs;
    std::vector<ColumnMeaning> columns; ///< one a column of the table
    std::optional<char> decimalMark;    ///< '.' or ','; none: a question
    std::optional<DateOrder> dateOrder; ///< none: a question where any date leaves it open
    RowForm form = RowForm::RunPerRow;  ///< of runs
    SplitForm splits = SplitForm::Cumulative;
    Unit load = Unit::None;         ///< of a load whose header names none
    std::optional<CivilDate> day;   ///< of rows that have no date
    std::string start = "standing"; ///< store key, of runs that do not say it; "block" where they react to a gun
    std::string timing = "gates";   ///< likewise
    std::map<std::string, std::string> lifts;    ///< the file's word -> lift key; empty key: leave out
    std::map<std::string, std::string> athletes; ///< the file's name -> identifier; set by the caller

    bool operator==(const Mapping&) const = default;
};

enum class Ask {
    NothingToRead, ///< no column holds a time, or a lift with repetitions
    DecimalMark,   ///< "1,234" may be one or a thousand
    DateOrder,     ///< 3/4/2026
    Day,           ///< no column holds a date
    SplitDistance, ///< "Split 1"
    MassUnit,      ///< of the load
};
struct Question {
    Ask ask;
    int column = -1;     ///< of SplitDistance
    std::string example; ///< the cell or header that leaves it open

    bool operator==(const Question&) const = default;
};

enum class Told {
    Preamble,         ///< so many lines above the header are left out (example: the number)
    NoHeader,         ///< the first row was read as data
    DecimalComma,     ///< numbers are written so (example)
    Milliseconds,     ///< times without a unit are read as ms, by their size (example)
    IntervalSplits,   ///< the times do not rise: each from the gate before (example)
    CumulativeSplits, ///< the times rise: each from the start
    SplitRows,        ///< several rows make one run
    DayMonth,         ///< a day beyond 12 shows the order (example)
    MonthDay,
};
struct Remark {
    Told told;
    std::string example;

    bool operator==(const Remark&) const = default;
};

struct Proposal {
    Mapping mapping;
    std::vector<Remark> remarks;
};

/// In English, with what to do; for people without the interface.
[[nodiscard]] std::string describe(const Question& question, const Table& table);
[[nodiscard]] std::string describe(const Remark& remark);

[[nodiscard]] Proposal propose(const Table& table, Kind kind);

/// The mapping with one column changed by the user (another column of that meaning is ignored then, but splits may be
/// many), and what follows from it: units, form, and a mark or order that now is open. Remarks: what was told anew.
[[nodiscard]] Proposal withMeaning(const Table& table, Mapping mapping, std::size_t column,
                                   const ColumnMeaning& meaning);

/// After an answer (decimal mark, distances of gates): what then follows from the numbers, units of times and the form.
[[nodiscard]] Proposal answered(const Table& table, Mapping mapping);

/// The kept mapping for this table: what its own numbers say for certain (decimal mark, order of dates) comes first.
/// InvalidInput where the mapping has another number of columns.
[[nodiscard]] Expected<Mapping> remembered(const Table& table, Mapping kept);

/// What must be answered before `readRuns` or `readSets`; empty where nothing is open.
[[nodiscard]] std::vector<Question> questions(const Table& table, const Mapping& mapping);

/// One line of JSON. `parseMapping` fails with InvalidInput; the place names the key.
[[nodiscard]] std::string mappingText(const Mapping& mapping);
[[nodiscard]] Expected<Mapping> parseMapping(std::string_view text);

/// A lift that the caller knows.
struct KnownLift {
    std::string key;  ///< "half-squat"
    std::string name; ///< "Half squat"
};
/// The file's words for lifts, in order of their first row, each with the key of the lift of exactly that name or key
/// (case and marks do not matter), or the one in `mapping.lifts`; an empty key where it is not known.
[[nodiscard]] std::vector<std::pair<std::string, std::string>> liftWords(const Table& table, const Mapping& mapping,
                                                                         const std::vector<KnownLift>& lifts);

} // namespace fleetrung::importing
