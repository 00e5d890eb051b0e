#include "engine/reps/flags.hpp"

#include <algorithm>

namespace fleetrung::reps
{
namespace
{

constexpr double longGap = 0.06;      // s
constexpr double impact = 30.0;       // m/s2: no muscle turns a bar round so hard; starting value of this project
constexpr double impactWindow = 0.06; // s about the start

} // namespace

Flags flagsOf(const motion::VerticalMotion& motion, const motion::Recording& recording, const Movement& up)
{
    Flags flags = 0;
    const std::size_t first = sampleAt(motion, up.start), last = sampleAt(motion, up.end);
    for (std::size_t i = first; i <= last; ++i) {
        const auto& sample = recording.samples[i];
        if (sample.specificForce.cwiseAbs().maxCoeff() >= 0.999 * recording.sensor.accelerometerRange ||
            sample.angularRate.cwiseAbs().maxCoeff() >= 0.999 * recording.sensor.gyroscopeRange)
            flags = flags | Flag::Clipped;
        if (i < last && motion.time[i + 1] - motion.time[i] > longGap)
            flags = flags | Flag::Gap;
    }
    if (std::none_of(motion.still.begin(), motion.still.end(), [](bool still) { return still; }))
        flags = flags | Flag::NoStillness;
    if (!recording.hasGyroscope)
        flags = flags | Flag::NoGyroscope;
    if (!up.fromDeadStop)
        for (std::size_t i = sampleAt(motion, up.start - impactWindow); i <= sampleAt(motion, up.start + impactWindow);
             ++i)
            if (motion.acceleration[i] > impact)
                flags = flags | Flag::Bounced;
    return flags;
}

} // namespace fleetrung::reps
