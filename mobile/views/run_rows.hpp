// The runs of the Track page as rows, and the best of each test.
#pragma once

#include <vector>

#include <QVariantMap>

#include "engine/track/personal_bests.hpp"
#include "mobile/views/track_words.hpp"

namespace fleetrung::views
{

/// As the engine's bests take them; `test` is a name of the program's own.
[[nodiscard]] std::vector<track::TestRun> testRuns(const std::vector<store::Sprint>& runs);

/// Roles "key", "title", "value", "detail".
[[nodiscard]] QVariantMap runRow(const store::Sprint& run, const Units& units, bool isBest);
/// The same of one test's best: when, wind, and how many runs; a faster wind-aided one beside it.
[[nodiscard]] QVariantMap bestRow(const track::PersonalBest& best, const std::vector<store::Sprint>& runs,
                                  const Units& units);

} // namespace fleetrung::views
