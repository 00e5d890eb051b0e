#include "mobile/views/day_clock.hpp"

#include <QDateTime>
#include <QTimeZone>

namespace fleetrung::views
{

store::Moment DayClock::now() const
{
    const QDateTime local = QDateTime::currentDateTime();
    store::Moment moment;
    moment.utcSeconds = local.toSecsSinceEpoch();
    moment.offsetMinutes = local.offsetFromUtc() / 60;
    moment.zone = QTimeZone::systemTimeZoneId().toStdString();
    const QDate day = local.addSecs(-4 * 3600).date();
    moment.trainingDay = CivilDate{std::chrono::days{QDate(1970, 1, 1).daysTo(day)}};
    if (fixed_) {
        moment.trainingDay = *fixed_;
        moment.utcSeconds = fixed_->time_since_epoch().count() * std::int64_t{86400} + 17 * 3600;
        moment.offsetMinutes = 0;
        moment.zone = "UTC";
    }
    return moment;
}

} // namespace fleetrung::views
