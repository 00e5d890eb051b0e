#include "engine/motion/keyframe_filter.hpp"

namespace fleetrung::motion
{

void WholeInformation::measure(int component, double value, double variance)
{
    matrix(component, component) += 1 / variance;
    vector[component] += value / variance;
}

WholeVector WholeInformation::mean() const
{
    WholeVector mean = WholeVector::Zero();
    mean.head<estimatedSize>() =
        matrix.topLeftCorner<estimatedSize, estimatedSize>().llt().solve(vector.head<estimatedSize>());
    return mean;
}

WholeEstimate WholeInformation::solve() const
{
    using Estimated = Eigen::Matrix<double, estimatedSize, estimatedSize>;
    WholeEstimate estimate;
    const Eigen::LLT<Estimated> factor(matrix.topLeftCorner<estimatedSize, estimatedSize>());
    estimate.ok = factor.info() == Eigen::Success;
    if (!estimate.ok)
        return estimate;
    estimate.mean.setZero();
    estimate.mean.head<estimatedSize>() = factor.solve(vector.head<estimatedSize>());
    // What a considered error does to the estimate: -pull.
    const Eigen::Matrix<double, estimatedSize, consideredSize> pull =
        factor.solve(matrix.topRightCorner<estimatedSize, consideredSize>());
    const Eigen::Matrix<double, estimatedSize, consideredSize> spread = pull * consideredVariance.asDiagonal();
    auto& covariance = estimate.covariance;
    covariance.topLeftCorner<estimatedSize, estimatedSize>() =
        Estimated(factor.solve(Estimated::Identity())) + spread * pull.transpose();
    covariance.topRightCorner<estimatedSize, consideredSize>() = -spread;
    covariance.bottomLeftCorner<consideredSize, estimatedSize>() = -spread.transpose();
    covariance.bottomRightCorner<consideredSize, consideredSize>() = consideredVariance.asDiagonal();
    return estimate;
}

Belief predict(const Belief& start, const Interval& interval, const LocalVector& shift)
{
    Belief end;
    end.mean = interval.carry(start.mean) + shift;
    end.slope = interval.carry(start.slope) + interval.border;
    end.covariance = interval.carry(start.covariance) + interval.noise;
    return end;
}

void measure(Belief& belief, WholeInformation& information, int component, double value, double variance)
{
    const WholeRow row = belief.slope.row(component);
    const double innovationVariance = belief.covariance(component, component) + variance;
    const double innovation = value - belief.mean[component];
    const LocalVector gain = belief.covariance.col(component) / innovationVariance;
    const WholeRow weighted = row / innovationVariance;
    information.matrix.noalias() += weighted.transpose() * row;
    information.vector.noalias() += weighted.transpose() * innovation;
    belief.mean += gain * innovation;
    belief.slope.noalias() -= gain * row;
    const Eigen::Matrix<double, 1, localSize> covarianceRow = belief.covariance.row(component);
    belief.covariance.noalias() -= gain * covarianceRow;
}

void measure(Belief& belief, WholeInformation& information, const Eigen::Matrix<double, 1, localSize>& localRow,
             const WholeRow& wholeRow, double value, double variance)
{
    const LocalVector spread = belief.covariance * localRow.transpose();
    const double innovationVariance = localRow.dot(spread) + variance;
    const double innovation = value - localRow.dot(belief.mean);
    const WholeRow row = localRow * belief.slope + wholeRow;
    const LocalVector gain = spread / innovationVariance;
    const WholeRow weighted = row / innovationVariance;
    information.matrix.noalias() += weighted.transpose() * row;
    information.vector.noalias() += weighted.transpose() * innovation;
    // Given the whole ones, the measurement reads value - wholeRow * whole.
    belief.mean += gain * innovation;
    belief.slope.noalias() -= gain * row;
    belief.covariance.noalias() -= gain * spread.transpose();
}

void Smoothing::reserve(std::size_t links)
{
    corrections_.reserve(links);
    covariances_.reserve(links);
    crosses_.reserve(links);
    gains_.reserve(links);
    backs_.reserve(links);
}

void Smoothing::run(std::span<const Link> links, const WholeInformation& information, bool withCovariance)
{
    ok_ = false;
    const std::size_t count = links.size();
    whole_ = information.solve();
    if (!whole_.ok)
        return;
    corrections_.resize(count);
    corrections_[count - 1] = links[count - 1].belief.given(whole_.mean);
    if (withCovariance) {
        covariances_.resize(count);
        crosses_.resize(count);
        gains_.resize(count);
        backs_.resize(count);
        const Belief& last = links[count - 1].belief;
        crosses_[count - 1].noalias() = last.slope * whole_.covariance;
        covariances_[count - 1] = last.covariance + crosses_[count - 1] * last.slope.transpose();
    }
    for (std::size_t k = count - 1; k-- > 0;) {
        const Link& link = links[k];
        const Belief& here = link.belief;
        const LocalMatrix predictedCovariance = link.interval.carry(here.covariance) + link.interval.noise;
        const Eigen::LLT<LocalMatrix> factor(predictedCovariance);
        if (factor.info() != Eigen::Success)
            return;
        // gain = P T' (T P T' + Q)^-1
        const LocalMatrix cross = link.interval.transition() * here.covariance;
        const LocalMatrix gain = factor.solve(cross).transpose();
        const LocalVector local = here.given(whole_.mean);
        const LocalVector predicted = link.interval.carry(local) + link.interval.border * whole_.mean + link.shift;
        corrections_[k] = local + gain * (corrections_[k + 1] - predicted);
        if (!withCovariance)
            continue;
        const Border predictedSlope = link.interval.carry(here.slope) + link.interval.border;
        gains_[k] = gain;
        backs_[k] = here.slope - gain * predictedSlope;
        crosses_[k].noalias() = gain * crosses_[k + 1] + backs_[k] * whole_.covariance;
        const LocalMatrix mixed = gain * crosses_[k + 1] * backs_[k].transpose();
        covariances_[k] = here.covariance - gain * cross + gain * covariances_[k + 1] * gain.transpose() + mixed +
                          mixed.transpose() + backs_[k] * whole_.covariance * backs_[k].transpose();
    }
    ok_ = true;
}

} // namespace fleetrung::motion
