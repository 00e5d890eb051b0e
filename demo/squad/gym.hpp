// The weight room: one planned session lifted, recorded by the simulated sensor and stored.
#pragma once

#include "demo/squad/diary.hpp"

namespace fleetrung::squad
{

void liftSession(Diary& diary, const season::SessionPlan& plan, CivilDate day);

} // namespace fleetrung::squad
