// Evidence as part of a larger document. Private to engine/season.
#pragma once

#include "engine/season/evidence.hpp"
#include "engine/season/object_reader.hpp"

namespace fleetrung::season
{

[[nodiscard]] SessionEvidence readEvidence(ObjectReader& reader);

} // namespace fleetrung::season
