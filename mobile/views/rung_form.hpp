// The form of one rung of a ladder of the user's own: what stands in it, and what it gives.
#pragma once

#include <string>
#include <vector>

#include <QStringList>
#include <QVariantMap>

#include "engine/season/ladder.hpp"
#include "mobile/views/units.hpp"

namespace fleetrung::views
{

/// Lift keys of the repetition finder, in the order of their names.
[[nodiscard]] std::vector<std::string> motionKeys();
[[nodiscard]] QStringList motionNames();
/// General preparation to taper, as the form has them.
[[nodiscard]] QStringList phaseNames();
/// "28–42 cm · leads to 240–300 ms · 4 × 4 · general preparation to special preparation"
[[nodiscard]] QString rungWords(const season::Rung& rung, const Units& units);

[[nodiscard]] QVariantMap rungFields(const season::Rung& rung, const Units& units);
/// `rung` with what the form says; what it does not ask for stays. Problems by field.
[[nodiscard]] tl::expected<season::Rung, QVariantMap> readRung(const QVariantMap& form, season::Rung rung,
                                                               const Units& units);

} // namespace fleetrung::views
