#include "engine/motion/stillness.hpp"

#include <algorithm>
#include <cmath>

#include "engine/motion/gravity.hpp"

namespace fleetrung::motion
{
namespace
{

constexpr double halfWindow = 0.08;   // s
constexpr double heldSpread = 0.16;   // m/s2, tremor and sway of a bar held still
constexpr double heldTurn = 0.08;     // rad/s, the same for turning
constexpr double steadyTurn = 0.15;   // rad/s
constexpr double gravityMargin = 0.5; // m/s2
constexpr double steadyForce =
    0.08; // m/s2: a larger change of the mean force between windows is a movement setting off

Quietness lookAt(const Recording& recording, std::size_t first, std::size_t last, double rate)
{
    const auto& samples = recording.samples;
    const double count = static_cast<double>(last - first + 1);
    Quietness found;
    for (std::size_t i = first; i <= last; ++i) {
        found.meanForce += samples[i].specificForce;
        found.meanRate += samples[i].angularRate;
    }
    found.meanForce /= count;
    found.meanRate /= count;
    double forceVariance = 0;
    double rateVariance = 0;
    for (std::size_t i = first; i <= last; ++i) {
        forceVariance += (samples[i].specificForce - found.meanForce).squaredNorm();
        rateVariance += (samples[i].angularRate - found.meanRate).squaredNorm();
    }
    forceVariance /= count - 1;
    rateVariance /= count - 1;
    found.rateSpread = std::sqrt(rateVariance);

    const auto squared = [](double x) { return x * x; };
    const auto& sensor = recording.sensor;
    const double forceLimit = squared(heldSpread) + 3 * 1.5 * squared(sensor.accelerometerNoise) * rate / 2;
    const double rateLimit = squared(heldTurn) + 3 * 1.5 * squared(sensor.gyroscopeNoise) * rate / 2;
    found.quiet = forceVariance < forceLimit && rateVariance < rateLimit &&
                  found.meanRate.norm() < steadyTurn + 2 * sensor.gyroscopeBias &&
                  std::abs(found.meanForce.norm() - standardGravity) < gravityMargin + 2 * sensor.accelerometerBias;
    return found;
}

} // namespace

std::vector<Quietness> findQuiet(const Recording& recording, std::span<const std::size_t> samples)
{
    const double rate = samplingRate(recording);
    const auto half = std::max<std::size_t>(3, static_cast<std::size_t>(std::lround(halfWindow * rate)));
    const std::size_t last = recording.samples.size() - 1;
    std::vector<Quietness> found;
    found.reserve(samples.size());
    for (const std::size_t sample : samples) {
        const std::size_t begin = sample > half ? sample - half : 0;
        found.push_back(lookAt(recording, begin, std::min(last, sample + half), rate));
    }
    return found;
}

std::vector<QuietSpan> quietSpans(std::span<const Quietness> windows, std::size_t longest)
{
    std::vector<QuietSpan> spans;
    double force = 0; // sum over the open span
    std::size_t open = 0;
    bool afterChange = false;
    // A lone window between two changes of force lies inside a movement's gentle start: it says nothing.
    const auto closeSpan = [&](bool change) {
        if (open == 1 && afterChange && change)
            spans.pop_back();
        afterChange = change;
        open = 0;
        force = 0;
    };
    for (std::size_t k = 0; k < windows.size(); ++k) {
        const double size = windows[k].meanForce.norm();
        const bool steady = open == 0 || std::abs(size - force / static_cast<double>(open)) < steadyForce;
        if (!windows[k].quiet || !steady) {
            closeSpan(windows[k].quiet);
            continue;
        }
        const bool full = open == longest;
        if (full)
            closeSpan(false);
        if (open == 0)
            spans.push_back({k, k, full});
        spans.back().last = k;
        force += size;
        ++open;
    }
    return spans;
}

} // namespace fleetrung::motion
