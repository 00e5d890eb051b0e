#include "mobile/views/trends_view_model.hpp"

#include <algorithm>

namespace fleetrung::views
{

TrendsViewModel::TrendsViewModel(const Preferences* preferences, QObject* parent)
    : QObject(parent), preferences_(preferences), didItWork_(preferences)
{
    connect(preferences, &Preferences::unitsChanged, this, &TrendsViewModel::changed);
}

void TrendsViewModel::show(TrendsData data)
{
    const std::string before = hasLifts() ? data_.ladders[current_].lift : std::string();
    const std::string testBefore = hasSprints() ? data_.sprints.tests[currentTest_].test : std::string();
    data_ = std::move(data);
    didItWork_.show(std::move(data_.didItWork));
    std::erase_if(data_.ladders, [](const plot::TpvTrendInput& ladder) {
        return std::ranges::all_of(ladder.stays, [](const plot::TrendStay& stay) { return stay.points.empty(); });
    });
    std::erase_if(data_.sprints.tests, [](const plot::SprintSeries& test) { return test.points.empty(); });
    const auto same = std::ranges::find(data_.ladders, before, &plot::TpvTrendInput::lift);
    current_ = same == data_.ladders.end() ? 0 : static_cast<std::size_t>(same - data_.ladders.begin());
    const auto sameTest = std::ranges::find(data_.sprints.tests, testBefore, &plot::SprintSeries::test);
    currentTest_ =
        sameTest == data_.sprints.tests.end() ? 0 : static_cast<std::size_t>(sameTest - data_.sprints.tests.begin());
    emit changed();
}

void TrendsViewModel::choose(int index)
{
    if (index < 0 || static_cast<std::size_t>(index) >= data_.ladders.size())
        return;
    current_ = static_cast<std::size_t>(index);
    emit changed();
}

QStringList TrendsViewModel::names() const
{
    QStringList names;
    for (const auto& ladder : data_.ladders)
        names += QString::fromStdString(ladder.lift);
    return names;
}

QString TrendsViewModel::liftTitle() const
{
    if (!hasLifts())
        return {};
    const auto& ladder = data_.ladders[current_];
    return tr("%1: %2").arg(QString::fromStdString(ladder.lift), QString::fromStdString(ladder.quantity));
}

plot::PlotValue TrendsViewModel::liftPlot() const
{
    return hasLifts() ? plot::PlotValue{plot::tpvTrend(data_.ladders[current_])} : plot::PlotValue{};
}

QString TrendsViewModel::liftWords() const
{
    if (!hasLifts())
        return {};
    const auto& stays = data_.ladders[current_].stays;
    const auto last = std::find_if(stays.rbegin(), stays.rend(), [](const auto& stay) { return !stay.points.empty(); });
    if (last == stays.rend())
        return {};
    const Units units = preferences_->units();
    const QString rung = QString::fromStdString(last->rung);
    const QString now = units.milliseconds(last->points.back().seconds);
    const QString day = units.day(last->points.back().day);
    if (last->points.size() < 2)
        return tr("%1: %2 on %3, the first on this rung.").arg(rung, now, day);
    return tr("%1: %2 on %3, from %4 at the start of this rung.")
        .arg(rung, now, day, units.milliseconds(last->points.front().seconds));
}

void TrendsViewModel::chooseTest(int index)
{
    if (index < 0 || static_cast<std::size_t>(index) >= data_.sprints.tests.size())
        return;
    currentTest_ = static_cast<std::size_t>(index);
    emit changed();
}

QStringList TrendsViewModel::tests() const
{
    QStringList names;
    for (const auto& test : data_.sprints.tests)
        names += QString::fromStdString(test.test);
    return names;
}

plot::PlotValue TrendsViewModel::sprintPlot() const
{
    return hasSprints() ? plot::PlotValue{plot::sprintTrend(data_.sprints, currentTest_)} : plot::PlotValue{};
}

QString TrendsViewModel::sprintWords() const
{
    if (!hasSprints())
        return {};
    const Units units = preferences_->units();
    const auto& points = data_.sprints.tests[currentTest_].points;
    const auto best = std::ranges::min_element(points, {}, &plot::SprintPoint::seconds);
    return tr("Best %1 on %2, latest %3 on %4.")
        .arg(units.sprintTime(best->seconds), units.day(best->day), units.sprintTime(points.back().seconds),
             units.day(points.back().day));
}

} // namespace fleetrung::views
