// The gyroscope against the direction of gravity. Carried along by the gyroscope, the specific force of a body that
// stays in the room keeps its direction from one moment to the next; with a sign swapped it does not.
#include <algorithm>
#include <cmath>

#include <Eigen/Geometry>

#include "engine/motion/gravity.hpp"
#include "engine/motion/intake_parts.hpp"

namespace fleetrung::motion
{
namespace
{

using Eigen::Vector3d;

// Starting values of this project.
constexpr double blockLength = 0.02;    // s, turned in one go
constexpr double windowLength = 0.4;    // s over which accelerations average out
constexpr std::size_t windowsApart = 2; // windows that are compared: 0.8 s, too short for the bias to matter
constexpr double leastTurning = 0.4;    // rad/s between the extremes of one axis; with less nothing can be told
constexpr double leastMisfit = 0.1;     // rad2, sum over all pairs
constexpr double largestMisfit = 0.5;   // rad that one pair counts at most: a blow is no evidence
constexpr double clearlyBetter = 0.1;   // rad2 in one pair, hence 0.3 rad
constexpr std::size_t enoughPairs = 3;  // clearly better ones
constexpr double decisive = 0.25;       // share of misfit that the better signs leave
constexpr double asGood = 1.5;          // misfits within this factor are equally good: the fewest swapped signs win

struct Block {
    Vector3d force; ///< m/s2, mean
    Vector3d turn;  ///< rad
    double duration;
    bool afterGap;
};

std::vector<Block> blocksOf(const std::vector<Sample>& samples)
{
    std::vector<Block> blocks;
    blocks.reserve(static_cast<std::size_t>((samples.back().time - samples.front().time) / blockLength) + 2);
    Block block{Vector3d::Zero(), Vector3d::Zero(), 0, true};
    double count = 0;
    const auto close = [&](bool gap) {
        if (count > 0) {
            block.force /= count;
            blocks.push_back(block);
        }
        block = {Vector3d::Zero(), Vector3d::Zero(), 0, gap};
        count = 0;
    };
    for (std::size_t i = 1; i < samples.size(); ++i) {
        const double step = samples[i].time - samples[i - 1].time;
        if (step > longestBridge) {
            close(true);
            continue;
        }
        block.force += samples[i].specificForce;
        block.turn += 0.5 * step * (samples[i].angularRate + samples[i - 1].angularRate);
        block.duration += step;
        count += 1;
        if (block.duration >= blockLength)
            close(false);
    }
    close(false);
    return blocks;
}

/// A set turns to and fro about where it began: the median of the rate is the offset, as far as that is credible.
Vector3d offsetOf(const std::vector<Block>& blocks, double spread)
{
    Vector3d offset;
    std::vector<double> rates(blocks.size());
    for (int axis = 0; axis < 3; ++axis) {
        for (std::size_t i = 0; i < blocks.size(); ++i)
            rates[i] = blocks[i].turn[axis] / blocks[i].duration;
        const auto middle = rates.begin() + static_cast<std::ptrdiff_t>(rates.size() / 2);
        std::nth_element(rates.begin(), middle, rates.end());
        offset[axis] = std::clamp(*middle, -3 * spread, 3 * spread);
    }
    return offset;
}

/// Angle squared between the directions of force in windows 0.8 s apart, turned by the gyroscope with these signs;
/// below 0 where a window says nothing.
std::vector<double> misfits(const std::vector<Block>& blocks, const Vector3d& offset, const Vector3d& signs)
{
    std::vector<Vector3d> windows;
    std::vector<double> misfit;
    Eigen::Quaterniond attitude = Eigen::Quaterniond::Identity();
    Vector3d sum = Vector3d::Zero();
    double duration = 0;
    std::size_t first = 0; // window after the last gap
    for (const auto& block : blocks) {
        if (block.afterGap) {
            first = windows.size();
            sum.setZero();
            duration = 0;
        }
        const Vector3d half = 0.5 * signs.cwiseProduct(block.turn - offset * block.duration);
        attitude = (attitude * Eigen::Quaterniond(1, half.x(), half.y(), half.z())).normalized();
        sum += attitude * block.force * block.duration;
        duration += block.duration;
        if (duration < windowLength)
            continue;
        windows.emplace_back(sum / duration);
        sum.setZero();
        duration = 0;
        if (windows.size() < first + windowsApart + 1)
            continue;
        const auto& now = windows.back();
        const auto& then = windows[windows.size() - 1 - windowsApart];
        const double sizes = now.norm() * then.norm();
        const bool falling = std::min(now.norm(), then.norm()) < 0.5 * standardGravity;
        const double sine = falling ? 0 : now.cross(then).norm() / sizes;
        const double angle = falling ? 0 : std::atan2(sine, now.dot(then) / sizes);
        misfit.push_back(falling ? -1 : std::pow(std::min(angle, largestMisfit), 2));
    }
    return misfit;
}

double total(const std::vector<double>& misfit)
{
    double sum = 0;
    for (const double each : misfit)
        sum += std::max(0.0, each);
    return sum;
}

std::size_t clearGains(const std::vector<double>& from, const std::vector<double>& to)
{
    std::size_t gains = 0;
    for (std::size_t i = 0; i < from.size(); ++i)
        gains += from[i] - std::max(0.0, to[i]) > clearlyBetter ? 1U : 0U;
    return gains;
}

} // namespace

std::optional<Misfit> findMisfit(const Recording& recording, const Extremes& whole)
{
    const double turning = std::max({whole.range(3), whole.range(4), whole.range(5)});
    if (!recording.hasGyroscope || (turning > 0 && turning < leastTurning))
        return std::nullopt;
    const auto blocks = blocksOf(recording.samples);
    if (blocks.empty())
        return std::nullopt;
    const auto offset = offsetOf(blocks, recording.sensor.gyroscopeBias);
    const auto asItIs = misfits(blocks, offset, Vector3d::Ones());
    const double misfit = total(asItIs);
    if (misfit < leastMisfit)
        return std::nullopt;
    if (turning == 0) {
        const auto turned = std::count_if(asItIs.begin(), asItIs.end(), [](double m) { return m > clearlyBetter; });
        return turned >= static_cast<std::ptrdiff_t>(enoughPairs) ? std::optional(Misfit{{}, true}) : std::nullopt;
    }

    // Fewest swapped signs first, so that among equally good explanations the simplest is named.
    constexpr std::array<unsigned, 7> patterns{1, 2, 4, 3, 5, 6, 7};
    double best = decisive * misfit;
    std::optional<Misfit> found;
    for (const unsigned pattern : patterns) {
        Misfit candidate;
        Vector3d signs = Vector3d::Ones();
        for (unsigned axis = 0; axis < 3; ++axis)
            if ((pattern >> axis) & 1U) {
                candidate.swapped[axis] = true;
                signs[static_cast<Eigen::Index>(axis)] = -1;
            }
        const auto with = misfits(blocks, offset, signs);
        if (total(with) < best && clearGains(asItIs, with) >= enoughPairs) {
            best = total(with) / asGood;
            found = candidate;
        }
    }
    return found;
}

} // namespace fleetrung::motion
