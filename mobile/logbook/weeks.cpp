#include <map>
#include <tuple>

#include "engine/statistics/robust.hpp"
#include "mobile/logbook/evidence.hpp"
#include "mobile/logbook/failure.hpp"

namespace fleetrung::logbook
{
namespace
{

WeekPoint pointOf(const std::vector<const season::SessionEvidence*>& sessions, season::Metric metric)
{
    std::vector<double> times, errors, velocities, loads;
    for (const auto* session : sessions) {
        times.push_back(session->timeToPeak->value);
        errors.push_back(session->timeToPeak->uncertainty);
        loads.push_back(session->loadKg);
        if (const auto& velocity =
                metric == season::Metric::PeakVelocity ? session->peakVelocity : session->meanVelocity)
            velocities.push_back(velocity->value);
    }
    WeekPoint point;
    point.sessions = static_cast<int>(sessions.size());
    point.timeToPeak = statistics::median(times);
    point.uncertainty = statistics::median(errors);
    point.loadKg = statistics::median(loads);
    if (!velocities.empty())
        point.velocity = statistics::median(velocities);
    return point;
}

} // namespace

Expected<std::vector<WeekPoint>> Logbook::weeks(const Identifier& season, const std::string& ladder,
                                                CivilDate today) const
{
    const auto record = this->season(season);
    if (!record)
        return failure(record);
    const auto evidence = this->evidence(season, today + std::chrono::days{1}, ladder);
    if (!evidence)
        return failure(evidence);
    std::map<std::tuple<int, std::string, season::Side>, std::vector<const season::SessionEvidence*>> groups;
    for (const auto& session : *evidence)
        if (session.timeToPeak)
            groups[{daysBetween(record->row.start, session.day) / 7 + 1, session.rung, session.side}].push_back(
                &session);

    const auto* data = season::ladderOf(record->setup, season::standardSeasonData(), ladder);
    std::vector<WeekPoint> points;
    for (const auto& [place, sessions] : groups) {
        const auto* rung = data == nullptr ? nullptr : data->find(std::get<1>(place));
        auto point = pointOf(sessions, rung == nullptr ? season::Metric::MeanVelocity : rung->metric);
        std::tie(point.week, point.rung, point.side) = place;
        points.push_back(std::move(point));
    }
    return points;
}

} // namespace fleetrung::logbook
