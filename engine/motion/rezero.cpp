#include <algorithm>
#include <cmath>
#include <numbers>
#include <utility>

#include "engine/motion/calibration.hpp"

namespace fleetrung::motion
{
namespace
{

// Starting values of this project.
constexpr double degree = std::numbers::pi / 180;
constexpr double blockLength = 0.125;                   // s
constexpr double longestGap = 0.06;                     // s
constexpr int fewestSamples = 3;                        // of a block
constexpr double quietForce = 0.12;                     // m/s2, standard deviation of one axis in a block
constexpr double quietRate = 0.6 * degree;              // rad/s, likewise
constexpr double sameForce = 0.02;                      // m/s2: gravity where it was, by the mean of a half
constexpr double sameRate = 0.15 * degree;              // rad/s, likewise
constexpr double largestBias = 12 * degree;             // rad/s, that a sensor may have
constexpr double changeSinceKept = 1 * degree;          // rad/s, of a bias that was measured on another day
constexpr double bridgedChange = 0.2 * degree;          // rad/s
constexpr double changePerSecond = 0.3 * degree / 60.0; // rad/s2
constexpr double otherPose = 20 * degree;               // between gravity of two rests

Eigen::Vector3d spreadOf(const Eigen::Vector3d& squares, const Eigen::Vector3d& sum, int count)
{
    const double n = count;
    return ((squares - sum.cwiseAbs2() / n) / (n - 1)).cwiseMax(0).cwiseSqrt();
}

} // namespace

/// Turns its sums into means. Squares are of differences to the first sample, so that nothing cancels.
bool Rezero::isQuiet(Block& block) const
{
    if (block.count < fewestSamples)
        return false;
    const auto force = spreadOf(block.forceSquares, block.force, block.count);
    const auto rate = spreadOf(block.rateSquares, block.rate, block.count);
    block.force = block.firstForce + block.force / block.count;
    block.rate = block.firstRate + block.rate / block.count;
    return force.maxCoeff() < quietForce && rate.maxCoeff() < quietRate;
}

/// Of the blocks, where their first half agrees with the second.
std::optional<Rezero::Rest> Rezero::rest() const
{
    constexpr double half = blockCount / 2.0;
    const Eigen::Vector3d zero = Eigen::Vector3d::Zero();
    Rest change{zero, zero}, mean{zero, zero};
    for (std::size_t i = 0; i < blockCount; ++i) {
        const double sign = i < blockCount / 2 ? -1 : 1;
        change.force += sign / half * quiet_[i].force;
        change.rate += sign / half * quiet_[i].rate;
        mean.force += quiet_[i].force / (2 * half);
        mean.rate += quiet_[i].rate / (2 * half);
    }
    if (change.force.cwiseAbs().maxCoeff() > sameForce || change.rate.cwiseAbs().maxCoeff() > sameRate)
        return std::nullopt;
    return mean;
}

/// A rest that contradicts the bias: does the one before that did so tell the same, from another pose?
bool Rezero::confirms(const Rest& other)
{
    const auto before = std::exchange(rival_, other);
    if (!before || (other.rate - before->rate).norm() > bridgedChange)
        return false;
    return other.force.dot(before->force) < std::cos(otherPose) * other.force.norm() * before->force.norm();
}

std::optional<Eigen::Vector3d> Rezero::add(const Sample& sample)
{
    if (running_.count > 0 && (sample.time < last_ || sample.time - last_ > longestGap)) {
        running_ = {};
        quietCount_ = 0;
    }
    last_ = sample.time;
    bool complete = false;
    if (running_.count > 0 && sample.time - running_.begin >= blockLength) {
        if (isQuiet(running_))
            quiet_[quietCount_++] = running_;
        else
            quietCount_ = 0;
        complete = quietCount_ == blockCount;
        running_ = {};
    }
    if (running_.count == 0) {
        running_.begin = sample.time;
        running_.firstForce = sample.specificForce;
        running_.firstRate = sample.angularRate;
    }
    ++running_.count;
    const Eigen::Vector3d force = sample.specificForce - running_.firstForce;
    const Eigen::Vector3d rate = sample.angularRate - running_.firstRate;
    running_.force += force;
    running_.rate += rate;
    running_.forceSquares += force.cwiseAbs2();
    running_.rateSquares += rate.cwiseAbs2();
    if (!complete)
        return std::nullopt;
    quietCount_ = 0;
    const auto found = rest();
    if (!found || found->rate.norm() > largestBias)
        return std::nullopt;
    const double allowed = foundAt_
                               ? std::min(bridgedChange + changePerSecond * (sample.time - *foundAt_), changeSinceKept)
                               : changeSinceKept;
    if (bias_ && (found->rate - *bias_).norm() > allowed && !confirms(*found))
        return std::nullopt;
    rival_.reset();
    bias_ = found->rate;
    foundAt_ = sample.time;
    return bias_;
}

} // namespace fleetrung::motion
