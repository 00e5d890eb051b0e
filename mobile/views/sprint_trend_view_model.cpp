#include "mobile/views/sprint_trend_view_model.hpp"

#include <algorithm>
#include <cmath>

#include "mobile/views/plot_words.hpp"
#include "mobile/views/session_words.hpp"

namespace fleetrung::views
{
namespace
{

bool isByHand(const RunPoint& run)
{
    return run.timing == "hand";
}

/// Indoors there is none; outdoors a run without a reading may have had any.
bool isCalm(const RunPoint& run)
{
    return run.windMps ? std::abs(*run.windMps) <= mostWindMps : run.surface == "indoor";
}

} // namespace

SprintTrendViewModel::SprintTrendViewModel(const Preferences* preferences, QObject* parent)
    : QObject(parent), preferences_(preferences)
{
    connect(preferences, &Preferences::unitsChanged, this, &SprintTrendViewModel::changed);
}

void SprintTrendViewModel::show(const std::vector<TestTrend>& tests, const plot::SeasonSpan& span,
                                std::optional<CivilDate> from)
{
    const std::string before = hasSprints() ? tests_[current_].name : std::string();
    tests_ = tests;
    std::erase_if(tests_, [](const TestTrend& test) { return test.points.empty(); });
    span_ = span;
    from_ = from;
    const auto same = std::ranges::find(tests_, before, &TestTrend::name);
    current_ = same == tests_.end() ? 0 : static_cast<std::size_t>(same - tests_.begin());
    pick();
}

void SprintTrendViewModel::choose(int index)
{
    if (index < 0 || static_cast<std::size_t>(index) >= tests_.size())
        return;
    current_ = static_cast<std::size_t>(index);
    pick();
}

void SprintTrendViewModel::toggleFilter(int index)
{
    const auto useful = usefulFilters();
    if (index < 0 || static_cast<std::size_t>(index) >= useful.size())
        return;
    const auto filter = useful[static_cast<std::size_t>(index)];
    if (!filters_.insert(filter).second)
        filters_.erase(filter);
    pick();
}

void SprintTrendViewModel::showAllRuns()
{
    filters_.clear();
    pick();
}

/// What is shown of the test; a run of it that was chosen is let go.
void SprintTrendViewModel::pick()
{
    runs_.clear();
    chosen_.reset();
    if (hasSprints())
        std::ranges::copy_if(tests_[current_].points, std::back_inserter(runs_),
                             [this](const RunPoint& run) { return isShown(run); });
    emit changed();
}

bool SprintTrendViewModel::isShown(const RunPoint& run) const
{
    return (!from_ || run.day >= *from_) && !(filters_.contains(Filter::WithoutHand) && isByHand(run)) &&
           !(filters_.contains(Filter::CalmOnly) && !isCalm(run));
}

/// One that is on stays, so that it can be taken off.
std::vector<SprintTrendViewModel::Filter> SprintTrendViewModel::usefulFilters() const
{
    std::vector<Filter> useful;
    if (!hasSprints())
        return useful;
    const auto any = [this](auto test) { return std::ranges::any_of(tests_[current_].points, test); };
    if (filters_.contains(Filter::WithoutHand) || any(isByHand))
        useful.push_back(Filter::WithoutHand);
    if (filters_.contains(Filter::CalmOnly) || any([](const RunPoint& run) { return run.windMps.has_value(); }))
        useful.push_back(Filter::CalmOnly);
    return useful;
}

QStringList SprintTrendViewModel::filters() const
{
    QStringList names;
    for (const auto filter : usefulFilters())
        names += filter == Filter::WithoutHand ? tr("Without hand timing") : tr("Wind ±2 m/s");
    return names;
}

QList<int> SprintTrendViewModel::chosenFilters() const
{
    QList<int> chosen;
    const auto useful = usefulFilters();
    for (std::size_t i = 0; i < useful.size(); ++i)
        if (filters_.contains(useful[i]))
            chosen += static_cast<int>(i);
    return chosen;
}

QStringList SprintTrendViewModel::tests() const
{
    QStringList names;
    for (const auto& test : tests_)
        names += QString::fromStdString(test.name);
    return names;
}

plot::SprintTrendInput SprintTrendViewModel::input() const
{
    plot::SprintTrendInput input;
    input.season = span_;
    input.season.shownFrom = from_;
    if (from_)
        input.season.shownTo = span_.today;
    auto& test = input.tests.emplace_back();
    test.test = tests_[current_].name;
    for (const auto& run : runs_)
        test.points.push_back({.day = run.day, .seconds = run.seconds, .windMps = run.windMps});
    return input;
}

plot::PlotValue SprintTrendViewModel::plot() const
{
    return runs_.empty() ? plot::PlotValue{} : shownPlot(plot::sprintTrend(input(), 0, chosen_), preferences_->units());
}

QString SprintTrendViewModel::words() const
{
    if (runs_.empty())
        return {};
    const Units units = preferences_->units();
    const auto best = std::ranges::min_element(runs_, {}, &RunPoint::seconds);
    const QString time =
        best->windMps
            ? tr("%1 (wind %2 m/s)").arg(units.sprintTime(best->seconds), units.signedNumber(*best->windMps, 1))
            : units.sprintTime(best->seconds);
    return tr("Best %1 on %2, latest %3 on %4.")
        .arg(time, units.day(best->day), units.sprintTime(runs_.back().seconds), units.day(runs_.back().day));
}

QString SprintTrendViewModel::leftOut() const
{
    if (!hasSprints() || runs_.empty() || filters_.empty())
        return {};
    const auto all = std::ranges::count_if(tests_[current_].points,
                                           [this](const RunPoint& run) { return !from_ || run.day >= *from_; });
    const QString shown = tr("%1 of %2 runs are shown.").arg(runs_.size()).arg(all);
    return filters_.contains(Filter::CalmOnly) ? tr("%1 Outdoors a run without a wind reading is left out.").arg(shown)
                                               : shown;
}

QString SprintTrendViewModel::hidden() const
{
    if (!hasSprints() || !runs_.empty())
        return {};
    return filters_.empty() && from_ ? tr("No run of this test since %1.").arg(preferences_->units().day(*from_))
                                     : tr("The filters leave out every run of this test.");
}

void SprintTrendViewModel::touch(const QPointF& place)
{
    if (runs_.empty())
        return;
    chosen_ = plot::sprintHit(input(), 0, {place.x(), place.y()});
    emit changed();
}

void SprintTrendViewModel::step(int by)
{
    if (runs_.empty())
        return;
    const auto last = static_cast<int>(runs_.size()) - 1;
    chosen_ = static_cast<std::size_t>(chosen_ ? std::clamp(static_cast<int>(*chosen_) + by, 0, last) : last);
    emit changed();
}

void SprintTrendViewModel::letGo()
{
    chosen_.reset();
    emit changed();
}

QString SprintTrendViewModel::chosenText() const
{
    return chosen_ ? pointWords(runs_[*chosen_], preferences_->units()) : QString();
}

} // namespace fleetrung::views
