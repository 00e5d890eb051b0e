// The athlete's data on disk: one SQLite file for the rows of records.hpp, a second one for raw captures.
//
// Nothing here reads a clock or draws a random number: ids and times come in. One object belongs to one thread. One
// writer at a time (a second waits 5 s, then StoreBusy); readers open their own read-only store and are never blocked
// by it. What a call announced with success is on the disk (WAL, synchronous=FULL). A file that cannot be read is never
// deleted, renamed or made anew: the error says what it is, and the file stays as it was.
#pragma once

#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "engine/base/error.hpp"
#include "engine/store/capture_codec.hpp"
#include "engine/store/records.hpp"
#include "engine/store/squad_rows.hpp"

namespace fleetrung::store
{

struct StorePaths {
    std::string rows;     ///< "athletes.fleetrung"
    std::string captures; ///< "captures.fleetrung"
};

/// Which rows to read; what is not given does not narrow. Fields that a table does not have are refused
/// (InvalidArgument). Rows below a deleted row (the sets of a deleted session) are left out with it.
struct Filter {
    std::optional<Identifier> athlete = {};
    std::optional<Identifier> season = {};
    std::optional<Identifier> session = {};
    std::optional<Identifier> set = {};
    std::optional<Identifier> analysis = {};
    std::optional<std::string> ladder = {};
    std::optional<CivilDate> from = {}; ///< training day, inclusive
    std::optional<CivilDate> to = {};   ///< training day, inclusive
    bool acceptedOnly = false;          ///< repetitions and analyses: those of accepted analyses
    bool deletedToo = false;            ///< also rows that carry the mark themselves
};

/// How much an athlete has trained: counted in the file, so that a list of a large squad costs no more than its lines.
struct Activity {
    Identifier athlete;
    std::int64_t sessions = 0;
    CivilDate lastDay{};
};

/// A recording that was begun and never put.
struct UnfinishedRecording {
    Identifier recording;
    std::string facts, clockFit; ///< empty where they were not given

    bool operator==(const UnfinishedRecording&) const = default;
};

/// Which write to a field came last.
struct Stamp {
    std::int64_t counter = 0;
    Identifier device;

    bool operator==(const Stamp&) const = default;
};

class Store
{
public:
    /// Opens or makes both files and brings them to the newest version, after a backup beside them
    /// ("NAME.version-N.backup"). StoreTooNew and StoreCorrupt leave the files untouched; StoreFailed for no folder, no
    /// permission, a full disk.
    [[nodiscard]] static Expected<Store> open(const StorePaths& paths, const Identifier& device);

    /// For readers. Files must be there and of this version; every write fails with Refused.
    [[nodiscard]] static Expected<Store> openReadOnly(const StorePaths& paths);

    Store(Store&&) noexcept;
    Store& operator=(Store&&) noexcept;
    ~Store();

    /// All of it or nothing: where `work` fails, or the process dies, no row of it stays. Calls inside a call join it.
    [[nodiscard]] Expected<void> inTransaction(const std::function<Expected<void>()>& work);

    // R is one of the records of records.hpp (DecisionOutline: `list` only).

    /// True where the row is new; false where a row of that id is there already (also a deleted one): then nothing
    /// changes.
    template <class R> [[nodiscard]] Expected<bool> insert(R row);

    /// Writes the fields that differ from what is stored, and stamps each with the new counter and this device.
    template <class R> [[nodiscard]] Expected<void> update(const R& row);

    /// Sets or takes off the mark; also stamped.
    template <class R> [[nodiscard]] Expected<void> setDeleted(const Identifier& id, bool deleted);

    /// NotFound where there is none; a deleted row is given, with its mark.
    template <class R> [[nodiscard]] Expected<R> find(const Identifier& id) const;

    /// In the order in which things happened; rows of one instant by counter and id, so that it is always the same.
    template <class R> [[nodiscard]] Expected<std::vector<R>> list(const Filter& filter = {}) const;

    /// Last writer of a field (a column name of the schema); where it was never changed, the making of the row.
    template <class R> [[nodiscard]] Expected<Stamp> stamp(const Identifier& id, const std::string& field) const;

    /// One line an athlete that has sessions.
    [[nodiscard]] Expected<std::vector<Activity>> activity() const;

    /// What a squad's day is made from (squad_rows.hpp).
    [[nodiscard]] Expected<SquadRows> squadRows(CivilDate day) const;
    /// Repetitions of the set's accepted analysis; nothing where the user edited any: reading the set says more.
    [[nodiscard]] Expected<std::optional<int>> countedRepetitions(const Identifier& set) const;
    /// The heaviest work or maintenance set of the last session on that rung from `from` to the day before `before`.
    [[nodiscard]] Expected<std::optional<SetLifted>> lastWork(const Identifier& athlete, CivilDate from,
                                                              CivilDate before, const std::string& ladder,
                                                              const std::string& rung) const;

    /// Takes in the counter of a received row: later writes here get a larger one.
    [[nodiscard]] Expected<void> observeCounter(std::int64_t received);

    /// Writes samples to the captures file and gives their content hash; the same samples a second time add nothing.
    [[nodiscard]] Expected<std::string> putSamples(const CaptureSamples& samples, const CountScales& scales = {});
    /// NotFound where there is none, StoreCorrupt where the bytes no longer have the hash they are kept under.
    [[nodiscard]] Expected<CaptureSamples> samples(const std::string& contentHash) const;

    /// A recording under way: pieces are on the disk as they come (once a second), and go when the whole was put.
    /// `facts`: the caller's text of what it needs to finish it. What an earlier recording without pieces left is
    /// forgotten.
    [[nodiscard]] Expected<void> beginRecording(const Identifier& recording, const std::string& facts);
    [[nodiscard]] Expected<void> keepClockFit(const Identifier& recording, const std::string& clockFit);
    [[nodiscard]] Expected<void> putPiece(const Identifier& recording, int ordinal, const CaptureSamples& samples);
    [[nodiscard]] Expected<std::vector<CaptureSamples>> pieces(const Identifier& recording) const;
    /// Those with pieces.
    [[nodiscard]] Expected<std::vector<UnfinishedRecording>> unfinishedRecordings() const;
    [[nodiscard]] Expected<void> dropPieces(const Identifier& recording);

    /// Everything that is wrong with the files, in words; empty where all is well. Reads every page and every capture.
    [[nodiscard]] Expected<std::vector<std::string>> verify() const;

private:
    struct State;
    explicit Store(std::unique_ptr<State> state);
    std::unique_ptr<State> state_;
};

/// The newest version of each file that this program writes.
[[nodiscard]] int newestRowsVersion();
[[nodiscard]] int newestCapturesVersion();

} // namespace fleetrung::store
