#include "mobile/views/bar_words.hpp"

#include <algorithm>
#include <array>
#include <cmath>

#include <QCoreApplication>

#include "engine/strength/plates.hpp"
#include "engine/strength/repetition_maximum.hpp"
#include "engine/strength/repetitions_left.hpp"

namespace fleetrung::views
{
namespace
{

constexpr std::array kilogramBars{20.0, 15.0, 10.0};
constexpr std::array poundBars{45.0, 35.0, 25.0};
constexpr double smallestDifference = 0.05; // of what is called the same load, in the unit shown

struct BarWords {
    Q_DECLARE_TR_FUNCTIONS(BarWords)
};

double barOf(int bar, const Units& units)
{
    const auto index = static_cast<std::size_t>(std::clamp(bar, 0, static_cast<int>(kilogramBars.size()) - 1));
    return units.typedInPounds() ? poundBars[index] : kilogramBars[index];
}

QString plain(double value, const Units& units)
{
    const int decimals = std::abs(value - std::round(value)) < 0.001            ? 0
                         : std::abs(value * 10 - std::round(value * 10)) < 0.01 ? 1
                                                                                : 2;
    return units.number(value, decimals);
}

QString withUnit(double value, const Units& units)
{
    return plain(value, units) + QStringLiteral(" ") + units.massUnit();
}

} // namespace

QStringList barNames(const Units& units)
{
    QStringList names;
    for (int i = 0; i < static_cast<int>(kilogramBars.size()); ++i)
        names += withUnit(barOf(i, units), units);
    return names;
}

double barWeight(int bar, const Units& units)
{
    return barOf(bar, units);
}

QString plateText(double weight, const Units& units)
{
    return plain(weight, units);
}

QString platesText(double loadKg, int bar, const Units& units)
{
    if (!(loadKg > 0))
        return {};
    auto rack = units.typedInPounds() ? strength::poundRack() : strength::kilogramRack();
    rack.bar = barOf(bar, units);
    const double load = std::round(units.massValue(loadKg) * 100) / 100;
    const QString barText = withUnit(rack.bar, units);
    if (load < rack.bar - smallestDifference)
        return BarWords::tr("Lighter than the bar of %1: a lighter bar, or dumbbells.").arg(barText);
    const auto loading = strength::platesFor(std::max(load, rack.bar), rack);
    if (!loading)
        return {};
    QStringList plates;
    for (const double plate : loading->side)
        plates += plain(plate, units);
    const QString made = plates.isEmpty()
                             ? BarWords::tr("The bar alone, %1.").arg(barText)
                             : BarWords::tr("Each side %1. Bar %2.").arg(plates.join(QStringLiteral(" + ")), barText);
    if (std::abs(loading->total - load) <= smallestDifference)
        return made;
    return BarWords::tr("Nearest with whole plates: %1. %2").arg(withUnit(loading->total, units), made);
}

QString maximumText(double loadKg, int repetitions, double effort, const Units& units)
{
    if (!(loadKg > 0) || repetitions < 1)
        return {};
    const int possible = repetitions + static_cast<int>(std::lround(10 - effort)); // effort 8 of 10: two were left
    const auto maximum = strength::estimatedMaximum(loadKg, possible);
    const auto range = strength::maximumRange(loadKg, possible);
    if (!maximum || !range)
        return BarWords::tr("More than ten possible repetitions say too little of 1RM.");
    if (possible == 1)
        return BarWords::tr("1RM %1.").arg(units.mass(*maximum));
    return BarWords::tr("1RM about %1; by seven formulas %2 to %3.")
        .arg(units.mass(std::round(*maximum)), units.massNumber(std::round(range->low)),
             units.mass(std::round(range->high)));
}

QVariantList chartRows(double maximumKg, const Units& units)
{
    QVariantList rows;
    const auto chart = strength::loadChart(maximumKg);
    if (!chart)
        return rows;
    for (const auto& row : *chart)
        rows.append(QVariantMap{{QStringLiteral("title"), row.repetitions == 1
                                                              ? BarWords::tr("1 repetition")
                                                              : BarWords::tr("%1 repetitions").arg(row.repetitions)},
                                {QStringLiteral("detail"), BarWords::tr("%1 of 1RM").arg(units.percent(row.share))},
                                {QStringLiteral("value"), units.mass(row.loadKg)}});
    return rows;
}

QString leftText(int repetitions, double loss, const std::string& lift, const Units& units)
{
    const auto left = strength::repetitionsLeft(repetitions, loss, lift);
    if (!left)
        return {};
    constexpr double most = 15; // beyond it the number says only "many"
    if (left->left > most)
        return BarWords::tr("many left");
    return BarWords::tr("about %1 left (%2 to %3)")
        .arg(units.number(left->left, 0), units.number(left->low, 0), units.number(std::min(left->high, most), 0));
}

} // namespace fleetrung::views
