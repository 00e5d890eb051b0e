#include <catch2/catch.hpp>

#include <random>

#include <Eigen/Dense>

#include "engine/motion/keyframe_solve.hpp"

using namespace fleetrung::motion;

namespace
{

constexpr std::uint64_t seed = 20260917;

/// A chain of random but well-posed dynamics and measurements, entered both into the chain solver and into one dense
/// system, which Eigen solves without knowing of any chain.
struct RandomChain {
    explicit RandomChain(std::size_t count)
        : problem(count), dense(stateSize * count, stateSize * count), right(stateSize * count)
    {
        dense.setZero();
        right.setZero();
        for (std::size_t k = 0; k < count; ++k)
            for (int i = 0; i < stateSize; ++i)
                if (k == 0 || i % 3 == 0)
                    measure(k, StateRow::Unit(i) + 0.1 * randomRow(), uniform(), 1.0 + std::abs(uniform()));
        for (std::size_t k = 0; k + 1 < count; ++k)
            link(k);
    }

    double uniform() { return std::uniform_real_distribution<double>(-1, 1)(engine); }
    StateRow randomRow()
    {
        return StateRow::NullaryExpr([this](Eigen::Index) { return uniform(); });
    }

    void measure(std::size_t k, const StateRow& row, double value, double weight)
    {
        problem.addMeasurement(k, row, value, weight);
        const auto at = static_cast<Eigen::Index>(stateSize * k);
        dense.block<stateSize, stateSize>(at, at) += weight * row.transpose() * row;
        right.segment<stateSize>(at) += weight * value * row.transpose();
    }

    void link(std::size_t k)
    {
        StateMatrix transition = StateMatrix::Identity();
        for (int i = 0; i < stateSize; ++i)
            transition.row(i) += 0.1 * randomRow();
        const StateVector defect = randomRow().transpose();
        StateMatrix noise = StateMatrix::Identity() * 0.2;
        for (int i = 0; i < stateSize; ++i)
            noise(i, i) += 0.5 * std::abs(uniform());
        problem.addDynamics(k, transition, defect, noise);
        // error[k+1] - F error[k] = -defect as plain rows.
        Eigen::Matrix<double, stateSize, 2 * stateSize> rows;
        rows << -transition, StateMatrix::Identity();
        const auto at = static_cast<Eigen::Index>(stateSize * k);
        dense.block<2 * stateSize, 2 * stateSize>(at, at) += rows.transpose() * noise.inverse() * rows;
        right.segment<2 * stateSize>(at) -= rows.transpose() * noise.inverse() * defect;
    }

    std::mt19937_64 engine{seed};
    KeyframeProblem problem;
    Eigen::MatrixXd dense;
    Eigen::VectorXd right;
};

} // namespace

TEST_CASE("The chain solve gives the corrections and covariances of one dense least-squares solve", "[motion][oracle]")
{
    CAPTURE(seed);
    constexpr std::size_t count = 7;
    const RandomChain chain(count);
    const KeyframeSolution solution(chain.problem);
    REQUIRE(solution.ok());

    const Eigen::MatrixXd covariance = chain.dense.inverse();
    const Eigen::VectorXd correction = covariance * chain.right;
    for (std::size_t k = 0; k < count; ++k) {
        const auto at = static_cast<Eigen::Index>(stateSize * k);
        CHECK((solution.correction(k) - correction.segment<stateSize>(at)).norm() < 1e-9);
        CHECK((solution.covariance(k) - covariance.block<stateSize, stateSize>(at, at)).norm() < 1e-9);
    }
    CHECK((solution.crossCovariance(1, 5) - covariance.block<stateSize, stateSize>(stateSize, 5 * stateSize)).norm() <
          1e-9);
}

TEST_CASE("A chain of which nothing is known is reported as not solvable", "[motion][error]")
{
    CHECK_FALSE(KeyframeSolution(KeyframeProblem(3)).ok());
}
