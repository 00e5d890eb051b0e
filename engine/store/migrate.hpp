// Brings a file to the newest version of its schema, one numbered step after the other.
#pragma once

#include <span>
#include <string_view>

#include "engine/store/connection.hpp"

namespace fleetrung::store
{

/// One kind of file. Step i takes it from version i to i + 1; steps are only ever appended, and a test keeps a file of
/// each version that was in use.
struct Schema {
    std::int32_t applicationId; ///< in the file's header: whose file it is
    std::string_view what;      ///< "store", "captures file": for messages
    std::span<const std::string_view> steps;
};

/// athletes, sessions, ... (schema.cpp)
[[nodiscard]] const Schema& rowsSchema();
/// samples (schema.cpp)
[[nodiscard]] const Schema& capturesSchema();

/// Looks at the file's first bytes, before SQLite does: a folder, another program's file and a newer file are refused
/// without being touched. No file, or an empty one, is good.
[[nodiscard]] Expected<void> checkHeader(const std::string& path, const Schema& schema);

/// Each step is one transaction that also moves `user_version`. Before the first step of a file that holds something, a
/// backup is made by VACUUM INTO (a plain copy would miss what is still in the log).
[[nodiscard]] Expected<void> migrate(Connection& connection, const Schema& schema);

/// checkHeader, open, migrate (a reader instead refuses an older file), settle.
[[nodiscard]] Expected<std::unique_ptr<Connection>> openFile(const std::string& path, Access access,
                                                             const Schema& schema);

} // namespace fleetrung::store
