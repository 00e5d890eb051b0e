#include "engine/motion/keyframe_solve.hpp"

#include <Eigen/Cholesky>

namespace fleetrung::motion
{

KeyframeProblem::KeyframeProblem(std::size_t keyframes)
    : diagonal_(keyframes, StateMatrix::Zero()), upper_(keyframes, StateMatrix::Zero()),
      right_(keyframes, StateVector::Zero())
{
}

void KeyframeProblem::addDynamics(std::size_t k, const StateMatrix& transition, const StateVector& defect,
                                  const StateMatrix& noise)
{
    const StateMatrix information = noise.llt().solve(StateMatrix::Identity());
    const StateMatrix back = transition.transpose() * information;
    diagonal_[k].noalias() += back * transition;
    diagonal_[k + 1] += information;
    upper_[k] -= back;
    // error[k+1] - F error[k] = -defect
    right_[k].noalias() += back * defect;
    right_[k + 1].noalias() -= information * defect;
}

void KeyframeProblem::addMeasurement(std::size_t k, const StateRow& row, double value, double weight)
{
    diagonal_[k].noalias() += weight * row.transpose() * row;
    right_[k] += weight * value * row.transpose();
}

KeyframeSolution::KeyframeSolution(const KeyframeProblem& problem)
{
    const std::size_t count = problem.diagonal_.size();
    correction_.resize(count);
    marginal_.resize(count);
    gain_.resize(count);
    std::vector<StateVector, Eigen::aligned_allocator<StateVector>> reduced(count);
    StateMatrix block = problem.diagonal_[0];
    StateVector right = problem.right_[0];
    for (std::size_t k = 0; k < count; ++k) {
        const Eigen::LLT<StateMatrix> factor(block);
        if (factor.info() != Eigen::Success)
            return;
        marginal_[k] = factor.solve(StateMatrix::Identity());
        reduced[k] = factor.solve(right);
        if (k + 1 == count)
            break;
        gain_[k] = -factor.solve(problem.upper_[k]);
        block = problem.diagonal_[k + 1] + problem.upper_[k].transpose() * gain_[k];
        block = 0.5 * (block + block.transpose()).eval();
        right = problem.right_[k + 1] - problem.upper_[k].transpose() * reduced[k];
    }
    correction_[count - 1] = reduced[count - 1];
    for (std::size_t k = count - 1; k-- > 0;) {
        correction_[k] = reduced[k] + gain_[k] * correction_[k + 1];
        marginal_[k] += gain_[k] * marginal_[k + 1] * gain_[k].transpose();
    }
    ok_ = true;
}

StateMatrix KeyframeSolution::crossCovariance(std::size_t a, std::size_t b) const
{
    StateMatrix result = marginal_[b];
    for (std::size_t k = b; k-- > a;)
        result = gain_[k] * result;
    return result;
}

} // namespace fleetrung::motion
