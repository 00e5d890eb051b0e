#include "mobile/views/plate_entry.hpp"

#include <algorithm>

#include "engine/strength/plates.hpp"
#include "mobile/views/bar_words.hpp"

namespace fleetrung::views
{
namespace
{

strength::Rack rackOf(const Units& units)
{
    return units.typedInPounds() ? strength::poundRack() : strength::kilogramRack();
}

} // namespace

PlateEntry::PlateEntry(const Preferences* preferences, QObject* parent) : QObject(parent), preferences_(preferences)
{
    connect(preferences, &Preferences::unitsChanged, this, [this] {
        side_.clear(); // other plates
        emit changed();
    });
}

double PlateEntry::bar() const
{
    return barWeight(preferences_->bar(), units());
}

QStringList PlateEntry::weights() const
{
    QStringList texts;
    for (const auto& plate : rackOf(units()).plates)
        texts += plateText(plate.weight, units());
    return texts;
}

void PlateEntry::begin(const QString& load)
{
    side_.clear();
    auto rack = rackOf(units());
    rack.bar = bar();
    if (const auto typed = Units::parse(load))
        if (const auto loading = strength::platesFor(*typed, rack))
            side_ = loading->side;
    emit changed();
}

void PlateEntry::add(int weight)
{
    const auto rack = rackOf(units());
    if (weight < 0 || static_cast<std::size_t>(weight) >= rack.plates.size())
        return;
    side_.push_back(rack.plates[static_cast<std::size_t>(weight)].weight);
    if (!strength::loadOf(side_, bar()))
        side_.pop_back(); // more than a bar holds
    emit changed();
}

void PlateEntry::takeOff()
{
    if (side_.empty())
        return;
    side_.pop_back();
    emit changed();
}

void PlateEntry::clear()
{
    side_.clear();
    emit changed();
}

QString PlateEntry::load() const
{
    const auto loading = strength::loadOf(side_, bar());
    return loading ? plateText(loading->total, units()) : QString();
}

QString PlateEntry::total() const
{
    return load() + QStringLiteral(" ") + units().massUnit();
}

QString PlateEntry::sideText() const
{
    const QString barText = plateText(bar(), units()) + QStringLiteral(" ") + units().massUnit();
    const auto loading = strength::loadOf(side_, bar());
    if (!loading || side_.empty())
        return tr("The bar alone, %1.").arg(barText);
    QStringList plates;
    for (const double plate : loading->side)
        plates += plateText(plate, units());
    return tr("Each side %1. Bar %2.").arg(plates.join(QStringLiteral(" + ")), barText);
}

} // namespace fleetrung::views
