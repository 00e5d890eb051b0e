// The session behind a point of Trends, in words.
#pragma once

#include <QString>
#include <QStringList>

#include "mobile/views/trend_points.hpp"
#include "mobile/views/units.hpp"

namespace fleetrung::views
{

/// Day, rung, side, value with its uncertainty, load, note.
[[nodiscard]] QString pointWords(const LiftPoint& point, const Units& units);
/// Day, time, wind, timing, surface, shoes, run-in, race, note.
[[nodiscard]] QString pointWords(const RunPoint& run, const Units& units);
/// Its sets, or its jumps, one line each.
[[nodiscard]] QStringList sessionWords(const LiftPoint& point, const Units& units);

} // namespace fleetrung::views
