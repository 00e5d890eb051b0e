// A fitted sprint as JSON for programs and as a table for people.
#pragma once

#include <optional>
#include <string>

#include "engine/base/json.hpp"
#include "engine/sprint/force_velocity.hpp"
#include "engine/sprint/splits.hpp"

namespace fleetrung::desk
{

struct SprintResult {
    sprint::SprintFit fit;
    std::optional<sprint::ForceVelocity> profile; ///< where mass and stature were given
};

/// What was not asked for or cannot be known is null.
[[nodiscard]] Json sprintJson(const SprintResult& result);
[[nodiscard]] std::string sprintText(const SprintResult& result);

} // namespace fleetrung::desk
