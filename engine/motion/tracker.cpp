#include "engine/motion/tracker.hpp"

#include <algorithm>
#include <cmath>

#include "engine/motion/gravity.hpp"

namespace fleetrung::motion
{
namespace
{

constexpr std::size_t longestSpan = 7;    // keyframes that are judged together
constexpr double leastSupport = 4.0;      // a wrong zero velocity bends the set, a missed one only widens its errors
constexpr double longestShift = 1.0;      // s that a lifter fidgets before a set without giving up the rest
constexpr std::size_t longRest = 5;       // keyframes
constexpr double unknownBias = 0.05;      // m/s2
constexpr double longestEvenMotion = 5.0; // s: nobody moves a bar evenly for longer
constexpr double resetEvery = 1.0;        // s without stillness after which the nominal motion is set anew

} // namespace

Tracker::Tracker(const Recording& recording, const Knowledge& knowledge)
    : recording_(recording), weighing_{recording, knowledge}, quietSpans_(longestSpan)
{
}

void Tracker::reserve(std::size_t keyframes)
{
    keyframes_.reserve(keyframes);
    links_.reserve(keyframes);
    spans_.reserve(keyframes);
}

void Tracker::start(const Eigen::Quaterniond& attitude, double tiltSpread, const Eigen::Vector3d& gyroscopeBias)
{
    Keyframe first;
    first.nominal.attitude = attitude;
    first.assumed.segment<3>(whole::gyroscopeBias) = gyroscopeBias;
    firstTiltSpread_ = tiltSpread;
    keyframes_.assign(1, first);
    links_.assign(1, Link{});
    links_[0].belief = weighing_.prior(tiltSpread);
    information_ = weighing_.wholePrior();
    propagation_.emplace(first.nominal, recording_.samples[0], first.assumed);
    lastReset_ = stoodAt_ = recording_.samples[0].time;
    next_ = 1;
}

/// Up is where the first window's force points; how well that is known depends on whether it was quiet.
void Tracker::begin()
{
    const Quietness first = lookForQuiet(recording_, 0);
    const Eigen::Vector3d up =
        first.meanForce.norm() > 0.1 * standardGravity ? first.meanForce : Eigen::Vector3d::UnitZ().eval();
    const Eigen::Vector3d bias =
        first.quiet && recording_.hasGyroscope ? (0.5 * first.meanRate).eval() : Eigen::Vector3d::Zero().eval();
    start(Eigen::Quaterniond::FromTwoVectors(up, Eigen::Vector3d::UnitZ()), first.quiet ? 0.1 : 0.3, bias);
}

void Tracker::advance()
{
    while (advanceOne()) {
    }
}

bool Tracker::advanceOne()
{
    const auto& samples = recording_.samples;
    if (!propagation_) {
        if (samples.empty() || !windowIsComplete(samples, 0))
            return false;
        begin();
        return true;
    }
    if (next_ == samples.size())
        return false;
    step(next_++);
    return true;
}

void Tracker::step(std::size_t sample)
{
    const auto& samples = recording_.samples;
    const double since = samples[sample].time - samples[sample - 1].time;
    const bool gap = since > longGap;
    if (gap && keyframes_.back().sample + 1 != sample)
        closeInterval(sample - 1);
    propagation_->step(samples[sample]);
    if (gap || propagation_->duration() >= keyframeSpacing - 1e-9)
        closeInterval(sample);
    while (ripe_ < keyframes_.size() && windowIsComplete(samples, keyframes_[ripe_].sample))
        ripen();
}

void Tracker::closeInterval(std::size_t sample)
{
    Link& link = links_.back();
    link.interval = propagation_->interval();
    link.interval.noise = weighing_.noise(*propagation_, keyframes_.back().sample, sample);
    Keyframe keyframe;
    keyframe.sample = sample;
    keyframe.nominal = propagation_->state();
    keyframe.nominal.attitude.normalize();
    keyframe.assumed = keyframes_.back().assumed;
    link.shift = -(link.interval.border * keyframe.assumed);
    const double now = recording_.samples[sample].time;
    if (resetDue_ || now - lastReset_ >= resetEvery) {
        reset(keyframe);
        link.shift -= keyframe.reset;
        resetDue_ = false;
        lastReset_ = now;
    }
    keyframes_.push_back(keyframe);
    links_.emplace_back();
    propagation_.emplace(keyframe.nominal, recording_.samples[sample], keyframe.assumed);
}

/// Of the nominal motion at a keyframe beyond the last ripe one.
LocalVector Tracker::errorAt(std::size_t keyframe, const WholeVector& whole) const
{
    LocalVector error = links_[ripe_ - 1].belief.given(whole);
    for (std::size_t k = ripe_ - 1; k < keyframe; ++k)
        error = links_[k].interval.carry(error) + links_[k].interval.border * whole + links_[k].shift;
    return error;
}

LocalVector Tracker::newestError() const
{
    return ripe_ == 0 ? LocalVector::Zero().eval() : errorAt(links_.size() - 1, information_.mean());
}

/// Moves the nominal motion onto the estimate, so that what is left to estimate stays small and linear.
void Tracker::reset(Keyframe& keyframe)
{
    if (ripe_ == 0)
        return;
    const WholeVector whole = information_.mean();
    const LocalVector error = errorAt(links_.size(), whole);
    keyframe.reset = error;
    keyframe.nominal = moved(keyframe.nominal, error);
    keyframe.assumed = whole;
}

void Tracker::predictTo(std::size_t k)
{
    links_[k].belief = predict(links_[k - 1].belief, links_[k - 1].interval, links_[k - 1].shift);
    weighing_.bound(links_[k].belief, information_, k, keyframes_[k]);
}

/// The next keyframe's surroundings are all there: its measurements can be used.
void Tracker::ripen()
{
    const std::size_t k = ripe_++;
    keyframes_[k].quiet = lookForQuiet(recording_, keyframes_[k].sample);
    if (k > 0)
        predictTo(k);
    if (const auto closed = quietSpans_.add(k, keyframes_[k].quiet))
        judge(*closed, k);
    if (quietSpans_.open() == k)
        beforeSpan_ = information_;
}

void Tracker::judge(const QuietSpan& span, std::size_t upTo)
{
    spans_.push_back(span);
    const bool movesOn = moving_ && span.continues && timeOf(span.first) - movingSince_ < longestEvenMotion;
    const bool still = !movesOn && standsStill(span);
    if (!still && !movesOn)
        movingSince_ = timeOf(span.first);
    moving_ = !still;
    if (!still)
        return;
    information_ = beforeSpan_;
    for (std::size_t k = span.first; k <= upTo; ++k) {
        if (k > span.first)
            predictTo(k);
        if (k <= span.last) {
            keyframes_[k].stillWeight = 1.0;
            weighing_.still(links_[k].belief, information_, keyframes_[k]);
        }
    }
    stoodAt_ = timeOf(span.last);
    resetDue_ = true;
}

/// Whether the mean velocity predicted through the span, which the span itself has not touched, is nothing within its
/// error, and speaks for standing rather than for an even motion: after long without stillness a prediction is so wide
/// that a slow descent would pass for nothing.
bool Tracker::standsStill(const QuietSpan& span) const
{
    const WholeEstimate known = information_.solve();
    SpanMotion motion{Eigen::Vector3d::Zero(), {}, 0, 0, 0};
    for (std::size_t k = span.first; k <= span.last; ++k)
        motion.velocity += keyframes_[k].nominal.velocity + links_[k].belief.given(known.mean).segment<3>(at::velocity);
    motion.velocity /= static_cast<double>(span.last - span.first + 1);
    const Belief& belief = links_[span.last].belief;
    const Eigen::Matrix<double, 3, wholeSize> slope = belief.slope.middleRows<3>(at::velocity);
    motion.velocityCovariance = belief.covariance.block<3, 3>(at::velocity, at::velocity) +
                                slope.lazyProduct(known.covariance).eval().lazyProduct(slope.transpose());
    addReadings(motion, keyframes_, span, known.mean, known.covariance);
    const auto support = supportForStanding(motion, keyframes_[span.last].quiet);
    // Before stillness has shown the accelerometer's bias along gravity, nothing could speak for either. Sets begin at
    // rest, and a rest goes on; where one begins in motion, the first long quiet span is believed.
    const Eigen::Vector3d up = keyframes_[span.last].nominal.attitude.conjugate() * Eigen::Vector3d::UnitZ();
    const double biasVariance =
        up.dot(known.covariance.block<3, 3>(whole::accelerometerBias, whole::accelerometerBias) * up);
    const bool restGoesOn = timeOf(span.first) - stoodAt_ < longestShift;
    const bool firstRest = span.first > 0 && stoodAt_ <= timeOf(0) && span.last - span.first + 1 >= longRest;
    const bool unknown = biasVariance > unknownBias * unknownBias;
    return support &&
           ((unknown && (restGoesOn || firstRest)) || keyframes_[span.last].quiet.supported || *support > leastSupport);
}

void Tracker::finish()
{
    const auto& samples = recording_.samples;
    if (!propagation_)
        begin();
    advance();
    if (keyframes_.back().sample + 1 != samples.size())
        closeInterval(samples.size() - 1);
    while (ripe_ < keyframes_.size())
        ripen();
    if (const auto closed = quietSpans_.finish())
        judge(*closed, ripe_ - 1);
}

std::pair<std::vector<Keyframe>, std::vector<Link>> Tracker::release()
{
    return {std::move(keyframes_), std::move(links_)};
}

Belief Tracker::predictToNow()
{
    for (std::size_t k = ripe_; k < links_.size(); ++k)
        links_[k].belief = predict(links_[k - 1].belief, links_[k - 1].interval, links_[k - 1].shift);
    Link& last = links_.back();
    last.interval = propagation_->interval();
    last.interval.noise = weighing_.noise(*propagation_, keyframes_.back().sample, recording_.samples.size() - 1);
    last.shift = -(last.interval.border * keyframes_.back().assumed);
    return predict(last.belief, last.interval, last.shift);
}

bool Tracker::smoothToNow(std::size_t first, Smoothing& smoothing, bool withCovariance)
{
    const Belief now = predictToNow();
    links_.emplace_back().belief = now;
    smoothing.run(std::span(links_).subspan(first), information_, withCovariance);
    links_.pop_back();
    return smoothing.ok();
}

} // namespace fleetrung::motion
