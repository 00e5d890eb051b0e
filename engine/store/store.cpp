#include "engine/store/store.hpp"

#include <cmath>

#include "engine/base/numbers.hpp"
#include "engine/store/migrate.hpp"
#include "engine/store/read_rows.hpp"
#include "engine/store/store_state.hpp"

namespace fleetrung::store
{
namespace
{

constexpr std::size_t rowColumns = 4; // id, origin, counter, deleted

template <class R> std::vector<Cell> cellsOf(const R& row)
{
    CellWriter visit;
    visitRow(row, visit);
    return std::move(visit.cells);
}

template <class R> std::string insertText()
{
    std::string text = "INSERT INTO " + std::string(Table<R>::name) + " (";
    std::string marks;
    for (const auto& column : columnsOf<R>()) {
        text.append(marks.empty() ? "" : ", ").append(column);
        marks.append(marks.empty() ? "?" : ", ?");
    }
    return text + ") VALUES (" + marks + ") ON CONFLICT (id) DO NOTHING";
}

/// Not-a-number and infinity are no measurements: SQLite would quietly keep the first as "nothing".
template <class R> Expected<void> checkFinite(const std::vector<Cell>& cells)
{
    for (std::size_t i = 0; i < cells.size(); ++i)
        if (const auto* value = std::get_if<double>(&cells[i]); value != nullptr && !std::isfinite(*value))
            return fail(Code::InvalidArgument, std::string(Table<R>::name) + "." + columnsOf<R>()[i],
                        "is no finite number; leave it empty where it was not measured");
    return {};
}

/// Conditions and their values, in the order in which they are bound.
struct Conditions {
    std::string text;
    std::vector<Cell> values;
    std::optional<std::string> refused; ///< a filter's field that the table does not have

    void add(const std::string& condition) { text.append(text.empty() ? " WHERE " : " AND ").append(condition); }

