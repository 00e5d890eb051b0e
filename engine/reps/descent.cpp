// How the bar is let down, braked and turned round.
#include <algorithm>
#include <cmath>

#include "engine/reps/measurement.hpp"

namespace fleetrung::reps
{
namespace
{

constexpr double reversalReach = 0.1; // s after concentric start that still belong to the reversal

} // namespace

void Measurement::descent(Repetition& rep) const
{
    rep.eccentricStart = up_.start;
    if (!down_)
        return;
    const Movement& down = *down_;
    constexpr std::size_t descentPeak = Windows + earlyWindows.size() + 1;
    const double peakVariance = joint_.variance({JointMotion::velocity(descentPeak, 1)});
    rep.eccentricStart = down.start;
    rep.eccentricPeakVelocity = Measured{down.peakVelocity, std::sqrt(peakVariance)};
    const double downStartError = instantError(motion_, recording_, down.start, down.fromDeadStop, peakVariance);
    const double downEnd = std::min(down.end, up_.start);
    rep.eccentricDuration = Measured{downEnd - down.start, std::hypot(downStartError, startError_)};
    reversal(rep, down);
    if (lift_.metric == EvidenceMetric::DropTime)
        dropStop(rep, down, downEnd);
}

/// Where acceleration goes through zero: a drop is braked much sooner than it gathered speed, and a curve through the
/// whole of so skewed a peak leans to its flat side.
double Measurement::fastestDescent(const Movement& down) const
{
    constexpr double reach = 0.02;   // s
    constexpr double leastSlope = 1; // m/s3: below it noise would choose
    double time = down.peak;
    for (int i = 0; i < 3; ++i) {
        const auto fit = fitAt(acceleration(), time);
        if (fit.slope < leastSlope)
            return down.peak;
        time = std::clamp(time - fit.value / fit.slope, down.peak - reach, down.peak + reach);
    }
    return time;
}

void Measurement::reversal(Repetition& rep, const Movement& down) const
{
    const double fastest = fastestDescent(down);
    const double fallError = peakErrorAt(fastest);
    const double time = up_.start - fastest;
    rep.reversalTime = Measured{time, std::hypot(startError_, fallError)};
    if (!sampledAt(lowestShapeRate) || time <= 0)
        return;
    const double until = std::min(up_.peak, up_.start + reversalReach);
    rep.peakReversalAcceleration = atPeak(extremeBetween(acceleration(), fastest, until, +1));
    if (up_.fromDeadStop)
        return;
    const double turning = fitAt(acceleration(), up_.start).value;
    const double slope = turning / time;
    rep.brakingSlope = Measured{
        slope, std::hypot(atPeak({up_.start, turning}).uncertainty, slope * rep.reversalTime->uncertainty) / time};
}

void Measurement::dropStop(Repetition& rep, const Movement& down, double downEnd) const
{
    constexpr std::size_t descentStart = Windows + earlyWindows.size(), descentEnd = descentStart + 2;
    const bool pauses = down.toDeadStop && up_.fromDeadStop;
    const double stopError = pauses ? instantError(motion_, recording_, downEnd, true, 0) : startError_;
    const double fastest = fastestDescent(down);
    rep.dropStopTime = Measured{downEnd - fastest, std::hypot(peakErrorAt(fastest), stopError)};
    rep.stopDepth = rise(descentEnd, descentStart, heightAt(motion_, down.start) - heightAt(motion_, downEnd), 0);
}

} // namespace fleetrung::reps
