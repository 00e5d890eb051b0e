// Recordings with a truth known in closed form: vertical strokes of a level, perfect sensor.
#pragma once

#include <functional>
#include <vector>

#include "engine/motion/gravity.hpp"
#include "engine/motion/sample.hpp"

namespace fleetrung::tests
{

/// One stretch of time with its vertical acceleration [m/s2] as a function of time within it [s].
struct Stretch {
    double duration;
    std::function<double(double)> acceleration;
};

inline Stretch stillness(double duration)
{
    return {duration, [](double) { return 0.0; }};
}

/// Minimum-jerk stroke over `distance` [m] (negative: down) in `duration` [s].
/// Source: Flash & Hogan, J Neurosci 1985;5:1688-1703: x = D (10 s^3 - 15 s^4 + 6 s^5).
inline Stretch minimumJerk(double distance, double duration)
{
    return {duration, [=](double t) {
                const double s = t / duration;
                return distance / (duration * duration) * (60 * s - 180 * s * s + 120 * s * s * s);
            }};
}

/// Half a sine of velocity, v = peak sin(pi t / duration).
inline Stretch halfSine(double peak, double duration)
{
    return {duration, [=](double t) {
                const double w = 3.14159265358979323846 / duration;
                return peak * w * std::cos(w * t);
            }};
}

/// Samples of the stretches one after the other. Where acceleration jumps between two, the sample on the joint takes
/// the mean.
inline motion::Recording recordingOf(const std::vector<Stretch>& stretches, double rate)
{
    motion::Recording recording;
    const auto accelerationAt = [&](double t) {
        double begin = 0;
        for (std::size_t i = 0; i < stretches.size(); ++i) {
            const double end = begin + stretches[i].duration;
            if (std::abs(t - end) < 1e-9 && i + 1 < stretches.size())
                return 0.5 * (stretches[i].acceleration(stretches[i].duration) + stretches[i + 1].acceleration(0));
            if (t < end)
                return stretches[i].acceleration(t - begin);
            begin = end;
        }
        return 0.0;
    };
    double total = 0;
    for (const auto& stretch : stretches)
        total += stretch.duration;
    const auto count = static_cast<int>(total * rate);
    for (int i = 0; i < count; ++i) {
        const double t = i / rate;
        recording.samples.push_back({t, {0, 0, motion::standardGravity + accelerationAt(t)}, Eigen::Vector3d::Zero()});
    }
    return recording;
}

} // namespace fleetrung::tests
