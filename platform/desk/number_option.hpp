// A number given as an option: read without any locale, within its limits.
#pragma once

#include <optional>
#include <string>

#include "platform/desk/failure.hpp"

namespace fleetrung::desk
{

/// Nothing where the option was not given. `unit` is a word: "metres".
[[nodiscard]] Result<std::optional<double>> numberIn(const std::optional<std::string>& text, const char* option,
                                                     double least, double greatest, const char* unit);

} // namespace fleetrung::desk
