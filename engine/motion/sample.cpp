#include "engine/motion/sample.hpp"

#include <algorithm>

namespace fleetrung::motion
{

double samplingRate(const Recording& recording)
{
    const auto& samples = recording.samples;
    if (samples.size() < 2)
        return 0.0;
    std::vector<double> intervals(samples.size() - 1);
    for (std::size_t i = 0; i < intervals.size(); ++i)
        intervals[i] = samples[i + 1].time - samples[i].time;
    const auto middle = intervals.begin() + static_cast<std::ptrdiff_t>(intervals.size() / 2);
    std::nth_element(intervals.begin(), middle, intervals.end());
    return *middle > 0.0 ? 1.0 / *middle : 0.0;
}

} // namespace fleetrung::motion
