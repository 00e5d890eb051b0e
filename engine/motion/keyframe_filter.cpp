#include "engine/motion/keyframe_filter.hpp"

namespace fleetrung::motion
{

void WholeInformation::measure(int component, double value, double variance)
{
    matrix(component, component) += 1 / variance;
    vector[component] += value / variance;
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
    const double innovationVariance = belief.covariance(component, component) + variance;
    const double innovation = value - belief.mean[component];
    const WholeRow row = belief.slope.row(component);
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
    const Eigen::LLT<WholeMatrix> whole(information.matrix);
    if (whole.info() != Eigen::Success)
        return;
    whole_ = whole.solve(information.vector);
    corrections_.resize(count);
    corrections_[count - 1] = links[count - 1].belief.given(whole_);
    if (withCovariance) {
        wholeCovariance_ = whole.solve(WholeMatrix::Identity());
        covariances_.resize(count);
        crosses_.resize(count);
        gains_.resize(count);
        backs_.resize(count);
        const Belief& last = links[count - 1].belief;
        crosses_[count - 1].noalias() = last.slope * wholeCovariance_;
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
        const LocalVector local = here.given(whole_);
        const LocalVector predicted = link.interval.carry(local) + link.interval.border * whole_ + link.shift;
        corrections_[k] = local + gain * (corrections_[k + 1] - predicted);
        if (!withCovariance)
            continue;
        const Border predictedSlope = link.interval.carry(here.slope) + link.interval.border;
        gains_[k] = gain;
        backs_[k] = here.slope - gain * predictedSlope;
        crosses_[k].noalias() = gain * crosses_[k + 1] + backs_[k] * wholeCovariance_;
        const LocalMatrix mixed = gain * crosses_[k + 1] * backs_[k].transpose();
        covariances_[k] = here.covariance - gain * cross + gain * covariances_[k + 1] * gain.transpose() + mixed +
                          mixed.transpose() + backs_[k] * wholeCovariance_ * backs_[k].transpose();
    }
    ok_ = true;
}

} // namespace fleetrung::motion
