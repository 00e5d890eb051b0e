// Split times from a file: a header row with `distance_m` and `time_s` in any order, other columns ignored; comma,
// semicolon (with decimal comma) or tab.
#pragma once

#include <string_view>
#include <vector>

#include "engine/base/error.hpp"
#include "engine/sprint/splits.hpp"

namespace fleetrung::sprint
{

/// Fails with InvalidInput; the place is "line N, column C".
[[nodiscard]] Expected<std::vector<Split>> importSplits(std::string_view bytes);

} // namespace fleetrung::sprint
