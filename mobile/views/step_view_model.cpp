#include "mobile/views/step_view_model.hpp"

namespace fleetrung::views
{
namespace
{

/// Decimals in which a unit is read: milliseconds and counts whole, velocities to a hundredth, the rest to a tenth.
int decimalsOf(const std::string& unit)
{
    if (unit == "m/s")
        return 2;
    if (unit == "ms" || unit == "days" || unit == "sessions" || unit == "%" || unit == "weeks" || unit == "contacts")
        return 0;
    return 1;
}

QString valueText(const season::EvidenceLine& line, double value, const Units& units)
{
    if (line.unit == "kg")
        return units.mass(value);
    if (line.unit == "cm")
        return units.length(value / 100);
    QString text = units.number(value, decimalsOf(line.unit));
    if (!line.unit.empty())
        text += QStringLiteral(" ") + QString::fromStdString(line.unit);
    return engineText(text);
}

/// In the value's own unit and without naming it again.
QString uncertaintyText(const season::EvidenceLine& line, const Units& units)
{
    if (line.unit == "kg")
        return units.number(units.massValue(line.uncertainty), 1);
    if (line.unit == "cm")
        return units.lengthNumber(line.uncertainty / 100);
    const int decimals = decimalsOf(line.unit);
    return units.number(line.uncertainty, line.unit == "m/s" ? decimals + 1 : decimals);
}

} // namespace

QString decisionKindText(season::DecisionKind kind)
{
    switch (kind) {
    case season::DecisionKind::Step:
        return StepViewModel::tr("Step");
    case season::DecisionKind::Hold:
        return StepViewModel::tr("Hold");
    case season::DecisionKind::StepBack:
        return StepViewModel::tr("Step back");
    case season::DecisionKind::Ease:
        return StepViewModel::tr("Ease");
    case season::DecisionKind::Rest:
        return StepViewModel::tr("Rest");
    }
    return {};
}

QString answerWords(const DecisionAnswer& answer)
{
    if (answer.followed)
        return StepViewModel::tr("You follow this.");
    const QString instead = answer.insteadText.isEmpty() ? decisionKindText(answer.instead) : answer.insteadText;
    return StepViewModel::tr("You decided otherwise: %1. %2").arg(instead, answer.why);
}

QList<QVariantMap> evidenceRows(const std::vector<season::EvidenceLine>& lines, const Units& units,
                                bool withUncertainty)
{
    const QString forShow = QStringLiteral(", for show");
    QList<QVariantMap> rows;
    for (const auto& line : lines) {
        QString allowed = QString::fromStdString(line.allowed);
        const bool gates = line.gates && !allowed.isEmpty() && !allowed.endsWith(forShow);
        if (allowed.endsWith(forShow))
            allowed.chop(forShow.size());
        QString value = valueText(line, line.value, units);
        if (withUncertainty && line.uncertainty > 0)
            value += StepViewModel::tr(" ± %1").arg(uncertaintyText(line, units));
        rows.append({{QStringLiteral("mark"), !gates     ? 2
                                              : line.met ? 0
                                                         : 1},
                     {QStringLiteral("name"), engineText(line.name)},
                     {QStringLiteral("value"), value},
                     {QStringLiteral("allowed"), engineText(allowed)}});
    }
    return rows;
}

StepViewModel::StepViewModel(const Preferences* preferences, QObject* parent)
    : QObject(parent), preferences_(preferences), evidence_({"mark", "name", "value", "allowed"}, this)
{
    connect(preferences, &Preferences::unitsChanged, this, [this] {
        showEvidence();
        emit changed();
    });
}

void StepViewModel::show(const StairStep& step)
{
    step_ = step;
    showEvidence();
    emit changed();
}

void StepViewModel::showEvidence()
{
    evidence_.show(step_.decision ? evidenceRows(step_.decision->evidence, units(), true) : QList<QVariantMap>{});
}

QString StepViewModel::when() const
{
    if (!step_.taken)
        return tr("planned for %1, week %2").arg(units().day(step_.from)).arg(step_.week);
    return step_.underWay
               ? tr("since %1, week %2").arg(units().day(step_.from)).arg(step_.week)
               : tr("%1 to %2, from week %3").arg(units().day(step_.from), units().day(step_.to)).arg(step_.week);
}

QStringList StepViewModel::facts() const
{
    QStringList lines;
    if (!step_.phase.isEmpty())
        lines += tr("Phase: %1").arg(step_.phase);
    if (step_.firstPlanned && *step_.firstPlanned != step_.from) {
        const int days = daysBetween(*step_.firstPlanned, step_.from);
        const QString length = std::abs(days) == 1 ? tr("1 day") : tr("%1 days").arg(std::abs(days));
        lines += (days > 0 ? tr("First planned for %1: %2 later") : tr("First planned for %1: %2 sooner"))
                     .arg(units().day(*step_.firstPlanned), length);
    }
    if (!step_.dateReason.isEmpty())
        lines += units().withLocalDates(step_.dateReason);
    if (step_.earliest)
        lines += tr("Earliest: %1").arg(units().day(*step_.earliest));
    if (step_.latest)
        lines += tr("At the latest: %1").arg(units().day(*step_.latest));
    if (step_.sessions > 0)
        lines += step_.sessions == 1 ? tr("1 session of evidence") : tr("%1 sessions of evidence").arg(step_.sessions);
    if (step_.firstLoadKg && step_.lastLoadKg)
        lines +=
            *step_.firstLoadKg == *step_.lastLoadKg
                ? tr("Probe load %1").arg(units().mass(*step_.firstLoadKg))
                : tr("Probe load %1, later %2").arg(units().mass(*step_.firstLoadKg), units().mass(*step_.lastLoadKg));
    return lines;
}

QString StepViewModel::decisionTitle() const
{
    if (!step_.decision)
        return step_.taken ? tr("The ladder began here") : QString();
    const std::string_view title = season::ruleTitle(step_.decision->rule);
    return title.empty() ? QString::fromStdString(step_.decision->rule) : engineText(std::string(title));
}

QString StepViewModel::reason() const
{
    if (step_.decision)
        return units().withLocalDates(engineText(step_.decision->reason));
    return step_.taken ? tr("The plan's first rung on this ladder: no evidence is needed to begin.") : QString();
}

QString StepViewModel::missing() const
{
    if (step_.taken)
        return {};
    if (!step_.next)
        return tr("The rungs before it come first; what it needs is known once you stand on the one before.");
    if (!step_.decision)
        return tr("Nothing is measured on the rung before it yet. Each session's probe set counts.");
    QStringList names;
    for (const auto& line : step_.decision->evidence)
        if (line.gates && !line.met && !line.allowed.empty())
            names += tr("%1 (%2)").arg(engineText(line.name), engineText(line.allowed));
    return names.isEmpty() ? tr("No number is missing.")
                           : tr("Still missing: %1").arg(names.join(QStringLiteral(", ")));
}

QString StepViewModel::answer() const
{
    return step_.answer ? answerWords(*step_.answer) : QString();
}

QString StepViewModel::caution() const
{
    QStringList texts;
    for (const auto& text : step_.cautions)
        texts += engineText(text);
    return texts.join(QStringLiteral("\n"));
}

} // namespace fleetrung::views
