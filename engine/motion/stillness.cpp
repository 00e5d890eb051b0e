#include "engine/motion/stillness.hpp"

#include <algorithm>
#include <cmath>

#include "engine/motion/gravity.hpp"

namespace fleetrung::motion
{
namespace
{

constexpr std::size_t leastSide = 3;  // samples
constexpr double heldSpread = 0.16;   // m/s2, tremor and sway of a bar held still
constexpr double heldTurn = 0.08;     // rad/s, the same for turning
constexpr double steadyTurn = 0.15;   // rad/s
constexpr double gravityMargin = 0.5; // m/s2
constexpr double steadyForce =
    0.08; // m/s2: a larger change of the mean force between windows is a movement setting off
constexpr double supportedShare = 1.3; // of the sensor's own variance

double squared(double x)
{
    return x * x;
}

} // namespace

bool windowIsComplete(const std::vector<Sample>& samples, std::size_t sample)
{
    return sample + leastSide < samples.size() && samples.back().time - samples[sample].time >= quietHalfWindow - 1e-9;
}

Quietness lookForQuiet(const Recording& recording, std::size_t sample)
{
    const auto& samples = recording.samples;
    const double middle = samples[sample].time;
    std::size_t first = sample, last = sample;
    while (first > 0 && (sample - first < leastSide || middle - samples[first - 1].time <= quietHalfWindow + 1e-9))
        --first;
    while (last + 1 < samples.size() &&
           (last - sample < leastSide || samples[last + 1].time - middle <= quietHalfWindow + 1e-9))
        ++last;
    Quietness found;
    const double count = static_cast<double>(last - first + 1);
    if (count < 4)
        return found;
    // One pass: sums about the middle sample, so that no digits are lost.
    const Eigen::Vector3d forceHere = samples[sample].specificForce, rateHere = samples[sample].angularRate;
    Eigen::Vector3d force = Eigen::Vector3d::Zero(), rate = Eigen::Vector3d::Zero();
    double forceSquares = 0, rateSquares = 0;
    for (std::size_t i = first; i <= last; ++i) {
        const Eigen::Vector3d f = samples[i].specificForce - forceHere, w = samples[i].angularRate - rateHere;
        force += f;
        rate += w;
        forceSquares += f.squaredNorm();
        rateSquares += w.squaredNorm();
    }
    force /= count;
    rate /= count;
    found.meanForce = forceHere + force;
    found.meanRate = rateHere + rate;
    const double forceVariance = (forceSquares - count * force.squaredNorm()) / (count - 1);
    const double rateVariance = std::max(0.0, (rateSquares - count * rate.squaredNorm()) / (count - 1));
    found.rateSpread = std::sqrt(rateVariance);

    const auto& sensor = recording.sensor;
    const double bandwidth = 0.5 * (count - 1) / (samples[last].time - samples[first].time);
    const double forceNoise = 3 * squared(sensor.accelerometerNoise) * bandwidth;
    const double forceLimit = squared(heldSpread) + 1.5 * forceNoise;
    const double rateLimit = squared(heldTurn) + 3 * 1.5 * squared(sensor.gyroscopeNoise) * bandwidth;
    found.quiet = forceVariance < forceLimit && rateVariance < rateLimit &&
                  found.meanRate.norm() < steadyTurn + 2 * sensor.gyroscopeBias &&
                  std::abs(found.meanForce.norm() - standardGravity) < gravityMargin + 2 * sensor.accelerometerBias;
    found.supported = found.quiet && forceVariance < supportedShare * forceNoise;
    return found;
}

std::optional<QuietSpan> QuietSpans::close(bool change)
{
    // A lone window between two changes of force lies inside a movement's gentle start: it says nothing.
    const bool says = count_ > 1 || (count_ == 1 && !(afterChange_ && change));
    const auto closed = says ? std::optional(span_) : std::nullopt;
    afterChange_ = change;
    count_ = 0;
    force_ = 0;
    return closed;
}

std::optional<QuietSpan> QuietSpans::add(std::size_t k, const Quietness& window)
{
    const double size = window.meanForce.norm();
    const bool steady = count_ == 0 || std::abs(size - force_ / static_cast<double>(count_)) < steadyForce;
    if (!window.quiet || !steady)
        return close(window.quiet);
    const bool full = count_ == longest_;
    const auto closed = full ? close(false) : std::nullopt;
    if (count_ == 0)
        span_ = {k, k, full};
    span_.last = k;
    force_ += size;
    ++count_;
    return closed;
}

std::optional<QuietSpan> QuietSpans::finish()
{
    return close(false);
}

std::optional<std::size_t> QuietSpans::open() const
{
    return count_ > 0 ? std::optional(span_.first) : std::nullopt;
}

} // namespace fleetrung::motion
