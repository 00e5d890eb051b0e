// A day's decisions and session, for people and for programs.
#pragma once

#include <string>

#include "engine/base/json.hpp"
#include "engine/season/session_plan.hpp"

namespace fleetrung::desk
{

struct DecidedDay {
    season::DayInput input;
    std::vector<season::Decision> decisions;
    season::SessionPlan session;
};

/// `why`: also the answer to "why this today?" for each prescription.
[[nodiscard]] std::string decidedText(const DecidedDay& day, bool why, const season::SeasonData& data);
[[nodiscard]] Json decidedJson(const DecidedDay& day, const season::SeasonData& data);

} // namespace fleetrung::desk
