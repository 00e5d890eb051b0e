// What the weight room wants to know about a load, in words: plates a side, what a typed set says of 1RM, loads by the
// chart.
#pragma once

#include <string>

#include <QString>
#include <QStringList>
#include <QVariantList>

#include "mobile/views/units.hpp"

namespace fleetrung::views
{

/// Bars to choose from, in the unit of loads: 20, 15, 10 kg or 45, 35, 25 lb (common practice, no source).
[[nodiscard]] QStringList barNames(const Units& units);

/// Of that bar, in the unit of loads.
[[nodiscard]] double barWeight(int bar, const Units& units);
/// A weight of a plate as it is written on it: "2.5".
[[nodiscard]] QString plateText(double weight, const Units& units);

/// "Each side 25 + 25 + 10. Bar 20 kg."; says so where the plates come only near the load, or the bar is heavier.
/// Empty for a load of nothing. `bar`: index into the bars.
[[nodiscard]] QString platesText(double loadKg, int bar, const Units& units);

/// "1RM about 131 kg; by seven formulas 126 to 139 kg.", from a set whose effort (1..10) is known: how many were left
/// decides. Empty for a load of nothing.
[[nodiscard]] QString maximumText(double loadKg, int repetitions, double effort, const Units& units);

/// Rows of the load chart for that 1RM: {title, detail, value}.
[[nodiscard]] QVariantList chartRows(double maximumKg, const Units& units);

/// "about 3 left (1 to 7)"; empty where the loss does not tell.
[[nodiscard]] QString leftText(int repetitions, double loss, const std::string& lift, const Units& units);

} // namespace fleetrung::views
