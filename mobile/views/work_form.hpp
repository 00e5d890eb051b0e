// The form of work on the track: what was typed as the store's row, and the last work as what the form begins with.
#pragma once

#include <span>

#include <QVariantMap>
#include <tl/expected.hpp>

#include "engine/store/records.hpp"
#include "mobile/views/units.hpp"

namespace fleetrung::views
{

/// The row without athlete and instant; else the problems by field.
[[nodiscard]] tl::expected<store::TrackWork, QVariantMap> readWork(const QVariantMap& form, CivilDate today,
                                                                   const Units& units);

/// What stays from time to time: kind, distance, runs, rest, sled, slope, timing, surface, shoes. `work` in order of
/// days.
[[nodiscard]] QVariantMap workDefaults(std::span<const store::TrackWork> work, const Units& units);

} // namespace fleetrung::views
