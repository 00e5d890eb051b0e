#include "mobile/views/lift_trend_view_model.hpp"

#include <algorithm>

#include "mobile/views/engine_words.hpp"
#include "mobile/views/plot_words.hpp"
#include "mobile/views/session_words.hpp"

namespace fleetrung::views
{

LiftTrendViewModel::LiftTrendViewModel(const Preferences* preferences, QObject* parent)
    : QObject(parent), preferences_(preferences)
{
    connect(preferences, &Preferences::unitsChanged, this, &LiftTrendViewModel::changed);
}

void LiftTrendViewModel::show(const std::vector<LadderTrend>& ladders, const plot::SeasonSpan& span,
                              std::optional<CivilDate> from)
{
    const std::string before = hasLifts() ? ladders_[current_].name : std::string();
    ladders_ = ladders;
    std::erase_if(ladders_, [](const LadderTrend& ladder) { return ladder.points.empty(); });
    span_ = span;
    from_ = from;
    const auto same = std::ranges::find(ladders_, before, &LadderTrend::name);
    current_ = same == ladders_.end() ? 0 : static_cast<std::size_t>(same - ladders_.begin());
    pick();
    emit ladderChanged();
}

void LiftTrendViewModel::choose(int index)
{
    if (index < 0 || static_cast<std::size_t>(index) >= ladders_.size())
        return;
    current_ = static_cast<std::size_t>(index);
    pick();
    emit ladderChanged();
}

void LiftTrendViewModel::chooseSide(int index)
{
    if (index < 0 || index > static_cast<int>(plot::Side::Right))
        return;
    side_ = static_cast<plot::Side>(index);
    pick();
}

void LiftTrendViewModel::showAllSides()
{
    chooseSide(0);
}

/// What is shown of the ladder; a point of it that was chosen is let go.
void LiftTrendViewModel::pick()
{
    points_.clear();
    chosen_.reset();
    if (hasLifts()) {
        const bool sided = hasSides();
        std::ranges::copy_if(ladders_[current_].points, std::back_inserter(points_), [&](const LiftPoint& point) {
            const bool side = !sided || side_ == plot::Side::Both || point.side == side_;
            return side && (!from_ || point.day >= *from_);
        });
    }
    emit changed();
}

bool LiftTrendViewModel::hasSides() const
{
    return hasLifts() && std::ranges::any_of(ladders_[current_].points,
                                             [](const LiftPoint& point) { return point.side != plot::Side::Both; });
}

QStringList LiftTrendViewModel::names() const
{
    QStringList names;
    for (const auto& ladder : ladders_)
        names += engineText(ladder.name);
    return names;
}

QStringList LiftTrendViewModel::sides() const
{
    return hasSides() ? QStringList{tr("Both sides"), tr("Left"), tr("Right")} : QStringList();
}

QString LiftTrendViewModel::title() const
{
    if (!hasLifts())
        return {};
    const auto& ladder = ladders_[current_];
    return tr("%1: %2").arg(engineText(ladder.name), engineText(ladder.quantity));
}

/// Points in their order, so that the n-th of all is the n-th of the stays.
plot::TpvTrendInput LiftTrendViewModel::input() const
{
    plot::TpvTrendInput input;
    input.lift = ladders_[current_].name;
    input.quantity = ladders_[current_].quantity;
    input.season = span_;
    input.season.shownFrom = from_;
    if (from_)
        input.season.shownTo = span_.today;
    for (const auto& point : points_) {
        if (input.stays.empty() || input.stays.back().rung != point.rung)
            input.stays.push_back({.rung = point.rung, .targetBand = point.targetBand, .points = {}});
        input.stays.back().points.push_back({.day = point.day,
                                             .seconds = point.seconds,
                                             .uncertainty = point.uncertainty.value_or(0),
                                             .side = point.side});
    }
    return input;
}

plot::PlotValue LiftTrendViewModel::plot() const
{
    if (points_.empty())
        return {};
    const auto input = this->input();
    std::optional<plot::TpvHit> hit;
    if (chosen_) {
        hit = plot::TpvHit{0, *chosen_};
        while (hit->point >= input.stays[hit->stay].points.size())
            hit->point -= input.stays[hit->stay++].points.size();
    }
    return shownPlot(plot::tpvTrend(input, hit), preferences_->units());
}

QString LiftTrendViewModel::words() const
{
    if (points_.empty())
        return {};
    const auto& last = points_.back();
    const auto first = std::find_if(points_.rbegin(), points_.rend(), [&](const auto& point) {
                           return point.rung != last.rung;
                       }).base();
    const auto entry = std::find_if(first, points_.end(), [&](const auto& point) { return point.side == last.side; });
    const Units units = preferences_->units();
    const QString rung = engineText(last.rung);
    const QString now = units.milliseconds(last.seconds);
    if (&*entry == &last)
        return tr("%1: %2 on %3, the first on this rung here.").arg(rung, now, units.day(last.day));
    return tr("%1: %2 on %3, from %4 on %5.")
        .arg(rung, now, units.day(last.day), units.milliseconds(entry->seconds), units.day(entry->day));
}

QString LiftTrendViewModel::hidden() const
{
    if (!hasLifts() || !points_.empty())
        return {};
    return from_ ? tr("Nothing measured on this ladder since %1.").arg(preferences_->units().day(*from_))
                 : tr("Nothing measured of this side.");
}

void LiftTrendViewModel::touch(const QPointF& place)
{
    if (points_.empty())
        return;
    const auto input = this->input();
    const auto hit = plot::tpvHit(input, {place.x(), place.y()});
    chosen_.reset();
    if (hit) {
        chosen_ = hit->point;
        for (std::size_t stay = 0; stay < hit->stay; ++stay)
            *chosen_ += input.stays[stay].points.size();
    }
    emit changed();
}

void LiftTrendViewModel::step(int by)
{
    if (points_.empty())
        return;
    const auto last = static_cast<int>(points_.size()) - 1;
    chosen_ = static_cast<std::size_t>(chosen_ ? std::clamp(static_cast<int>(*chosen_) + by, 0, last) : last);
    emit changed();
}

void LiftTrendViewModel::letGo()
{
    chosen_.reset();
    emit changed();
}

const LiftPoint* LiftTrendViewModel::chosen() const
{
    return chosen_ ? &points_[*chosen_] : nullptr;
}

QString LiftTrendViewModel::chosenText() const
{
    return chosen() ? pointWords(*chosen(), preferences_->units()) : QString();
}

QStringList LiftTrendViewModel::chosenDetails() const
{
    return chosen() ? sessionWords(*chosen(), preferences_->units()) : QStringList();
}

} // namespace fleetrung::views
