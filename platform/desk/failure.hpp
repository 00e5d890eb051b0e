// How a command ends: exit code 0, or 1 for a failure and 2 for bad input with one sentence on the error stream.
#pragma once

#include <string>

#include <tl/expected.hpp>

#include "engine/base/error.hpp"

namespace fleetrung::desk
{

inline constexpr int failed = 1;
inline constexpr int badInput = 2;

struct Failure {
    int exitCode;
    std::string text;
};

template <class T> using Result = tl::expected<T, Failure>;

/// "recording.csv:line 12, column acc_x_mps2: ..."; the file alone where the error has no place in it.
[[nodiscard]] Failure inFile(const std::string& file, const Error& error);

/// Bad input outside any file: an option, a name.
[[nodiscard]] tl::unexpected<Failure> refuse(std::string text);

} // namespace fleetrung::desk
