#include "engine/season/load_correction.hpp"

#include <algorithm>
#include <cmath>
#include <vector>

#include "engine/base/numbers.hpp"
#include "engine/statistics/reliability.hpp"
#include "engine/statistics/robust.hpp"

namespace fleetrung::season
{
namespace
{

constexpr double thousandths = 1000;

using Value = std::optional<Measured> LoadPoint::*;

/// Slopes of all pairs of one session that lie far enough apart.
std::vector<double> pairSlopes(const SessionEvidence& session, Value value, const Rules& rules)
{
    std::vector<double> slopes;
    for (const auto& light : session.loads)
        for (const auto& heavy : session.loads)
            if (light.*value && heavy.*value && light.loadKg > 0 &&
                heavy.loadKg >= (1 + rules.loadCorrectionSpread) * light.loadKg)
                slopes.push_back(((heavy.*value)->value - (light.*value)->value) / (heavy.loadKg - light.loadKg));
    return slopes;
}

/// Pairs of one session share its day: each session counts once.
std::optional<LoadSlope> slopeOf(std::span<const SessionEvidence> sessions, Value value, const Rules& rules)
{
    std::vector<double> bySession;
    std::size_t pairs = 0;
    for (const auto& session : sessions) {
        const auto slopes = pairSlopes(session, value, rules);
        pairs += slopes.size();
        if (!slopes.empty())
            bySession.push_back(statistics::mean(slopes));
    }
    if (static_cast<double>(pairs) < rules.loadCorrectionPairs ||
        static_cast<double>(bySession.size()) < rules.loadCorrectionSessions)
        return std::nullopt;
    return LoadSlope{statistics::mean(bySession),
                     statistics::sampleDeviation(bySession) / std::sqrt(static_cast<double>(bySession.size()))};
}

} // namespace

LoadSlopes loadSlopes(std::span<const SessionEvidence> sessions, const Rules& rules)
{
    return {slopeOf(sessions, &LoadPoint::timeToPeak, rules), slopeOf(sessions, &LoadPoint::velocity, rules)};
}

bool nearLoad(double loadKg, double wantedKg, const Rules& rules)
{
    return std::abs(loadKg - wantedKg) <= rules.loadTolerance * wantedKg + 1e-9;
}

std::optional<Measured> corrected(const Measured& measured, double loadKg, double wantedKg,
                                  const std::optional<LoadSlope>& slope, const Rules& rules)
{
    if (nearLoad(loadKg, wantedKg, rules))
        return measured;
    const double off = loadKg - wantedKg;
    if (!slope || std::abs(off) > rules.loadCorrectionLimit * wantedKg + 1e-9)
        return std::nullopt;
    return Measured{roundTo(measured.value - slope->perKg * off, thousandths),
                    roundTo(std::hypot(measured.uncertainty, slope->standardError * off), thousandths)};
}

std::optional<SessionEvidence> atLoad(const SessionEvidence& session, double wantedKg, Metric metric,
                                      const LoadSlopes& slopes, const Rules& rules)
{
    if (wantedKg <= 0 || nearLoad(session.loadKg, wantedKg, rules))
        return session;
    auto moved = session;
    auto& velocity = metric == Metric::PeakVelocity ? moved.peakVelocity : moved.meanVelocity;
    const auto move = [&](std::optional<Measured>& value, const std::optional<LoadSlope>& slope) {
        if (value)
            value = corrected(*value, session.loadKg, wantedKg, slope, rules);
    };
    move(moved.timeToPeak, slopes.time);
    move(velocity, slopes.velocity);
    if (!moved.timeToPeak && !velocity)
        return std::nullopt;
    return moved;
}

} // namespace fleetrung::season
