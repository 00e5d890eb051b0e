// The training log as part of a larger document. Private to engine/season.
#pragma once

#include "engine/season/object_reader.hpp"
#include "engine/season/training_log.hpp"

namespace fleetrung::season
{

[[nodiscard]] TrainingLog readTrainingLog(ObjectReader& reader);

} // namespace fleetrung::season
