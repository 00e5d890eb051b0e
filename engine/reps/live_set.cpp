#include "engine/reps/live_set.hpp"

#include "engine/reps/metrics.hpp"

namespace fleetrung::reps
{
namespace
{

constexpr double lookEvery = 0.1;    // s of signal
constexpr double settled = 0.05;     // s after the concentric end: its instant no longer moves
constexpr double sameInstant = 0.15; // s: two peaks closer than this are one repetition

} // namespace

LiveSet::LiveSet(const Lift& lift, const motion::SensorTraits& sensor, bool hasGyroscope) : lift_(lift)
{
    recording_.sensor = sensor;
    recording_.hasGyroscope = hasGyroscope;
    constexpr std::size_t usualSet = 60 * 200; // a minute at 200 Hz
    recording_.samples.reserve(usualSet);
}

std::vector<Repetition> LiveSet::add(const motion::Sample& sample)
{
    auto& samples = recording_.samples;
    if (!samples.empty() && sample.time <= samples.back().time) {
        ++leftOut_;
        return {};
    }
    samples.push_back(sample);
    if (samples.size() == 1)
        nextLook_ = sample.time + 0.5;
    if (sample.time < nextLook_)
        return {};
    nextLook_ = sample.time + lookEvery;
    const auto analysis = analyseSet(recording_, lift_);
    if (!analysis)
        return {};
    std::vector<Repetition> fresh;
    for (const auto& rep : analysis->repetitions) {
        const bool known = !announced_.empty() && rep.peakTime <= announced_.back().peakTime + sameInstant;
        if (!known && rep.concentricEnd + settled <= sample.time)
            fresh.push_back(rep);
    }
    announced_.insert(announced_.end(), fresh.begin(), fresh.end());
    return fresh;
}

SetSummary LiveSet::summary() const
{
    return summarise(announced_, lift_);
}

Expected<SetAnalysis> LiveSet::finish() const
{
    return analyseSet(recording_, lift_);
}

} // namespace fleetrung::reps
