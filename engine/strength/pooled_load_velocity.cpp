#include <algorithm>
#include <cmath>

#include "engine/strength/load_velocity_checks.hpp"

namespace fleetrung::strength
{
namespace
{

/// One session about its own mean point.
struct Centred {
    double meanLoad = 0, meanVelocity = 0;
    double sumLL = 0, sumLV = 0, sumVV = 0;
};

Centred centred(const std::vector<LoadVelocityPoint>& points)
{
    Centred sums;
    const auto count = static_cast<double>(points.size());
    for (const auto& point : points) {
        sums.meanLoad += point.loadKg / count;
        sums.meanVelocity += point.velocity / count;
    }
    for (const auto& point : points) {
        const double load = point.loadKg - sums.meanLoad, velocity = point.velocity - sums.meanVelocity;
        sums.sumLL += load * load;
        sums.sumLV += load * velocity;
        sums.sumVV += velocity * velocity;
    }
    return sums;
}

} // namespace

Expected<PooledLoadVelocity> poolLoadVelocity(std::span<const std::vector<LoadVelocityPoint>> sessions,
                                              double velocityAtMaximum)
{
    std::vector<Centred> own;
    double sumLL = 0, sumLV = 0, sumVV = 0;
    int points = 0, days = 0;
    for (const auto& session : sessions) {
        if (const auto sound = checkPoints(session, velocityAtMaximum); !sound)
            return tl::unexpected(sound.error());
        own.push_back(centred(session));
        sumLL += own.back().sumLL;
        sumLV += own.back().sumLV;
        sumVV += own.back().sumVV;
        points += static_cast<int>(session.size());
        days += session.empty() ? 0 : 1;
    }
    if (std::ranges::none_of(sessions, [](const auto& session) { return loadsDiffer(session); }))
        return fail(Code::NotAvailable, "", "in one session at least lift at two loads at least 10 % apart");
    const int freedom = points - days - 1;
    if (freedom < 2)
        return fail(Code::NotAvailable, "",
                    "a line over several sessions needs more loads: warm up at two or three in each");
    PooledLoadVelocity pooled;
    pooled.slope = sumLV / sumLL;
    if (!(pooled.slope < 0))
        return fail(Code::NotAvailable, "", noFall);
    pooled.residualDeviation = std::sqrt(std::max(0.0, sumVV - pooled.slope * sumLV) / freedom);
    pooled.slopeError = pooled.residualDeviation / std::sqrt(sumLL);
    for (std::size_t i = 0; i < sessions.size(); ++i) {
        PooledLoadVelocity::Session day;
        day.points = static_cast<int>(sessions[i].size());
        if (day.points > 0) {
            const double fromMean = (velocityAtMaximum - own[i].meanVelocity) / pooled.slope;
            day.estimatedMaximum = own[i].meanLoad + fromMean;
            const double atMean = pooled.residualDeviation / std::sqrt(static_cast<double>(day.points));
            day.standardError = std::hypot(atMean, fromMean * pooled.slopeError) / std::abs(pooled.slope);
        }
        pooled.sessions.push_back(day);
    }
    return pooled;
}

} // namespace fleetrung::strength
