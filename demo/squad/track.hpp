// The track: sprint sessions, test days, competitions. Times are typed, as from gates.
#pragma once

#include "demo/squad/diary.hpp"

namespace fleetrung::squad
{

/// The sprints before the lifts: one timed run with splits.
void sprintSession(Diary& diary, CivilDate day);
/// Flying 20 m, standing long jump, drop jumps.
void testDay(Diary& diary, CivilDate day);
void compete(Diary& diary, const season::Competition& competition);

} // namespace fleetrung::squad
