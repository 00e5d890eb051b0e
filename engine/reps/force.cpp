#include "engine/reps/force.hpp"

#include <algorithm>
#include <cmath>
#include <string>

#include "engine/motion/gravity.hpp"
#include "engine/reps/local_fit.hpp"

namespace fleetrung::reps
{
namespace
{

constexpr double g = motion::standardGravity;

double at(const MotionTrace& trace, const std::vector<double>& values, double time)
{
    const auto after = std::upper_bound(trace.time.begin() + 1, trace.time.end() - 1, time);
    const auto i = static_cast<std::size_t>(after - trace.time.begin());
    const double share = (time - trace.time[i - 1]) / (trace.time[i] - trace.time[i - 1]);
    return values[i - 1] + share * (values[i] - values[i - 1]);
}

std::optional<Error> refusal(const MotionTrace& trace, const Repetition& rep, const Lift& lift, const Loading& loading)
{
    const auto isMass = [](double mass) { return std::isfinite(mass) && mass >= 0; };
    if (!isMass(loading.loadKg) || !isMass(loading.bodyMassKg))
        return Error{Code::InvalidArgument, "load", "load and body mass are kilograms, zero or more"};
    if (lift.bodyShare > 0 && loading.bodyMassKg <= 0)
        return Error{Code::InvalidArgument, "body mass",
                     std::string(lift.name) + " moves a share of body mass: give body mass in kilograms"};
    if (systemMass(lift, loading) <= 0)
        return Error{Code::InvalidArgument, "load", "nothing is moved: give a load above zero"};
    if (trace.time.size() < 8 || rep.concentricStart < trace.time.front() || rep.concentricEnd > trace.time.back() ||
        rep.peakTime <= rep.concentricStart || rep.concentricEnd < rep.peakTime)
        return Error{Code::InvalidArgument, "repetition", "the repetition does not lie in this trace"};
    return std::nullopt;
}

/// One repetition of a known mass.
class Forces
{
public:
    Forces(const MotionTrace& theTrace, const Repetition& repetition, double mass)
        : trace_(theTrace), rep_(repetition), mass_(mass)
    {
    }

    [[nodiscard]] ForceMetrics metrics() const
    {
        ForceMetrics forces;
        forces.systemMass = mass_;
        force(forces);
        early(forces);
        power(forces);
        if (rep_.brakingSlope)
            forces.brakingForceSlope = timesMass(*rep_.brakingSlope);
        return forces;
    }

private:
    [[nodiscard]] Measured timesMass(const Measured& metric) const
    {
        return {mass_ * metric.value, mass_ * metric.uncertainty};
    }
    /// m (g + a) of a mean acceleration, here a speed gained over a time.
    [[nodiscard]] Measured meanOver(const Measured& speed, const Measured& time) const
    {
        const double acceleration = speed.value / time.value;
        return timesMass(
            {g + acceleration, std::hypot(speed.uncertainty, acceleration * time.uncertainty) / time.value});
    }
    [[nodiscard]] double endSpeed() const { return at(trace_, trace_.velocity, rep_.concentricEnd); }

    void force(ForceMetrics& forces) const;
    void early(ForceMetrics& forces) const;
    void power(ForceMetrics& forces) const;

    const MotionTrace& trace_;
    const Repetition& rep_;
    double mass_;
};

void Forces::force(ForceMetrics& forces) const
{
    if (rep_.peakAcceleration)
        forces.peakForce = timesMass({g + rep_.peakAcceleration->value, rep_.peakAcceleration->uncertainty});
    const double startSpeed = at(trace_, trace_.velocity, rep_.concentricStart);
    forces.meanForce = meanOver({endSpeed() - startSpeed, rep_.peakVelocity.uncertainty}, rep_.concentricDuration);
    forces.meanForceToPeak = meanOver(rep_.peakVelocity, rep_.timeToPeakVelocity);
}

void Forces::early(ForceMetrics& forces) const
{
    const Signal acceleration{trace_.time, trace_.acceleration};
    for (std::size_t i = 0; i < earlyWindows.size(); ++i) {
        if (!rep_.meanAcceleration[i])
            continue;
        const double window = earlyWindows[i];
        const auto net =
            timesMass({window * rep_.meanAcceleration[i]->value, window * rep_.meanAcceleration[i]->uncertainty});
        forces.netImpulse[i] = net;
        forces.impulse[i] = Measured{net.value + mass_ * g * window, net.uncertainty};
        if (!rep_.fromDeadStop)
            continue;
        const auto fit = fitAt(acceleration, rep_.concentricStart + window);
        const double error = std::hypot(rep_.accelerationUncertainty, fit.slope * rep_.concentricStartUncertainty);
        forces.rateOfForceDevelopment[i] = timesMass({fit.value / window, error / window});
    }
}

void Forces::power(ForceMetrics& forces) const
{
    const double duration = rep_.concentricDuration.value;
    const double speed = endSpeed();
    const double kinetic = 0.5 * speed * speed / duration;
    forces.meanPower =
        timesMass({g * rep_.meanVelocity.value + kinetic,
                   std::hypot(g * rep_.meanVelocity.uncertainty, speed * rep_.peakVelocity.uncertainty / duration)});
    if (!rep_.peakAcceleration)
        return;
    std::vector<double> perMass(trace_.time.size());
    for (std::size_t i = 0; i < perMass.size(); ++i)
        perMass[i] = (trace_.acceleration[i] + g) * trace_.velocity[i];
    const auto peak = extremeBetween({trace_.time, perMass}, rep_.concentricStart, rep_.concentricEnd, +1);
    const double speedThere = at(trace_, trace_.velocity, peak.time);
    const double forceThere = at(trace_, trace_.acceleration, peak.time) + g;
    forces.peakPower = timesMass({peak.value, std::hypot(forceThere * rep_.peakVelocity.uncertainty,
                                                         speedThere * rep_.accelerationUncertainty)});
}

} // namespace

double systemMass(const Lift& lift, const Loading& loading)
{
    return loading.loadKg + lift.bodyShare * loading.bodyMassKg;
}

Expected<ForceMetrics> forceMetrics(const MotionTrace& trace, const Repetition& repetition, const Lift& lift,
                                    const Loading& loading)
{
    if (auto refused = refusal(trace, repetition, lift, loading))
        return tl::unexpected<Error>(std::move(*refused));
    return Forces(trace, repetition, systemMass(lift, loading)).metrics();
}

} // namespace fleetrung::reps
