#include "engine/reps/provisional.hpp"

namespace fleetrung::reps
{
namespace
{

constexpr double wider = 1.10;

void widen(Measured& measured)
{
    measured.uncertainty *= wider;
}

void widen(std::optional<Measured>& measured)
{
    if (measured)
        widen(*measured);
}

} // namespace

void widen(Repetition& rep)
{
    rep.concentricStartUncertainty *= wider;
    rep.accelerationUncertainty *= wider;
    for (Measured* always : {&rep.meanVelocity, &rep.meanPropulsiveVelocity, &rep.peakVelocity, &rep.timeToPeakVelocity,
                             &rep.range, &rep.displacementToPeak, &rep.concentricDuration})
        widen(*always);
    if (rep.otherPeak) {
        widen(rep.otherPeak->time);
        widen(rep.otherPeak->velocity);
    }
    for (std::optional<Measured>* some :
         {&rep.peakAcceleration, &rep.secondPullTime, &rep.velocityAt100ms, &rep.velocityAt200ms,
          &rep.eccentricPeakVelocity, &rep.eccentricDuration, &rep.reversalTime, &rep.brakingSlope,
          &rep.peakReversalAcceleration, &rep.dropStopTime, &rep.stopDepth})
        widen(*some);
    for (auto& early : rep.meanAcceleration)
        widen(early);
}

} // namespace fleetrung::reps