    template <class Value>
    void compare(std::string_view column, const char* what, const char* how, const std::optional<Value>& value)
    {
        if (!value)
            return;
        if (column.empty()) {
            refused = what;
            return;
        }
        add(std::string(column).append(how));
        if constexpr (std::is_same_v<Value, CivilDate>)
            values.emplace_back(dateText(*value));
        else
            values.emplace_back(*value);
    }
};

template <class R> Conditions conditionsOf(const Filter& filter)
{
    constexpr Reach reach = Table<R>::reach;
    Conditions conditions;
    conditions.compare(reach.athlete, "athlete", " = ?", filter.athlete);
    conditions.compare(reach.season, "season", " = ?", filter.season);
    conditions.compare(reach.session, "session", " = ?", filter.session);
    conditions.compare(reach.set, "set", " = ?", filter.set);
    conditions.compare(reach.analysis, "analysis", " = ?", filter.analysis);
    conditions.compare(reach.ladder, "ladder", " = ?", filter.ladder);
    conditions.compare(reach.day, "from", " >= ?", filter.from);
    conditions.compare(reach.day, "to", " <= ?", filter.to);
    if (!reach.alive.empty())
        conditions.add(std::string(reach.alive));
    if (filter.acceptedOnly && !reach.accepted.empty())
        conditions.add(std::string(reach.accepted));
    if (!filter.deletedToo)
        conditions.add(std::string(Table<R>::name) + ".deleted = 0");
    return conditions;
}

template <class R> std::string orderText()
{
    const std::string name(Table<R>::name);
    std::string text = " ORDER BY ";
    if (!Table<R>::reach.order.empty())
        text.append(Table<R>::reach.order).append(", ");
    return text + name + ".counter, " + name + ".id";
}

template <class R> Expected<R> findRow(Connection& rows, const Identifier& id)
{
    static const std::string text = selectText<R>() + " WHERE id = ?";
    auto read = rows.prepared(text);
    bindCell(*read, 1, id);
    if (!read->executeStep())
        return fail(Code::NotFound, std::string(Table<R>::name), "there is no row " + identifierText(id));
    return readRow<R>(*read);
}

void writeField(Connection& rows, std::string_view table, const std::string& column, const Identifier& id,
                const Cell& value)
{
    auto write = rows.prepared("UPDATE " + std::string(table) + " SET " + column + " = ? WHERE id = ?");
    bindCell(*write, 1, value);
    bindCell(*write, 2, id);
    write->exec();
}

void stampField(Connection& rows, const Identifier& id, const std::string& field, const Stamp& stamp)
{
    auto write = rows.prepared("INSERT INTO field_stamp (row_id, field, counter, device) VALUES (?, ?, ?, ?)"
                               " ON CONFLICT DO UPDATE SET counter = excluded.counter, device = excluded.device");
    bindCell(*write, 1, id);
    write->bind(2, field);
    write->bind(3, stamp.counter);
    bindCell(*write, 4, stamp.device);
    write->exec();
}

} // namespace

Store::Store(std::unique_ptr<State> state) : state_(std::move(state)) {}
Store::Store(Store&&) noexcept = default;
Store& Store::operator=(Store&&) noexcept = default;
Store::~Store() = default;

Expected<Store> Store::open(const StorePaths& paths, const Identifier& device)
{
    auto state = std::make_unique<State>();
    state->device = device;
    auto rows = openFile(paths.rows, Access::ReadWrite, rowsSchema());
    if (!rows)
        return tl::unexpected(rows.error());
    auto captures = openFile(paths.captures, Access::ReadWrite, capturesSchema());
    if (!captures)
        return tl::unexpected(captures.error());
    state->rows = std::move(*rows);
    state->captures = std::make_unique<CaptureFile>(std::move(*captures));
    return Store(std::move(state));
}

Expected<Store> Store::openReadOnly(const StorePaths& paths)
{
    auto state = std::make_unique<State>();
    auto rows = openFile(paths.rows, Access::ReadOnly, rowsSchema());
    if (!rows)
        return tl::unexpected(rows.error());
    auto captures = openFile(paths.captures, Access::ReadOnly, capturesSchema());
    if (!captures)
        return tl::unexpected(captures.error());
    state->rows = std::move(*rows);
    state->captures = std::make_unique<CaptureFile>(std::move(*captures));
    return Store(std::move(state));
}

Expected<void> Store::inTransaction(const std::function<Expected<void>()>& work)
{
    auto& state = *state_;
    if (!state.rows->writable())
        return fail(Code::Refused, state.rows->path(), "was opened for reading only");
    if (state.inside) {
        auto done = work();
        state.spoiled = state.spoiled || !done;
        return done;
    }
    state.inside = true;
    state.spoiled = false;
    state.counter = 0;
    auto done = transact(*state.rows, [&]() -> Expected<void> {
        auto inner = work();
        if (inner && state.spoiled)
            inner = fail(Code::StoreFailed, state.rows->path(),
                         "a write in this transaction failed; nothing of it was kept");
        if (inner)
            state.endCaptures("COMMIT");
        return inner;
    });
    state.inside = false;
    const auto undone = guarded(state.captures->connection().path(), [&]() -> Expected<void> {
        state.endCaptures("ROLLBACK"); // where it is still open: the work failed
        return {};
    });
    return done ? undone : done;
}

template <class R> Expected<bool> Store::insert(R row)
{
    auto& state = *state_;
    bool added = false;
    auto done = inTransaction([&] {
        return guarded(state.rows->path(), [&]() -> Expected<void> {
            row.origin = state.device;
            row.counter = state.counter == 0 ? 1 + state.rows->number("SELECT counter FROM lamport") : state.counter;
            const auto cells = cellsOf(row);
            if (auto finite = checkFinite<R>(cells); !finite)
                return finite;
            static const std::string text = insertText<R>();
            auto write = state.rows->prepared(text);
            for (std::size_t i = 0; i < cells.size(); ++i)
                bindCell(*write, static_cast<int>(i) + 1, cells[i]);
            added = write->exec() == 1;
            if (added)
                state.stampCounter(); // a row that was there already costs no counter
            return {};
        });
    });
    if (!done)
        return tl::unexpected(done.error());
    return added;
}

template <class R> Expected<void> Store::update(const R& row)
{
    auto& state = *state_;
    return inTransaction([&] {
        return guarded(state.rows->path(), [&]() -> Expected<void> {
            const auto stored = findRow<R>(*state.rows, row.id);
            if (!stored)
                return tl::unexpected(stored.error());
            const auto before = cellsOf(*stored);
            const auto after = cellsOf(row);
            if (auto finite = checkFinite<R>(after); !finite)
                return finite;
            const auto& columns = columnsOf<R>();
            for (std::size_t i = rowColumns; i < columns.size(); ++i) {
                if (before[i] == after[i])
                    continue;
                writeField(*state.rows, Table<R>::name, columns[i], row.id, after[i]);
                stampField(*state.rows, row.id, columns[i], {state.stampCounter(), state.device});
            }
            return {};
        });
    });
}

template <class R> Expected<void> Store::setDeleted(const Identifier& id, bool deleted)
{
    auto& state = *state_;
    return inTransaction([&] {
        return guarded(state.rows->path(), [&]() -> Expected<void> {
            const auto stored = findRow<R>(*state.rows, id);
            if (!stored)
                return tl::unexpected(stored.error());
            if (stored->deleted == deleted)
                return {};
            writeField(*state.rows, Table<R>::name, "deleted", id, std::int64_t{deleted ? 1 : 0});
            stampField(*state.rows, id, "deleted", {state.stampCounter(), state.device});
            return {};
        });
    });
}

template <class R> Expected<R> Store::find(const Identifier& id) const
{
    return guarded(state_->rows->path(), [&] { return findRow<R>(*state_->rows, id); });
}

template <class R> Expected<std::vector<R>> Store::list(const Filter& filter) const
{
    return guarded(state_->rows->path(), [&]() -> Expected<std::vector<R>> {
        const auto conditions = conditionsOf<R>(filter);
        if (conditions.refused)
            return fail(Code::InvalidArgument, std::string(Table<R>::name),
                        "cannot be filtered by " + *conditions.refused);
        static const std::string select = selectText<R>() + std::string(Table<R>::reach.joins);
        static const std::string order = orderText<R>();
        auto read = state_->rows->prepared(select + conditions.text + order);
        for (std::size_t i = 0; i < conditions.values.size(); ++i)
            bindCell(*read, static_cast<int>(i) + 1, conditions.values[i]);
        std::vector<R> found;
        while (read->executeStep())
            found.push_back(readRow<R>(*read));
        return found;
    });
}

template <class R> Expected<Stamp> Store::stamp(const Identifier& id, const std::string& field) const
{
    return guarded(state_->rows->path(), [&]() -> Expected<Stamp> {
        const auto row = findRow<R>(*state_->rows, id);
        if (!row)
            return tl::unexpected(row.error());
        auto read = state_->rows->prepared("SELECT counter, device FROM field_stamp WHERE row_id = ? AND field = ?");
        bindCell(*read, 1, id);
        read->bind(2, field);
        Stamp stamp{row->counter, row->origin};
        if (read->executeStep()) {
            RowReader reader(*read);
            reader("counter", stamp.counter);
            reader("device", stamp.device);
        }
        return stamp;
    });
}

Expected<std::vector<Activity>> Store::activity() const
{
    return guarded(state_->rows->path(), [&]() -> Expected<std::vector<Activity>> {
        auto read = state_->rows->prepared("SELECT athlete, count(*), max(begun_day) FROM session WHERE deleted = 0"
                                           " GROUP BY athlete ORDER BY athlete");
        std::vector<Activity> found;
        while (read->executeStep()) {
            auto& line = found.emplace_back();
            RowReader reader(*read);
            reader("athlete", line.athlete);
            reader("sessions", line.sessions);
            reader("last_day", line.lastDay);
        }
        return found;
    });
}

Expected<void> Store::observeCounter(std::int64_t received)
{
    auto& state = *state_;
    return inTransaction([&] {
        return guarded(state.rows->path(), [&]() -> Expected<void> {
            auto write = state.rows->prepared("UPDATE lamport SET counter = max(counter, ?)");
            write->bind(1, received);
            write->exec();
            state.counter = 0; // what follows in this transaction comes after what was received
            return {};
        });
    });
}

Expected<std::string> Store::putSamples(const CaptureSamples& samples, const CountScales& scales)
{
    return guarded(state_->captures->connection().path(), [&] {
        state_->joinCaptures();
        auto put = state_->captures->put(samples, scales);
        state_->spoiled = state_->spoiled || !put;
        return put;
    });
}

Expected<CaptureSamples> Store::samples(const std::string& contentHash) const
{
    return state_->captures->get(contentHash);
}

Expected<void> Store::putPiece(const Identifier& recording, int ordinal, const CaptureSamples& samples)
{
    return state_->captures->putPiece(recording, ordinal, samples);
}

Expected<std::vector<CaptureSamples>> Store::pieces(const Identifier& recording) const
{
    return state_->captures->pieces(recording);
}

Expected<void> Store::beginRecording(const Identifier& recording, const std::string& facts)
{
    return state_->captures->begin(recording, facts);
}

Expected<void> Store::keepClockFit(const Identifier& recording, const std::string& clockFit)
{
    return state_->captures->keepClockFit(recording, clockFit);
}

Expected<std::vector<UnfinishedRecording>> Store::unfinishedRecordings() const
{
    return state_->captures->unfinished();
}

Expected<void> Store::dropPieces(const Identifier& recording)
{
    return state_->captures->dropPieces(recording);
}

Identifier documentId(const Document& document)
{
    const auto kind = Texts<DocumentKind>::all.at(static_cast<std::size_t>(document.kind));
    const auto athlete = document.athlete ? identifierText(*document.athlete) : std::string();
    const auto day = document.day ? dateText(*document.day) : std::string();
    return hashIdentifier(std::array<std::string_view, 4>{kind, athlete, day, document.content.text});
}

int newestRowsVersion()
{
    return static_cast<int>(rowsSchema().steps.size());
}

int newestCapturesVersion()
{
    return static_cast<int>(capturesSchema().steps.size());
}

// The calls for each record, made here once.
#define FLEETRUNG_STORE_OF(R)                                                                                          \
    template Expected<bool> Store::insert(R);                                                                          \
    template Expected<void> Store::update(const R&);                                                                   \
    template Expected<void> Store::setDeleted<R>(const Identifier&, bool);                                             \
    template Expected<R> Store::find<R>(const Identifier&) const;                                                      \
    template Expected<std::vector<R>> Store::list<R>(const Filter&) const;                                             \
    template Expected<Stamp> Store::stamp<R>(const Identifier&, const std::string&) const;
FLEETRUNG_STORE_OF(Device)
FLEETRUNG_STORE_OF(Athlete)
FLEETRUNG_STORE_OF(Season)
FLEETRUNG_STORE_OF(Session)
FLEETRUNG_STORE_OF(LiftSet)
FLEETRUNG_STORE_OF(Capture)
FLEETRUNG_STORE_OF(Analysis)
FLEETRUNG_STORE_OF(Repetition)
FLEETRUNG_STORE_OF(EditEvent)
FLEETRUNG_STORE_OF(Sprint)
FLEETRUNG_STORE_OF(TrackWork)
FLEETRUNG_STORE_OF(Jump)
FLEETRUNG_STORE_OF(Wellness)
FLEETRUNG_STORE_OF(LostDay)
FLEETRUNG_STORE_OF(Decision)
FLEETRUNG_STORE_OF(Document)
FLEETRUNG_STORE_OF(Sensor)
FLEETRUNG_STORE_OF(SensorMap)
template Expected<std::vector<DecisionOutline>> Store::list<DecisionOutline>(const Filter&) const;
#undef FLEETRUNG_STORE_OF

} // namespace fleetrung::store
