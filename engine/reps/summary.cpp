#include <algorithm>
#include <cmath>

#include "engine/reps/metrics.hpp"

namespace fleetrung::reps
{
namespace
{

const Measured& evidenceOf(const Repetition& rep, const Lift& lift)
{
    return lift.metric == EvidenceMetric::PeakVelocity ? rep.peakVelocity : rep.meanVelocity;
}

double meanOf(const std::vector<double>& values)
{
    double sum = 0;
    for (const double value : values)
        sum += value;
    return sum / static_cast<double>(values.size());
}

/// Sample standard deviation; none for fewer than two values.
std::optional<double> spreadOf(const std::vector<double>& values)
{
    if (values.size() < 2)
        return std::nullopt;
    const double mean = meanOf(values);
    double squares = 0;
    for (const double value : values)
        squares += (value - mean) * (value - mean);
    return std::sqrt(squares / static_cast<double>(values.size() - 1));
}

/// last / reference, the errors of the two taken as independent; exactly 1 where they are the same repetition.
Measured ratio(const Measured& last, const Measured& reference)
{
    const double value = last.value / reference.value;
    if (&last == &reference)
        return {value, 0};
    return {value, value * std::hypot(last.uncertainty / last.value, reference.uncertainty / reference.value)};
}

void summariseVelocity(const std::vector<Repetition>& repetitions, const Lift& lift, SetSummary& summary)
{
    std::vector<double> velocities;
    for (const auto& rep : repetitions)
        velocities.push_back(evidenceOf(rep, lift).value);
    const auto fastest = std::max_element(velocities.begin(), velocities.end()) - velocities.begin();
    const auto& best = evidenceOf(repetitions[static_cast<std::size_t>(fastest)], lift);
    const auto& last = evidenceOf(repetitions.back(), lift);
    if (best.value <= 0 || last.value <= 0)
        return;
    const auto left = ratio(last, best);
    summary.velocityLoss = 1 - left.value;
    summary.velocityLossUncertainty = left.uncertainty;
    if (const auto spread = spreadOf(velocities))
        summary.velocityVariation = *spread / meanOf(velocities);
}

void summariseTimeToPeak(const std::vector<Repetition>& repetitions, SetSummary& summary)
{
    std::vector<double> times;
    const Measured* soonest = nullptr;
    const Measured* last = nullptr;
    for (const auto& rep : repetitions) {
        if (has(rep.flags, Flag::TwoPeaked))
            continue;
        last = &rep.timeToPeakVelocity;
        times.push_back(last->value);
        if (soonest == nullptr || last->value < soonest->value)
            soonest = last;
    }
    if (times.empty() || soonest->value <= 0)
        return;
    const auto drift = ratio(*last, *soonest);
    summary.timeToPeakDrift = Measured{drift.value - 1, drift.uncertainty};
    summary.meanTimeToPeak = meanOf(times);
    summary.spreadTimeToPeak = spreadOf(times);
    if (summary.spreadTimeToPeak)
        summary.timeToPeakVariation = *summary.spreadTimeToPeak / *summary.meanTimeToPeak;
}

} // namespace

SetSummary summarise(const std::vector<Repetition>& repetitions, const Lift& lift)
{
    SetSummary summary;
    if (repetitions.empty())
        return summary;
    summariseVelocity(repetitions, lift, summary);
    summariseTimeToPeak(repetitions, summary);
    return summary;
}

} // namespace fleetrung::reps
