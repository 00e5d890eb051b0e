// Files out: a file is either written whole or not there.
#pragma once

#include <string>
#include <string_view>

#include "platform/desk/failure.hpp"

namespace fleetrung::desk
{

/// Writes beside the place first and renames: a full disk leaves an older file as it was.
[[nodiscard]] Result<void> writeFile(const std::string& path, std::string_view bytes);

/// Makes the folder and those above it where they are missing.
[[nodiscard]] Result<void> makeFolder(const std::string& path);

} // namespace fleetrung::desk
