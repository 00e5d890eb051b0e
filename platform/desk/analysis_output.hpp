// One analysed set as JSON for programs and as a table for people.
#pragma once

#include <optional>
#include <string>

#include "engine/base/json.hpp"
#include "engine/reps/analyse.hpp"

namespace fleetrung::desk
{

/// What is known of the set beside its motion.
struct SetFacts {
    const reps::Lift* lift;       ///< never null
    std::optional<double> loadKg; ///< kg
};

/// Keys carry their units; "uncertainty" holds the standard uncertainty of a metric under the metric's own key. What a
/// lift does not have (the eccentric phase of a dead stop) is null.
[[nodiscard]] Json analysisJson(const reps::SetAnalysis& analysis, const SetFacts& facts);

/// Milliseconds and centimetres, with standard uncertainties.
[[nodiscard]] std::string analysisText(const reps::SetAnalysis& analysis, const SetFacts& facts);

} // namespace fleetrung::desk
