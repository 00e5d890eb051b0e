#include "engine/motion/keyframe_chain.hpp"

#include <algorithm>
#include <cmath>

#include "engine/motion/gravity.hpp"

namespace fleetrung::motion
{
namespace
{

constexpr double keyframeSpacing = 0.1;   // s
constexpr std::size_t longestSpan = 10;   // keyframes that are judged together
constexpr double usualBiasWindows = 20.0; // quiet windows from which the first gyroscope bias is taken, at most

double squared(double x)
{
    return x * x;
}

std::vector<std::size_t> placeKeyframes(const std::vector<Sample>& samples)
{
    std::vector<std::size_t> keyframes{0};
    for (std::size_t i = 1; i < samples.size(); ++i)
        if (samples[i].time - samples[keyframes.back()].time >= keyframeSpacing - 1e-9)
            keyframes.push_back(i);
    if (keyframes.back() + 1 != samples.size()) {
        // A last short interval joins the one before it.
        if (keyframes.size() > 1)
            keyframes.pop_back();
        keyframes.push_back(samples.size() - 1);
    }
    return keyframes;
}

/// Mean rate over the quiet keyframes that follow k without a break, shrunk towards the data sheet's zero.
Eigen::Vector3d quietBias(const Chain& chain, std::size_t k)
{
    if (!chain.recording.hasGyroscope)
        return Eigen::Vector3d::Zero();
    Eigen::Vector3d sum = Eigen::Vector3d::Zero();
    double count = 0;
    for (; k < chain.quiet.size() && chain.quiet[k].quiet && count < usualBiasWindows; ++k, ++count)
        sum += chain.quiet[k].meanRate;
    return sum / (count + 1);
}

Eigen::Quaterniond turnOver(const std::vector<Sample>& samples, std::size_t from, std::size_t to,
                            const Eigen::Vector3d& bias)
{
    Eigen::Quaterniond turn = Eigen::Quaterniond::Identity();
    for (std::size_t i = from; i < to; ++i) {
        const Eigen::Vector3d angle = (0.5 * (samples[i].angularRate + samples[i + 1].angularRate) - bias) *
                                      (samples[i + 1].time - samples[i].time);
        const double size = angle.norm();
        if (size > 0)
            turn = turn * Eigen::Quaterniond(Eigen::AngleAxisd(size, angle / size));
    }
    return turn.normalized();
}

/// Mean specific force of the whole capture in the sensor axes of the first sample: over a long stretch a body that
/// stays in the room averages gravity alone.
Eigen::Vector3d meanForceInFirstFrame(const std::vector<Sample>& samples)
{
    Eigen::Quaterniond attitude = Eigen::Quaterniond::Identity();
    Eigen::Vector3d sum = Eigen::Vector3d::Zero();
    for (std::size_t i = 0; i < samples.size(); ++i) {
        sum += attitude * samples[i].specificForce;
        if (i + 1 < samples.size())
            attitude = attitude * turnOver(samples, i, i + 1, Eigen::Vector3d::Zero());
    }
    return sum / static_cast<double>(samples.size());
}

} // namespace

std::size_t Chain::keyframeBefore(std::size_t sample) const
{
    const auto after = std::upper_bound(keyframes.begin(), keyframes.end(), sample);
    return std::min(static_cast<std::size_t>(after - keyframes.begin()) - 1, keyframes.size() - 2);
}

StateVector Chain::priorSpread() const
{
    StateVector spread;
    const double tilt = recording.hasGyroscope ? 0.1 : 0.2;
    spread << tilt, tilt, 1.5, 1.5, 1.5, 2.0, StateVector::Constant(recording.sensor.gyroscopeBias).head<3>(),
        StateVector::Constant(recording.sensor.accelerometerBias).head<3>(), 2.0, 2.0;
    return spread;
}

StateVector Chain::priorOffset() const
{
    State believed;
    believed.attitude = states[0].attitude; // the accelerometer has already been used for it
    return difference(states[0], believed);
}

std::optional<Chain> startChain(const Recording& recording)
{
    const auto& samples = recording.samples;
    Chain chain{recording, placeKeyframes(samples), {}, {}, {}, {}};
    chain.quiet = findQuiet(recording, chain.keyframes);
    chain.spans = quietSpans(chain.quiet, longestSpan);

    State state;
    Eigen::Vector3d up;
    const auto firstQuiet =
        std::find_if(chain.quiet.begin(), chain.quiet.end(), [](const Quietness& q) { return q.quiet; });
    if (firstQuiet == chain.quiet.end()) {
        up = meanForceInFirstFrame(samples);
    } else {
        const auto k = static_cast<std::size_t>(firstQuiet - chain.quiet.begin());
        state.gyroscopeBias = quietBias(chain, k);
        up = turnOver(samples, 0, chain.keyframes[k], state.gyroscopeBias) * firstQuiet->meanForce;
    }
    if (up.norm() < 0.5 * standardGravity || up.norm() > 1.5 * standardGravity)
        return std::nullopt;
    state.attitude = Eigen::Quaterniond::FromTwoVectors(up, Eigen::Vector3d::UnitZ());
    chain.states.push_back(state);
    for (std::size_t k = 1; k < chain.keyframes.size(); ++k) {
        const auto turn = turnOver(samples, chain.keyframes[k - 1], chain.keyframes[k], state.gyroscopeBias);
        state.attitude = (state.attitude * turn).normalized();
        chain.states.push_back(state);
    }
    chain.intervals.resize(chain.keyframes.size() - 1);
    return chain;
}

StateMatrix intervalNoise(const Recording& recording, const Propagation& propagation)
{
    const auto& sensor = recording.sensor;
    const double t = propagation.duration();
    double tilt = squared(sensor.gyroscopeNoise) * t / 2 + squared(sensor.gyroscopeScaleError * propagation.turned()) +
                  squared(1e-5) * t;
    if (!recording.hasGyroscope)
        tilt += squared(0.15) * t; // a held bar that nobody watches turns by some degrees each second
    const double speed = squared(sensor.accelerometerNoise) * t / 2 +
                         squared(0.5 * sensor.accelerometerScaleError * propagation.acceleratedTravel()) + 1e-8 * t;
    StateMatrix q = StateMatrix::Zero();
    q.diagonal().segment<2>(at::tilt).setConstant(tilt);
    q.diagonal().segment<3>(at::velocity).setConstant(speed);
    q(at::height, at::height) = speed * t * t / 3 + 1e-10;
    q(at::height, at::velocity + 2) = q(at::velocity + 2, at::height) = speed * t / 2;
    q.diagonal().segment<3>(at::gyroscopeBias).setConstant(squared(2e-5) * t);
    q.diagonal().segment<3>(at::accelerometerBias).setConstant(squared(5e-4) * t);
    q(at::top, at::top) = q(at::bottom, at::bottom) = squared(1e-3) * t;
    return q;
}

double rateWeight(const Quietness& quiet)
{
    return 1.0 / squared(std::max(0.003, quiet.rateSpread));
}

} // namespace fleetrung::motion
