#include <algorithm>
#include <cmath>
#include <limits>

#include "engine/motion/intake_parts.hpp"

namespace fleetrung::motion
{
namespace
{

// Starting values of this project.
constexpr double suspicious = 0.05;      // of the range of both other axes: below it an axis is looked at
constexpr double changing = 0.002;       // share of samples that differ from the one before
constexpr double trembling = 0.15;       // share of samples that are a local peak; white noise has 2/3
constexpr double tremblingCounts = 0.05; // the same, where the readings are counts and no smooth curve
constexpr double rough = 0.30;           // counts: so rough a noise makes every axis flicker, wherever it rests
constexpr double fairlyRough = 0.07; // counts: the same for accelerometers, whose noise is a fifth of a count at least
constexpr double veryRough = 0.6;    // counts: no axis stays within two counts
constexpr double turning = 8; // counts that the others move: then it holds for gyroscopes too, but for rare accidents
constexpr std::size_t fewest = 100; // samples that tell anything of noise
constexpr double twoCounts = 1.5;   // a range of more than one count
constexpr double moving = 300;      // counts; the axes of a sensor are never so square that one sees nothing of this
constexpr double noiseless = 1e-6;  // roughness as a share of the range: less is rounding in a simulation
constexpr std::size_t frozenSamples = 400;
constexpr double frozenTime = 3.0;    // s
constexpr double flickers = 0.01;     // share of samples that are a local peak; a smooth motion has fewer
constexpr double visibleNoise = 0.25; // counts: even in the middle of a count it flickers every twentieth sample

/// How an axis goes from sample to sample.
struct Activity {
    double changes = 0;                                        ///< share of samples that differ from the one before
    double peaks = 0;                                          ///< share of samples that are local peaks
    double roughness = 0;                                      ///< mean height of those peaks over all samples
    double smallest = std::numeric_limits<double>::infinity(); ///< change: one count, where there are counts
};

Activity activityOf(std::span<const Sample> samples, int axis)
{
    Activity activity;
    double before = 0;
    for (std::size_t i = 1; i < samples.size(); ++i) {
        const double change = reading(samples[i], axis) - reading(samples[i - 1], axis);
        if (change != 0) {
            activity.changes += 1;
            activity.smallest = std::min(activity.smallest, std::abs(change));
        }
        if (change * before < 0) {
            activity.peaks += 1;
            activity.roughness += std::min(std::abs(change), std::abs(before));
        }
        before = change;
    }
    const auto count = static_cast<double>(samples.size());
    activity.changes /= count;
    activity.peaks /= count;
    activity.roughness /= count;
    return activity;
}

/// True where small changes are whole counts: a sensor's readings, not a smooth curve.
bool isCounted(std::span<const Sample> samples, int axis, double count)
{
    std::size_t small = 0;
    std::size_t whole = 0;
    for (std::size_t i = 1; i < samples.size(); ++i) {
        const double counts = std::abs(reading(samples[i], axis) - reading(samples[i - 1], axis)) / count;
        if (counts < 0.5 || counts > 8.5)
            continue;
        ++small;
        whole += std::abs(counts - std::round(counts)) < 0.1 ? 1U : 0U;
    }
    return small >= 20 && 20 * whole >= 19 * small;
}

bool isStuck(const Extremes& part, int axis, bool byNoiseAlone)
{
    const int sensor = axis - axis % 3;
    const int other = sensor + (axis + 1) % 3;
    const int third = sensor + (axis + 2) % 3;
    const double quiet = part.range(axis);
    if (quiet > suspicious * std::min(part.range(other), part.range(third)) || part.range(other) == 0 ||
        part.range(third) == 0)
        return false;
    const auto a = activityOf(part.samples, other);
    const auto b = activityOf(part.samples, third);
    const double count = std::min(a.smallest, b.smallest);
    // A sensor that lies level moves one axis, and a noiseless one keeps the others exactly: neither makes both
    // others tremble. Counts so coarse that noise does not show in them keep an axis too, while nothing turns.
    const auto lives = [&](const Activity& activity, int which) {
        const double range = part.range(which);
        // Noise that flickers between two neighbouring counts may leave another axis in the middle of one.
        if (activity.roughness < noiseless * range || range < twoCounts * count)
            return false;
        const bool sure = sensor == 0 || (range > turning * count && !byNoiseAlone);
        const double least = sure ? fairlyRough : rough;
        const bool counted = isCounted(part.samples, which, count);
        const bool trembles = activity.peaks > (counted ? tremblingCounts : trembling);
        return (trembles && activity.roughness > least * count) || (!byNoiseAlone && counted && range > moving * count);
    };
    if (!lives(a, other) || !lives(b, third))
        return false;
    if (activityOf(part.samples, axis).changes < changing)
        return true;
    return quiet < 1.5 * count && std::min(a.roughness, b.roughness) > veryRough * count; // its last bit flickers
}

} // namespace

std::string axisName(int axis)
{
    return (axis < 3 ? "accelerometer " : "gyroscope ") + std::string(1, static_cast<char>('x' + axis % 3));
}

std::optional<int> findStuckAxis(const Extremes& part, bool byNoiseAlone)
{
    if (part.samples.size() < fewest)
        return std::nullopt;
    for (int axis = 0; axis < axisCount; ++axis)
        if (isStuck(part, axis, byNoiseAlone))
            return axis;
    return std::nullopt;
}

std::optional<int> findFrozenAxis(const Recording& recording, double rate)
{
    const auto& samples = recording.samples;
    const std::size_t longest = std::max(frozenSamples, static_cast<std::size_t>(frozenTime * rate));
    if (samples.size() <= longest)
        return std::nullopt;
    for (int axis = 0; axis < (recording.hasGyroscope ? axisCount : 3); ++axis) {
        const double kept = reading(samples.back(), axis);
        std::size_t run = 0;
        while (run < samples.size() && reading(samples[samples.size() - 1 - run], axis) == kept)
            ++run;
        if (run < longest)
            continue;
        // The sensor's other two axes must show that there is noise at all, and how large a count is.
        double count = std::numeric_limits<double>::infinity();
        bool noisy = true;
        for (int other = axis - axis % 3; other < axis - axis % 3 + 3; ++other) {
            const auto activity = activityOf(std::span(samples).last(longest), other);
            count = std::min(count, activity.smallest);
            noisy = noisy && (other == axis || activity.peaks > flickers);
        }
        if (!noisy)
            continue;
        const auto& sensor = recording.sensor;
        const double density = axis < 3 ? sensor.accelerometerNoise : sensor.gyroscopeNoise;
        if (density * std::sqrt(0.5 * rate) > visibleNoise * count)
            return axis;
    }
    return std::nullopt;
}

} // namespace fleetrung::motion
