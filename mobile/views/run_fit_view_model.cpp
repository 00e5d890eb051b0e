#include "mobile/views/run_fit_view_model.hpp"

#include <algorithm>
#include <cmath>

#include "mobile/plot/pictures.hpp"
#include "mobile/views/plot_words.hpp"
#include "mobile/views/track_words.hpp"

namespace fleetrung::views
{
namespace
{

QVariantMap row(const QString& name, const QString& value, const QString& note)
{
    return {{QStringLiteral("name"), name}, {QStringLiteral("value"), value}, {QStringLiteral("note"), note}};
}

QString sentence(const Error& error)
{
    QString text = QString::fromStdString(error.message);
    return text.left(1).toUpper() + text.mid(1) + QLatin1Char('.');
}

} // namespace

RunFitViewModel::RunFitViewModel(const Preferences* preferences, QObject* parent)
    : QObject(parent), preferences_(preferences), numbers_({"name", "value", "note"}, this),
      forces_({"name", "value", "note"}, this)
{
    connect(preferences, &Preferences::unitsChanged, this, [this] {
        showRows();
        emit changed();
    });
}

void RunFitViewModel::show(logbook::RunStory story)
{
    story_ = std::move(story);
    chooseSplit(std::nullopt);
    showRows();
    emit changed();
}

void RunFitViewModel::useAll(bool all)
{
    if (story_)
        emit asked(story_->run.id, all);
}

const logbook::RunFit* RunFitViewModel::fit() const
{
    return story_ && story_->fit && *story_->fit ? &**story_->fit : nullptr;
}

const logbook::FlyingRun* RunFitViewModel::flying() const
{
    return story_ && story_->flying && *story_->flying ? &**story_->flying : nullptr;
}

void RunFitViewModel::showRows()
{
    numbers_.show(fit() ? fitRows() : flying() ? flyingRows() : QList<QVariantMap>{});
    forces_.show(fit() && fit()->force ? forceRows() : QList<QVariantMap>{});
}

QString RunFitViewModel::title() const
{
    return story_ ? testName(story_->run, units()) : QString();
}

QString RunFitViewModel::when() const
{
    if (!story_)
        return {};
    QStringList parts{units().day(story_->run.run.trainingDay)};
    for (const auto& key : {story_->run.surface, story_->run.timing})
        if (!key.empty())
            parts += trackWord(key);
    return parts.join(QStringLiteral(" · "));
}

QString RunFitViewModel::time() const
{
    return story_ ? units().sprintTime(story_->run.time) : QString();
}

QStringList RunFitViewModel::facts() const
{
    if (!story_)
        return {};
    const store::Sprint& run = story_->run;
    QStringList conditions;
    if (run.competition)
        conditions += tr("competition");
    if (run.test)
        conditions += tr("test day");
    if (run.windMps)
        conditions += tr("wind %1 m/s").arg(units().signedNumber(*run.windMps, 1));
    if (run.start == "flying" && run.runIn > 0)
        conditions += tr("run-in %1").arg(units().distance(run.runIn));
    if (!run.shoes.empty())
        conditions += trackWord(run.shoes);
    if (run.temperatureC)
        conditions += tr("%1 °C").arg(units().number(*run.temperatureC, 0));
    if (run.altitudeM)
        conditions += tr("%1 m above the sea").arg(units().number(*run.altitudeM, 0));
    QStringList lines;
    if (!conditions.isEmpty())
        lines += conditions.join(QStringLiteral(" · "));
    if (run.contactS)
        lines += tr("Ground contact near top speed %1, ± 4 ms from video").arg(units().milliseconds(*run.contactS));
    if (run.stepLengthM)
        lines += tr("Step length near top speed %1").arg(units().length(*run.stepLengthM));
    if (!run.note.empty())
        lines += QString::fromStdString(run.note);
    return lines;
}

QString RunFitViewModel::refused() const
{
    if (!story_ || fit() || flying() || (!story_->fit && !story_->flying))
        return {};
    if (story_->flying)
        return sentence(story_->flying->error());
    if (story_->run.splits.empty())
        return tr("Without splits a run has one time and no curve. Three to five splits, the first within 10 m and the "
                  "last at 30 m or further, give top speed and acceleration.");
    const Error& error = story_->fit->error();
    return error.code == Code::NotConverged ? tr("No answer was found. %1").arg(sentence(error))
                                            : tr("No fit. %1").arg(sentence(error));
}

/// "± 0.05", "± 0.004": one figure at least.
QString RunFitViewModel::errorText(double error) const
{
    constexpr double seen = 0.0095; // written with two decimals it would be 0.01
    return tr("± %1").arg(units().number(error, error < seen ? 3 : 2));
}

QList<QVariantMap> RunFitViewModel::fitRows() const
{
    const sprint::SprintFit& found = fit()->fit;
    const auto pm = [this](double error) { return error > 0 ? errorText(error) : tr("error not known"); };
    QList<QVariantMap> rows{row(tr("Top speed"), units().velocity(found.model.vmax), pm(found.vmaxError)),
                            row(tr("Time constant τ: the shorter, the quicker it is reached"),
                                units().sprintTime(found.model.tau), pm(found.tauError)),
                            row(tr("Acceleration at the start"),
                                tr("%1 m/s²").arg(units().number(found.model.vmax / found.model.tau, 1)), {})};
    if (found.offsetFree)
        rows += row(tr("First movement after the clock began (fitted)"), units().sprintTime(found.startOffset),
                    pm(found.offsetError));
    rows += row(tr("Splits lie from the fit by"), units().milliseconds(found.residualRms), tr("root mean square"));
    return rows;
}

QList<QVariantMap> RunFitViewModel::flyingRows() const
{
    const auto& [speed, history] = *flying();
    return {row(tr("Flying speed"), units().velocity(speed.speed), errorText(speed.error)),
            row(tr("Of the best so far"), units().percent(speed.speed / history.best.speed),
                history.isBest
                    ? tr("this is the best")
                    : tr("%1 on %2").arg(units().velocity(history.best.speed), units().day(history.best.day)))};
}

QList<QVariantMap> RunFitViewModel::forceRows() const
{
    const auto& [profile, mass, air, noTemperature, noAltitude, noWind] = *fit()->force;
    return {row(tr("Greatest force F0"), tr("%1 N/kg").arg(units().number(profile.f0 / mass, 2)),
                tr("%1 N").arg(units().number(profile.f0, 0))),
            row(tr("Greatest power"), tr("%1 W/kg").arg(units().number(profile.pmax / mass, 1)),
                tr("%1 W").arg(units().number(profile.pmax, 0))),
            row(tr("Speed at which force ends, v0"), units().velocity(profile.v0), {}),
            row(tr("Greatest share of force forwards"), units().percent(profile.rfMax), tr("from 0.3 s on")),
            row(tr("Its loss with speed (DRF)"), tr("%1 %").arg(units().signedNumber(100 * profile.drf, 1)),
                tr("for each m/s"))};
}

QString RunFitViewModel::forceNote() const
{
    if (!fit())
        return flying() ? tr("Force and power are not available: a flying start shows no acceleration.") : QString();
    if (!fit()->force)
        return tr("Force and power are not available: %1.").arg(QString::fromStdString(fit()->force.error().message));
    const logbook::ForceProfile& profile = *fit()->force;
    QStringList assumed;
    if (profile.assumedTemperature)
        assumed += tr("20 °C");
    if (profile.assumedAltitude)
        assumed += tr("the height of the sea");
    if (profile.assumedWind)
        assumed += tr("still air");
    QString note = tr("For %1, from the fit and the drag of the air.").arg(units().mass(profile.massKg));
    if (!assumed.isEmpty())
        note += tr(" Not typed, and taken as: %1.").arg(assumed.join(QStringLiteral(", ")));
    return note;
}

QStringList RunFitViewModel::notes() const
{
    QStringList lines;
    if (!fit())
        return lines;
    for (const auto& note : fit()->fit.notes)
        lines += QString::fromStdString(note);
    const auto& start = fit()->options.start;
    if (start.clock == sprint::Clock::Gun && start.reaction)
        lines +=
            tr("The clock began with the gun, the reaction of %1 s is known.").arg(units().number(*start.reaction, 3));
    else if (start.clock == sprint::Clock::FirstMovement)
        lines += tr("The clock is taken to begin with the first movement. If it began at a beam, type the way to it.");
    else if (start.clock == sprint::Clock::Beam)
        lines += tr("The clock began at a beam %1 in front of the start.")
                     .arg(tr("%1 m").arg(units().number(start.beamDistance, 2)));
    else
        lines += tr("When the clock began is not known against the first movement, so it was fitted too.");
    return lines;
}

QStringList RunFitViewModel::history() const
{
    const sprint::HistoryComparison* compared = story_ && story_->topSpeeds ? &*story_->topSpeeds
                                                : flying()                  ? &flying()->history
                                                                            : nullptr;
    if (!compared)
        return {};
    QStringList lines;
    if (fit() && compared->isBest)
        lines += compared->change ? tr("The best top speed so far from this start.")
                                  : tr("The first fit of this start: later ones are compared with it.");
    else if (fit())
        lines += tr("Best top speed from this start: %1 on %2.")
                     .arg(units().velocity(compared->best.speed), units().day(compared->best.day));
    if (!compared->change)
        return lines;
    const sprint::Change& change = *compared->change;
    const QString before = change.runs == 1 ? tr("the run before") : tr("the median of the last %1").arg(change.runs);
    lines += tr("%1 m/s against %2 (%3).")
                 .arg(units().signedNumber(change.change, 2), before, units().velocity(change.usual));
    lines += change.beyond ? tr("That is more than timing explains (%1). Days differ too: what lasts counts.")
                                 .arg(errorText(change.error))
                           : tr("Timing explains it (%1): no change is shown.").arg(errorText(change.error));
    return lines;
}

bool RunFitViewModel::canUseAll() const
{
    return usesAll() || (fit() && !std::ranges::all_of(fit()->fit.residuals, &sprint::SplitResidual::used));
}

plot::SprintCurveInput RunFitViewModel::input() const
{
    return fit() ? plot::sprintCurveInput(fit()->fit, fit()->options.start.beamDistance) : plot::SprintCurveInput{};
}

plot::PlotValue RunFitViewModel::curve() const
{
    return shownPlot(fit() ? plot::sprintCurve(input()) : plot::Plot{}, preferences_->units());
}

plot::PlotValue RunFitViewModel::residuals() const
{
    return shownPlot(fit() ? plot::splitResiduals(input()) : plot::Plot{}, preferences_->units());
}

void RunFitViewModel::chooseSplit(std::optional<std::size_t> split)
{
    if (split == split_)
        return;
    split_ = split;
    emit splitChanged();
}

void RunFitViewModel::touchCurve(const QPointF& place)
{
    const auto stretches = input().stretches;
    const auto found = std::ranges::find_if(
        stretches, [&place](const plot::SprintStretch& one) { return place.x() <= one.metres.to; });
    if (found != stretches.end())
        chooseSplit(static_cast<std::size_t>(found - stretches.begin()));
}

void RunFitViewModel::touchResiduals(const QPointF& place)
{
    const auto stretches = input().stretches;
    if (stretches.empty())
        return;
    const auto nearest = std::ranges::min_element(
        stretches, {}, [&place](const plot::SprintStretch& one) { return std::abs(one.metres.to - place.x()); });
    chooseSplit(static_cast<std::size_t>(nearest - stretches.begin()));
}

void RunFitViewModel::stepSplit(int by)
{
    const auto count = static_cast<int>(input().stretches.size());
    if (count == 0)
        return;
    const int next = split_ ? static_cast<int>(*split_) + by : by > 0 ? 0 : count - 1;
    chooseSplit(static_cast<std::size_t>(std::clamp(next, 0, count - 1)));
}

void RunFitViewModel::releaseSplit()
{
    chooseSplit(std::nullopt);
}

QString RunFitViewModel::splitText() const
{
    const auto stretches = input().stretches;
    if (!split_ || *split_ >= stretches.size() || *split_ >= fit()->fit.residuals.size())
        return {};
    const plot::SprintStretch& stretch = stretches[*split_];
    const sprint::SplitResidual& found = fit()->fit.residuals[*split_];
    const QString late = units().milliseconds(std::abs(found.residual));
    QString text = tr("%1 to %2: %3 on average. At %4 s the split is %5 the curve.")
                       .arg(units().distance(stretch.metres.from), units().distance(stretch.metres.to),
                            units().velocity(stretch.speed), units().number(found.split.time, 2),
                            found.residual > 0 ? tr("%1 later than").arg(late) : tr("%1 sooner than").arg(late));
    if (!found.used)
        text += QLatin1Char(' ') + tr("It is left out: %1.").arg(QString::fromStdString(found.why));
    return text;
}

} // namespace fleetrung::views
