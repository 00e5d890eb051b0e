// Joint uncertainty of velocity and height at the instants of one repetition: J P J' of the solve. Used inside reps/.
#pragma once

#include <algorithm>
#include <cmath>
#include <initializer_list>
#include <vector>

#include "engine/reps/strokes.hpp"

namespace fleetrung::reps
{

class JointMotion
{
public:
    JointMotion(const motion::VerticalMotion& motion, const std::vector<double>& instants)
    {
        std::vector<std::size_t> samples;
        for (const double instant : instants)
            samples.push_back(sampleAt(motion, instant));
        covariance_ = motion.covariance(samples);
    }

    /// Velocity or height at one of the instants, with the weight it has in a metric.
    struct Term {
        Eigen::Index row;
        double weight;
    };
    static Term velocity(std::size_t instant, double weight)
    {
        return {static_cast<Eigen::Index>(2 * instant), weight};
    }
    static Term height(std::size_t instant, double weight)
    {
        return {static_cast<Eigen::Index>(2 * instant + 1), weight};
    }

    [[nodiscard]] double variance(std::initializer_list<Term> terms) const
    {
        double sum = 0;
        for (const auto& a : terms)
            for (const auto& b : terms)
                sum += a.weight * b.weight * covariance_(a.row, b.row);
        return std::max(0.0, sum);
    }
    /// Standard uncertainty of the weighted sum.
    [[nodiscard]] double uncertainty(std::initializer_list<Term> terms) const { return std::sqrt(variance(terms)); }

private:
    Eigen::MatrixXd covariance_;
};

} // namespace fleetrung::reps
