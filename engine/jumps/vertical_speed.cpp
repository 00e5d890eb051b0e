#include "engine/jumps/vertical_speed.hpp"

#include <algorithm>
#include <cmath>
#include <vector>

#include <Eigen/Geometry>

#include "engine/motion/gravity.hpp"

namespace fleetrung::jumps
{
namespace
{

constexpr double longest = 8;        // s: offsets grow over more than a speed is worth
constexpr double beforeRise = 0.3;   // s
constexpr double bends = 4;          // neighbouring bends do not cancel as chance would have it
constexpr double settled = 0.01;     // m/s: nobody stands quite still
constexpr double unknownLean = 0.02; // share of the force that a lean of 10 degrees hides
constexpr double lever = 0.08;       // m: the sensor from the body's centre, which is what a jump lifts
constexpr double scaleOf = 0.02;     // rad: tilt error left by the gyroscope's scale and noise

} // namespace

std::optional<VerticalSpeed> verticalSpeed(const Signal& signal, double when)
{
    const auto* rest = signal.restBefore(when);
    if (rest == nullptr || when - signal.time[rest->last] > longest)
        return std::nullopt;
    const double offset = rest->force - motion::standardGravity;
    const auto force = [&](std::size_t i) { return signal.force(i).dot(signal.up[i]) - offset; };
    VerticalSpeed result;
    double speed = 0;
    double leaning = 0;         // rad s
    double given = 0;           // m/s, of force alone
    double unsampled = 0;       // m2/s2
    std::vector<double> speeds; // at the samples after the rest
    std::size_t rising = rest->last;
    std::size_t i = rest->last;
    for (; i + 1 < signal.size() && signal.time[i + 1] <= when; ++i) {
        const double step = signal.time[i + 1] - signal.time[i];
        const double mean = 0.5 * (force(i) + force(i + 1));
        if (i > rest->last) { // what the trapezoid leaves out: its error is the bend times a twelfth of the step
            const double missed = (force(i - 1) - 2 * force(i) + force(i + 1)) * step / 12;
            unsampled += missed * missed;
        }
        speed += (mean - motion::standardGravity) * step;
        leaning += step * std::min(1.0, signal.up[i].cross(rest->up).norm());
        given += step * std::abs(mean - motion::standardGravity);
        speeds.push_back(speed);
        if (speed <= 0)
            rising = i + 1;
    }
    for (std::size_t k = rising; k > rest->last && signal.time[rising] - signal.time[k] < beforeRise; --k)
        result.sinking = std::min(result.sinking, speeds[k - rest->last - 1]);
    const double left = when - signal.time[i];
    speed += (0.5 * force(i) - motion::standardGravity) * left;

    const auto& traits = signal.recording->sensor;
    const double duration = when - signal.time[rest->last];
    double variance = settled * settled;
    const auto add = [&variance](double part) { variance += part * part; };
    add(traits.accelerometerBias * leaning);
    add(traits.accelerometerScaleError * given);
    add(traits.accelerometerNoise * std::sqrt(duration / 2));
    add(lever * signal.up[i].cross(signal.recording->samples[i].angularRate).norm());
    variance += bends * unsampled;
    if (signal.recording->hasGyroscope)
        add(scaleOf * leaning * motion::standardGravity * 0.5);
    else
        add(unknownLean * (motion::standardGravity * duration + given));
    result.speed = {speed, std::sqrt(variance)};
    return result;
}

} // namespace fleetrung::jumps
