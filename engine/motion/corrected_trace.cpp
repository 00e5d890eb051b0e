#include "engine/motion/corrected_trace.hpp"

namespace fleetrung::motion
{
namespace
{

LocalVector changeOver(const Stretch& stretch)
{
    return stretch.endings + stretch.reset - stretch.start;
}

} // namespace

void spreadCorrection(const Stretch& stretch, const NominalMotion& nominal, VerticalMotion& motion)
{
    const LocalVector change = changeOver(stretch);
    const LocalVector& start = stretch.start;
    const double from = motion.time[stretch.first];
    const double acceleration = change[at::velocity + 2] / stretch.duration;
    for (std::size_t i = stretch.first; i < stretch.end; ++i) {
        const double share = (motion.time[i] - from) / stretch.duration;
        motion.acceleration[i] = nominal.acceleration[i] + acceleration;
        motion.velocity[i] = nominal.velocity[i] + start[at::velocity + 2] + share * change[at::velocity + 2];
        motion.height[i] = nominal.height[i] + start[at::height] + share * change[at::height];
        motion.still[i] = share < 0.5 ? stretch.stillStart : stretch.stillEnd;
    }
}

void correctLast(const Stretch& last, const NominalMotion& nominal, VerticalMotion& motion)
{
    const std::size_t i = last.end;
    motion.acceleration[i] = nominal.acceleration[i] + changeOver(last)[at::velocity + 2] / last.duration;
    motion.velocity[i] = nominal.velocity[i] + last.endings[at::velocity + 2];
    motion.height[i] = nominal.height[i] + last.endings[at::height];
    motion.still[i] = last.stillEnd;
}

} // namespace fleetrung::motion
