// Which number of the set stands large: the time by which the rung is judged, or the velocity. Kept for each ladder.
#include "mobile/views/bench_view_model.hpp"

namespace fleetrung::views
{

QStringList BenchViewModel::largeChoices() const
{
    const QString velocity = velocityName();
    return {timeName(), velocity.left(1).toUpper() + velocity.mid(1)};
}

bool BenchViewModel::velocityIsLarge() const
{
    return openedLift() && preferences_->velocityIsLarge(QString::fromStdString(openedLift()->plan.ladder));
}

void BenchViewModel::setVelocityIsLarge(bool large)
{
    if (!openedLift() || large == velocityIsLarge())
        return;
    preferences_->setVelocityIsLarge(QString::fromStdString(openedLift()->plan.ladder), large);
    emit setChanged();
}

QString BenchViewModel::beside() const
{
    if (!velocityIsLarge())
        return velocity();
    return repetitions_.empty() ? QStringLiteral("–") : units().milliseconds(judgedTime(latest()).value);
}

QString BenchViewModel::besideName() const
{
    return velocityIsLarge() ? timeName() : velocityName();
}

QString BenchViewModel::besideNote() const
{
    if (!velocityIsLarge())
        return velocityNote();
    return repetitions_.empty() ? QString() : tr("± %1").arg(units().milliseconds(judgedTime(latest()).uncertainty));
}

QStringList BenchViewModel::numberTopics() const
{
    if (velocityIsLarge())
        return {QStringLiteral("mean-velocity"), QStringLiteral("peak-velocity")};
    return {QStringLiteral("time-to-peak"), QStringLiteral("band")};
}

QStringList BenchViewModel::besideTopics() const
{
    if (velocityIsLarge())
        return {QStringLiteral("time-to-peak"), QStringLiteral("band")};
    return {QStringLiteral("mean-velocity"), QStringLiteral("peak-velocity")};
}

} // namespace fleetrung::views
