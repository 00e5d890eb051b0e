// One analysed set as JSON for programs and as a table for people.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "engine/base/json.hpp"
#include "engine/reps/analyse.hpp"
#include "engine/reps/force.hpp"

namespace fleetrung::desk
{

/// What is known of the set beside its motion.
struct SetFacts {
    const reps::Lift* lift;           ///< never null
    std::optional<double> loadKg;     ///< kg
    std::optional<double> bodyMassKg; ///< kg
};

/// Force and power of each repetition; fails, saying what to give, where no load is known or body mass is missing.
[[nodiscard]] Expected<std::vector<reps::ForceMetrics>> forcesOf(const reps::SetAnalysis& analysis,
                                                                 const SetFacts& facts);

/// Keys carry their units; "uncertainty" holds the standard uncertainty of a metric under the metric's own key. What a
/// lift does not have (the eccentric phase of a dead stop), what the rate does not allow, and force and power where the
/// moved mass is not known, is null.
[[nodiscard]] Json analysisJson(const reps::SetAnalysis& analysis, const SetFacts& facts);

/// What was found wrong with the recording and which repetitions are refused, one sentence each; empty for a clean one.
[[nodiscard]] std::vector<std::string> analysisNotes(const reps::SetAnalysis& analysis);

/// Milliseconds and centimetres, with standard uncertainties; `all` adds the tables of analysis_tables.cpp.
[[nodiscard]] std::string analysisText(const reps::SetAnalysis& analysis, const SetFacts& facts, bool all);

/// How soon, how the bar was turned round, and force and power where the moved mass is known; what is missing, said.
[[nodiscard]] std::string furtherTables(const reps::SetAnalysis& analysis, const SetFacts& facts);

/// "0.512 ±0.004" in the given unit (0.01 = hundredths).
[[nodiscard]] std::string withUncertainty(const reps::Measured& metric, double unit, int decimals);

} // namespace fleetrung::desk
