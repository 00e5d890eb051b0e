// The user's words on single repetitions, applied to an analysis (private to mobile/logbook).
#pragma once

#include <vector>

#include "mobile/logbook/values.hpp"

namespace fleetrung::logbook
{

/// Events in the order of (counter, device); one that meets no repetition of this analysis changes nothing and is kept
/// for the next.
void applyEdits(std::vector<RepetitionView>& repetitions, std::vector<store::EditEvent> events);

} // namespace fleetrung::logbook
