// How the athlete is before a session, as asked and as said again.
#pragma once

#include <string>
#include <vector>

#include <QStringList>
#include <QVariantMap>

#include "engine/base/error.hpp"
#include "engine/store/records.hpp"
#include "mobile/views/units.hpp"

namespace fleetrung::views
{

/// Keys of the regions that the ladders load.
[[nodiscard]] std::vector<std::string> painRegions();
/// Their names, then one for all others.
[[nodiscard]] QStringList painRegionNames();

/// Fields: sleep (text, hours), soreness, pain (0..10, -1 = not said), region (index into the names, -1 = not said),
/// sharp, limping, hamstring, refused (bool), mass (text). Problems by field.
[[nodiscard]] tl::expected<store::Wellness, QVariantMap> readWellness(const QVariantMap& form, const Units& units);

/// "slept 7.5 h · soreness 2 · no pain"
[[nodiscard]] QString wellnessWords(const store::Wellness& wellness, const Units& units);

} // namespace fleetrung::views
