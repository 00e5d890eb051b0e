// The form of a new season, read and checked as a file would be.
#pragma once

#include <QStringList>
#include <QVariantMap>

#include "engine/season/setup.hpp"
#include "mobile/views/units.hpp"

namespace fleetrung::views
{

/// Bounds of sense, not of training: what lies beyond is a slip of the finger. Starting values of this project.
[[nodiscard]] bool isBoxHeight(const season::EnteredLength& height);

/// Monday first, short.
[[nodiscard]] QStringList weekdayNames(const Units& units);

/// Fields: race, boxes (text); liftDays, sprintDays (0 = Monday), ladders, equipment (lists of indices). Problems by
/// field ("raceDay" among them); "all" is of the whole.
[[nodiscard]] tl::expected<season::SeasonSetup, QVariantMap> readSeasonForm(const QVariantMap& form, CivilDate start,
                                                                            CivilDate raceDay, const Units& units,
                                                                            const season::AthleteFacts& athlete);

} // namespace fleetrung::views
