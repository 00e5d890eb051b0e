// Least squares over a chain of keyframes, in two sweeps: forwards, keyframe by keyframe (that is the live estimate),
// and backwards from any keyframe (that is the best estimate of all before it). Used inside motion/.
//
// What stays the same over the capture (biases, scale errors, the heights that tops and bottoms return to) is kept
// apart: a keyframe's errors are known *given* these, as mean + slope * whole, and the whole ones gather their own
// information. Source: Friedland, Treatment of bias in recursive filtering, IEEE Trans Automatic Control
// 1969;14:359-367; backward sweep: Rauch, Tung, Striebel, AIAA Journal 1965;3:1445-1450 (both from memory).
#pragma once

#include <optional>
#include <span>
#include <vector>

#include <Eigen/Cholesky>

#include "engine/motion/keyframe_state.hpp"

namespace fleetrung::motion
{

/// Local errors of one keyframe given the whole ones.
struct Belief {
    LocalVector mean = LocalVector::Zero();
    Border slope = Border::Zero();
    LocalMatrix covariance = LocalMatrix::Identity();

    [[nodiscard]] LocalVector given(const WholeVector& whole) const { return mean + slope * whole; }
};

struct WholeEstimate {
    bool ok = false;
    WholeVector mean;
    WholeMatrix covariance;
};

/// What has been gathered about the whole ones.
struct WholeInformation {
    using Matrix = Eigen::Matrix<double, estimatedSize, wholeSize>;
    using Vector = Eigen::Matrix<double, estimatedSize, 1>;

    Matrix matrix = Matrix::Zero(); ///< rows of the estimated ones only
    Vector vector = Vector::Zero();
    Eigen::Matrix<double, consideredSize, 1> consideredVariance = Eigen::Matrix<double, consideredSize, 1>::Zero();

    /// The considered ones stay at zero.
    [[nodiscard]] WholeVector mean() const;
    [[nodiscard]] WholeEstimate solve() const;
    void measure(int component, double value, double variance);
};

/// The belief at the end of an interval. `shift` is what the end's nominal state was moved by, and what the interval's
/// own assumption of the whole ones has done already.
[[nodiscard]] Belief predict(const Belief& start, const Interval& interval, const LocalVector& shift);

/// Local component = value, up to noise of the given variance.
void measure(Belief& belief, WholeInformation& information, int component, double value, double variance);

/// localRow * local + wholeRow * whole = value.
void measure(Belief& belief, WholeInformation& information, const Eigen::Matrix<double, 1, localSize>& localRow,
             const WholeRow& wholeRow, double value, double variance);

/// A keyframe and the way to the next one.
struct Link {
    Interval interval;
    LocalVector shift = LocalVector::Zero();
    Belief belief; ///< after everything measured up to and at this keyframe
};

/// The backward sweep over links [first, last].
class Smoothing
{
public:
    /// Corrections only, or with what covariances need. Not ok where a covariance is not positive definite.
    void run(std::span<const Link> links, const WholeInformation& information, bool withCovariance);

    [[nodiscard]] bool ok() const { return ok_; }
    [[nodiscard]] bool hasCovariance() const { return hasCovariance_; }
    [[nodiscard]] std::size_t size() const { return corrections_.size(); }
    [[nodiscard]] const LocalVector& correction(std::size_t k) const { return corrections_[k]; }
    [[nodiscard]] const WholeVector& whole() const { return whole_.mean; }
    [[nodiscard]] const WholeMatrix& wholeCovariance() const { return whole_.covariance; }
    /// Of the local errors, were the whole ones known; and how they follow the whole ones. Together:
    /// cov(local k) = covariance + slope * wholeCovariance * slope', cov(local k, whole) = slope * wholeCovariance.
    [[nodiscard]] const LocalMatrix& covarianceGivenWhole(std::size_t k) const { return covariances_[k]; }
    [[nodiscard]] const Border& slope(std::size_t k) const { return slopes_[k]; }
    /// Covariance, given the whole ones, of local k with something later, from that of local k + 1 with it.
    [[nodiscard]] LocalVector carriedBack(std::size_t k, const LocalVector& next) const { return gains_[k] * next; }
    [[nodiscard]] const LocalMatrix& gain(std::size_t k) const { return gains_[k]; }
    /// Makes room, so that later runs allocate nothing.
    void reserve(std::size_t links);

private:
    bool ok_ = false;
    bool hasCovariance_ = false;
    WholeEstimate whole_;
    std::vector<LocalVector> corrections_;
    std::vector<LocalMatrix> covariances_;
    std::vector<Border> slopes_;
    std::vector<LocalMatrix> gains_; ///< local k = gain * local k+1 + what the whole ones and chance add
};

} // namespace fleetrung::motion
