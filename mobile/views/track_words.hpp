// The words of the keys that the track log keeps: "block", "gates", "drop-jump".
#pragma once

#include <string>

#include <QString>

#include "engine/store/records.hpp"
#include "mobile/views/units.hpp"

namespace fleetrung::views
{

[[nodiscard]] QString trackWord(const std::string& key);

/// "60 m from blocks", "flying 20 m": only runs of one test are compared.
[[nodiscard]] QString testName(const store::Sprint& run, const Units& units);

} // namespace fleetrung::views
