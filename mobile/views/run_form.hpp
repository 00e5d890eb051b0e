// The form of a run: what was typed as the store's row, and the last run as what the form begins with.
#pragma once

#include <span>
#include <vector>

#include <QVariantMap>
#include <tl/expected.hpp>

#include "engine/store/records.hpp"
#include "mobile/views/units.hpp"

namespace fleetrung::views
{

/// The row without athlete and instant; else the problems by field.
[[nodiscard]] tl::expected<store::Sprint, QVariantMap>
readRun(const QVariantMap& form, const std::vector<store::Split>& splits, CivilDate today, const Units& units);

/// What stays from run to run: distance, start, run-in, timing, surface, shoes, beam, altitude. `runs` in order of
/// days.
[[nodiscard]] QVariantMap runDefaults(std::span<const store::Sprint> runs, const Units& units);

/// Distances of the splits of the last run that has any.
[[nodiscard]] std::vector<double> usualSplits(std::span<const store::Sprint> runs);

} // namespace fleetrung::views
