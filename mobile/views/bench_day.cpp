// The lifts of the day as a list. Kept apart from the set that is open.
#include "mobile/views/bench_view_model.hpp"
#include "mobile/views/engine_words.hpp"

namespace fleetrung::views
{

void BenchViewModel::showDay(const BenchDay& day)
{
    const QString opened = openedLift() ? QString::fromStdString(openedLift()->plan.ladder) : QString();
    day_ = day;
    open_.reset();
    for (std::size_t i = 0; i < day_.lifts.size(); ++i)
        if (!opened.isEmpty() && QString::fromStdString(day_.lifts[i].plan.ladder) == opened)
            open_ = i;
    if (open_ && repetitions_.empty())
        goOn();
    showLifts();
    showNotes();
    showOthers();
    showCheck();
    emit sessionChanged();
    emit setChanged();
}

void BenchViewModel::showLifts()
{
    QList<QVariantMap> rows;
    for (const BenchLift& lift : day_.lifts) {
        const auto& plan = lift.plan;
        const int sets = static_cast<int>(plan.work.size());
        const int repetitions = plan.work.empty() ? 0 : plan.work.front().repetitions;
        const bool done = sets > 0 && lift.setsDone >= sets;
        const auto load = plan.work.empty() ? std::nullopt : plan.work.front().loadKg;
        rows.append(
            {{QStringLiteral("key"), QString::fromStdString(plan.ladder)},
             {QStringLiteral("name"), engineText(lift.name)},
             {QStringLiteral("load"), !load        ? tr("load to be found")
                                      : *load == 0 ? tr("body mass")
                                                   : units().mass(*load)},
             {QStringLiteral("plan"), tr("%1 × %2").arg(sets).arg(repetitions)},
             {QStringLiteral("rung"), lift.rungCount == 0 ? QString()
                                                          : tr("%1 ladder, rung %2 of %3")
                                                                .arg(engineText(lift.ladder))
                                                                .arg(lift.rungNumber)
                                                                .arg(lift.rungCount)},
             {QStringLiteral("band"),
              tr("target %1").arg(units().millisecondRange(plan.targetBand.low, plan.targetBand.high))},
             {QStringLiteral("progress"), done                ? tr("done, %1 sets").arg(lift.setsDone)
                                          : lift.setsDone > 0 ? tr("%1 of %2 sets done").arg(lift.setsDone).arg(sets)
                                                              : tr("not begun")},
             {QStringLiteral("done"), done},
             {QStringLiteral("extra"), extrasOf(lift).join(QStringLiteral("\n"))}});
    }
    lifts_.show(rows);
}

QString BenchViewModel::sessionTitle() const
{
    return day_.athlete.empty() ? tr("Bench") : QString::fromStdString(day_.athlete);
}

QString BenchViewModel::dayText() const
{
    return day_.day ? units().dayWithWeekday(*day_.day) : QString();
}

} // namespace fleetrung::views
