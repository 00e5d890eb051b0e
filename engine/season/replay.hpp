// A day's decisions can be taken again, years later, from what was kept with them: the inputs by value, and the ladders
// and rules they were taken with.
#pragma once

#include <span>
#include <string>
#include <vector>

#include "engine/season/decision.hpp"

namespace fleetrung::season
{

/// Everything that decideDay() looks at except the plan, which follows from it: setup, states, evidence, log, wellness.
/// The same input gives the same text.
[[nodiscard]] Json dayInputJson(const DayInput& input);
/// Plans anew. Fails with InvalidInput (place: the key path) or as replanSeason() does.
[[nodiscard]] Expected<DayInput> dayInputFromJson(const Json& json, const SeasonData& data = standardSeasonData());

/// Name of an input: hash of its text.
[[nodiscard]] Identifier inputId(const Json& dayInput);

/// The texts of ladders, rules and cautions as one document, and back: decisions are re-derived with the numbers they
/// were taken with. Without the athlete's own ladders: those stand in the setup.
[[nodiscard]] Json seasonDataJson();
[[nodiscard]] Expected<SeasonData> seasonDataFromJson(const Json& json);

/// One decision that comes out differently now.
struct Difference {
    std::string ladder;
    std::string field; ///< "rule", "to", "evidence[2].value", "missing"
    std::string stored;
    std::string derived;
};

/// Takes the day's decisions again and compares all but their names. `stored` are the decisions of that day made from
/// this input; none of them differs where the result is empty.
[[nodiscard]] Expected<std::vector<Difference>> rederive(const Json& dayInput, std::span<const Decision> stored,
                                                         const SeasonData& data = standardSeasonData());

} // namespace fleetrung::season
