#include "engine/motion/sample.hpp"

#include <algorithm>
#include <array>

namespace fleetrung::motion
{

double samplingRate(const Recording& recording)
{
    const auto& samples = recording.samples;
    if (samples.size() < 2)
        return 0.0;
    // Some hundred intervals spread evenly say as much as all of them, and cost nothing.
    constexpr std::size_t most = 255;
    std::array<double, most> intervals{};
    const std::size_t all = samples.size() - 1;
    const std::size_t count = std::min(all, most);
    for (std::size_t j = 0; j < count; ++j) {
        const std::size_t i = j * all / count;
        intervals[j] = samples[i + 1].time - samples[i].time;
    }
    const auto middle = intervals.begin() + static_cast<std::ptrdiff_t>(count / 2);
    std::nth_element(intervals.begin(), middle, intervals.begin() + static_cast<std::ptrdiff_t>(count));
    return *middle > 0.0 ? 1.0 / *middle : 0.0;
}

} // namespace fleetrung::motion
