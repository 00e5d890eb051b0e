#include "engine/reps/live_set.hpp"

#include <algorithm>
#include <cmath>
#include <limits>

#include "engine/reps/metrics.hpp"
#include "engine/reps/phases.hpp"
#include "engine/reps/provisional.hpp"
#include "engine/reps/set_rules.hpp"

namespace fleetrung::reps
{
namespace
{

constexpr double beforeStart = 0.5;      // s of samples that the first attitude is taken from
constexpr double longestSet = 300.0;     // s that memory is made for
constexpr std::size_t usualMost = 64;    // repetitions, and late samples
constexpr double settledReversal = 0.05; // s after the concentric end
constexpr double settledPause = 0.10;    // s: what the change point needs of the pause
constexpr double latestPause = 0.13;     // s after the rise became slow: the end must be told then
constexpr double slow = 0.04;            // m/s
constexpr double sameLevel = 0.03;       // m/s
constexpr double lowShare = 0.25;        // of the rise's peak velocity
constexpr double longLevel = 0.3;        // s: longer than a sticking point stays at one velocity
constexpr double clearDrift = 0.02;      // m/s
constexpr double lookAgain = 0.02;       // s
constexpr double sameStroke = 0.05;      // s

/// From when on velocity has stayed at one low level to the end of the motion, for long: a pause of whose velocity the
/// samples so far give a wrong idea.
std::optional<double> levelSince(const motion::VerticalMotion& motion, const Movement& up)
{
    const double last = motion.velocity.back();
    std::size_t i = motion.time.size() - 1;
    while (i > up.peakSample && std::abs(motion.velocity[i] - last) < sameLevel)
        --i;
    const bool isLevel = last < lowShare * up.peakVelocity && motion.time.back() - motion.time[i] >= longLevel;
    return isLevel ? std::optional(motion.time[i]) : std::nullopt;
}

/// m/s by which the motion must be wrong if its last two tops are of one height: long without stillness velocity may be
/// off so far that a rise never seems to end.
double driftBetweenTops(const motion::VerticalMotion& motion, const Lift& lift)
{
    const auto strokes = findStrokes(motion, strokeProminence(lift));
    if (strokes.empty() || !strokes.back().topBefore)
        return 0;
    const std::size_t top = strokes.back().top, before = *strokes.back().topBefore;
    return (motion.height[top] - motion.height[before]) / (motion.time[top] - motion.time[before]);
}

/// From when on the rise is so slow that it may have ended: no end lies much before it.
double slowFrom(const motion::VerticalMotion& motion, const Movement& up)
{
    std::size_t i = up.peakSample;
    while (i + 1 < motion.time.size() && motion.velocity[i] >= slow)
        ++i;
    return motion.time[i];
}

} // namespace

LiveSet::LiveSet(const Lift& lift, const motion::SensorTraits& sensor, bool hasGyroscope)
    : lift_(lift), recording_{{}, hasGyroscope, sensor}, window_(recording_, knowledgeOf(lift)), watch_(lift),
      lastEnd_(-std::numeric_limits<double>::infinity())
{
    recording_.samples.reserve(1024);
    rises_.reserve(2 * usualMost);
    announced_.reserve(usualMost);
    late_.reserve(usualMost);
}

std::span<const Repetition> LiveSet::add(const motion::Sample& sample)
{
    auto& samples = recording_.samples;
    if (!samples.empty() && sample.time <= samples.back().time) {
        late_.push_back({samples.size(), sample});
        return {};
    }
    samples.push_back(sample);
    if (lift_.metric == EvidenceMetric::ContactTime)
        return {};
    const std::size_t before = announced_.size();
    if (!started_)
        start();
    while (started_) {
        const auto now = window_.advance();
        if (!now)
            break;
        follow(*now);
    }
    return std::span(announced_).subspan(before);
}

void LiveSet::start()
{
    auto& samples = recording_.samples;
    if (samples.size() == 1)
        nextStart_ = samples.front().time + beforeStart;
    if (samples.back().time < nextStart_ || samples.size() < 8)
        return;
    nextStart_ = samples.back().time + beforeStart;
    const double rate = motion::samplingRate(recording_);
    const auto room = static_cast<std::size_t>(longestSet * rate);
    samples.reserve(room);
    window_.reserve(std::max(room, samples.size()), rate);
    started_ = window_.start();
}

void LiveSet::follow(const Instant& now)
{
    lookDue_ = watch_.add(now) || lookDue_;
    // Only at the newest sample of all: the first half second is caught up with at once.
    if (!lookDue_ || now.sample + 1 != recording_.samples.size() || window_.atKeyframe())
        return;
    lookDue_ = false;
    look(now);
}

void LiveSet::look(const Instant& now)
{
    watch_.waitUntil(now.time + lookAgain);
    if (!window_.solve(watch_.stretchStart()))
        return;
    const auto& motion = window_.motion();
    auto candidate = newest();
    if (lift_.returns.top && lift_.start == Start::Eccentric && (!candidate || candidate->up.end >= motion.time.back()))
        if (const double drift = driftBetweenTops(motion, lift_); std::abs(drift) > clearDrift) {
            window_.takeOff(drift);
            candidate = newest();
        }
    if (!candidate)
        return watch_.refuse();
    Movement& up = candidate->up;
    const auto released = lift_.ballistic ? freeFallStart(motion, up) : std::nullopt;
    if (const auto level = levelSince(motion, up); level && !released && up.end >= motion.time.back()) {
        up.end = *level;
        up.toDeadStop = true;
    }
    const double settled = released        ? *released + settledReversal
                           : up.toDeadStop ? std::min(up.end + settledPause, slowFrom(motion, up) + latestPause)
                                           : up.end + settledReversal;
    if (now.time < settled) {
        watch_.waitUntil(std::max(settled, now.time + 0.5 * lookAgain));
        return;
    }
    watch_.settle();
    if (belongs(*candidate))
        announce(*candidate);
}

std::optional<Candidate> LiveSet::newest() const
{
    const auto& motion = window_.motion();
    const auto strokes = findStrokes(motion, strokeProminence(lift_));
    if (strokes.empty() || motion.time[strokes.back().bottom] < lastEnd_ - sameStroke)
        return std::nullopt;
    return candidateOf(motion, lift_, strokes.back());
}

/// The rules of selection.cpp, with what is known so far.
bool LiveSet::belongs(const Candidate& candidate)
{
    if (lift_.key == "free")
        return true;
    rises_.push_back(candidate.rise);
    if (rises_.size() > 1 && candidate.rise < leastRise(rises_))
        return false;
    if (!lift_.returns.bottom || lift_.start != Start::Concentric || !lastStartHeight_)
        return true;
    return !startsRaised(heightAt(window_.motion(), candidate.up.start) - *lastStartHeight_, candidate.rise);
}

void LiveSet::announce(const Candidate& candidate)
{
    const auto& piece = window_.piece();
    const auto screening = motion::screen(piece);
    if (!screening || refusal(candidate.up, *screening))
        return;
    Repetition repetition = measure(window_.motion(), piece, candidate, lift_);
    if (has(repetition.flags, Flag::NoStillness) && window_.everStill())
        repetition.flags &= ~static_cast<Flags>(Flag::NoStillness);
    widen(repetition);
    // A rise that fades out ends somewhere in its slow part: a small change of velocity moves the end by much.
    double& duration = repetition.concentricDuration.uncertainty;
    duration = std::hypot(duration, 0.5 * (candidate.up.end - slowFrom(window_.motion(), candidate.up)));
    lastEnd_ = repetition.concentricEnd;
    lastStartHeight_ = heightAt(window_.motion(), repetition.concentricStart);
    announced_.push_back(repetition);
    if (lift_.key != "free" && announced_.size() >= leastForPartials && repetition.range.value < leastRange(announced_))
        announced_.back().flags = repetition.flags | Flag::ShortRange;
}

SetSummary LiveSet::summary() const
{
    return summarise(announced_, lift_);
}

Expected<SetAnalysis> LiveSet::finish() const
{
    if (late_.empty())
        return analyseSet(recording_, lift_);
    std::vector<motion::Sample> received;
    received.reserve(recording_.samples.size() + late_.size());
    auto late = late_.begin();
    for (std::size_t i = 0; i <= recording_.samples.size(); ++i) {
        for (; late != late_.end() && late->after == i; ++late)
            received.push_back(late->sample);
        if (i < recording_.samples.size())
            received.push_back(recording_.samples[i]);
    }
    auto ordered = motion::putInOrder(std::move(received));
    if (!ordered)
        return tl::unexpected<Error>(ordered.error());
    return analyseSet({std::move(ordered->samples), recording_.hasGyroscope, recording_.sensor}, lift_);
}

} // namespace fleetrung::reps
