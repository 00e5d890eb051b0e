// A planned session in words, for a calendar. English; no locale. Internal to this folder.
#pragma once

#include <string>

#include "engine/season/session_plan.hpp"

namespace fleetrung::report
{

/// "Lifts: power clean from the hang; half squat", fastest first.
[[nodiscard]] std::string sessionSummary(const season::SessionPlan& session, const season::SeasonData& data);

/// Phase and week, every lift with its sets, that the day's evidence decides, and every caution in full.
[[nodiscard]] std::string sessionDescription(const season::SeasonPlan& plan, const season::SessionPlan& session,
                                             const season::SeasonData& data);

} // namespace fleetrung::report
