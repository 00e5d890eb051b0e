// An athlete's row as the facts that season rules ask for (private to mobile/logbook).
#pragma once

#include "engine/season/setup.hpp"
#include "engine/store/records.hpp"
#include "mobile/logbook/values.hpp"

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

/// The season as stored, with the athlete's facts of today in its setup.
[[nodiscard]] Expected<SeasonRecord> seasonRecord(const store::Season& row, const store::Athlete& athlete);

} // namespace fleetrung::logbook
