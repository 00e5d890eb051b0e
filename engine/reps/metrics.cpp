#include "engine/reps/metrics.hpp"

#include <algorithm>
#include <cmath>

#include "engine/motion/gravity.hpp"
#include "engine/reps/flags.hpp"
#include "engine/reps/measurement.hpp"
#include "engine/reps/phases.hpp"

namespace fleetrung::reps
{
namespace
{

constexpr double tremor = 0.05;        // m/s2: what a held bar's acceleration does by itself
constexpr double rateTolerance = 0.97; // a sensor set to 200 Hz may send 198 samples a second

std::vector<double> instantsOf(const Movement& up, double end, const std::optional<Movement>& down)
{
    std::vector<double> instants{up.start, up.peak, end};
    for (const double window : earlyWindows)
        instants.push_back(std::min(up.start + window, up.end));
    if (down)
        for (const double instant : {down->start, down->peak, std::min(down->end, up.start)})
            instants.push_back(instant);
    return instants;
}

} // namespace

/// Standard uncertainty of a start or an end: where velocity crosses zero it is the velocity's over the slope; at a
/// dead stop it is what noise and tremor leave of a ramp's beginning.
double instantError(const motion::VerticalMotion& motion, const motion::Recording& recording, double time,
                    bool deadStop, double velocityVariance)
{
    const double sampling = 1.0 / motion::samplingRate(recording);
    if (!deadStop) {
        const double slope = std::max(0.3, std::abs(valueAt(motion, motion.acceleration, time)));
        return std::hypot(std::sqrt(std::max(0.0, velocityVariance)) / slope, 0.1 * sampling);
    }
    const double noise = recording.sensor.accelerometerNoise * std::sqrt(0.5 / sampling);
    const double reach = 0.06; // s of ramp that the fit rests on
    const double jerk = std::max(1.0, std::abs(valueAt(motion, motion.acceleration, time + reach) -
                                               valueAt(motion, motion.acceleration, time - reach)) /
                                          reach);
    return std::hypot(1.3 * std::hypot(noise * std::sqrt(sampling / reach), tremor) / jerk, 0.2 * sampling);
}

/// Standard uncertainty of a velocity peak's instant. Around its peak velocity is flat: what shifts the instant is the
/// error of acceleration over its slope.
double peakError(const motion::VerticalMotion& motion, const motion::Recording& recording, double peak,
                 double accelerationError)
{
    const double jerk = std::max(1.0, std::abs(valueAt(motion, motion.acceleration, peak + 0.02) -
                                               valueAt(motion, motion.acceleration, peak - 0.02)) /
                                          0.04);
    return std::hypot(recording.sensor.accelerometerNoise * std::sqrt(25.0) + 0.02, accelerationError) / jerk;
}

Measurement::Measurement(const motion::VerticalMotion& theMotion, const motion::Recording& theRecording,
                         const Candidate& candidate, const Lift& theLift)
    : motion_(theMotion), recording_(theRecording), lift_(theLift), up_(candidate.up), down_(candidate.down),
      freeFall_(freeFallStart(theMotion, candidate.up)), rate_(motion::samplingRate(theRecording)),
      scale_(theRecording.sensor.accelerometerScaleError),
      joint_(theMotion, instantsOf(up_, lift_.ballistic ? freeFall_.value_or(up_.end) : up_.end, down_))
{
    startError_ = instantError(motion_, recording_, up_.start, up_.fromDeadStop,
                               joint_.variance({JointMotion::velocity(Start, 1)}));
    meanAccelerationError_ = joint_.uncertainty({JointMotion::velocity(Start, -1), JointMotion::velocity(Peak, 1)}) /
                             std::max(0.02, up_.peak - up_.start);
    peakError_ = peakErrorAt(up_.peak);
    if (lift_.ballistic && freeFall_) {
        up_.end = *freeFall_;
        const double jerk = std::max(10.0, std::abs(fitAt(acceleration(), up_.end).slope));
        endError_ = std::hypot(0.1 / rate_, (tremor + scale_ * motion::standardGravity) / jerk);
    } else {
        endError_ = instantError(motion_, recording_, up_.end, up_.toDeadStop,
                                 joint_.variance({JointMotion::velocity(End, 1)}));
    }
}

bool Measurement::sampledAt(double lowest) const
{
    return rate_ >= rateTolerance * lowest;
}

Measured Measurement::rise(std::size_t from, std::size_t to, double size, double timingError) const
{
    const double heights = joint_.uncertainty({JointMotion::height(from, -1), JointMotion::height(to, 1)});
    return {size, std::hypot(heights, timingError)};
}

/// Mean velocity from the start to an instant. The height there moves with the instant where velocity is not zero.
Measured Measurement::meanUpTo(double time, double heightError, double timeError) const
{
    const double duration = time - up_.start;
    const double mean = (heightAt(motion_, time) - heightAt(motion_, up_.start)) / duration;
    const double speed = valueAt(motion_, motion_.velocity, time);
    return {mean, std::hypot(heightError, mean * startError_, (speed - mean) * timeError) / duration};
}

Measured Measurement::atPeak(const Extremum& peak) const
{
    const double noise =
        recording_.sensor.accelerometerNoise * std::sqrt(0.5 * rate_) * fitAt(acceleration(), peak.time).noiseGain;
    return {peak.value, std::hypot(meanAccelerationError_, noise, scale_ * peak.value)};
}

void Measurement::accelerations(Repetition& rep) const
{
    const auto peak = atPeak(extremeBetween(acceleration(), up_.start, up_.peak, +1));
    rep.accelerationUncertainty = peak.uncertainty;
    if (sampledAt(lowestShapeRate))
        rep.peakAcceleration = peak;
}

void Measurement::speeds(Repetition& rep) const
{
    const double startHeight = heightAt(motion_, up_.start);
    const double endSpeed = valueAt(motion_, motion_.velocity, up_.end);
    const double atEnd = heightAt(motion_, up_.end) - startHeight;
    rep.range = rise(Start, End, atEnd, endSpeed * endError_);
    rep.concentricDuration = {up_.end - up_.start, std::hypot(startError_, endError_)};
    const double heightError = rise(Start, End, atEnd, 0).uncertainty;
    rep.meanVelocity = meanUpTo(up_.end, heightError, endError_);
    const double propulsiveEnd = std::min(up_.end, freeFall_.value_or(up_.end));
    rep.meanPropulsiveVelocity = propulsiveEnd < up_.end ? meanUpTo(propulsiveEnd, heightError, 0) : rep.meanVelocity;

    rep.peakVelocity = {up_.peakVelocity, joint_.uncertainty({JointMotion::velocity(Peak, 1)})};
    rep.timeToPeakVelocity = {up_.peak - up_.start, std::hypot(startError_, peakError_)};
    const double toPeak = heightAt(motion_, up_.peak) - startHeight;
    rep.displacementToPeak = rise(Start, Peak, toPeak, up_.peakVelocity * peakError_);
}

void Measurement::shape(Repetition& rep) const
{
    if (const auto other = findOtherPeak(motion_, up_))
        rep.otherPeak = OtherPeak{{other->time - up_.start, std::hypot(startError_, peakErrorAt(other->time))},
                                  {other->velocity, rep.peakVelocity.uncertainty}};
    if (!lift_.secondPull || !sampledAt(lowestShapeRate))
        return;
    if (const auto pull = findSecondPull(motion_, up_))
        rep.secondPullTime =
            Measured{up_.peak - pull->start, std::hypot(std::hypot(rep.accelerationUncertainty, tremor) / pull->slope,
                                                        peakError_, 0.1 / rate_)};
}

/// At a reversal the start is where velocity is zero: its error follows velocity's there and takes most of it away
/// again. From a dead stop the start has an error of its own.
void Measurement::howSoon(Repetition& rep) const
{
    const double startSpeedError = joint_.uncertainty({JointMotion::velocity(Start, 1)});
    const double startSlope = std::max(0.3, std::abs(valueAt(motion_, motion_.acceleration, up_.start)));
    const double shared = up_.fromDeadStop ? 0 : std::min(startError_, startSpeedError / startSlope);
    const double own = std::sqrt(startError_ * startError_ - shared * shared);
    const double startSpeed = up_.fromDeadStop ? valueAt(motion_, motion_.velocity, up_.start) : 0.0;
    for (std::size_t i = 0; i < earlyWindows.size(); ++i) {
        const double window = earlyWindows[i];
        const double time = up_.start + window;
        if (time > up_.end || !sampledAt(lowestRate(window)))
            continue;
        const double speed = valueAt(motion_, motion_.velocity, time);
        const double slope = valueAt(motion_, motion_.acceleration, time);
        const auto error = [&](double weightOfStart) {
            const double joint = joint_.uncertainty(
                {JointMotion::velocity(Start, weightOfStart), JointMotion::velocity(Windows + i, 1)});
            return std::hypot(joint, slope * own);
        };
        const double followed = -slope / startSlope;
        rep.meanAcceleration[i] =
            Measured{(speed - startSpeed) / window, error(up_.fromDeadStop ? -1.0 : followed) / window};
        const Measured velocity{speed, error(up_.fromDeadStop ? 0.0 : followed)};
        if (window == 0.10)
            rep.velocityAt100ms = velocity;
        if (window == 0.20)
            rep.velocityAt200ms = velocity;
    }
}

Repetition Measurement::take()
{
    Repetition rep;
    rep.concentricStart = up_.start;
    rep.peakTime = up_.peak;
    rep.concentricEnd = up_.end;
    rep.fromDeadStop = up_.fromDeadStop;
    rep.concentricStartUncertainty = startError_;
    accelerations(rep);
    speeds(rep);
    shape(rep);
    howSoon(rep);
    descent(rep);
    rep.flags = flagsOf(motion_, recording_, up_);
    if (rep.otherPeak && rep.otherPeak->velocity.value >= twoPeakedShare * rep.peakVelocity.value)
        rep.flags = rep.flags | Flag::TwoPeaked;
    return rep;
}

Repetition measure(const motion::VerticalMotion& motion, const motion::Recording& recording, const Candidate& candidate,
                   const Lift& lift)
{
    return Measurement(motion, recording, candidate, lift).take();
}

} // namespace fleetrung::reps
