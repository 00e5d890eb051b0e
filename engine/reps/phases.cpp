#include "engine/reps/phases.hpp"

#include <algorithm>
#include <cmath>

#include "engine/motion/gravity.hpp"
#include "engine/reps/local_fit.hpp"

namespace fleetrung::reps
{
namespace
{

using motion::VerticalMotion;

constexpr double peakProminenceSpeed = 0.03; // m/s: rules, evidence 5
constexpr double peakProminenceShare = 0.08;
constexpr double leastTransition = 0.5; // m/s2
constexpr double madeUp = 0.1;          // of the rise of acceleration at which the second pull starts

/// Sample of the least acceleration that lies deepest below a greater one on both of its sides; none where the depth is
/// less than `leastTransition`.
std::optional<std::size_t> deepestValley(const VerticalMotion& motion, std::size_t first, std::size_t last)
{
    const auto& a = motion.acceleration;
    std::vector<double> after(last - first + 1, a[last]);
    for (std::size_t i = last; i-- > first;)
        after[i - first] = std::max(after[i - first + 1], a[i]);
    double before = a[first], depth = leastTransition;
    std::optional<std::size_t> valley;
    for (std::size_t i = first; i <= last; ++i) {
        before = std::max(before, a[i]);
        const double here = std::min(before, after[i - first]) - a[i];
        if (here > depth) {
            depth = here;
            valley = i;
        }
    }
    return valley;
}

} // namespace

std::optional<double> freeFallStart(const VerticalMotion& motion, const Movement& up)
{
    constexpr double g = motion::standardGravity;
    const std::size_t last = sampleAt(motion, up.end);
    for (std::size_t i = up.peakSample; i < last; ++i) {
        const double a0 = motion.acceleration[i], a1 = motion.acceleration[i + 1];
        if (a1 < -g) {
            const double share = a0 <= -g ? 0.0 : (a0 + g) / (a0 - a1);
            return std::min(up.end, motion.time[i] + share * (motion.time[i + 1] - motion.time[i]));
        }
    }
    return std::nullopt;
}

std::optional<SecondPull> findSecondPull(const VerticalMotion& motion, const Movement& up)
{
    const std::size_t first = sampleAt(motion, up.start) + 1;
    if (first + 4 >= up.peakSample)
        return std::nullopt;
    const auto valley = deepestValley(motion, first, up.peakSample);
    if (!valley)
        return std::nullopt;
    const Signal acceleration{motion.time, motion.acceleration};
    constexpr double around = 0.02; // s: noise may have chosen a neighbour of the valley
    const auto& time = motion.time;
    const auto least = extremeBetween(acceleration, time[*valley] - around, time[*valley] + around, -1);
    const auto greatest = extremeBetween(acceleration, time[*valley], up.peak, +1);
    const double level = least.value + madeUp * (greatest.value - least.value);
    double before = time[*valley], valueBefore = least.value;
    for (std::size_t i = *valley + 1; i <= up.peakSample; ++i) {
        const auto here = fitAt(acceleration, time[i]);
        if (here.value >= level) {
            const double share = here.value > valueBefore ? (level - valueBefore) / (here.value - valueBefore) : 1.0;
            const double start = before + std::clamp(share, 0.0, 1.0) * (time[i] - before);
            return SecondPull{start, std::max(here.slope, 1.0)};
        }
        before = time[i];
        valueBefore = here.value;
    }
    return std::nullopt;
}

std::optional<VelocityPeak> findOtherPeak(const VerticalMotion& motion, const Movement& up)
{
    const double prominence = std::max(peakProminenceSpeed, peakProminenceShare * up.peakVelocity);
    const std::size_t first = sampleAt(motion, up.start), last = sampleAt(motion, up.end);
    std::optional<std::size_t> best;
    const auto search = [&](std::size_t end, int step) {
        double lowest = up.peakVelocity;
        for (std::size_t i = up.peakSample; i != end; i += static_cast<std::size_t>(step)) {
            const double v = motion.velocity[i];
            lowest = std::min(lowest, v);
            if (v - lowest >= prominence && (!best || v > motion.velocity[*best]))
                best = i;
        }
    };
    search(first, -1);
    search(last, +1);
    if (!best)
        return std::nullopt;
    constexpr double around = 0.02; // s
    const auto peak =
        extremeBetween({motion.time, motion.velocity}, motion.time[*best] - around, motion.time[*best] + around, +1);
    return VelocityPeak{peak.time, peak.value};
}

} // namespace fleetrung::reps
