// One ladder out of a JSON object. Private to engine/season.
#pragma once

#include "engine/season/ladder.hpp"
#include "engine/season/object_reader.hpp"

namespace fleetrung::season
{

/// Reads and checks; what is wrong is noted with its place.
[[nodiscard]] Ladder readLadder(ObjectReader& reader, ReadProblem& problem);

/// "14 in", "36 cm" or a number of centimetres between 2 cm and 1.2 m; notes what is no such height.
[[nodiscard]] EnteredLength readBox(const Json& value, const std::string& place, ReadProblem& problem);

} // namespace fleetrung::season
