#include "engine/store/connection.hpp"

#include <sqlite3.h>

namespace fleetrung::store
{
namespace
{

constexpr int busyMilliseconds = 5000;

int flags(Access access)
{
    return access == Access::ReadOnly ? SQLite::OPEN_READONLY : SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE;
}

} // namespace

Error asError(const SQLite::Exception& thrown, const std::string& place)
{
    const std::string said = std::string(" (") + thrown.what() + ")";
    switch (thrown.getErrorCode()) {
    case SQLITE_BUSY:
    case SQLITE_LOCKED:
        return {Code::StoreBusy, place, "another program is writing to the store; try again" + said};
    case SQLITE_CORRUPT:
    case SQLITE_NOTADB:
        return {
            Code::StoreCorrupt, place,
            "the file is damaged or no store; it was left as it is: keep it, and restore a backup under another name" +
                said};
    case SQLITE_CANTOPEN:
        return {Code::StoreFailed, place,
                "cannot be opened; check that its folder exists and may be written to" + said};
    case SQLITE_READONLY:
    case SQLITE_PERM:
        return {Code::StoreFailed, place, "may not be written to; change its permissions" + said};
    case SQLITE_FULL:
        return {Code::StoreFailed, place,
                "the disk is full; nothing of this was kept, free some space and try again" + said};
    case SQLITE_CONSTRAINT:
        return {Code::InvalidArgument, place,
                "the row does not fit the store: a row it belongs to is missing, or a value is "
                "outside its limits" +
                    said};
    default:
        return {Code::StoreFailed, place, "the store could not do this" + said};
    }
}

Connection::Connection(const std::string& path, Access access)
    : path_(path), access_(access), database_(path, flags(access), busyMilliseconds)
{
    checkpointOnClose(false); // a file that is refused later keeps its bytes
    run("PRAGMA trusted_schema = OFF");
    run("PRAGMA cell_size_check = ON");
}

void Connection::settle()
{
    if (access_ == Access::ReadWrite) {
        checkpointOnClose(true);
        run("PRAGMA journal_mode = WAL");
        run("PRAGMA synchronous = FULL");
    }
    run("PRAGMA foreign_keys = ON");
}

void Connection::checkpointOnClose(bool on)
{
    sqlite3_db_config(database_.getHandle(), SQLITE_DBCONFIG_NO_CKPT_ON_CLOSE, on ? 0 : 1, nullptr);
}

Borrowed Connection::prepared(const std::string& sql)
{
    auto& statement = statements_[sql];
    if (!statement)
        statement = std::make_unique<SQLite::Statement>(database_, sql);
    return Borrowed(*statement);
}

std::int64_t Connection::number(const std::string& sql)
{
    SQLite::Statement statement(database_, sql);
    return statement.executeStep() ? statement.getColumn(0).getInt64() : 0;
}

Expected<void> transact(Connection& connection, const std::function<Expected<void>()>& work)
{
    return guarded(connection.path(), [&]() -> Expected<void> {
        connection.run("BEGIN IMMEDIATE");
        struct Undo {
            Connection& connection;
            bool kept = false;
            ~Undo()
            {
                if (kept)
                    return;
                try {
                    connection.run("ROLLBACK");
                } catch (const SQLite::Exception&) { // SQLite has rolled back by itself (disk full)
                }
            }
        } undo{connection};
        if (auto done = work(); !done)
            return done;
        connection.run("COMMIT");
        undo.kept = true;
        return {};
    });
}

} // namespace fleetrung::store
