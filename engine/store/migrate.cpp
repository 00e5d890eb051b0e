#include "engine/store/migrate.hpp"

#include <filesystem>
#include <fstream>

#include "engine/base/numbers.hpp"

namespace fleetrung::store
{
namespace
{

// Source: the database file format of SQLite, "The Database Header" (sqlite.org/fileformat2.html, section 1.3).
constexpr std::string_view magic{"SQLite format 3\0", 16};
constexpr std::size_t headerSize = 100;
constexpr std::size_t userVersionAt = 60;
constexpr std::size_t applicationIdAt = 68;

std::int32_t bigEndian(std::string_view bytes, std::size_t at)
{
    std::uint32_t value = 0;
    for (std::size_t i = at; i < at + 4; ++i)
        value = value << 8U | static_cast<std::uint8_t>(bytes[i]);
    return static_cast<std::int32_t>(value);
}

Expected<void> checkVersion(std::int64_t version, std::int64_t applicationId, const std::string& path,
                            const Schema& schema)
{
    if (applicationId != schema.applicationId)
        return fail(Code::StoreCorrupt, path,
                    "is no Fleetrung " + std::string(schema.what) + " but another program's file; it was not touched");
    if (version > std::ssize(schema.steps))
        return fail(Code::StoreTooNew, path,
                    "was written by a later version of Fleetrung (form " + integerText(version) + ", this one knows " +
                        integerText(std::ssize(schema.steps)) + "); it was not touched: update this program");
    return {};
}

std::string freeBackupName(const std::string& path, std::int64_t version)
{
    const std::string stem = path + ".version-" + integerText(version);
    std::string name = stem + ".backup";
    for (int i = 2; std::filesystem::exists(name); ++i)
        name = stem + "-" + integerText(i) + ".backup";
    return name;
}

void backUp(Connection& connection, std::int64_t version)
{
    auto copy = connection.prepared("VACUUM INTO ?");
    copy->bind(1, freeBackupName(connection.path(), version));
    copy->exec();
}

Expected<void> takeStep(Connection& connection, const Schema& schema, std::int64_t from)
{
    return transact(connection, [&]() -> Expected<void> {
        if (connection.number("PRAGMA user_version") != from) // another program was faster
            return {};
        connection.run(std::string(schema.steps[static_cast<std::size_t>(from)]));
        connection.run("PRAGMA application_id = " + integerText(schema.applicationId));
        connection.run("PRAGMA user_version = " + integerText(from + 1));
        return {};
    });
}

} // namespace

Expected<void> checkHeader(const std::string& path, const Schema& schema)
{
    std::error_code ignored;
    const auto status = std::filesystem::status(path, ignored);
    if (!std::filesystem::exists(status))
        return {};
    if (!std::filesystem::is_regular_file(status))
        return fail(Code::StoreFailed, path, "is a folder or a device; give the name of a file");
    std::ifstream file(path, std::ios::binary);
    if (!file)
        return fail(Code::StoreFailed, path, "may not be read; change its permissions");
    std::string header(headerSize, '\0');
    file.read(header.data(), static_cast<std::streamsize>(header.size()));
    if (file.gcount() == 0)
        return {};
    if (file.gcount() < static_cast<std::streamsize>(headerSize) || !header.starts_with(magic))
        return fail(Code::StoreCorrupt, path,
                    "is no Fleetrung " + std::string(schema.what) +
                        ", or damaged; it was not touched: restore a backup "
                        "under another name");
    if (bigEndian(header, userVersionAt) == 0 && bigEndian(header, applicationIdAt) == 0)
        return {}; // nothing was written yet, or all of it is still in the log: `migrate` looks again through SQLite
    return checkVersion(bigEndian(header, userVersionAt), bigEndian(header, applicationIdAt), path, schema);
}

Expected<void> migrate(Connection& connection, const Schema& schema)
{
    return guarded(connection.path(), [&]() -> Expected<void> {
        const auto found = connection.number("PRAGMA user_version");
        const bool empty = connection.number("SELECT count(*) FROM sqlite_schema") == 0;
        if (!empty || found != 0)
            if (auto ours = checkVersion(found, connection.number("PRAGMA application_id"), connection.path(), schema);
                !ours)
                return ours;
        const auto newest = std::ssize(schema.steps);
        if (!connection.writable() && empty && found == 0)
            return fail(Code::StoreCorrupt, connection.path(),
                        "is empty; give a " + std::string(schema.what) + " that was written by the program");
        if (!connection.writable() && found != newest)
            return fail(Code::StoreFailed, connection.path(),
                        "is of an older form; open it once for writing to renew it");
        if (!empty && found < newest)
            backUp(connection, found);
        for (auto version = found; version < newest; ++version)
            if (auto done = takeStep(connection, schema, version); !done)
                return done;
        return {};
    });
}

Expected<std::unique_ptr<Connection>> openFile(const std::string& path, Access access, const Schema& schema)
{
    if (auto good = checkHeader(path, schema); !good)
        return tl::unexpected(good.error());
    return guarded(path, [&]() -> Expected<std::unique_ptr<Connection>> {
        auto connection = std::make_unique<Connection>(path, access);
        if (auto done = migrate(*connection, schema); !done)
            return tl::unexpected(done.error());
        connection->settle();
        return connection;
    });
}

} // namespace fleetrung::store
