// The words around the live set. Kept apart from what changes it.
#include "mobile/views/bench_view_model.hpp"

#include <cmath>

#include "engine/reps/lift.hpp"
#include "engine/strength/velocity_loss.hpp"
#include "mobile/plot/pictures.hpp"
#include "mobile/views/bar_words.hpp"
#include "mobile/views/engine_words.hpp"
#include "mobile/views/plot_words.hpp"

namespace fleetrung::views
{
namespace
{

/// As printed: a number and its band are compared in the step in which both are read.
double inMilliseconds(double seconds)
{
    return std::round(seconds * 1000);
}

} // namespace

QString BenchViewModel::repetitionsText(int count)
{
    return count == 1 ? tr("1 repetition") : tr("%1 repetitions").arg(count);
}

QString BenchViewModel::number() const
{
    if (repetitions_.empty())
        return QStringLiteral("–");
    return velocityIsLarge() ? units().number(velocities().back(), 2)
                             : units().number(judgedTime(latest()).value * 1000, 0);
}

bool BenchViewModel::byContactTime() const
{
    return openedLift() && openedLift()->plan.metric == season::Metric::ContactTime;
}

bool BenchViewModel::byDropTime() const
{
    return openedLift() && openedLift()->plan.metric == season::Metric::DropTime;
}

/// The time by which the rung is judged: a short drop squat by the time from its quickest descent to rest.
reps::Measured BenchViewModel::judgedTime(const reps::Repetition& repetition) const
{
    return byDropTime() && repetition.reversalTime ? *repetition.reversalTime : repetition.timeToPeakVelocity;
}

QString BenchViewModel::timeName() const
{
    if (byDropTime())
        return tr("Drop time");
    return byContactTime() ? tr("Contact time") : tr("Time to peak velocity");
}

QString BenchViewModel::numberUnit() const
{
    if (velocityIsLarge())
        return tr("m/s, %1").arg(velocityName());
    return byDropTime() ? tr("ms from the quickest descent to rest") : tr("ms to peak velocity");
}

BenchViewModel::Verdict BenchViewModel::verdict() const
{
    if (repetitions_.empty() || !openedLift())
        return None;
    if (reps::has(latest().flags, reps::Flag::TwoPeaked) && !byDropTime())
        return NoEvidence;
    const auto& band = openedLift()->plan.targetBand;
    const double time = inMilliseconds(judgedTime(latest()).value);
    return time < inMilliseconds(band.low) ? Sooner : time > inMilliseconds(band.high) ? Later : Inside;
}

QString BenchViewModel::verdictText() const
{
    if (repetitions_.empty() || !openedLift())
        return {};
    const auto& band = openedLift()->plan.targetBand;
    const double time = inMilliseconds(judgedTime(latest()).value);
    const QString plusMinus = tr("± %1").arg(units().number(judgedTime(latest()).uncertainty * 1000, 0));
    switch (verdict()) {
    case Inside:
        return tr("inside the band  %1").arg(plusMinus);
    case Sooner:
        return tr("%1 ms sooner than the band").arg(units().number(inMilliseconds(band.low) - time, 0));
    case Later:
        return tr("%1 ms later than the band").arg(units().number(time - inMilliseconds(band.high), 0));
    case NoEvidence:
        return tr("two peaks: no evidence");
    case None:
        break;
    }
    return {};
}

plot::PlotValue BenchViewModel::strikeLine() const
{
    plot::StrikeLineInput input;
    int number = 0;
    for (const auto& repetition : repetitions_)
        input.repetitions.push_back({.number = ++number,
                                     .timeToPeak = judgedTime(repetition).value,
                                     .uncertainty = judgedTime(repetition).uncertainty,
                                     .counts = !reps::has(repetition.flags, reps::Flag::TwoPeaked) &&
                                               !reps::has(repetition.flags, reps::Flag::ShortRange)});
    if (const BenchLift* lift = openedLift())
        input.targetBand = plot::Span{lift->plan.targetBand.low, lift->plan.targetBand.high};
    plot::Plot picture = plot::strikeLine(input);
    if (byDropTime()) {
        picture.x.title = "time from the quickest descent to rest";
        picture.note = "each mark is a repetition, from its quickest descent";
    }
    return shownPlot(std::move(picture), units());
}

bool BenchViewModel::byPeakVelocity() const
{
    return openedLift() && openedLift()->plan.metric == season::Metric::PeakVelocity;
}

std::vector<double> BenchViewModel::velocities() const
{
    std::vector<double> values;
    for (const auto& repetition : repetitions_)
        values.push_back(byPeakVelocity() ? repetition.peakVelocity.value : repetition.meanVelocity.value);
    return values;
}

QString BenchViewModel::velocity() const
{
    return repetitions_.empty() ? QStringLiteral("–") : units().velocity(velocities().back());
}

QString BenchViewModel::velocityName() const
{
    return byPeakVelocity() ? tr("peak velocity") : tr("mean velocity");
}

QString BenchViewModel::velocityNote() const
{
    if (repetitions_.empty())
        return {};
    const auto& measured = byPeakVelocity() ? latest().peakVelocity : latest().meanVelocity;
    return tr("± %1").arg(units().number(measured.uncertainty, measured.uncertainty < 0.01 ? 3 : 2));
}

bool BenchViewModel::isBallistic() const
{
    const reps::Lift* lift = openedLift() ? reps::findLift(openedLift()->plan.lift) : nullptr;
    return lift && lift->ballistic;
}

/// Of a ballistic rung the range is the way from onset to peak velocity: what follows is flight.
QString BenchViewModel::range() const
{
    if (repetitions_.empty())
        return QStringLiteral("–");
    return units().length((isBallistic() ? latest().displacementToPeak : latest().range).value);
}

QString BenchViewModel::rangeName() const
{
    return isBallistic() ? tr("range to peak") : tr("range");
}

QString BenchViewModel::rangeNote() const
{
    if (!openedLift())
        return {};
    const auto& band = openedLift()->plan.range;
    return tr("rung %1").arg(units().lengthNumber(band.low) + QStringLiteral("–") + units().lengthNumber(band.high));
}

QString BenchViewModel::loss() const
{
    const auto values = velocities();
    return units().percent(strength::velocityLoss(values));
}

QString BenchViewModel::lossNote() const
{
    return openedLift() ? tr("stop at %1").arg(units().percent(openedLift()->plan.setStop)) : QString();
}

QString BenchViewModel::leftText() const
{
    // The range of a rung whose bar is thrown or dropped tells nothing of what is left.
    if (!openedLift() || openedLift()->plan.metric != season::Metric::MeanVelocity || repetitions_.size() < 3)
        return {};
    const auto values = velocities();
    const QString left = views::leftText(static_cast<int>(values.size()), strength::velocityLoss(values),
                                         openedLift()->plan.lift, units());
    return left.isEmpty() ? QString() : tr("By the loss %1: a guess. The stop rests on the loss.").arg(left);
}

bool BenchViewModel::stopNow() const
{
    if (!openedLift() || repetitions_.empty())
        return false;
    const auto values = velocities();
    return strength::shouldStopSet(values, openedLift()->plan.setStop);
}

QString BenchViewModel::stopText() const
{
    if (!openedLift())
        return {};
    return tr("Velocity has fallen by %1; this set ends at %2.")
        .arg(loss(), units().percent(openedLift()->plan.setStop));
}

QStringList BenchViewModel::planLines() const
{
    const BenchLift* lift = openedLift();
    if (!lift)
        return {};
    QStringList lines;
    QStringList warmUp;
    for (const auto& set : lift->plan.warmUp)
        warmUp += setLine(set);
    if (!warmUp.isEmpty())
        lines += tr("Warm-up: %1").arg(warmUp.join(QStringLiteral(", ")));
    if (lift->plan.probe)
        lines += tr("Probe: %1, full intent").arg(setLine(*lift->plan.probe));
    if (!lift->plan.work.empty())
        lines += tr("Work: %1 sets of %2").arg(lift->plan.work.size()).arg(setLine(lift->plan.work.front()));
    if (!lift->plan.note.empty())
        lines += units().withLocalDates(engineText(lift->plan.note));
    return lines + extrasOf(*lift);
}

QString BenchViewModel::caution() const
{
    QStringList texts;
    if (const BenchLift* lift = openedLift())
        for (const auto& key : lift->plan.cautions)
            if (const auto* caution = season::findCaution(season::standardSeasonData(), key))
                texts += engineText(caution->text);
    return texts.join(QStringLiteral("\n"));
}

QString BenchViewModel::restText() const
{
    if (!lastSet_ || !openedLift() || openedLift()->plan.restSeconds <= 0)
        return {};
    const auto left =
        static_cast<int>(openedLift()->plan.restSeconds) - static_cast<int>(sinceLastSet_.elapsed() / 1000);
    return left <= 0 ? tr("rested") : tr("rest %1:%2").arg(left / 60).arg(left % 60, 2, 10, QLatin1Char('0'));
}

QString BenchViewModel::lastSetText() const
{
    if (!lastSet_)
        return {};
    QStringList parts;
    if (lastSet_->timeToPeak)
        parts += units().milliseconds(*lastSet_->timeToPeak);
    parts += repetitionsText(lastSet_->repetitions);
    if (lastSet_->meanVelocity)
        parts += units().velocity(*lastSet_->meanVelocity);
    parts += units().mass(lastSet_->loadKg);
    return parts.join(QStringLiteral(" · "));
}

} // namespace fleetrung::views
