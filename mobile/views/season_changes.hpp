// What a change of the season does to the plan, in words: said before it is kept.
#pragma once

#include <QList>
#include <QVariantMap>

#include "engine/season/plan.hpp"
#include "mobile/views/units.hpp"

namespace fleetrung::views
{

/// Roles "text", "caution" (true: time is short, or something is lost).
[[nodiscard]] QList<QVariantMap> seasonChanges(const season::SeasonPlan& before, const season::SeasonPlan& after,
                                               CivilDate today, const Units& units);

} // namespace fleetrung::views
