// The jumps of a recording as JSON for programs and as a table for people.
#pragma once

#include <string>

#include "engine/base/json.hpp"
#include "engine/jumps/analyse.hpp"

namespace fleetrung::desk
{

/// What a jump does not have (the contact of a jump from standing, the flight without a second landing) is null;
/// "uncertainty" holds the standard uncertainty under the value's own key.
[[nodiscard]] Json jumpsJson(const jumps::JumpAnalysis& analysis, bool gravityGiven);

/// Milliseconds and centimetres, with standard uncertainties.
[[nodiscard]] std::string jumpsText(const jumps::JumpAnalysis& analysis, bool gravityGiven);

} // namespace fleetrung::desk
