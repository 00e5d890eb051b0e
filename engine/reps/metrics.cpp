#include "engine/reps/metrics.hpp"

#include <algorithm>
#include <cmath>

#include "engine/motion/gravity.hpp"

namespace fleetrung::reps
{
namespace
{

constexpr double tremor = 0.05;              // m/s2: what a held bar's acceleration does by itself
constexpr double twoPeakShare = 0.9;         // rules, evidence 5
constexpr double peakProminenceSpeed = 0.03; // m/s
constexpr double peakProminenceShare = 0.08;
constexpr double longGap = 0.06;      // s
constexpr double impact = 30.0;       // m/s2: no muscle turns a bar round so hard; starting value of this project
constexpr double impactWindow = 0.06; // s about the start

double squared(double x)
{
    return x * x;
}

double root(double variance)
{
    return std::sqrt(std::max(0.0, variance));
}

/// Standard uncertainty of a start or an end: where velocity crosses zero it is the velocity's over the slope; at a
/// dead stop it is what noise and tremor leave of a ramp's beginning.
double instantError(const motion::VerticalMotion& motion, const motion::Recording& recording, double time,
                    bool deadStop, double velocityVariance)
{
    const double sampling = 1.0 / motion::samplingRate(recording);
    if (!deadStop) {
        const double slope = std::max(0.3, std::abs(valueAt(motion, motion.acceleration, time)));
        return std::hypot(root(velocityVariance) / slope, 0.1 * sampling);
    }
    const double noise = recording.sensor.accelerometerNoise * std::sqrt(0.5 / sampling);
    const double reach = 0.06; // s of ramp that the fit rests on
    const double jerk = std::max(1.0, std::abs(valueAt(motion, motion.acceleration, time + reach) -
                                               valueAt(motion, motion.acceleration, time - reach)) /
                                          reach);
    return std::hypot(3.0 * std::hypot(noise * std::sqrt(sampling / reach), tremor) / jerk, 0.3 * sampling);
}

/// Whether velocity has a second peak of nearly the same height on the other side of a dip.
bool isTwoPeaked(const motion::VerticalMotion& motion, const Movement& up)
{
    const std::size_t first = sampleAt(motion, up.start), last = sampleAt(motion, up.end);
    const auto otherPeak = [&](std::size_t end, int step) {
        double lowest = up.peakVelocity;
        for (std::size_t i = up.peakSample; i != end; i += static_cast<std::size_t>(step)) {
            const double v = motion.velocity[i];
            lowest = std::min(lowest, v);
            const double prominence = std::max(peakProminenceSpeed, peakProminenceShare * v);
            if (v - lowest >= prominence && v >= twoPeakShare * up.peakVelocity)
                return true;
        }
        return false;
    };
    return otherPeak(last, +1) || otherPeak(first, -1);
}

Flags flagsOf(const motion::VerticalMotion& motion, const motion::Recording& recording, const Movement& up)
{
    Flags flags = 0;
    const std::size_t first = sampleAt(motion, up.start), last = sampleAt(motion, up.end);
    for (std::size_t i = first; i <= last; ++i) {
        const auto& sample = recording.samples[i];
        if (sample.specificForce.cwiseAbs().maxCoeff() >= 0.999 * recording.sensor.accelerometerRange ||
            sample.angularRate.cwiseAbs().maxCoeff() >= 0.999 * recording.sensor.gyroscopeRange)
            flags = flags | Flag::Clipped;
        if (i < last && motion.time[i + 1] - motion.time[i] > longGap)
            flags = flags | Flag::Gap;
    }
    if (std::none_of(motion.still.begin(), motion.still.end(), [](bool still) { return still; }))
        flags = flags | Flag::NoStillness;
    if (!recording.hasGyroscope)
        flags = flags | Flag::NoGyroscope;
    if (!up.fromDeadStop)
        for (std::size_t i = sampleAt(motion, up.start - impactWindow); i <= sampleAt(motion, up.start + impactWindow);
             ++i)
            if (motion.acceleration[i] > impact)
                flags = flags | Flag::Bounced;
    if (isTwoPeaked(motion, up))
        flags = flags | Flag::TwoPeaked;
    return flags;
}

/// End of the propulsive part: the first instant after the peak with acceleration below -g; the end where there is
/// none.
double propulsiveEnd(const motion::VerticalMotion& motion, const Movement& up)
{
    const std::size_t last = sampleAt(motion, up.end);
    for (std::size_t i = up.peakSample; i < last; ++i) {
        const double a0 = motion.acceleration[i], a1 = motion.acceleration[i + 1];
        if (a1 < -motion::standardGravity) {
            const double share = a0 <= -motion::standardGravity ? 0.0 : (a0 + motion::standardGravity) / (a0 - a1);
            return std::min(up.end, motion.time[i] + share * (motion.time[i + 1] - motion.time[i]));
        }
    }
    return up.end;
}

/// Mean velocity between two instants with its uncertainty.
Measured meanBetween(double displacement, double displacementError, double duration, double durationError)
{
    const double mean = displacement / duration;
    return {mean, std::hypot(displacementError / duration, mean * durationError / duration)};
}

} // namespace

Repetition measure(const motion::VerticalMotion& motion, const motion::Recording& recording, const Candidate& candidate,
                   const Lift& /*lift*/)
{
    const Movement& up = candidate.up;
    const std::vector<std::size_t> instants{sampleAt(motion, up.start), up.peakSample, sampleAt(motion, up.end)};
    const Eigen::MatrixXd p = motion.covariance(instants);
    enum { vStart, hStart, vPeak, hPeak, vEnd, hEnd };
    const double scale = recording.sensor.accelerometerScaleError;
    const auto rise = [&](int from, int to, double size) {
        return std::hypot(root(p(to, to) + p(from, from) - 2 * p(from, to)), scale * size);
    };

    Repetition rep;
    rep.concentricStart = up.start;
    rep.peakTime = up.peak;
    rep.concentricEnd = up.end;
    const double startError = instantError(motion, recording, up.start, up.fromDeadStop, p(vStart, vStart));
    const double endError = instantError(motion, recording, up.end, up.toDeadStop, p(vEnd, vEnd));
    const double startHeight = heightAt(motion, up.start);
    const double duration = up.end - up.start;
    const double range = heightAt(motion, up.end) - startHeight;
    const double rangeError = rise(hStart, hEnd, range);

    rep.range = {range, rangeError};
    rep.concentricDuration = {duration, std::hypot(startError, endError)};
    rep.meanVelocity = meanBetween(range, rangeError, duration, rep.concentricDuration.uncertainty);
    rep.peakVelocity = {up.peakVelocity, std::hypot(root(p(vPeak, vPeak)), scale * up.peakVelocity)};
    // Around its peak velocity is flat: what shifts the instant is the noise of acceleration over its slope.
    const double jerk = std::max(1.0, std::abs(valueAt(motion, motion.acceleration, up.peak + 0.02) -
                                               valueAt(motion, motion.acceleration, up.peak - 0.02)) /
                                          0.04);
    const double peakError = (recording.sensor.accelerometerNoise * std::sqrt(25.0) + 0.02) / jerk;
    rep.timeToPeakVelocity = {up.peak - up.start, std::hypot(startError, peakError)};
    const double toPeak = heightAt(motion, up.peak) - startHeight;
    rep.displacementToPeak = {toPeak, rise(hStart, hPeak, toPeak)};

    const double propulsive = propulsiveEnd(motion, up);
    rep.meanPropulsiveVelocity =
        meanBetween(heightAt(motion, propulsive) - startHeight, rangeError, propulsive - up.start, startError);

    const auto velocityAfter = [&](double delay) {
        const double t = up.start + delay;
        const double slope = valueAt(motion, motion.acceleration, t);
        return Measured{valueAt(motion, motion.velocity, t), std::hypot(root(p(vStart, vStart)), slope * startError)};
    };
    rep.velocityAt100ms = velocityAfter(0.1);
    rep.velocityAt200ms = velocityAfter(0.2);

    rep.eccentricStart = up.start;
    if (candidate.down) {
        const Movement& down = *candidate.down;
        const double peakVariance = motion.covariance(std::vector<std::size_t>{down.peakSample})(0, 0);
        rep.eccentricStart = down.start;
        rep.eccentricPeakVelocity = {down.peakVelocity, std::hypot(root(peakVariance), scale * down.peakVelocity)};
        const double downStartError = instantError(motion, recording, down.start, down.fromDeadStop, peakVariance);
        const double downEnd = std::min(down.end, up.start);
        rep.eccentricDuration = {downEnd - down.start, std::hypot(downStartError, startError)};
        rep.reversalTime = {up.start - down.peak, std::hypot(startError, peakError)};
    }
    rep.flags = flagsOf(motion, recording, up);
    return rep;
}

SetSummary summarise(const std::vector<Repetition>& repetitions, const Lift& lift)
{
    SetSummary summary;
    if (repetitions.empty())
        return summary;
    const auto speed = [&](const Repetition& rep) {
        return lift.metric == EvidenceMetric::PeakVelocity ? rep.peakVelocity.value : rep.meanVelocity.value;
    };
    double fastest = 0, soonest = repetitions.front().timeToPeakVelocity.value, sum = 0;
    for (const auto& rep : repetitions) {
        fastest = std::max(fastest, speed(rep));
        soonest = std::min(soonest, rep.timeToPeakVelocity.value);
        sum += rep.timeToPeakVelocity.value;
    }
    const double count = static_cast<double>(repetitions.size());
    summary.meanTimeToPeak = sum / count;
    double squares = 0;
    for (const auto& rep : repetitions)
        squares += squared(rep.timeToPeakVelocity.value - summary.meanTimeToPeak);
    summary.spreadTimeToPeak = repetitions.size() > 1 ? std::sqrt(squares / (count - 1)) : 0.0;
    summary.velocityLoss = fastest > 0 ? 1.0 - speed(repetitions.back()) / fastest : 0.0;
    summary.timeToPeakDrift = soonest > 0 ? repetitions.back().timeToPeakVelocity.value / soonest - 1.0 : 0.0;
    return summary;
}

} // namespace fleetrung::reps
