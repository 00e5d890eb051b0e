#include "mobile/views/ladder_view_model.hpp"

#include <algorithm>

#include "mobile/views/engine_words.hpp"
#include "mobile/views/plot_words.hpp"
#include "mobile/views/season_form.hpp"

namespace fleetrung::views
{
namespace
{

constexpr int daysToRace = 24 * 7; // where the form begins: the six months of an outdoor season; moved by touch

/// A name within a sentence: the English ones in small letters.
QString inSentence(const std::string& name)
{
    const QString said = engineText(name);
    return said == QString::fromStdString(name) ? said.toLower() : said;
}

} // namespace
LadderViewModel::LadderViewModel(const Preferences* preferences, QObject* parent)
    : QObject(parent), preferences_(preferences), evidence_({"mark", "name", "value", "allowed"}, this),
      steps_({"title", "detail", "taken", "underWay"}, this), step_(preferences), raceDay_(preferences),
      firstDay_(preferences)
{
    connect(preferences, &Preferences::unitsChanged, this, [this] {
        showRows();
        emit changed();
    });
}

void LadderViewModel::show(const LadderPageData& data)
{
    const std::string key = shown() ? shown()->key : std::string();
    data_ = data;
    const auto same = std::ranges::find(data_.ladders, key, &LadderShown::key);
    current_ = same == data_.ladders.end() ? 0 : static_cast<std::size_t>(same - data_.ladders.begin());
    showRows();
    emit changed();
}

void LadderViewModel::choose(int index)
{
    if (index < 0 || static_cast<std::size_t>(index) >= data_.ladders.size())
        return;
    current_ = static_cast<std::size_t>(index);
    showRows();
    emit changed();
}

void LadderViewModel::showRows()
{
    const Units units = preferences_->units();
    evidence_.show(shown() && shown()->decision ? evidenceRows(shown()->decision->evidence, units, false)
                                                : QList<QVariantMap>{});
    QList<QVariantMap> rows;
    if (shown())
        for (const auto& step : shown()->steps)
            rows.append({{QStringLiteral("title"), engineText(step.rungName)},
                         {QStringLiteral("detail"), !step.taken ? tr("planned for %1").arg(units.day(step.from))
                                                    : step.underWay
                                                        ? tr("since %1, you stand here").arg(units.day(step.from))
                                                        : tr("%1 to %2").arg(units.day(step.from), units.day(step.to))},
                         {QStringLiteral("taken"), step.taken},
                         {QStringLiteral("underWay"), step.underWay}});
    steps_.show(rows);
}

int LadderViewModel::stepAt(const QPointF& place) const
{
    if (!shown())
        return -1;
    const auto hit = plot::stairHit(shown()->stair, {place.x(), place.y()});
    if (!hit)
        return -1;
    const auto& stays = hit->taken ? shown()->stair.taken : shown()->stair.planned;
    const auto& stay = stays[hit->stay];
    // A planned stay is the step to that rung: ahead, or what became of it.
    int found = -1;
    int nearest = 0;
    for (std::size_t i = 0; i < shown()->steps.size(); ++i) {
        const auto& step = shown()->steps[i];
        const int apart = std::abs(daysBetween(stay.first, step.from));
        if (step.rung != stay.rung || (hit->taken && !step.taken) || (found >= 0 && apart >= nearest))
            continue;
        found = static_cast<int>(i);
        nearest = apart;
    }
    return found;
}

bool LadderViewModel::openStep(int index)
{
    if (!shown() || index < 0 || static_cast<std::size_t>(index) >= shown()->steps.size())
        return false;
    step_.show(shown()->steps[static_cast<std::size_t>(index)]);
    return true;
}

QString LadderViewModel::premise() const
{
    const auto* caution = season::findCaution(season::standardSeasonData(), "premise");
    return caution ? engineText(caution->text) : QString();
}

QStringList LadderViewModel::names() const
{
    QStringList names;
    for (const auto& ladder : data_.ladders)
        names += engineText(ladder.name);
    return names;
}

QString LadderViewModel::title() const
{
    return shown() ? tr("%1 ladder").arg(engineText(shown()->name)) : QString();
}

QString LadderViewModel::weekText() const
{
    return hasSeason() && data_.week > 0 ? tr("week %1 of %2").arg(data_.week).arg(data_.weeks) : QString();
}

QString LadderViewModel::competitionText() const
{
    if (!data_.daysToMain || !hasSeason())
        return {};
    const int days = *data_.daysToMain;
    if (days < 0)
        return tr("the main competition is over");
    if (days == 0)
        return tr("the main competition is today");
    if (days < 14)
        return days == 1 ? tr("1 day to the main competition") : tr("%1 days to the main competition").arg(days);
    return tr("%1 weeks to the main competition").arg(days / 7);
}

plot::PlotValue LadderViewModel::stair() const
{
    return shown() ? shownPlot(plot::stair(shown()->stair), preferences_->units()) : plot::PlotValue{};
}

QString LadderViewModel::decisionTitle() const
{
    if (!shown() || !shown()->decision)
        return {};
    const QString rung = inSentence(shown()->rungName);
    const QString next = inSentence(shown()->nextName);
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
    return shown() && shown()->decision ? preferences_->units().withLocalDates(engineText(shown()->decision->reason))
                                        : QString();
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
            texts += engineText(text);
    return texts.join(QStringLiteral("\n"));
}

bool LadderViewModel::canAnswer() const
{
    return shown() && shown()->decision && !shown()->answer;
}

QString LadderViewModel::answerText() const
{
    return shown() && shown()->answer ? answerWords(*shown()->answer) : QString();
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
        names += decisionKindText(kind);
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
    const auto& keys = shown()->rungKeys;
    const auto here = std::ranges::find(keys, decision.from);
    if (here == keys.end())
        return QString::fromStdString(decision.from);
    const auto moved = kind == season::DecisionKind::Step ? 1 : kind == season::DecisionKind::StepBack ? -1 : 0;
    const auto place = std::clamp<std::ptrdiff_t>(here - keys.begin() + moved, 0, std::ssize(keys) - 1);
    return QString::fromStdString(keys[static_cast<std::size_t>(place)]);
}

QStringList LadderViewModel::weekdays() const
{
    return weekdayNames(preferences_->units());
}

QStringList LadderViewModel::allLadders() const
{
    QStringList names;
    for (const auto& ladder : season::standardSeasonData().ladders)
        names += engineText(ladder.name);
    return names;
}

void LadderViewModel::beginSeason()
{
    firstDay_.show(data_.today, data_.today);
    raceDay_.show(data_.today + std::chrono::days{daysToRace}, data_.today);
}

QVariantMap LadderViewModel::planSeason(const QVariantMap& form)
{
    const auto setup = readSeasonForm(form, firstDay_.day(), raceDay_.day(), preferences_->units(), data_.athlete);
    if (!setup)
        return setup.error();
    emit seasonPlanned(*setup);
    return {};
}

} // namespace fleetrung::views
