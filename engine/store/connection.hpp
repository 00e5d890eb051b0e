// One SQLite file through SQLiteCpp. This is the adapter in which its exceptions end: nothing below `guarded` throws
// past it.
#pragma once

#include <functional>
#include <memory>
#include <string>
#include <type_traits>
#include <unordered_map>

#include <SQLiteCpp/SQLiteCpp.h>

#include "engine/base/error.hpp"

namespace fleetrung::store
{

/// What SQLite said, in our codes and with what to do.
[[nodiscard]] Error asError(const SQLite::Exception& thrown, const std::string& place);

/// Runs `work`, which gives an Expected and may throw what SQLiteCpp throws.
template <class Work> [[nodiscard]] auto guarded(const std::string& place, Work&& work) -> std::invoke_result_t<Work>
{
    try {
        return work();
    } catch (const SQLite::Exception& thrown) {
        return tl::unexpected(asError(thrown, place));
    } catch (const std::exception& thrown) {
        return fail(Code::StoreFailed, place, thrown.what());
    }
}

/// A statement borrowed from the cache; given back reset, so that no read stays open.
class Borrowed
{
public:
    explicit Borrowed(SQLite::Statement& statement) : statement_(statement) {}
    Borrowed(const Borrowed&) = delete;
    Borrowed& operator=(const Borrowed&) = delete;
    ~Borrowed()
    {
        statement_.tryReset();
        statement_.clearBindings();
    }

    SQLite::Statement* operator->() { return &statement_; }
    SQLite::Statement& operator*() { return statement_; }

private:
    SQLite::Statement& statement_;
};

enum class Access { ReadOnly, ReadWrite };

class Connection
{
public:
    /// Opens or makes the file, and no more: nothing is written yet, nor when it is closed.
    Connection(const std::string& path, Access access);

    /// After the file was found good: write-ahead log, full synchronisation, foreign keys.
    void settle();

    [[nodiscard]] Borrowed prepared(const std::string& sql);
    [[nodiscard]] std::int64_t number(const std::string& sql); ///< the first column of the first row
    void run(const std::string& sql) { database_.exec(sql); }
    [[nodiscard]] const std::string& path() const { return path_; }
    [[nodiscard]] bool writable() const { return access_ == Access::ReadWrite; }

private:
    void checkpointOnClose(bool on);

    std::string path_;
    Access access_;
    SQLite::Database database_;
    std::unordered_map<std::string, std::unique_ptr<SQLite::Statement>> statements_;
};

/// BEGIN IMMEDIATE ... COMMIT around `work`; ROLLBACK where it fails or throws.
[[nodiscard]] Expected<void> transact(Connection& connection, const std::function<Expected<void>()>& work);

} // namespace fleetrung::store
