#include "engine/jumps/signal.hpp"

#include <algorithm>
#include <cmath>

#include <Eigen/Geometry>

#include "engine/motion/gravity.hpp"

namespace fleetrung::jumps
{
namespace
{

using Eigen::Vector3d;

constexpr double window = 0.25;      // s
constexpr double forceSpread = 0.25; // m/s2, all axes together, at most
constexpr double leastSpread = 0.06; // m/s2: below it everything is still
constexpr double spreadShare = 1.7;  // of the quietest window's spread: more is a movement
constexpr double rateSpread = 0.15;  // rad/s
constexpr double forceOffset = 1.0;  // m/s2
constexpr double forceChange = 0.35; // m/s2, between rests of one recording
constexpr double soon = 3;           // s over which a predicted speed is good for
constexpr double certain = 0.6;      // s: no jumper moves evenly for longer
constexpr double passingSpeed = 0.2; // m/s
constexpr double impact = 40;        // m/s2: no speed is predicted across it

struct Sums {
    Vector3d force = Vector3d::Zero(), rate = Vector3d::Zero();
    double forceSquared = 0, rateSquared = 0;
};

/// Sums up to and without each sample. Gravity is taken off first: squares of small numbers keep their digits.
std::vector<Sums> runningSums(const motion::Recording& recording)
{
    const auto& samples = recording.samples;
    const Vector3d origin = samples.front().specificForce;
    std::vector<Sums> sums(samples.size() + 1);
    for (std::size_t i = 0; i < samples.size(); ++i) {
        const Vector3d force = samples[i].specificForce - origin;
        const auto& rate = samples[i].angularRate;
        sums[i + 1] = {sums[i].force + force, sums[i].rate + rate, sums[i].forceSquared + force.squaredNorm(),
                       sums[i].rateSquared + rate.squaredNorm()};
    }
    return sums;
}

class RestFinder
{
public:
    explicit RestFinder(const motion::Recording& recording) : samples(recording.samples), sums(runningSums(recording))
    {
    }

    [[nodiscard]] std::vector<Rest> find(double samplingRate) const
    {
        const auto width = std::max<std::size_t>(8, static_cast<std::size_t>(window * samplingRate));
        double quietest = forceSpread;
        for (std::size_t first = 0; first + width <= samples.size(); ++first)
            if (isStill(first, first + width, forceSpread))
                quietest = std::min(quietest, std::sqrt(forceVariance(first, first + width)));
        const double limit = std::clamp(spreadShare * quietest, leastSpread, forceSpread);
        std::vector<Rest> rests;
        for (std::size_t first = 0; first + width <= samples.size(); ++first) {
            if (!isStill(first, first + width, limit))
                continue;
            const std::size_t begin = first;
            while (first + width < samples.size() && isStill(first + 1, first + 1 + width, limit))
                ++first;
            rests.push_back(restOver(begin, first + width));
            first += width - 1;
        }
        return rests;
    }

private:
    [[nodiscard]] Vector3d meanForce(std::size_t from, std::size_t to) const
    {
        return samples.front().specificForce + (sums[to].force - sums[from].force) / static_cast<double>(to - from);
    }
    [[nodiscard]] double forceVariance(std::size_t from, std::size_t to) const
    {
        const auto count = static_cast<double>(to - from);
        const Vector3d mean = (sums[to].force - sums[from].force) / count;
        return std::max(0.0, (sums[to].forceSquared - sums[from].forceSquared) / count - mean.squaredNorm());
    }
    [[nodiscard]] bool isStill(std::size_t from, std::size_t to, double spread) const
    {
        const auto count = static_cast<double>(to - from);
        if (samples[to - 1].time - samples[from].time > 1.5 * window)
            return false; // a gap inside
        const Vector3d rate = (sums[to].rate - sums[from].rate) / count;
        const double rateVariance = (sums[to].rateSquared - sums[from].rateSquared) / count - rate.squaredNorm();
        return forceVariance(from, to) <= spread * spread && rateVariance < rateSpread * rateSpread &&
               std::abs(meanForce(from, to).norm() - motion::standardGravity) < forceOffset;
    }
    /// Up and offset of the last second only: the athlete may have shifted before.
    [[nodiscard]] Rest restOver(std::size_t from, std::size_t to) const
    {
        std::size_t begin = to - 1;
        while (begin > from && samples[to - 1].time - samples[begin].time < 1.0)
            --begin;
        const Vector3d mean = meanForce(begin, to);
        return {from, to - 1, mean.norm(), mean.normalized(),
                (sums[to].rate - sums[begin].rate) / static_cast<double>(to - begin)};
    }

