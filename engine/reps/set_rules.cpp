#include "engine/reps/set_rules.hpp"

#include <algorithm>

#include "engine/base/numbers.hpp"

namespace fleetrung::reps
{
namespace
{

constexpr double partialShare = 0.7;    // of the set's median range
constexpr double lightClipping = 0.020; // s together inside a concentric phase; starting value of this project

} // namespace

motion::Knowledge knowledgeOf(const Lift& lift)
{
    motion::Knowledge knowledge;
    knowledge.heightSpread = lift.key == "free" ? 0.4 : std::max(0.15, lift.typicalRange);
    knowledge.speedSpread = lift.key == "free" ? 0.5 : 0.3;
    return knowledge;
}

std::optional<RefusedRepetition> refusal(const Movement& up, const motion::Screening& screening)
{
    if (motion::sharedTime(screening.gaps, up.start, up.end) > 0)
        return RefusedRepetition{up.start, up.end, motion::Fault::Gap,
                                 "samples are missing inside the concentric phase for more than 60 ms"};
    const double clipped = motion::sharedTime(screening.clipped, up.start, up.end);
    if (clipped > lightClipping)
        return RefusedRepetition{up.start, up.end, motion::Fault::Clipped,
                                 "readings lie at the end of the sensor's range for " + fixedText(1e3 * clipped, 0) +
                                     " ms of the concentric phase; set a wider range"};
    return std::nullopt;
}

double leastRange(const std::vector<Repetition>& repetitions)
{
    std::vector<double> ranges;
    for (const auto& rep : repetitions)
        ranges.push_back(rep.range.value);
    std::nth_element(ranges.begin(), ranges.begin() + static_cast<std::ptrdiff_t>(ranges.size() / 2), ranges.end());
    return partialShare * ranges[ranges.size() / 2];
}

} // namespace fleetrung::reps
