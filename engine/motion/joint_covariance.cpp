// Covariances between instants of one solved motion.
#include <algorithm>
#include <array>

#include "engine/motion/vertical_motion.hpp"

namespace fleetrung::motion
{
namespace
{

constexpr std::array<int, 2> components{at::velocity + 2, at::height};

/// An instant between two keyframes: errors are taken as linear in time there, as the corrections are.
struct Instant {
    std::size_t keyframe;
    double share; ///< of the keyframe after
};

Instant instantOf(const VerticalMotion& motion, std::size_t sample)
{
    const auto& keyframes = motion.keyframes;
    const auto after = std::upper_bound(keyframes.begin(), keyframes.end(), sample);
    const auto k = std::min(static_cast<std::size_t>(after - keyframes.begin()) - 1, keyframes.size() - 2);
    const double length = motion.time[keyframes[k + 1]] - motion.time[keyframes[k]];
    return {k, (motion.time[sample] - motion.time[keyframes[k]]) / length};
}

/// One quantity (velocity or height) at one instant, and its covariance with the keyframes about it, given the whole
/// ones: moved backwards keyframe by keyframe, as the backward sweep went.
class Quantity
{
public:
    Quantity(const Smoothing& solution, const Instant& instant, int row)
        : solution_(solution), keyframe_(instant.keyframe)
    {
        const LocalMatrix& after = solution.covarianceGivenWhole(keyframe_ + 1);
        const LocalVector own = after.col(row);
        const LocalVector across = (solution.gain(keyframe_).row(row) * after).transpose();
        next_ = instant.share * own + (1 - instant.share) * across;
        here_ = (1 - instant.share) * solution.covarianceGivenWhole(keyframe_).col(row) +
                instant.share * solution.carriedBack(keyframe_, own);
    }

    void moveTo(std::size_t keyframe)
    {
        while (keyframe_ > keyframe) {
            next_ = here_;
            here_ = solution_.carriedBack(--keyframe_, next_);
        }
    }

    [[nodiscard]] double with(const Instant& instant, int row) const
    {
        return (1 - instant.share) * here_[row] + instant.share * next_[row];
    }

private:
    const Smoothing& solution_;
    std::size_t keyframe_;
    LocalVector here_, next_;
};

} // namespace

Eigen::MatrixXd VerticalMotion::covariance(std::span<const std::size_t> wanted) const
{
    std::vector<Instant> instants;
    for (const std::size_t sample : wanted)
        instants.push_back(instantOf(*this, sample));
    std::vector<std::size_t> latestFirst(instants.size());
    for (std::size_t i = 0; i < instants.size(); ++i)
        latestFirst[i] = i;
    std::stable_sort(latestFirst.begin(), latestFirst.end(),
                     [&](std::size_t a, std::size_t b) { return instants[a].keyframe > instants[b].keyframe; });
    const auto slopeAt = [this](const Instant& m, int row) -> WholeRow {
        return (1 - m.share) * solution.slope(m.keyframe).row(row) + m.share * solution.slope(m.keyframe + 1).row(row);
    };

    const auto size = static_cast<Eigen::Index>(2 * wanted.size());
    Eigen::MatrixXd result(size, size);
    for (std::size_t b = 0; b < latestFirst.size(); ++b)
        for (std::size_t component = 0; component < 2; ++component) {
            const Instant& later = instants[latestFirst[b]];
            const WholeVector pulled = solution.wholeCovariance() * slopeAt(later, components[component]).transpose();
            Quantity quantity(solution, later, components[component]);
            for (std::size_t a = b; a < latestFirst.size(); ++a) {
                const Instant& earlier = instants[latestFirst[a]];
                quantity.moveTo(earlier.keyframe);
                for (std::size_t other = 0; other < 2; ++other) {
                    const auto i = static_cast<Eigen::Index>(2 * latestFirst[a] + other);
                    const auto j = static_cast<Eigen::Index>(2 * latestFirst[b] + component);
                    result(i, j) = result(j, i) =
                        quantity.with(earlier, components[other]) + slopeAt(earlier, components[other]).dot(pulled);
                }
            }
        }
    return result;
}

} // namespace fleetrung::motion
