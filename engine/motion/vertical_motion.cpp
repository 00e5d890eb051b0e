#include "engine/motion/vertical_motion.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <tuple>
#include <utility>

#include "engine/motion/corrected_trace.hpp"
#include "engine/motion/gravity.hpp"
#include "engine/motion/gyroscope_sign.hpp"

namespace fleetrung::motion
{
namespace
{

constexpr double stillLimit = 25.0;   // chi-square beyond which a still span is switched off
constexpr double returnLimit = 16.0;  // the same for a top or bottom that should have returned to its height
constexpr double tiltSpread = 0.1;    // rad, of the first attitude once it has been solved for
constexpr double enoughSupport = 4.0; // for a span that the tracker refused
constexpr double tornApart = 3.0;     // spreads
constexpr double looseTurning = 8.0;  // times the spread of what returns
constexpr int linearisations = 3;
constexpr double linearTilt = 0.01; // rad: a smaller correction leaves g * tilt^2 / 2 < 1 mm/s2

/// Tukey's biweight: near 1 for small residuals, exactly nothing beyond the limit, so that many wrong ones cannot pull
/// together.
double robustWeight(double chiSquare, double limit)
{
    const double left = 1.0 - chiSquare / limit;
    return left > 0 ? left * left : 0.0;
}

Expected<VerticalMotion> broken()
{
    return fail(Code::NotConverged, "", "the motion could not be solved; record the set again");
}

} // namespace

VerticalMotionSolver::VerticalMotionSolver(const Recording& recording, const Knowledge& knowledge)
    : recording_(recording), weighing_{recording, knowledge}, tracker_(recording, knowledge)
{
}

/// First pass: forwards with judged stillness, and back once; its smoothed motion is what the solve is linearised
/// about.
bool VerticalMotionSolver::track()
{
    const auto first = findFirstAttitude(recording_);
    if (first.force < 0.5 * standardGravity || first.force > 1.5 * standardGravity)
        return false;
    const auto& samples = recording_.samples;
    const double keyframes = (samples.back().time - samples.front().time) / keyframeSpacing;
    tracker_.reserve(static_cast<std::size_t>(std::min(keyframes, static_cast<double>(samples.size()))) + 8);
    tracker_.start(first.attitude, first.spread, first.gyroscopeBias);
    tracker_.finish();
    return true;
}

void VerticalMotionSolver::linearise()
{
    const auto& samples = recording_.samples;
    const std::size_t count = samples.size();
    acceleration_.resize(count);
    velocity_.resize(count);
    height_.resize(count);
    for (std::size_t k = 0; k < keyframes_.size(); ++k) {
        keyframes_[k].nominal = moved(keyframes_[k].nominal, smoothing_.correction(k));
        keyframes_[k].assumed = smoothing_.whole();
    }
    for (std::size_t k = 0; k + 1 < keyframes_.size(); ++k) {
        Propagation propagation(keyframes_[k].nominal, samples[keyframes_[k].sample], keyframes_[k].assumed);
        for (std::size_t i = keyframes_[k].sample; i < keyframes_[k + 1].sample; ++i) {
            acceleration_[i] = propagation.acceleration().z();
            velocity_[i] = propagation.state().velocity.z();
            height_[i] = propagation.state().height;
            propagation.step(samples[i + 1]);
        }
        const std::size_t end = keyframes_[k + 1].sample;
        acceleration_[end] = propagation.acceleration().z();
        keyframes_[k + 1].reset = difference(keyframes_[k + 1].nominal, propagation.state());
        Link& link = links_[k];
        link.interval = propagation.interval();
        link.interval.noise = weighing_.noise(propagation, keyframes_[k].sample, end);
        link.shift = -(link.interval.border * keyframes_[k].assumed) - keyframes_[k + 1].reset;
    }
    velocity_[count - 1] = keyframes_.back().nominal.velocity.z();
    height_[count - 1] = keyframes_.back().nominal.height;
}

bool VerticalMotionSolver::sweep(bool withCovariance, double turningWidth)
{
    WholeInformation information = weighing_.wholePrior();
    links_[0].belief = weighing_.prior(tiltSpread);
    // What is believed beforehand: at rest, at height zero.
    links_[0].belief.mean.segment<3>(at::velocity) = -keyframes_[0].nominal.velocity;
    links_[0].belief.mean[at::height] = -keyframes_[0].nominal.height;
    for (std::size_t k = 0; k < keyframes_.size(); ++k) {
        if (k > 0) {
            links_[k].belief = predict(links_[k - 1].belief, links_[k - 1].interval, links_[k - 1].shift);
            weighing_.bound(links_[k].belief, information, k, keyframes_[k]);
        }
        weighing_.still(links_[k].belief, information, keyframes_[k]);
        useTurnings(k, information, turningWidth);
    }
    smoothing_.run(links_, information, withCovariance);
    return smoothing_.ok();
}

double VerticalMotionSolver::spreadOf(const Turning& turning) const
{
    return turning.top ? weighing_.knowledge.topSpread : weighing_.knowledge.bottomSpread;
}

/// A turning point between two keyframes is measured at the first, carried on to its instant: height grows with the
/// velocity error until then.
void VerticalMotionSolver::useTurnings(std::size_t k, WholeInformation& information, double width)
{
    for (const Turning& turning : turnings_) {
        if (turning.keyframe != k || turning.weight < 1e-6)
            continue;
        Eigen::Matrix<double, 1, localSize> local = Eigen::Matrix<double, 1, localSize>::Zero();
        local[at::height] = 1;
        local[at::velocity + 2] = turning.share * links_[k].interval.duration;
        WholeRow row = WholeRow::Zero();
        row[turning.top ? whole::top : whole::bottom] = -1;
        const double spread = width * spreadOf(turning);
        measure(links_[k].belief, information, local, row, -turning.height, spread * spread / turning.weight);
    }
}

double VerticalMotionSolver::gapOf(const Turning& turning) const
{
    const LocalVector& error = smoothing_.correction(turning.keyframe);
    const double height = turning.height + error[at::height] +
                          turning.share * links_[turning.keyframe].interval.duration * error[at::velocity + 2];
    return height - smoothing_.whole()[turning.top ? whole::top : whole::bottom];
}

/// A span that the tracker refused, for it knew only what came before: whether all that is known now speaks for
/// standing.
bool VerticalMotionSolver::comesBack(const QuietSpan& span) const
{
    SpanMotion motion{Eigen::Vector3d::Zero(), {}, 0, 0, 0};
    for (std::size_t k = span.first; k <= span.last; ++k)
        motion.velocity += keyframes_[k].nominal.velocity + smoothing_.correction(k).segment<3>(at::velocity);
    motion.velocity /= static_cast<double>(span.last - span.first + 1);
    const std::size_t middle = (span.first + span.last) / 2;
    const Eigen::Matrix<double, 3, wholeSize> slope = smoothing_.slope(middle).middleRows<3>(at::velocity);
    motion.velocityCovariance = smoothing_.covarianceGivenWhole(middle).block<3, 3>(at::velocity, at::velocity) +
                                slope.lazyProduct(smoothing_.wholeCovariance()).eval().lazyProduct(slope.transpose());
    addReadings(motion, keyframes_, span, smoothing_.whole(), smoothing_.wholeCovariance());
    const auto support = supportForStanding(motion, keyframes_[span.last].quiet);
    return support && *support > enoughSupport;
}

bool VerticalMotionSolver::reweigh(double turningWidth)
{
    bool back = false;
    for (const auto& span : tracker_.spans()) {
        double weight = 0;
        if (keyframes_[span.first].stillWeight > 0) {
            Eigen::Vector3d speed = Eigen::Vector3d::Zero();
            Eigen::Vector3d spread = Eigen::Vector3d::Zero();
            for (std::size_t k = span.first; k <= span.last; ++k) {
                speed += keyframes_[k].nominal.velocity + smoothing_.correction(k).segment<3>(at::velocity);
                spread += stillSpeed(keyframes_[k].quiet);
            }
            weight = robustWeight(speed.cwiseQuotient(spread).squaredNorm(), stillLimit);
        } else if (smoothing_.hasCovariance() && comesBack(span)) {
            weight = 1;
            back = true;
        }
        for (std::size_t k = span.first; k <= span.last; ++k)
            keyframes_[k].stillWeight = weight;
    }
    for (Turning& turning : turnings_) {
        const double off = gapOf(turning) / (turningWidth * spreadOf(turning));
        turning.weight = robustWeight(off * off, returnLimit);
    }
    return back;
}

bool VerticalMotionSolver::anyRefused() const
{
    return std::any_of(tracker_.spans().begin(), tracker_.spans().end(),
                       [this](const QuietSpan& span) { return keyframes_[span.first].stillWeight == 0; });
}

/// How far turning points of one kind lie apart, in spreads of what returns.
double VerticalMotionSolver::widestGap() const
{
    double widest = 0;
    for (const bool top : {false, true}) {
        double least = std::numeric_limits<double>::infinity(), most = -least;
        for (const Turning& turning : turnings_)
            if (turning.top == top) {
                least = std::min(least, turning.height);
                most = std::max(most, turning.height);
                widest = std::max(widest, (most - least) / spreadOf(turning));
            }
    }
    return widest;
}

double VerticalMotionSolver::largestTilt() const
{
    double largest = 0;
    for (std::size_t k = 0; k < keyframes_.size(); ++k)
        largest = std::max(largest, smoothing_.correction(k).head<2>().norm());
    return largest;
}

Expected<VerticalMotion> VerticalMotionSolver::look()
{
    if (!track())
        return fail(Code::NotAvailable, "",
                    "the readings never come near gravity; check the units of the accelerometer");
    std::tie(keyframes_, links_) = tracker_.release();
    smoothing_.run(links_, tracker_.information(), false);
    if (!smoothing_.ok())
        return broken();
    for (int round = 0; round < linearisations; ++round) {
        linearise();
        bool again = true;
        for (int pass = 0; pass < 3 && again; ++pass) {
            // Only a span that may come back needs covariances.
            if (!sweep(anyRefused()))
                return broken();
            again = reweigh(1.0) || pass == 0;
        }
        if (largestTilt() < linearTilt)
            break;
    }
    if (const auto axes = findSwappedAxes(recording_, weighing_.knowledge, sidewaysSpeed(keyframes_, smoothing_)))
        return fail(Code::NotAvailable, *axes,
                    "it turns the wrong way against the direction of gravity; swap its sign in the sensor map or the "
                    "file");
    return trace();
}

Expected<VerticalMotion> VerticalMotionSolver::solve(std::span<const Return> returns)
{
    turnings_.clear();
    for (const Return& wanted : returns) {
        const auto after = std::upper_bound(keyframes_.begin(), keyframes_.end(), wanted.sample,
                                            [](std::size_t sample, const Keyframe& k) { return sample < k.sample; });
        const auto k = std::min(static_cast<std::size_t>(after - keyframes_.begin()) - 1, keyframes_.size() - 2);
        const auto& samples = recording_.samples;
        const double from = samples[keyframes_[k].sample].time;
        const double share = (samples[wanted.sample].time - from) / links_[k].interval.duration;
        turnings_.push_back({k, share, height_[wanted.sample], wanted.top});
    }
    if (!turnings_.empty()) {
        // Where drift has torn them apart, what returns is first held loosely: a tight hold would let go of it.
        if (widestGap() > tornApart) {
            if (!sweep(anyRefused(), looseTurning))
                return broken();
            reweigh(looseTurning);
        }
        if (!sweep(anyRefused()))
            return broken();
        reweigh(1.0);
    }
    if (!sweep(true))
        return broken();
    VerticalMotion motion = trace();
    motion.solution = std::move(smoothing_);
    return motion;
}

VerticalMotion VerticalMotionSolver::trace() const
{
    const auto& samples = recording_.samples;
    const std::size_t count = samples.size();
    VerticalMotion motion;
    motion.time.resize(count);
    motion.acceleration.resize(count);
    motion.velocity.resize(count);
    motion.height.resize(count);
    motion.still.resize(count);
    for (std::size_t i = 0; i < count; ++i)
        motion.time[i] = samples[i].time;
    const NominalMotion nominal{acceleration_, velocity_, height_};
    for (std::size_t k = 0; k < keyframes_.size(); ++k) {
        motion.keyframes.push_back(keyframes_[k].sample);
        if (k + 1 == keyframes_.size())
            break;
        const Keyframe& next = keyframes_[k + 1];
        const Stretch stretch{
            keyframes_[k].sample,         next.sample, links_[k].interval.duration,     smoothing_.correction(k),
            smoothing_.correction(k + 1), next.reset,  keyframes_[k].stillWeight > 0.5, next.stillWeight > 0.5};
        spreadCorrection(stretch, nominal, motion);
        if (k + 2 == keyframes_.size())
            correctLast(stretch, nominal, motion);
    }
    return motion;
}

Expected<VerticalMotion> solveVerticalMotion(const Recording& recording, const Knowledge& knowledge)
{
    VerticalMotionSolver solver(recording, knowledge);
    if (auto looked = solver.look(); !looked)
        return looked;
    return solver.solve({});
}

} // namespace fleetrung::motion
