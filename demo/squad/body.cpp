#include "demo/squad/body.hpp"

#include <algorithm>
#include <cmath>

#include "demo/simulator/gestures.hpp"

namespace fleetrung::squad
{

Body::Body(const Performer& performer, std::uint64_t seed)
    : random(seed), who(performer), first(performer.setup.start),
      seasonDays(std::max(200, daysBetween(performer.setup.start, performer.setup.competitions.back().date)))
{
}

void Body::wake(CivilDate day)
{
    const double share = daysBetween(first, day) / seasonDays;
    seasonShare = 1 - std::exp(-2.2 * share); // most of it comes early
    drift = 0.8 * drift + 0.012 * std::clamp(random.normal(), -2.0, 2.0);
    sleep = std::clamp(random.normal(7.8, 0.7), 5.0, 9.5);
    formToday = 1 + drift + 0.010 * std::clamp(random.normal(), -2.0, 2.0) - 0.01 * std::max(0.0, 6.5 - sleep);
    quicknessToday = 1 + 0.025 * std::clamp(random.normal(), -2.0, 2.0);
}

void Body::adapt(const std::string& ladder, const std::string& rung)
{
    ++sessions[{ladder, rung}];
}

double Body::maximum(const season::Ladder& ladder, const season::Rung& rung) const
{
    const auto found = std::find_if(who.abilities.begin(), who.abilities.end(),
                                    [&](const Ability& ability) { return ability.ladder == ladder.key; });
    const auto place = ladder.indexOf(rung.key);
    if (found == who.abilities.end() || !place) {
        return 0;
    }
    const double factor = found->rungFactors.at(static_cast<std::size_t>(*place));
    return found->maximumKg * factor * (1 + who.strengthGain * seasonShare) * formToday;
}

simulator::SetPlan Body::set(const season::Ladder& ladder, const season::Rung& rung, double loadKg, int repetitions,
                             bool fullIntent)
{
    simulator::SetPlan plan;
    plan.lift = rung.lift;
    plan.repetitions = repetitions;
    if (rung.boxHeight()) {
        plan.range = *rung.boxHeight();
    } else if (rung.metric == season::Metric::MeanVelocity) {
        plan.range = 0.5 * (rung.range.low + rung.range.high);
    }
    plan.loadShare = std::clamp(loadKg / maximum(ladder, rung), 0.3, 1.0);

    const auto found = sessions.find({ladder.key, rung.key});
    const int done = found == sessions.end() ? 0 : found->second;
    const double learned = 1 - std::exp(-done / 8.0);
    const double later = (1.06 - who.response * learned) * quicknessToday * (fullIntent ? 1.0 : 1.02);
    const bool quick = rung.metric == season::Metric::PeakVelocity;
    // In quick lifts a peak comes sooner because the whole pull is faster; in slow ones the push only begins sooner.
    plan.speed = quick ? 1 / std::sqrt(later) : 1;
    plan.timeToPeakShare =
        std::min(0.85, simulator::findGesture(rung.lift)->peakShare * (quick ? std::sqrt(later) : later));
    if (rung.metric == season::Metric::DropTime) {
        plan.tempo = later; // what is trained here is how soon the fall is stopped
    }

    const bool sloppy = random.chance(0.06);
    plan.rangeScatter = sloppy ? 0.03 : 0.007;
    plan.velocityLoss = fullIntent ? 0.02 : random.uniform(0.05, 0.12);
    plan.topPause = random.uniform(0.6, 1.0);
    plan.stillBefore = random.uniform(1.0, 1.6);
    plan.stillAfter = random.uniform(0.8, 1.2);
    plan.rackWork = random.chance(0.1);
    return plan;
}

double Body::topSpeed() const
{
    return who.speed.top * (1 + who.speed.gain * seasonShare) * (1 + 0.3 * (formToday - 1));
}

double Body::standingTime(double distance) const
{
    const double top = topSpeed();
    const double rise = who.speed.rise;
    double time = distance / top + rise;
    for (int i = 0; i < 30; ++i) { // Newton: x(t) = top (t - rise (1 - exp(-t / rise)))
        const double covered = top * (time - rise * (1 - std::exp(-time / rise)));
        time -= (covered - distance) / (top * (1 - std::exp(-time / rise)));
    }
    return time;
}

} // namespace fleetrung::squad
