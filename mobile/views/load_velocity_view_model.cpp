#include "mobile/views/load_velocity_view_model.hpp"

#include <algorithm>
#include <cmath>

#include "mobile/views/engine_words.hpp"
#include "mobile/views/plot_words.hpp"

namespace fleetrung::views
{

LoadVelocityViewModel::LoadVelocityViewModel(const Preferences* preferences, QObject* parent)
    : QObject(parent), preferences_(preferences)
{
    connect(preferences, &Preferences::unitsChanged, this, &LoadVelocityViewModel::changed);
}

void LoadVelocityViewModel::show(const LadderLoads& loads)
{
    const bool same = loads.rung == loads_.rung && loads.sides.size() == loads_.sides.size();
    loads_ = loads;
    if (!same)
        current_ = 0;
    chosen_.reset();
    emit changed();
}

void LoadVelocityViewModel::chooseSide(int index)
{
    if (index < 0 || static_cast<std::size_t>(index) >= loads_.sides.size())
        return;
    current_ = static_cast<std::size_t>(index);
    chosen_.reset();
    emit changed();
}

QString LoadVelocityViewModel::title() const
{
    return tr("%1: load and velocity").arg(engineText(loads_.rung));
}

QStringList LoadVelocityViewModel::sides() const
{
    if (loads_.sides.size() < 2)
        return {};
    QStringList names;
    for (const auto& side : loads_.sides)
        names += side.side == report::Side::Left    ? tr("Left")
                 : side.side == report::Side::Right ? tr("Right")
                                                    : tr("Both sides");
    return names;
}

plot::LoadUnit LoadVelocityViewModel::unit() const
{
    const Units units = preferences_->units();
    const double kilograms = 1 / units.massValue(1);
    return {units.massUnit().toStdString(), kilograms == 1 ? "kilograms" : "pounds", kilograms};
}

plot::Plot LoadVelocityViewModel::picture(std::optional<std::size_t> chosen) const
{
    return plot::loadVelocityPicture(loads_.rung, here().points, here().curve ? &*here().curve : nullptr, unit(),
                                     chosen);
}

plot::PlotValue LoadVelocityViewModel::plot() const
{
    return hasPoints() ? shownPlot(picture(chosen_), preferences_->units()) : plot::PlotValue{};
}

QString LoadVelocityViewModel::maximum() const
{
    if (!hasLift() || !here().curve || !here().curve->slowest)
        return {};
    const Units units = preferences_->units();
    const auto& line = here().curve->line;
    const QString about = units.mass(std::round(line.estimatedMaximum));
    if (!line.maximumLow)
        return tr("Estimated 1RM %1").arg(about);
    return tr("Estimated 1RM %1 (95 %: %2 to %3)")
        .arg(about, units.mass(std::round(*line.maximumLow)), units.mass(std::round(*line.maximumHigh)));
}

QString LoadVelocityViewModel::words() const
{
    if (!hasLift() || !here().curve)
        return {};
    const Units units = preferences_->units();
    const auto& curve = *here().curve;
    const QString from = here().sessions == 1 ? tr("From 1 session") : tr("From %1 sessions").arg(here().sessions);
    const QString text = tr("%1 of this season on this rung, the fastest repetition at each load: %2 points.")
                             .arg(from)
                             .arg(here().points.size());
    if (!curve.slowest)
        return tr("%1 No velocity at 1RM is published for this lift, so the line points to no 1RM.").arg(text);
    return tr("%1 1RM is where the line meets %2 (%3). An estimate is an estimate.")
        .arg(text, units.velocity(curve.slowest->velocity),
             QString::fromUtf8(curve.slowest->source.data(), static_cast<qsizetype>(curve.slowest->source.size())));
}

QString LoadVelocityViewModel::missing() const
{
    if (!hasLift() || here().curve)
        return {};
    const QString next = QString::fromStdString(here().curve.error().message);
    return hasPoints() ? tr("No line yet: %1.").arg(next)
                       : tr("Nothing measured on this rung yet. With a sensor at the warm-up loads: %1.").arg(next);
}

void LoadVelocityViewModel::touch(const QPointF& place)
{
    if (!hasPoints())
        return;
    chosen_ = plot::loadVelocityHit(picture({}), here().points, unit(), {place.x(), place.y()});
    emit changed();
}

void LoadVelocityViewModel::step(int by)
{
    if (!hasPoints())
        return;
    const auto last = static_cast<int>(here().points.size()) - 1;
    chosen_ = static_cast<std::size_t>(chosen_ ? std::clamp(static_cast<int>(*chosen_) + by, 0, last) : last);
    emit changed();
}

void LoadVelocityViewModel::letGo()
{
    chosen_.reset();
    emit changed();
}

QString LoadVelocityViewModel::chosenText() const
{
    if (!chosen_)
        return {};
    const Units units = preferences_->units();
    const auto& point = here().points[*chosen_];
    return tr("%1, %2, %3.")
        .arg(units.day(here().days[*chosen_]), units.mass(point.loadKg), units.velocity(point.velocity));
}

} // namespace fleetrung::views
