// A repetition of the engine as a row, and back (private to mobile/logbook, but for engineRepetition).
#pragma once

#include "engine/reps/repetition.hpp"
#include "mobile/logbook/logbook.hpp"

namespace fleetrung::logbook
{

/// Without id, analysis and ordinal.
[[nodiscard]] store::Repetition rowOf(const reps::Repetition& repetition);

/// What was typed as a row: the ordinal stands for all instants.
[[nodiscard]] store::Repetition typedRow(const TypedRepetitions& typed, int ordinal);

[[nodiscard]] inline season::Side seasonSide(store::Side side)
{
    return static_cast<season::Side>(side);
}
static_assert(static_cast<int>(store::Side::Right) == static_cast<int>(season::Side::Right));

} // namespace fleetrung::logbook
