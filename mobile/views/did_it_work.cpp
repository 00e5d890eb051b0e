#include "mobile/views/did_it_work.hpp"

#include "mobile/plot/lag_picture.hpp"
#include "mobile/views/engine_words.hpp"
#include "mobile/views/plot_words.hpp"

namespace fleetrung::views
{

using transfer::Verdict;

DidItWorkViewModel::DidItWorkViewModel(const Preferences* preferences, QObject* parent)
    : QObject(parent), preferences_(preferences), lags_({"title", "value", "detail"}, this)
{
    connect(preferences, &Preferences::unitsChanged, this, [this] {
        showRows();
        emit changed();
    });
}

void DidItWorkViewModel::show(std::optional<Expected<transfer::Transfer>> found)
{
    found_ = std::move(found);
    showRows();
    emit changed();
}

const transfer::Transfer* DidItWorkViewModel::judged() const
{
    const bool enough = found_ && *found_ && (*found_)->verdict != Verdict::NotEnough;
    return enough ? &**found_ : nullptr;
}

QString DidItWorkViewModel::verdict() const
{
    if (!found_)
        return {};
    if (!*found_)
        return tr("Not judged");
    switch ((*found_)->verdict) {
    case Verdict::NotEnough:
        return tr("Not enough yet");
    case Verdict::NotShown:
        return tr("Not shown");
    case Verdict::MovedTogether:
        break;
    }
    return tr("They moved together");
}

QString DidItWorkViewModel::sentence() const
{
    if (!found_)
        return {};
    return preferences_->units().withLocalDates(*found_ ? engineText((*found_)->sentence) : errorText(found_->error()));
}

QString DidItWorkViewModel::toLog() const
{
    if (!found_ || !*found_ || judged())
        return {};
    return tr("For it to speak: begin each lift with its probe set, and time a sprint in each week, always in the same "
              "way: distance, run-in, start, timing, surface and shoes, wind within 1 m/s.");
}

QString DidItWorkViewModel::chance() const
{
    if (!judged())
        return {};
    const double share = judged()->chance.value_or(1);
    const Units units = preferences_->units();
    const QString counted = share < 0.001 ? tr("less than %1").arg(units.number(0.1, 1)) : units.number(100 * share, 1);
    return tr("Chance alone gives as much in %1 of 100 turned seasons; up to %2 it counts as moved together.")
        .arg(counted, units.number(100 * transfer::claimAt, 0));
}

plot::PlotValue DidItWorkViewModel::picture() const
{
    return judged() ? shownPlot(plot::lagPicture(judged()->lags), preferences_->units()) : plot::PlotValue{};
}

QVariantMap DidItWorkViewModel::rowOf(const transfer::Lag& lag) const
{
    const Units units = preferences_->units();
    QVariantMap row;
    row[QStringLiteral("title")] = lag.weeks == 0   ? tr("Same week")
                                   : lag.weeks == 1 ? tr("1 week later")
                                                    : tr("%1 weeks later").arg(lag.weeks);
    if (!judged()) { // how far it is, and no number that would mislead
        row[QStringLiteral("value")] =
            tr("%1 of %2").arg(std::min(lag.pairs, transfer::fewestPairs)).arg(transfer::fewestPairs);
        row[QStringLiteral("detail")] =
            tr("weeks with both; rungs: %1, needed %2").arg(lag.rungs).arg(transfer::fewestRungs);
        return row;
    }
    row[QStringLiteral("value")] = lag.correlation ? units.signedNumber(*lag.correlation, 2) : tr("–");
    QString detail = tr("%1 weeks with both, %2 rungs").arg(lag.pairs).arg(lag.rungs);
    if (lag.chanceReaches)
        detail += tr(", chance reaches %1").arg(units.number(*lag.chanceReaches, 2));
    row[QStringLiteral("detail")] = detail;
    return row;
}

void DidItWorkViewModel::showRows()
{
    QList<QVariantMap> rows;
    if (found_ && *found_)
        for (const auto& lag : (*found_)->lags)
            rows += rowOf(lag);
    lags_.show(rows);
}

QString DidItWorkViewModel::noProof()
{
    return tr("This is no proof of cause.");
}

QString DidItWorkViewModel::explanation()
{
    return tr(
        "What is compared: how much quicker than that stay's own line the bar reached peak velocity, in the weeks of "
        "each stay on a rung; and how much better than the season's own line the sprints in the same conditions were, "
        "in the same week and one to four weeks later.\n\n"
        "Why no plain correlation is shown: time to peak velocity falls because the plan shortens the range, and "
        "sprint times fall because summer comes. As they are, the two always go together, whether the lifts did "
        "anything or not. So both trends are taken out first.\n\n"
        "How it is judged: the weeks of the bar are cut into three blocks, and each is turned round on itself in all "
        "combinations. Chance is the share of these turned seasons in which the strongest of all five lags is as "
        "strong as yours.\n\n"
        "What it cannot see: in simulated seasons with a realistic relation it spoke in 6 of 100, with a very large "
        "one in 76. Not shown does not mean not there. And that two things move together does not say that one made "
        "the other: sleep, school or weather can move both.");
}

} // namespace fleetrung::views
