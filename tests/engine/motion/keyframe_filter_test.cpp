#include <catch2/catch.hpp>

#include <random>

#include <Eigen/Dense>

#include "engine/motion/keyframe_filter.hpp"

using namespace fleetrung::motion;

namespace
{

constexpr std::uint64_t seed = 20260917;

/// A chain of random but well-posed intervals and measurements, entered both into the two sweeps and into one dense
/// system, which Eigen solves without knowing of any chain. Unknowns of the dense one: all locals, then the whole ones.
struct RandomChain {
    explicit RandomChain(std::size_t count)
        : links(count), dense(Eigen::MatrixXd::Zero(size(count), size(count))),
          right(Eigen::VectorXd::Zero(size(count)))
    {
        information.consideredVariance.setConstant(0.4);
        for (int i = 0; i < estimatedSize; ++i) {
            information.measure(i, uniform(), 0.5 + std::abs(uniform()));
            dense(wholeAt(i), wholeAt(i)) = information.matrix(i, i);
            right[wholeAt(i)] = information.vector[i];
        }
        links[0].belief.covariance = LocalMatrix::Identity() * 0.7;
        links[0].belief.mean = random<localSize>();
        dense.topLeftCorner<localSize, localSize>() += LocalMatrix::Identity() / 0.7;
        right.head<localSize>() += links[0].belief.mean / 0.7;
        for (std::size_t k = 0; k < count; ++k) {
            if (k > 0)
                links[k].belief = predict(links[k - 1].belief, links[k - 1].interval, links[k - 1].shift);
            measureSome(k);
            if (k + 1 < count)
                link(k);
        }
    }

    static Eigen::Index size(std::size_t count) { return static_cast<Eigen::Index>(localSize * count + wholeSize); }
    Eigen::Index wholeAt(int i) const { return static_cast<Eigen::Index>(localSize * links.size()) + i; }
    static Eigen::Index localAt(std::size_t k) { return static_cast<Eigen::Index>(localSize * k); }
    double uniform() { return std::uniform_real_distribution<double>(-1, 1)(engine); }
    template <int n> Eigen::Matrix<double, n, 1> random()
    {
        return Eigen::Matrix<double, n, 1>::NullaryExpr([this](Eigen::Index) { return uniform(); });
    }

    void measureSome(std::size_t k)
    {
        const int component = static_cast<int>(k % localSize);
        const double value = uniform(), variance = 0.3 + std::abs(uniform());
        measure(links[k].belief, information, component, value, variance);
        dense(localAt(k) + component, localAt(k) + component) += 1 / variance;
        right[localAt(k) + component] += value / variance;

        const auto local = random<localSize>();
        const auto whole = random<wholeSize>();
        measure(links[k].belief, information, local.transpose(), whole.transpose(), value, variance);
        Eigen::VectorXd row = Eigen::VectorXd::Zero(right.size());
        row.segment<localSize>(localAt(k)) = local;
        row.tail<wholeSize>() = whole;
        dense += row * row.transpose() / variance;
        right += row * value / variance;
    }

    void link(std::size_t k)
    {
        Interval& interval = links[k].interval;
        interval.duration = 0.1 + std::abs(uniform());
        interval.velocityByTilt = Eigen::Matrix<double, 3, 2>::NullaryExpr([this] { return uniform(); });
        interval.heightByTilt = Eigen::RowVector2d(uniform(), uniform());
        interval.border = Border::NullaryExpr([this] { return uniform(); });
        const LocalMatrix root = LocalMatrix::NullaryExpr([this] { return uniform(); });
        interval.noise = 0.1 * root * root.transpose() + 0.2 * LocalMatrix::Identity();
        links[k].shift = random<localSize>();
        Eigen::MatrixXd rows = Eigen::MatrixXd::Zero(localSize, right.size());
        rows.middleCols<localSize>(localAt(k)) = -interval.transition();
        rows.middleCols<localSize>(localAt(k + 1)) = LocalMatrix::Identity();
        rows.rightCols<wholeSize>() = -interval.border;
        dense += rows.transpose() * interval.noise.inverse() * rows;
        right += rows.transpose() * interval.noise.inverse() * links[k].shift;
    }

    std::mt19937_64 engine{seed};
    std::vector<Link> links;
    WholeInformation information;
    Eigen::MatrixXd dense;
    Eigen::VectorXd right;
};

} // namespace

TEST_CASE("The two sweeps give the corrections and covariances of one dense least-squares solve", "[motion][oracle]")
{
    CAPTURE(seed);
    constexpr std::size_t count = 7;
    RandomChain chain(count);
    Smoothing smoothing;
    smoothing.run(chain.links, chain.information, true);
    REQUIRE(smoothing.ok());

    // All but the considered ones are solved for; what those may be widens the covariance.
    const Eigen::Index solved = chain.dense.rows() - consideredSize;
    const Eigen::MatrixXd inverse = chain.dense.topLeftCorner(solved, solved).inverse();
    const Eigen::MatrixXd pull = inverse * chain.dense.topRightCorner(solved, consideredSize);
    Eigen::VectorXd solution = Eigen::VectorXd::Zero(chain.dense.rows());
    solution.head(solved) = inverse * chain.right.head(solved);
    Eigen::MatrixXd covariance(chain.dense.rows(), chain.dense.rows());
    covariance << inverse + 0.4 * pull * pull.transpose(), -0.4 * pull, -0.4 * pull.transpose(),
        0.4 * Eigen::MatrixXd::Identity(consideredSize, consideredSize);
    CHECK((smoothing.whole() - solution.tail<wholeSize>()).norm() < 1e-9);
    CHECK((smoothing.wholeCovariance() - covariance.bottomRightCorner<wholeSize, wholeSize>()).norm() < 1e-9);
    for (std::size_t k = 0; k < count; ++k) {
        CAPTURE(k);
        const auto at = RandomChain::localAt(k);
        CHECK((smoothing.correction(k) - solution.segment<localSize>(at)).norm() < 1e-9);
        const Border cross = smoothing.slope(k) * smoothing.wholeCovariance();
        const LocalMatrix own = smoothing.covarianceGivenWhole(k) + cross * smoothing.slope(k).transpose();
        CHECK((own - covariance.block<localSize, localSize>(at, at)).norm() < 1e-9);
        CHECK((cross - covariance.block<localSize, wholeSize>(at, chain.wholeAt(0))).norm() < 1e-9);
    }
    // Covariance of an earlier keyframe with a later one, step by step backwards.
    LocalVector carried = smoothing.covarianceGivenWhole(5).col(3);
    for (std::size_t k = 5; k-- > 1;)
        carried = smoothing.carriedBack(k, carried);
    carried += smoothing.slope(1) * smoothing.wholeCovariance() * smoothing.slope(5).row(3).transpose();
    CHECK((carried - covariance.block<localSize, 1>(RandomChain::localAt(1), RandomChain::localAt(5) + 3)).norm() <
          1e-9);
}

TEST_CASE("A chain of which nothing is known is reported as not solvable", "[motion][error]")
{
    std::vector<Link> links(3);
    Smoothing smoothing;
    smoothing.run(links, WholeInformation{}, false);
    CHECK_FALSE(smoothing.ok());
}
