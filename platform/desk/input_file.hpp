// A whole file into memory, with every way in which that can go wrong said in one sentence.
#pragma once

#include <cstdint>
#include <string>

#include "platform/desk/failure.hpp"

namespace fleetrung::desk
{

/// Larger files are refused unread: 256 MB are ten hours at 400 Hz.
inline constexpr std::uintmax_t largestFile = std::uintmax_t{256} * 1024 * 1024;

/// Refuses what is missing, a folder, or closed to this user, with what to do about it.
[[nodiscard]] Result<void> checkReadable(const std::string& path);

[[nodiscard]] Result<std::string> readFile(const std::string& path);

} // namespace fleetrung::desk
