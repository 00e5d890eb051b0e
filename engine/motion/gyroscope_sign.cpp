#include "engine/motion/gyroscope_sign.hpp"

#include <cmath>

#include "engine/motion/vertical_motion.hpp"

namespace fleetrung::motion
{
namespace
{

// Starting values of this project.
constexpr double suspicious = 0.25; // m/s: a bar goes up and down, and hardly sideways
constexpr double decisive = 0.4;    // of the sideways speed that is left with the right sign

/// Sideways speed with some axes of the gyroscope turned round, from the tracker alone.
double speedWith(const Recording& recording, const Knowledge& knowledge, const Eigen::Vector3d& signs)
{
    Recording turned = recording;
    for (auto& sample : turned.samples)
        sample.angularRate = sample.angularRate.cwiseProduct(signs);
    Tracker tracker(turned, knowledge);
    const auto first = findFirstAttitude(turned);
    tracker.start(first.attitude, first.spread, first.gyroscopeBias);
    tracker.finish();
    Smoothing smoothing;
    smoothing.run(tracker.links(), tracker.information(), false);
    return smoothing.ok() ? sidewaysSpeed(tracker.keyframes(), smoothing) : 1e9;
}

std::string named(const Eigen::Vector3d& signs)
{
    std::string axes;
    for (int axis = 0; axis < 3; ++axis)
        if (signs[axis] < 0)
            axes += (axes.empty() ? "gyroscope " : ", ") + std::string(1, static_cast<char>('x' + axis));
    return axes;
}

} // namespace

double sidewaysSpeed(std::span<const Keyframe> keyframes, const Smoothing& smoothing)
{
    double sum = 0;
    for (std::size_t k = 0; k < keyframes.size(); ++k)
        sum +=
            (keyframes[k].nominal.velocity + smoothing.correction(k).segment<3>(at::velocity)).head<2>().squaredNorm();
    return std::sqrt(sum / static_cast<double>(keyframes.size()));
}

std::optional<std::string> findSwappedAxes(const Recording& recording, const Knowledge& knowledge, double speed)
{
    if (!recording.hasGyroscope || speed < suspicious)
        return std::nullopt;
    double least = decisive * speed;
    std::optional<std::string> axes;
    for (int pattern = 1; pattern < 8; ++pattern) {
        const Eigen::Vector3d signs((pattern & 1) != 0 ? -1 : 1, (pattern & 2) != 0 ? -1 : 1,
                                    (pattern & 4) != 0 ? -1 : 1);
        const double left = speedWith(recording, knowledge, signs);
        if (left < least) {
            least = left;
            axes = named(signs);
        }
    }
    return axes;
}

} // namespace fleetrung::motion
