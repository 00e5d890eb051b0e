// Runs and sets that engine/importing read from a file, into the logbook: who they are, what is there already, and one
// transaction for all of it.
#pragma once

#include <map>
#include <string>
#include <vector>

#include "engine/importing/sets.hpp"
#include "mobile/logbook/logbook.hpp"

namespace fleetrung::logbook
{

/// What becomes of the rows of one name in the file.
struct NameChoice {
    enum Kind { Skip, Match, Add };

    Kind kind = Skip;
    Identifier athlete{}; ///< of Match

    bool operator==(const NameChoice&) const = default;
};
/// By the file's name, or by the identifier's text where the file has no name; an empty name is that of rows without
/// one.
using NameChoices = std::map<std::string, NameChoice>;

/// The names of the file in order of their first row, each matched where one athlete of the squad is called so (case
/// does not matter) or has that identifier. `kept`: the file's name to an identifier, from a remembered mapping.
[[nodiscard]] std::vector<std::pair<std::string, NameChoice>>
matchNames(const std::vector<std::string>& names, const std::vector<store::Athlete>& squad,
           const std::map<std::string, std::string>& kept = {});
[[nodiscard]] std::vector<std::string> namesIn(const std::vector<importing::ReadRun>& runs);
[[nodiscard]] std::vector<std::string> namesIn(const std::vector<importing::ReadSet>& sets);

/// Everything that one import wrote: what its undo takes back.
struct ImportReceipt {
    std::vector<Identifier> athletes, sessions, sets, sprints;

    [[nodiscard]] bool empty() const { return sets.empty() && sprints.empty(); }
};

struct ImportCount {
    int added = 0;
    int duplicates = 0; ///< in the log already, or twice in the file
    int skipped = 0;    ///< of names or lifts that were to be left out
    ImportReceipt receipt;
};

struct ImportPlan {
    NameChoices names;
    std::map<std::string, std::string> lifts; ///< of sets: the file's word -> lift key; empty: left out
    std::function<Moment(CivilDate day, int second)> momentOf; ///< local time of the day as an instant
    std::function<bool(int done, int all)> progress;           ///< false cancels; may be empty
    bool dryRun = false;                                       ///< counts and writes nothing
};

/// A run is there already where one of the same athlete, day, distance, time and splits is (to the millisecond and the
/// centimetre); of several that are alike as many are duplicates as the log holds. Twice in the file: the same clock
/// time and number as well. All of it or nothing: Cancelled and every failure leave the log as it was.
[[nodiscard]] Expected<ImportCount> importRuns(Logbook& logbook, const std::vector<importing::ReadRun>& runs,
                                               const ImportPlan& plan);
/// Likewise by athlete, day, lift, side, load and repetitions. Sets that are alike in the file are told apart by their
/// order, unless clock time or number say that they are the same. A session of the day is used or made.
[[nodiscard]] Expected<ImportCount> importSets(Logbook& logbook, const std::vector<importing::ReadSet>& sets,
                                               const ImportPlan& plan);

/// Takes back all rows of an import, in one transaction; sessions and athletes only where nothing else was put into
/// them since.
[[nodiscard]] Expected<void> undoImport(Logbook& logbook, const ImportReceipt& receipt);

} // namespace fleetrung::logbook
