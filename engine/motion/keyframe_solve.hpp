// Least squares over a chain of keyframes: dynamics between neighbours, measurements at single keyframes.
// Block-tridiagonal normal equations, solved by one elimination forwards and one substitution backwards.
// Source of the recursions: Bierman, Factorization Methods for Discrete Sequential Estimation, 1977 (from memory).
#pragma once

#include <vector>

#include "engine/motion/keyframe_state.hpp"

namespace fleetrung::motion
{

/// Normal equations, filled term by term.
class KeyframeProblem
{
public:
    explicit KeyframeProblem(std::size_t keyframes);

    /// error[k+1] = transition * error[k] - defect, up to noise of the given covariance.
    void addDynamics(std::size_t k, const StateMatrix& transition, const StateVector& defect, const StateMatrix& noise);
    /// row * error[k] = value, up to noise of variance 1 / weight.
    void addMeasurement(std::size_t k, const StateRow& row, double value, double weight);

    friend class KeyframeSolution;

private:
    std::vector<StateMatrix, Eigen::aligned_allocator<StateMatrix>> diagonal_;
    std::vector<StateMatrix, Eigen::aligned_allocator<StateMatrix>> upper_; ///< block (k, k+1)
    std::vector<StateVector, Eigen::aligned_allocator<StateVector>> right_;
};

/// Corrections and covariances of a solved problem.
class KeyframeSolution
{
public:
    KeyframeSolution() = default;
    /// `ok()` is false where a block is not positive definite: the problem was not determined.
    explicit KeyframeSolution(const KeyframeProblem& problem);

    [[nodiscard]] bool ok() const { return ok_; }
    [[nodiscard]] const StateVector& correction(std::size_t k) const { return correction_[k]; }
    [[nodiscard]] const StateMatrix& covariance(std::size_t k) const { return marginal_[k]; }
    /// Covariance between keyframes a <= b.
    [[nodiscard]] StateMatrix crossCovariance(std::size_t a, std::size_t b) const;

private:
    bool ok_ = false;
    std::vector<StateVector, Eigen::aligned_allocator<StateVector>> correction_;
    std::vector<StateMatrix, Eigen::aligned_allocator<StateMatrix>> marginal_;
    std::vector<StateMatrix, Eigen::aligned_allocator<StateMatrix>>
        gain_; ///< covariance(k, j) = gain(k) covariance(k+1, j)
};

} // namespace fleetrung::motion
