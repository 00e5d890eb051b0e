#include "mobile/views/day_picker.hpp"

namespace fleetrung::views
{
namespace
{

using std::chrono::days;

constexpr int cellCount = 42;

CivilDate firstOfMonth(CivilDate day)
{
    const std::chrono::year_month_day parts{day};
    return CivilDate{parts.year() / parts.month() / 1};
}

} // namespace

DayPicker::DayPicker(const Preferences* preferences, QObject* parent)
    : QObject(parent), preferences_(preferences), cells_({"number", "name", "here", "inMonth", "today"}, this)
{
    connect(preferences, &Preferences::unitsChanged, this, &DayPicker::showCells);
}

void DayPicker::show(CivilDate day, CivilDate today)
{
    day_ = day;
    today_ = today;
    month_ = firstOfMonth(day);
    showCells();
}

CivilDate DayPicker::firstCell() const
{
    const int weekday = static_cast<int>(std::chrono::weekday{month_}.iso_encoding());
    return month_ - days{(weekday - units().firstWeekday() + 7) % 7};
}

void DayPicker::showCells()
{
    QList<QVariantMap> rows;
    const CivilDate first = firstCell();
    for (int i = 0; i < cellCount; ++i) {
        const CivilDate day = first + days{i};
        const std::chrono::year_month_day parts{day};
        rows.append({{QStringLiteral("number"), units().number(static_cast<unsigned>(parts.day()), 0)},
                     {QStringLiteral("name"), units().dayWithWeekday(day)},
                     {QStringLiteral("here"), day == day_},
                     {QStringLiteral("inMonth"), firstOfMonth(day) == month_},
                     {QStringLiteral("today"), day == today_}});
    }
    cells_.show(rows);
    emit changed();
}

void DayPicker::take(CivilDate day)
{
    const bool other = day != day_;
    day_ = day;
    month_ = firstOfMonth(day);
    showCells();
    if (other)
        emit moved();
}

void DayPicker::move(int count)
{
    take(day_ + days{count});
}

void DayPicker::moveMonth(int months)
{
    const std::chrono::year_month_day parts{month_};
    month_ = CivilDate{(parts.year() / parts.month() + std::chrono::months{months}) / 1};
    showCells();
}

void DayPicker::choose(int cell)
{
    if (cell >= 0 && cell < cellCount)
        take(firstCell() + days{cell});
}

QString DayPicker::dayText() const
{
    const std::chrono::year_month_day parts{day_};
    return units().dayWithWeekday(day_) + QStringLiteral(" ") + QString::number(static_cast<int>(parts.year()));
}

QString DayPicker::monthText() const
{
    return units().monthAndYear(month_);
}

QStringList DayPicker::weekdays() const
{
    QStringList names;
    for (int i = 0; i < 7; ++i)
        names += units().weekday((units().firstWeekday() - 1 + i) % 7 + 1);
    return names;
}

} // namespace fleetrung::views
