#include "mobile/views/ladder_view_model.hpp"

#include <algorithm>

#include "mobile/views/season_form.hpp"

namespace fleetrung::views
{
namespace
{

QString kindName(season::DecisionKind kind)
{
    switch (kind) {
    case season::DecisionKind::Step:
        return LadderViewModel::tr("Step");
    case season::DecisionKind::Hold:
        return LadderViewModel::tr("Hold");
    case season::DecisionKind::StepBack:
        return LadderViewModel::tr("Step back");
    case season::DecisionKind::Ease:
        return LadderViewModel::tr("Ease");
    case season::DecisionKind::Rest:
        return LadderViewModel::tr("Rest");
    }
    return {};
}

/// Decimals in which a unit is read: milliseconds and counts whole, velocities to a hundredth, the rest to a tenth.
int decimalsOf(const std::string& unit)
{
    if (unit == "m/s")
        return 2;
    if (unit == "ms" || unit == "days" || unit == "sessions" || unit == "%" || unit == "weeks")
        return 0;
    return 1;
}

QString valueText(const season::EvidenceLine& line, const Units& units)
{
    if (line.unit == "kg")
        return units.mass(line.value);
    if (line.unit == "cm")
        return units.length(line.value / 100);
    QString text = units.number(line.value, decimalsOf(line.unit));
    if (!line.unit.empty())
        text += QStringLiteral(" ") + QString::fromStdString(line.unit);
    return text;
}

} // namespace

LadderViewModel::LadderViewModel(const Preferences* preferences, QObject* parent)
    : QObject(parent), preferences_(preferences), evidence_({"mark", "name", "value", "allowed"}, this)
{
    connect(preferences, &Preferences::unitsChanged, this, [this] {
        showEvidence();
        emit changed();
    });
}

void LadderViewModel::show(const LadderPageData& data)
{
    const std::string key = shown() ? shown()->key : std::string();
    data_ = data;
    const auto same = std::ranges::find(data_.ladders, key, &LadderShown::key);
    current_ = same == data_.ladders.end() ? 0 : static_cast<std::size_t>(same - data_.ladders.begin());
    showEvidence();
    emit changed();
}

void LadderViewModel::choose(int index)
{
    if (index < 0 || static_cast<std::size_t>(index) >= data_.ladders.size())
        return;
    current_ = static_cast<std::size_t>(index);
    showEvidence();
    emit changed();
}

void LadderViewModel::showEvidence()
{
    QList<QVariantMap> rows;
    const QString forShow = QStringLiteral(", for show");
    if (shown() && shown()->decision)
        for (const auto& line : shown()->decision->evidence) {
            QString allowed = QString::fromStdString(line.allowed);
            const bool gates = !allowed.isEmpty() && !allowed.endsWith(forShow);
            if (allowed.endsWith(forShow))
                allowed.chop(forShow.size());
            rows.append({{QStringLiteral("mark"), !gates     ? 2
                                                  : line.met ? 0
                                                             : 1},
                         {QStringLiteral("name"), QString::fromStdString(line.name)},
                         {QStringLiteral("value"), valueText(line, preferences_->units())},
                         {QStringLiteral("allowed"), allowed}});
        }
    evidence_.show(rows);
}

QStringList LadderViewModel::names() const
{
    QStringList names;
    for (const auto& ladder : data_.ladders)
        names += QString::fromStdString(ladder.name);
    return names;
}

QString LadderViewModel::title() const
{
    return shown() ? tr("%1 ladder").arg(QString::fromStdString(shown()->name)) : QString();
}

QString LadderViewModel::weekText() const
{
    return hasSeason() && data_.week > 0 ? tr("week %1 of %2").arg(data_.week).arg(data_.weeks) : QString();
}

QString LadderViewModel::raceText() const
{
    if (!data_.daysToMain || !hasSeason())
        return {};
    const int days = *data_.daysToMain;
    if (days < 0)
        return tr("the main race is over");
    if (days == 0)
        return tr("the main race is today");
    if (days < 14)
        return days == 1 ? tr("1 day to the main race") : tr("%1 days to the main race").arg(days);
    return tr("%1 weeks to the main race").arg(days / 7);
}

plot::PlotValue LadderViewModel::stair() const
{
    return shown() ? plot::PlotValue{plot::stair(shown()->stair)} : plot::PlotValue{};
}

QString LadderViewModel::decisionTitle() const
{
    if (!shown() || !shown()->decision)
        return {};
    const QString rung = QString::fromStdString(shown()->rungName).toLower();
    const QString next = QString::fromStdString(shown()->nextName).toLower();
    switch (shown()->decision->kind) {
    case season::DecisionKind::Step:
        return tr("Step to %1 today").arg(next);
    case season::DecisionKind::Hold:
        return tr("Hold at %1 today").arg(rung);
    case season::DecisionKind::StepBack:
        return tr("Step back to %1 today").arg(next);
    case season::DecisionKind::Ease:
        return tr("Ease %1 today").arg(rung);
    case season::DecisionKind::Rest:
        return tr("Rest from %1 today").arg(rung);
    }
    return {};
}

QString LadderViewModel::reason() const
{
    return shown() && shown()->decision ? QString::fromStdString(shown()->decision->reason) : QString();
}

QString LadderViewModel::nextText() const
{
    if (!shown() || !shown()->nextWeek)
        return {};
    return shown()->latestWeek
               ? tr("Next step: week %1, at the latest week %2").arg(*shown()->nextWeek).arg(*shown()->latestWeek)
               : tr("Next step: week %1").arg(*shown()->nextWeek);
}

QString LadderViewModel::caution() const
{
    QStringList texts;
    if (shown())
        for (const auto& text : shown()->cautions)
            texts += QString::fromStdString(text);
    return texts.join(QStringLiteral("\n"));
}

bool LadderViewModel::canAnswer() const
{
    return shown() && shown()->decision && !shown()->answer;
}

QString LadderViewModel::answerText() const
{
    if (!shown() || !shown()->answer)
        return {};
    const DecisionAnswer& answer = *shown()->answer;
    if (answer.followed)
        return tr("You follow this.");
    const QString instead = answer.insteadText.isEmpty() ? kindName(answer.instead) : answer.insteadText;
    return tr("You decided otherwise: %1. %2").arg(instead, answer.why);
}

std::vector<season::DecisionKind> LadderViewModel::otherKinds() const
{
    std::vector<season::DecisionKind> kinds;
    for (const auto kind : {season::DecisionKind::Hold, season::DecisionKind::Step, season::DecisionKind::StepBack,
                            season::DecisionKind::Ease, season::DecisionKind::Rest})
        if (shown() && shown()->decision && kind != shown()->decision->kind)
            kinds.push_back(kind);
    return kinds;
}

QStringList LadderViewModel::otherChoices() const
{
    QStringList names;
    for (const auto kind : otherKinds())
        names += kindName(kind);
    return names;
}

void LadderViewModel::follow()
{
    if (canAnswer())
        take({});
}

QString LadderViewModel::decideOtherwise(int choice, const QString& why)
{
    const auto kinds = otherKinds();
    if (!canAnswer() || choice < 0 || static_cast<std::size_t>(choice) >= kinds.size())
        return tr("Choose what you will do.");
    if (why.simplified().isEmpty())
        return tr("Say why, in a few words.");
    DecisionAnswer answer;
    answer.followed = false;
    answer.instead = kinds[static_cast<std::size_t>(choice)];
    answer.why = why.simplified();
    take(answer);
    return {};
}

void LadderViewModel::take(const DecisionAnswer& answer)
{
    data_.ladders[current_].answer = answer;
    const Identifier decision = shown()->decision->id;
    emit changed();
    emit answered(decision, answer.followed, answer.followed ? QString() : changedTo(answer.instead), answer.why);
}

QString LadderViewModel::changedTo(season::DecisionKind kind) const
{
    if (kind == season::DecisionKind::Ease || kind == season::DecisionKind::Rest)
        return QString::fromUtf8(season::decisionKey(kind).data());
    const season::Decision& decision = *shown()->decision;
    const auto* ladder = season::findLadder(season::standardSeasonData().ladders, decision.ladder);
    const auto index = ladder ? ladder->indexOf(decision.from) : std::nullopt;
    if (!index)
        return QString::fromStdString(decision.from);
    const int moved = kind == season::DecisionKind::Step ? 1 : kind == season::DecisionKind::StepBack ? -1 : 0;
    const int last = static_cast<int>(ladder->rungs.size()) - 1;
    return QString::fromStdString(ladder->rungs[static_cast<std::size_t>(std::clamp(*index + moved, 0, last))].key);
}

QStringList LadderViewModel::weekdays() const
{
    return weekdayNames(preferences_->units());
}

QStringList LadderViewModel::allLadders() const
{
    QStringList names;
    for (const auto& ladder : season::standardSeasonData().ladders)
        names += QString::fromStdString(ladder.name);
    return names;
}

QVariantMap LadderViewModel::planSeason(const QVariantMap& form)
{
    const auto setup = readSeasonForm(form, preferences_->units(), data_.athlete);
    if (!setup)
        return setup.error();
    emit seasonPlanned(*setup);
    return {};
}

} // namespace fleetrung::views
