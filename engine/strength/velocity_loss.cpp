#include "engine/strength/velocity_loss.hpp"

#include <algorithm>

namespace fleetrung::strength
{
namespace
{

constexpr double farBeyond = 0.05; ///< one repetition this far beyond the limit is enough (starting value)

} // namespace

double velocityLoss(std::span<const double> velocities)
{
    if (velocities.empty())
        return 0;
    const double fastest = *std::max_element(velocities.begin(), velocities.end());
    return fastest > 0 ? 1 - velocities.back() / fastest : 0;
}

bool shouldStopSet(std::span<const double> velocities, double limit)
{
    bool previousBeyond = false;
    for (std::size_t count = 1; count <= velocities.size(); ++count) {
        const double loss = velocityLoss(velocities.first(count));
        if (loss > limit + farBeyond || (loss > limit && previousBeyond))
            return true;
        previousBeyond = loss > limit;
    }
    return false;
}

} // namespace fleetrung::strength
