#include "mobile/views/trends_view_model.hpp"

#include <algorithm>

namespace fleetrung::views
{

TrendsViewModel::TrendsViewModel(const Preferences* preferences, QObject* parent)
    : QObject(parent), preferences_(preferences), lift_(preferences), sprint_(preferences), loads_(preferences),
      didItWork_(preferences)
{
    connect(&lift_, &LiftTrendViewModel::ladderChanged, this, &TrendsViewModel::showLoads);
    connect(preferences, &Preferences::unitsChanged, this, &TrendsViewModel::changed);
}

void TrendsViewModel::show(TrendsData data)
{
    data_ = std::move(data);
    earlier_.reset(); // another athlete, or a set more: they are asked for again where they are shown
    if (period_ == TrendPeriod::AllSeasons && !data_.hasEarlier)
        period_ = TrendPeriod::Season;
    didItWork_.show(std::move(data_.didItWork));
    showPeriod();
}

void TrendsViewModel::showEarlier(std::vector<SeasonTrends> earlier)
{
    earlier_ = std::move(earlier);
    showPeriod();
}

void TrendsViewModel::choosePeriod(int index)
{
    if (index < 0 || index >= periods().size())
        return;
    period_ = static_cast<TrendPeriod>(index);
    showPeriod();
}

void TrendsViewModel::clearFilters()
{
    period_ = TrendPeriod::Season;
    lift_.showAllSides();
    sprint_.showAllRuns();
    showPeriod();
}

void TrendsViewModel::showPeriod()
{
    std::vector<const SeasonTrends*> seasons;
    if (period_ == TrendPeriod::AllSeasons && earlier_)
        for (const auto& season : *earlier_)
            seasons.push_back(&season);
    seasons.push_back(&data_.season);
    const auto shown = together(seasons);
    std::optional<CivilDate> from;
    if (period_ == TrendPeriod::LastWeeks && shown.span.today)
        from = *shown.span.today - std::chrono::days{7 * lastWeeks - 1};
    lift_.show(shown.ladders, shown.span, from);
    sprint_.show(shown.tests, shown.span, from);
    emit changed();
    if (period_ == TrendPeriod::AllSeasons && !earlier_)
        emit earlierAsked();
}

/// Of the ladder that is looked at.
void TrendsViewModel::showLoads()
{
    const auto& all = data_.season.loads;
    const auto here = std::ranges::find(all, lift_.ladder(), &LadderLoads::ladder);
    loads_.show(here == all.end() ? LadderLoads{} : *here);
}

QStringList TrendsViewModel::periods() const
{
    QStringList names{tr("This season"), tr("Last %1 weeks").arg(lastWeeks)};
    if (data_.hasEarlier)
        names += tr("All seasons");
    return names;
}

QString TrendsViewModel::periodNote() const
{
    if (period_ != TrendPeriod::AllSeasons || !earlier_ || earlier_->empty())
        return {};
    return tr("Weeks are counted from %1.").arg(preferences_->units().day(earlier_->front().span.first));
}

} // namespace fleetrung::views
