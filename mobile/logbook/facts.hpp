// An athlete's row as the facts that season rules ask for (private to mobile/logbook).
#pragma once

#include "engine/season/setup.hpp"
#include "engine/store/records.hpp"

namespace fleetrung::logbook
{

/// Growth is not kept in the row: it comes from a season's setup, where it was asked for.
[[nodiscard]] inline season::AthleteFacts factsOf(const store::Athlete& athlete,
                                                  std::optional<double> growthPerMonth = {})
{
    season::AthleteFacts facts;
    facts.name = athlete.name;
    facts.birthDate = athlete.born;
    facts.trainingYears = athlete.trainingYears;
    facts.bodyMassKg = athlete.bodyMassKg;
    facts.growthPerMonth = growthPerMonth;
    facts.guardianConsent = athlete.guardianConsent;
    return facts;
}

} // namespace fleetrung::logbook
