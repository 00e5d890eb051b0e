#include "engine/motion/stillness.hpp"
#include "engine/motion/vertical_motion.hpp"

namespace fleetrung::motion
{
namespace
{

constexpr double lookEvery = 0.1;         // s
constexpr double usualBiasWindows = 20.0; // quiet windows from which the first gyroscope bias is taken, at most

Eigen::Quaterniond turnBetween(const Sample& a, const Sample& b, const Eigen::Vector3d& bias)
{
    return rotationBy((0.5 * (a.angularRate + b.angularRate) - bias) * (b.time - a.time));
}

Eigen::Quaterniond turnOver(const std::vector<Sample>& samples, std::size_t to, const Eigen::Vector3d& bias)
{
    Eigen::Quaterniond turn = Eigen::Quaterniond::Identity();
    for (std::size_t i = 0; i < to; ++i)
        turn = turn * turnBetween(samples[i], samples[i + 1], bias);
    return turn.normalized();
}

std::size_t nextLook(const std::vector<Sample>& samples, std::size_t from)
{
    std::size_t i = from + 1;
    while (i < samples.size() && samples[i].time - samples[from].time < lookEvery)
        ++i;
    return i;
}

/// Mean rate over quiet windows that follow each other, shrunk towards the data sheet's zero.
Eigen::Vector3d quietBias(const Recording& recording, std::size_t first)
{
    Eigen::Vector3d sum = Eigen::Vector3d::Zero();
    double count = 0;
    for (std::size_t i = first; i < recording.samples.size() && count < usualBiasWindows;
         i = nextLook(recording.samples, i), ++count) {
        const Quietness window = lookForQuiet(recording, i);
        if (!window.quiet)
            break;
        sum += window.meanRate;
    }
    return sum / (count + 1);
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
            attitude = attitude * turnBetween(samples[i], samples[i + 1], Eigen::Vector3d::Zero());
    }
    return sum / static_cast<double>(samples.size());
}

} // namespace

FirstAttitude findFirstAttitude(const Recording& recording)
{
    const auto& samples = recording.samples;
    FirstAttitude first{Eigen::Quaterniond::Identity(), recording.hasGyroscope ? 0.1 : 0.2, Eigen::Vector3d::Zero(), 0};
    Eigen::Vector3d up = Eigen::Vector3d::Zero();
    for (std::size_t i = 0; i < samples.size(); i = nextLook(samples, i)) {
        const Quietness window = lookForQuiet(recording, i);
        if (!window.quiet)
            continue;
        if (recording.hasGyroscope)
            first.gyroscopeBias = quietBias(recording, i);
        first.quiet = true;
        up = turnOver(samples, i, first.gyroscopeBias) * window.meanForce;
        break;
    }
    if (up.isZero())
        up = meanForceInFirstFrame(samples);
    first.force = up.norm();
    if (first.force > 0)
        first.attitude = Eigen::Quaterniond::FromTwoVectors(up, Eigen::Vector3d::UnitZ());
    return first;
}

} // namespace fleetrung::motion
