#include "engine/motion/keyframe_filter.hpp"

#include "engine/motion/small_solve.hpp"

namespace fleetrung::motion
{

void WholeInformation::measure(int component, double value, double variance)
{
    matrix(component, component) += 1 / variance;
    vector[component] += value / variance;
}

namespace
{

/// What every measurement does once its direction is known: `gain` times the innovation onto the local errors, and its
/// information on the whole ones. Row by row: Eigen's outer products of this size are calls, not loops.
void use(Belief& belief, WholeInformation& information, const LocalVector& gain, const LocalVector& spread,
         const WholeRow& row, double innovation, double innovationVariance)
{
    const WholeRow weighted = row / innovationVariance;
    for (int i = 0; i < wholeSize; ++i)
        information.matrix.col(i) += row[i] * weighted.head<estimatedSize>().transpose();
    information.vector += innovation * weighted.head<estimatedSize>().transpose();
    belief.mean += gain * innovation;
    for (int i = 0; i < localSize; ++i) {
        belief.slope.row(i) -= gain[i] * row;
        belief.covariance.col(i) -= spread[i] * gain;
    }
}

} // namespace

WholeVector WholeInformation::mean() const
{
    WholeVector mean = WholeVector::Zero();
    Vector solution = vector;
    if (solveInPlace<estimatedSize, 1>(matrix.leftCols<estimatedSize>(), solution))
        mean.head<estimatedSize>() = solution;
    return mean;
}

WholeEstimate WholeInformation::solve() const
{
    WholeEstimate estimate;
    // Right-hand sides: the vector, the identity, and what the considered errors push on.
    Eigen::Matrix<double, estimatedSize, 1 + estimatedSize + consideredSize> sides;
    sides << vector, Eigen::Matrix<double, estimatedSize, estimatedSize>::Identity(),
        matrix.rightCols<consideredSize>();
    estimate.ok =
        solveInPlace<estimatedSize, 1 + estimatedSize + consideredSize>(matrix.leftCols<estimatedSize>(), sides);
    if (!estimate.ok)
        return estimate;
    estimate.mean.setZero();
    estimate.mean.head<estimatedSize>() = sides.col(0);
    const auto inverse = sides.middleCols<estimatedSize>(1);
    const auto pull = sides.rightCols<consideredSize>(); // a considered error moves the estimate by -pull
    const Eigen::Matrix<double, estimatedSize, consideredSize> spread = pull * consideredVariance.asDiagonal();
    auto& covariance = estimate.covariance;
    covariance.topLeftCorner<estimatedSize, estimatedSize>() = inverse + spread.lazyProduct(pull.transpose());
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
    const double innovationVariance = belief.covariance(component, component) + variance;
    const LocalVector spread = belief.covariance.col(component);
    const WholeRow row = belief.slope.row(component);
    use(belief, information, spread / innovationVariance, spread, row, value - belief.mean[component],
        innovationVariance);
}

void measure(Belief& belief, WholeInformation& information, const Eigen::Matrix<double, 1, localSize>& localRow,
             const WholeRow& wholeRow, double value, double variance)
{
    const LocalVector spread = belief.covariance.lazyProduct(localRow.transpose());
    const double innovationVariance = localRow.dot(spread) + variance;
    // Given the whole ones, the measurement reads value - wholeRow * whole.
    const WholeRow row = localRow.lazyProduct(belief.slope) + wholeRow;
    use(belief, information, spread / innovationVariance, spread, row, value - localRow.dot(belief.mean),
        innovationVariance);
}

void Smoothing::reserve(std::size_t links)
{
    corrections_.reserve(links);
    covariances_.reserve(links);
    slopes_.reserve(links);
    gains_.reserve(links);
}

void Smoothing::run(std::span<const Link> links, const WholeInformation& information, bool withCovariance)
{
    ok_ = false;
    hasCovariance_ = withCovariance;
    const std::size_t count = links.size();
    whole_ = information.solve();
    if (!whole_.ok)
        return;
    corrections_.resize(count);
    corrections_[count - 1] = links[count - 1].belief.given(whole_.mean);
    if (withCovariance) {
        covariances_.resize(count);
        slopes_.resize(count);
        gains_.resize(count);
        slopes_[count - 1] = links[count - 1].belief.slope;
        covariances_[count - 1] = links[count - 1].belief.covariance;
    }
    for (std::size_t k = count - 1; k-- > 0;) {
        const Link& link = links[k];
        const Belief& here = link.belief;
        const LocalMatrix predicted = link.interval.carry(here.covariance) + link.interval.noise;
        const LocalMatrix cross = link.interval.carryRows(here.covariance);
        const LocalVector local = here.given(whole_.mean);
        const LocalVector end = link.interval.carry(local) + link.interval.border * whole_.mean + link.shift;
        LocalVector surprise = corrections_[k + 1] - end;
        if (!withCovariance) {
            if (!solveInPlace<localSize, 1>(predicted, surprise))
                return;
            corrections_[k] = local + cross.transpose() * surprise;
            continue;
        }
        // gain = P T' (T P T' + Q)^-1
        LocalMatrix gainTransposed = cross;
        if (!solveInPlace<localSize, localSize>(predicted, gainTransposed))
            return;
        const LocalMatrix gain = gainTransposed.transpose();
        corrections_[k] = local + gain * surprise;
        const Border change = slopes_[k + 1] - link.interval.carry(here.slope) - link.interval.border;
        slopes_[k] = here.slope + gain.lazyProduct(change);
        const LocalMatrix gained = gain.lazyProduct(covariances_[k + 1]);
        covariances_[k] = here.covariance - gain.lazyProduct(cross) + gained.lazyProduct(gain.transpose());
        gains_[k] = gain;
    }
    ok_ = true;
}

} // namespace fleetrung::motion