    const std::vector<motion::Sample>& samples;
    std::vector<Sums> sums;
};

/// A direction at rest in the world, in sensor axes `step` seconds later.
Vector3d carried(const Vector3d& up, const Vector3d& rate, double step)
{
    const double angle = rate.norm() * step;
    return std::abs(angle) < 1e-9 ? up : Eigen::AngleAxisd(-angle, rate.normalized()) * up;
}

/// What a sensor reads at rest is one value, up to its offsets: a body that sinks evenly faster reads another one.
void dropUneven(std::vector<Rest>& rests)
{
    std::vector<std::pair<double, std::size_t>> byForce;
    std::size_t total = 0;
    for (const auto& rest : rests) {
        byForce.emplace_back(rest.force, rest.last - rest.first);
        total += rest.last - rest.first;
    }
    std::sort(byForce.begin(), byForce.end());
    std::size_t below = 0;
    double usual = 0;
    for (const auto& [force, width] : byForce) {
        usual = force;
        if ((below += width) * 2 >= total)
            break;
    }
    std::erase_if(rests, [usual](const Rest& rest) { return std::abs(rest.force - usual) > forceChange; });
}

/// Carries up from rest to rest. A rest that would be reached at speed, gently and soon after the one before it, is an
/// even movement: it is taken off the list.
class UpCarrier
{
public:
    UpCarrier(const motion::Recording& theRecording, std::vector<Rest>& theRests)
        : recording(theRecording), samples(theRecording.samples), rests(theRests), up(samples.size(), rests.front().up)
    {
    }

    std::vector<Vector3d> carry()
    {
        for (std::size_t i = rests.front().last; i > 0; --i)
            up[i - 1] = turned(i, i - 1, rests.front());
        for (std::size_t r = 0; r < rests.size(); ++r) {
            up[rests[r].last] = rests[r].up;
            for (std::size_t i = rests[r].last + 1; i < samples.size(); ++i)
                up[i] = turned(i - 1, i, rests[r]);
            while (r + 1 < rests.size() && isPassing(rests[r], rests[r + 1]))
                rests.erase(rests.begin() + static_cast<std::ptrdiff_t>(r + 1));
        }
        return std::move(up);
    }

private:
    [[nodiscard]] Vector3d turned(std::size_t from, std::size_t to, const Rest& rest) const
    {
        const double step = samples[to].time - samples[from].time;
        const Vector3d rate = 0.5 * (samples[from].angularRate + samples[to].angularRate) - rest.rate;
        return recording.hasGyroscope ? carried(up[from], rate, step) : up[from];
    }

    [[nodiscard]] bool isPassing(const Rest& from, const Rest& to) const
    {
        const std::size_t middle = to.first + (to.last - to.first) / 2;
        if (samples[middle].time - samples[from.last].time > soon ||
            samples[to.last].time - samples[to.first].time > certain)
            return false;
        double speed = 0;
        double leaning = 0; // rad s
        for (std::size_t i = from.last; i < middle; ++i) {
            const double force = samples[i].specificForce.dot(up[i]);
            if (force > impact)
                return false;
            const double step = samples[i + 1].time - samples[i].time;
            speed += (force - from.force) * step;
            leaning += up[i].cross(from.up).norm() * step;
        }
        return std::abs(speed) > passingSpeed + 2 * recording.sensor.accelerometerBias * leaning;
    }

    const motion::Recording& recording;
    const std::vector<motion::Sample>& samples;
    std::vector<Rest>& rests;
    std::vector<Vector3d> up;
};

} // namespace

std::size_t Signal::at(double when) const
{
    return static_cast<std::size_t>(std::lower_bound(time.begin(), time.end(), when) - time.begin());
}

const Rest* Signal::restBefore(double when) const
{
    const Rest* found = nullptr;
    for (const auto& rest : rests)
        if (time[rest.last] < when)
            found = &rest;
    return found;
}

Signal readSignal(const motion::Recording& recording)
{
    Signal signal{&recording, motion::samplingRate(recording), {}, {}, {}, {}};
    for (const auto& sample : recording.samples) {
        signal.time.push_back(sample.time);
        signal.length.push_back(sample.specificForce.norm());
    }
    signal.rests = RestFinder(recording).find(signal.rate);
    dropUneven(signal.rests);
    if (!signal.rests.empty())
        signal.up = UpCarrier(recording, signal.rests).carry();
    return signal;
}

} // namespace fleetrung::jumps
