// Lifts outside the ladders: logged and counted as load, in three taps.
#include "mobile/views/bench_view_model.hpp"
#include "mobile/views/forms.hpp"

namespace fleetrung::views
{

void BenchViewModel::showOthers()
{
    QList<QVariantMap> rows;
    for (const auto& lift : day_.others) {
        QStringList detail{tr("%1 × %2").arg(lift.plan.sets).arg(lift.plan.repetitions)};
        if (lift.lastLoadKg.value_or(0) > 0)
            detail += tr("last %1").arg(units().mass(*lift.lastLoadKg));
        detail +=
            lift.setsDone == 0 ? tr("not begun") : tr("%1 of %2 sets done").arg(lift.setsDone).arg(lift.plan.sets);
        rows.append({{QStringLiteral("title"), QString::fromStdString(lift.plan.name)},
                     {QStringLiteral("detail"), detail.join(QStringLiteral(" · "))},
                     {QStringLiteral("done"), lift.setsDone >= lift.plan.sets}});
    }
    others_.show(rows);
}

QVariantMap BenchViewModel::otherForm(int index) const
{
    if (index < 0 || static_cast<std::size_t>(index) >= day_.others.size())
        return {};
    const auto& lift = day_.others[static_cast<std::size_t>(index)];
    return {{QStringLiteral("title"), QString::fromStdString(lift.plan.name)},
            {QStringLiteral("load"), units().massNumber(lift.lastLoadKg.value_or(0))},
            {QStringLiteral("repetitions"), QString::number(lift.plan.repetitions)}};
}

QVariantMap BenchViewModel::typeOther(int index, const QVariantMap& form)
{
    if (index < 0 || static_cast<std::size_t>(index) >= day_.others.size())
        return {};
    const auto& plan = day_.others[static_cast<std::size_t>(index)].plan;
    const Units u = units();
    FormReader reader(form, u);
    const auto load = reader.mass(QStringLiteral("load"), 0, 600, true);
    const auto repetitions = reader.wholeNumber(QStringLiteral("repetitions"), 1, 100, true);
    const auto effort = reader.number(QStringLiteral("effort"), 1, 10, false);
    if (!reader.sound())
        return reader.problems();
    store::LiftSet set;
    set.lift = plan.lift.empty() ? "free" : plan.lift;
    set.note = plan.name;
    set.loadKg = *load;
    set.repetitionsPlanned = plan.repetitions;
    set.effort = effort;
    emit otherTyped(set, *repetitions);
    return {};
}

} // namespace fleetrung::views
