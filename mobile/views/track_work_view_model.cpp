#include "mobile/views/track_work_view_model.hpp"

#include <algorithm>
#include <cmath>
#include <ranges>

#include <QStringList>

#include "mobile/views/track_words.hpp"
#include "mobile/views/work_form.hpp"

namespace fleetrung::views
{
namespace
{

constexpr std::size_t pageSize = 30;
constexpr double secondsAMinute = 60;

QString joined(const QStringList& parts)
{
    return parts.join(QStringLiteral(" · "));
}

} // namespace

TrackWorkViewModel::TrackWorkViewModel(const Preferences* preferences, QObject* parent)
    : QObject(parent), preferences_(preferences), page_(pageSize), rows_({"key", "title", "value", "detail"}, this),
      weekRows_({"title", "value", "detail", "flag"}, this)
{
    connect(preferences, &Preferences::unitsChanged, this, [this] {
        showRows();
        emit changed();
    });
}

void TrackWorkViewModel::show(CivilDate today, TrackWorkData data)
{
    today_ = today;
    data_ = std::move(data);
    showRows();
    emit changed();
}

void TrackWorkViewModel::setShown(bool shown)
{
    if (shown == shown_)
        return;
    shown_ = shown;
    emit changed();
    if (shown)
        emit asked();
}

void TrackWorkViewModel::showRows()
{
    QList<QVariantMap> rows;
    for (const auto& work : std::views::reverse(data_.work) | std::views::take(page_))
        rows.append(workRow(work));
    rows_.show(rows);
    const auto active = [](const track::Week& week) { return week.runs > 0 || week.contacts > 0; };
    QList<QVariantMap> weeks;
    if (std::ranges::any_of(data_.weeks, active))
        for (const auto& week : std::views::reverse(data_.weeks))
            if (active(week) || &week == &data_.weeks.back())
                weeks.append(weekRow(week));
    weekRows_.show(weeks);
}

QVariantMap TrackWorkViewModel::workRow(const WorkDone& work) const
{
    const Units units = preferences_->units();
    const store::TrackWork& row = work.row;
    const auto rounded = [&units](double value) { return units.number(value, value == std::floor(value) ? 0 : 1); };
    QStringList first{units.day(row.done.trainingDay)};
    if (row.bestTimeS)
        first += tr("best %1").arg(units.sprintTime(*row.bestTimeS)) +
                 (row.timing.empty() ? QString() : QStringLiteral(" ") + trackWord(row.timing));
    if (row.effort)
        first += tr("effort %1 of 10").arg(rounded(*row.effort));
    if (row.loadKg)
        first += tr("sled %1").arg(units.mass(*row.loadKg));
    if (row.slopePercent)
        first += tr("slope %1 %").arg(rounded(*row.slopePercent));
    QStringList second;
    if (row.restS)
        second += tr("rest %1 min").arg(rounded(*row.restS / secondsAMinute));
    if (row.windMps)
        second += tr("wind %1").arg(units.signedNumber(*row.windMps, 1));
    for (const auto& word : {row.surface, row.shoes})
        if (!word.empty())
            second += trackWord(word);
    QStringList lines{joined(first)};
    if (!second.isEmpty())
        lines += joined(second);
    if (work.fast.at90 > 0)
        lines += (work.fast.basis == track::Basis::Estimated ? tr("fast: about %1 m") : tr("fast: %1 m"))
                     .arg(units.number(work.fast.at90, 0));
    if (!row.note.empty())
        lines += QString::fromStdString(row.note);
    return {
        {QStringLiteral("key"), QString::fromStdString(identifierText(row.id))},
        {QStringLiteral("title"), trackWord("work-" + row.kind)},
        {QStringLiteral("value"),
         tr("%1 × %2", "runs and metres of one").arg(units.number(row.repetitions, 0), units.distance(row.distance))},
        {QStringLiteral("detail"), lines.join(QLatin1Char('\n'))}};
}

QVariantMap TrackWorkViewModel::weekRow(const track::Week& week) const
{
    const Units units = preferences_->units();
    const auto metres = [&units](double value) { return units.number(value, 0); };
    QStringList lines;
    if (week.fast90 > 0)
        lines +=
            (week.estimated ? tr("fast: about %1 m, of them %2 m at 95 %") : tr("fast: %1 m, of them %2 m at 95 %"))
                .arg(metres(week.fast90), metres(week.fast95));
    QStringList parts;
    if (week.resisted > 0)
        parts += tr("resisted %1 m").arg(metres(week.resisted));
    if (week.hill > 0)
        parts += tr("hill %1 m").arg(metres(week.hill));
    if (week.contacts > 0)
        parts += tr("contacts of jumps: %1").arg(week.contacts);
    if (!parts.isEmpty())
        lines += joined(parts);
    const bool current = &week == &data_.weeks.back();
    const QString more = week.muchFaster ? tr("%1 more fast metres than the mean of the four weeks before")
                                               .arg(units.percent(week.fast90 / *week.usualFastMetres - 1))
                         : week.muchMore ? tr("%1 more metres than the mean of the four weeks before")
                                               .arg(units.percent(week.metres / *week.usualMetres - 1))
                                         : QString();
    return {{QStringLiteral("title"), current ? tr("This week") : tr("Week of %1").arg(units.day(week.monday))},
            {QStringLiteral("value"), units.number(week.metres, 0) + QStringLiteral(" ") + tr("m")},
            {QStringLiteral("detail"), lines.join(QLatin1Char('\n'))},
            {QStringLiteral("flag"), more}};
}

QVariantMap TrackWorkViewModel::beginWork() const
{
    std::vector<store::TrackWork> rows;
    for (const auto& work : data_.work)
        rows.push_back(work.row);
    return workDefaults(rows, preferences_->units());
}

QVariantMap TrackWorkViewModel::addWork(const QVariantMap& form)
{
    const auto work = readWork(form, today_, preferences_->units());
    if (!work)
        return work.error();
    emit workAdded(*work);
    return {};
}

void TrackWorkViewModel::remove(const QString& key)
{
    emit workRemoved(key);
}

void TrackWorkViewModel::showMore()
{
    page_ += pageSize;
    showRows();
    emit changed();
}

} // namespace fleetrung::views
