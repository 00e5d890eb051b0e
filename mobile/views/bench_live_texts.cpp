// The words around the live set. Kept apart from what changes it.
#include "mobile/views/bench_view_model.hpp"

#include <cmath>

#include "engine/strength/velocity_loss.hpp"
#include "mobile/plot/pictures.hpp"

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
    return repetitions_.empty() ? QStringLiteral("–") : units().number(latest().timeToPeakVelocity.value * 1000, 0);
}

QString BenchViewModel::numberUnit() const
{
    return tr("ms to peak velocity");
}

BenchViewModel::Verdict BenchViewModel::verdict() const
{
    if (repetitions_.empty() || !openedLift())
        return None;
    if (reps::has(latest().flags, reps::Flag::TwoPeaked))
        return NoEvidence;
    const auto& band = openedLift()->plan.targetBand;
    const double time = inMilliseconds(latest().timeToPeakVelocity.value);
    return time < inMilliseconds(band.low) ? Sooner : time > inMilliseconds(band.high) ? Later : Inside;
}

QString BenchViewModel::verdictText() const
{
    if (repetitions_.empty() || !openedLift())
        return {};
    const auto& band = openedLift()->plan.targetBand;
    const double time = inMilliseconds(latest().timeToPeakVelocity.value);
    const QString plusMinus = tr("± %1").arg(units().number(latest().timeToPeakVelocity.uncertainty * 1000, 0));
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
                                     .timeToPeak = repetition.timeToPeakVelocity.value,
                                     .uncertainty = repetition.timeToPeakVelocity.uncertainty,
                                     .counts = !reps::has(repetition.flags, reps::Flag::TwoPeaked) &&
                                               !reps::has(repetition.flags, reps::Flag::ShortRange)});
    if (const BenchLift* lift = openedLift())
        input.targetBand = plot::Span{lift->plan.targetBand.low, lift->plan.targetBand.high};
    return {plot::strikeLine(input)};
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

QString BenchViewModel::range() const
{
    return repetitions_.empty() ? QStringLiteral("–") : units().length(latest().range.value);
}

QString BenchViewModel::rangeNote() const
{
    if (!openedLift())
        return {};
    const auto& band = openedLift()->plan.range;
    return tr("rung %1").arg(units().lengthRange(band.low, band.high));
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
