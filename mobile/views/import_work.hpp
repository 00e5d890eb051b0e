// What an import does away from the interface: reading the file, looking at its rows as they are mapped now, and
// writing them. Runs on the thread of the logbook.
#pragma once

#include <atomic>
#include <memory>

#include "mobile/logbook/import.hpp"
#include "mobile/views/file_hand.hpp"

namespace fleetrung::views
{

/// Seen from both threads: how far it is, and whether it is still wanted.
struct ImportProgress {
    std::atomic<int> done = 0, all = 0;
    std::atomic<bool> stopped = false;
};

struct ImportJob {
    std::shared_ptr<const importing::Table> table;
    importing::Mapping mapping;
    bool fresh = false;         ///< nothing was chosen yet: `kept`, else a proposal
    std::string kept;           ///< JSON text of a remembered mapping; empty: none
    logbook::NameChoices names; ///< chosen by the user; others are matched
    std::string current;        ///< identifier of the athlete shown: rows without a name are theirs
    store::Moment now;
    std::shared_ptr<ImportProgress> progress = std::make_shared<ImportProgress>();
    int serial = 0; ///< a later job makes the answer of an earlier one void
};

/// One row as it will be read.
struct ImportRow {
    std::string athlete;
    std::string what; ///< of sets: the lift's word
    CivilDate day{};
    std::optional<int> clock; ///< s of the day
    double distance = 0, time = 0, loadKg = 0;
    int repetitions = 0;
    std::vector<importing::SplitTime> splits;
};

struct ImportSeen {
    importing::Mapping mapping;
    bool remembered = false;
    std::vector<importing::Remark> remarks;
    std::vector<importing::Question> questions; ///< the rest stays empty while any is open
    std::vector<std::pair<std::string, logbook::NameChoice>> names;
    std::vector<std::pair<std::string, std::string>> lifts; ///< the file's word, lift key
    std::vector<std::pair<std::string, std::string>> squad; ///< identifier, name
    std::vector<ImportRow> first;
    std::vector<importing::BadRow> bad;
    logbook::ImportCount count; ///< of a dry run, or of what was written
};

[[nodiscard]] Expected<std::shared_ptr<const importing::Table>> openImport(const FileHand& files, const QString& name);
/// Nothing is written where `write` is false.
[[nodiscard]] Expected<ImportSeen> runImport(logbook::Logbook& logbook, const ImportJob& job, bool write);

/// The lifts that words of a file can be mapped to, "free" among them.
[[nodiscard]] std::vector<importing::KnownLift> importLifts();

} // namespace fleetrung::views
