// Why the day is as it is: the reasons of each prescription, the warm-up check, how the athlete is, who lifts next.
#include "mobile/views/bench_view_model.hpp"
#include "mobile/views/engine_words.hpp"
#include "mobile/views/step_view_model.hpp"
#include "mobile/views/wellness_form.hpp"

namespace fleetrung::views
{
namespace
{

QVariantMap noteRow(const QString& text, bool caution)
{
    return {{QStringLiteral("text"), text}, {QStringLiteral("caution"), caution}};
}

/// "set stop" -> "Set stop"
QString headed(const std::string& about)
{
    QString text = engineText(about);
    if (!text.isEmpty())
        text[0] = text[0].toUpper();
    return text;
}

/// "Mira E.": so that all who share the sensor are in sight at once.
QString shortNameOf(const QString& name)
{
    const QStringList words = name.split(QLatin1Char(' '), Qt::SkipEmptyParts);
    return words.size() < 2 ? name : words.first() + QStringLiteral(" ") + words.last().left(1) + QStringLiteral(".");
}

} // namespace

void BenchViewModel::showNotes()
{
    QList<QVariantMap> rows;
    if (day_.sprintsForbidden)
        rows.append(noteRow(tr("No sprinting today: pain forbids it."), true));
    for (const auto& caution : day_.cautions)
        rows.append(noteRow(engineText(caution), true));
    for (const auto& note : day_.notes)
        rows.append(noteRow(units().withLocalDates(engineText(note)), false));
    notes_.show(rows);
}

QString BenchViewModel::setLine(const season::PlannedSet& set) const
{
    if (!set.loadKg)
        return tr("%1 at a load to be found").arg(set.repetitions);
    return *set.loadKg == 0 ? tr("%1 at body mass").arg(set.repetitions)
                            : tr("%1 × %2").arg(set.repetitions).arg(units().mass(*set.loadKg));
}

/// What a lift has beside its sets.
QStringList BenchViewModel::extrasOf(const BenchLift& lift) const
{
    const auto& plan = lift.plan;
    QStringList lines;
    if (plan.primer)
        lines += tr("Primer: light and fast, no probe set");
    if (plan.boxHeight)
        lines += tr("Box %1").arg(lift.box ? units().entered(*lift.box) : units().length(*plan.boxHeight));
    if (plan.contactLimit > 0)
        lines += tr("%1 contacts; at most %2 today").arg(plan.contacts).arg(plan.contactLimit);
    if (plan.maintenance && !plan.maintenance->sets.empty())
        lines += tr("Maintenance: %1 × %2, %3")
                     .arg(plan.maintenance->sets.size())
                     .arg(setLine(plan.maintenance->sets.front()), engineText(lift.maintenanceName));
    return lines;
}

// --- Why this today?

void BenchViewModel::openWhy(const QString& key)
{
    QList<QVariantMap> rows;
    for (const auto& lift : day_.lifts) {
        if (QString::fromStdString(lift.plan.ladder) != key)
            continue;
        whyTitle_ = engineText(lift.name);
        for (const auto& why : lift.plan.why)
            rows.append({{QStringLiteral("about"), headed(why.about)},
                         {QStringLiteral("text"), units().withLocalDates(engineText(why.text))}});
        if (lift.check && lift.check->accepted.value_or(false))
            rows.append({{QStringLiteral("about"), tr("Warm-up check")},
                         {QStringLiteral("text"), engineText(lift.check->adjustment.reason)}});
    }
    why_.show(rows);
    emit whyChanged();
}

// --- The warm-up check

BenchViewModel::CheckState BenchViewModel::checkState() const
{
    const BenchLift* lift = openedLift();
    if (!lift || lift->plan.primer || lift->plan.warmUp.size() < 2 || byContactTime())
        return NoCheck;
    if (!lift->check)
        return lift->setsDone > 0 ? NoCheck : CheckAhead;
    const auto& adjustment = lift->check->adjustment;
    if (lift->check->accepted)
        return CheckAnswered;
    if (!adjustment.known)
        return CheckUnknown;
    return adjustment.loadFactor < 1 || adjustment.setsOff > 0 || adjustment.setFactor < 1 ? CheckLess : CheckAsUsual;
}

QString BenchViewModel::checkTitle() const
{
    switch (checkState()) {
    case CheckAhead:
        return tr("Warm-up check");
    case CheckUnknown:
        return tr("Warm-up check: not enough to compare with");
    case CheckAsUsual:
        return tr("Warm-up check: as usual");
    case CheckLess:
        return tr("Warm-up check: slower than usual");
    case CheckAnswered:
        return *openedLift()->check->accepted ? tr("Warm-up check: less today")
                                              : tr("Warm-up check: you keep the plan");
    case NoCheck:
        break;
    }
    return {};
}

QString BenchViewModel::checkText() const
{
    const BenchLift* lift = openedLift();
    switch (checkState()) {
    case CheckAhead: {
        const auto& sets = lift->plan.warmUp;
        return tr("Lift the last two warm-up loads with full intent, as warm-up sets: %1 and %2. Their velocity is "
                  "then "
                  "compared with your own at these loads. It can take load or sets off today, never put any on.")
            .arg(setLine(sets[sets.size() - 2]), setLine(sets.back()));
    }
    case CheckLess: {
        const auto& adjustment = lift->check->adjustment;
        QStringList parts;
        if (adjustment.loadFactor < 1)
            parts += tr("%1 less load").arg(units().percent(1 - adjustment.loadFactor));
        if (adjustment.setsOff > 0)
            parts += adjustment.setsOff == 1 ? tr("one set less") : tr("%1 sets less").arg(adjustment.setsOff);
        if (adjustment.setFactor < 1)
            parts += tr("%1 of the sets").arg(units().percent(adjustment.setFactor));
        return tr("Proposed: %1. %2").arg(parts.join(tr(", ")), engineText(adjustment.reason));
    }
    case CheckAnswered:
        return *lift->check->accepted ? engineText(lift->check->adjustment.reason)
                                      : QString::fromStdString(lift->check->why);
    case CheckUnknown:
    case CheckAsUsual:
        return units().withLocalDates(engineText(lift->check->adjustment.reason));
    case NoCheck:
        break;
    }
    return {};
}

void BenchViewModel::showCheck()
{
    const BenchLift* lift = openedLift();
    checkEvidence_.show(lift && lift->check ? evidenceRows(lift->check->adjustment.evidence, units(), true)
                                            : QList<QVariantMap>{});
}

QString BenchViewModel::answerCheck(bool accepted, const QString& why)
{
    if (checkState() != CheckLess)
        return {};
    if (!accepted && why.simplified().isEmpty())
        return tr("Say why, in a few words.");
    auto& check = *day_.lifts[*open_].check;
    check.accepted = accepted;
    check.why = why.simplified().toStdString();
    emit setChanged();
    emit checkAnswered(QString::fromStdString(openedLift()->plan.ladder), accepted, why.simplified());
    return {};
}

// --- Who lifts next

void BenchViewModel::showSharers(const std::vector<Sharer>& sharers, const std::string& current)
{
    QList<QVariantMap> rows;
    for (const auto& sharer : sharers)
        rows.append({{QStringLiteral("key"), QString::fromStdString(sharer.key)},
                     {QStringLiteral("name"), QString::fromStdString(sharer.name)},
                     {QStringLiteral("shortName"), shortNameOf(QString::fromStdString(sharer.name))},
                     {QStringLiteral("here"), sharer.key == current}});
    sharers_.show(rows);
}

void BenchViewModel::switchTo(const QString& key)
{
    if (!canSwitch())
        return;
    lastSet_.reset(); // it was another's
    restTick_.stop();
    emit restChanged();
    emit switchAsked(key);
}

// --- How the athlete is

QString BenchViewModel::wellnessText() const
{
    return day_.wellness ? wellnessWords(*day_.wellness, units()) : QString();
}

QStringList BenchViewModel::regions() const
{
    return painRegionNames();
}

QVariantMap BenchViewModel::sayHowYouAre(const QVariantMap& form)
{
    const auto wellness = readWellness(form, units());
    if (!wellness)
        return wellness.error();
    emit wellnessSaid(*wellness);
    return {};
}

} // namespace fleetrung::views
