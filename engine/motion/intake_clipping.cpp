#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>

#include "engine/motion/gravity.hpp"
#include "engine/motion/intake_parts.hpp"

namespace fleetrung::motion
{
namespace
{

constexpr double endOfRange = 0.995; // a sensor's own calibration moves the end a little
constexpr double sameScale = 0.02;   // relative distance from a customary full scale
constexpr std::size_t plateau = 3;   // equal readings in a row at the extreme of a recording

/// Full scales of sensors: powers of two of 2 g; 125 degrees a second and its doubles. Common practice, no source.
bool isFullScale(double value, bool gyroscope)
{
    const double unit = gyroscope ? 125 * std::numbers::pi / 180 : 2 * standardGravity;
    const double octaves = std::round(std::log2(value / unit));
    return octaves >= 0 && octaves <= 5 && std::abs(value / (unit * std::exp2(octaves)) - 1) < sameScale;
}

std::size_t longestRun(std::span<const Sample> samples, int axis, double value)
{
    std::size_t longest = 0;
    std::size_t run = 0;
    for (const auto& sample : samples) {
        run = reading(sample, axis) == value ? run + 1 : 0;
        longest = std::max(longest, run);
    }
    return longest;
}

/// The range where the sensor's data do not say it: a customary full scale at which readings stay for a while.
double inferredRange(const Extremes& whole, int sensor)
{
    for (int axis = sensor; axis < sensor + 3; ++axis)
        for (const double extreme :
             {whole.least[static_cast<std::size_t>(axis)], whole.greatest[static_cast<std::size_t>(axis)]})
            if (isFullScale(std::abs(extreme), sensor == 3) && longestRun(whole.samples, axis, extreme) >= plateau)
                return std::abs(extreme);
    return std::numeric_limits<double>::infinity();
}

} // namespace

ClippedAxes findClipping(const Recording& recording, const Extremes& whole, double period)
{
    ClippedAxes clipped;
    std::array<double, axisCount> limit{};
    bool any = false;
    for (const int sensor : {0, 3}) {
        const double stated = sensor == 0 ? recording.sensor.accelerometerRange : recording.sensor.gyroscopeRange;
        const double range = std::isfinite(stated) ? stated : inferredRange(whole, sensor);
        for (int axis = sensor; axis < sensor + 3; ++axis) {
            const auto i = static_cast<std::size_t>(axis);
            limit[i] = endOfRange * range;
            any = any || whole.greatest[i] >= limit[i] || whole.least[i] <= -limit[i];
        }
    }
    for (std::size_t k = 0; any && k < whole.samples.size(); ++k) {
        const auto& sample = whole.samples[k];
        bool here = false;
        for (int axis = 0; axis < axisCount; ++axis)
            if (std::abs(reading(sample, axis)) >= limit[static_cast<std::size_t>(axis)]) {
                ++clipped.samples[static_cast<std::size_t>(axis)];
                here = true;
            }
        if (!here)
            continue;
        ++clipped.anyAxis;
        const Span span{sample.time - 0.5 * period, sample.time + 0.5 * period};
        if (!clipped.spans.empty() && span.from <= clipped.spans.back().to + 0.5 * period)
            clipped.spans.back().to = span.to;
        else
            clipped.spans.push_back(span);
    }
    return clipped;
}

} // namespace fleetrung::motion
