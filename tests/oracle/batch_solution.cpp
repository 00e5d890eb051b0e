#include "tests/oracle/batch_solution.hpp"

#include <algorithm>
#include <memory>

#include <ceres/ceres.h>

#include "engine/motion/gravity.hpp"
#include "engine/motion/tracker.hpp"
#include "tests/oracle/residuals.hpp"

namespace fleetrung::oracle
{
namespace
{

using motion::Recording;

struct Pose {
    Eigen::Quaterniond attitude; ///< sensor to world
    Eigen::Vector3d velocity;
    double height;
};

/// What the model leaves open over one interval, as the engine's documents state it: data sheet noise, what the
/// trapezoidal rule misses, and half of the scale errors for axes that leak into each other.
Openness opennessOf(const Recording& recording, std::size_t first, std::size_t last, const Pose& start,
                    const Eigen::Vector3d& bias)
{
    const auto& sensor = recording.sensor;
    const auto& samples = recording.samples;
    const double duration = samples[last].time - samples[first].time;
    double turned = 0, missed = 0;
    Eigen::Vector3d gained = Eigen::Vector3d::Zero();
    double travelled = 0;
    Eigen::Quaterniond attitude = start.attitude;
    const auto acceleration = [&](std::size_t i) {
        return (attitude * samples[i].specificForce - motion::standardGravity * Eigen::Vector3d::UnitZ()).eval();
    };
    Eigen::Vector3d before = acceleration(first), slopeBefore = Eigen::Vector3d::Zero();
    for (std::size_t i = first; i < last; ++i) {
        const double dt = samples[i + 1].time - samples[i].time;
        const Eigen::Vector3d turn = (0.5 * (samples[i].angularRate + samples[i + 1].angularRate) - bias) * dt;
        attitude = (attitude * turnBy<double>(turn)).normalized();
        const Eigen::Vector3d after = acceleration(i + 1);
        const Eigen::Vector3d slope = (after - before) / dt;
        if (i > first)
            missed += std::pow(dt * dt / 12 * (slope - slopeBefore).norm(), 2);
        turned += turn.norm();
        gained = 0.5 * dt * (before + after);
        travelled += gained.norm();
        before = after;
        slopeBefore = slope;
    }
    const auto square = [](double x) { return x * x; };
    return {square(sensor.gyroscopeNoise) * duration / 2 + square(1e-4) * duration +
                square(0.5 * sensor.gyroscopeScaleError * turned),
            square(sensor.accelerometerNoise) * duration / 2 + missed + square(3e-4) * duration +
                square(0.5 * sensor.accelerometerScaleError * travelled)};
}

class Batch
{
public:
    Batch(const Recording& recording, const motion::Knowledge& knowledge, const motion::VerticalMotion& engine,
          std::span<const motion::Return> returns)
        : recording_(recording), knowledge_(knowledge), engine_(engine), returns_(returns)
    {
        start();
        addIntervals();
        addStillness();
        addBounds();
        addPriors();
        addReturns();
    }

    Solution run(Wanted wanted);

private:
    [[nodiscard]] std::size_t sampleOf(std::size_t k) const { return engine_.keyframes[k]; }
    [[nodiscard]] double timeOf(std::size_t k) const { return recording_.samples[sampleOf(k)].time; }
    [[nodiscard]] bool stillAt(std::size_t k) const { return engine_.still[sampleOf(k)]; }
    template <int size> void believe(double* block, double value, double deviation, ceres::LossFunction* loss = nullptr)
    {
        using Vector = Eigen::Matrix<double, size, 1>;
        problem_.AddResidualBlock(new ceres::AutoDiffCostFunction<Belief<size>, size, size>(
                                      new Belief<size>(Vector::Constant(value), Vector::Constant(deviation))),
                                  loss, block);
    }
    void start();
    void addIntervals();
    void addStillness();
    void addBounds();
    void addPriors();
    void addReturns();

    const Recording& recording_;
    const motion::Knowledge& knowledge_;
    const motion::VerticalMotion& engine_;
    std::span<const motion::Return> returns_;
    std::vector<Pose> poses_;
    Eigen::Vector3d gyroscopeBias_ = Eigen::Vector3d::Zero(), accelerometerBias_ = Eigen::Vector3d::Zero();
    double top_ = 0, bottom_ = 0;
    ceres::Problem problem_;
};

/// Where to begin: the attitude at first rest carried on by the gyroscope, and no motion at all.
void Batch::start()
{
    const auto first = motion::findFirstAttitude(recording_);
    gyroscopeBias_ = first.gyroscopeBias;
    Eigen::Quaterniond attitude = first.attitude;
    poses_.push_back({attitude, Eigen::Vector3d::Zero(), 0});
    for (std::size_t k = 0; k + 1 < engine_.keyframes.size(); ++k) {
        for (std::size_t i = sampleOf(k); i < sampleOf(k + 1); ++i) {
            const auto& a = recording_.samples[i];
            const auto& b = recording_.samples[i + 1];
            attitude =
                attitude * turnBy<double>((0.5 * (a.angularRate + b.angularRate) - gyroscopeBias_) * (b.time - a.time));
        }
        attitude.normalize();
        poses_.push_back({attitude, Eigen::Vector3d::Zero(), 0});
    }
}

void Batch::addIntervals()
{
    for (auto& pose : poses_)
        problem_.AddParameterBlock(pose.attitude.coeffs().data(), 4, new ceres::EigenQuaternionManifold);
    for (std::size_t k = 0; k + 1 < poses_.size(); ++k) {
        const std::span<const Sample> samples(recording_.samples.data() + sampleOf(k),
                                              sampleOf(k + 1) - sampleOf(k) + 1);
        auto* residual = new IntervalResidual(
            samples, opennessOf(recording_, sampleOf(k), sampleOf(k + 1), poses_[k], gyroscopeBias_));
        auto& a = poses_[k];
        auto& b = poses_[k + 1];
        problem_.AddResidualBlock(
            new ceres::AutoDiffCostFunction<IntervalResidual, 7, 4, 3, 1, 4, 3, 1, 3, 3>(residual), nullptr,
            a.attitude.coeffs().data(), a.velocity.data(), &a.height, b.attitude.coeffs().data(), b.velocity.data(),
            &b.height, gyroscopeBias_.data(), accelerometerBias_.data());
    }
}

/// No velocity, and a rate that is the gyroscope's bias.
void Batch::addStillness()
{
    for (std::size_t k = 0; k < poses_.size(); ++k) {
        if (!stillAt(k))
            continue;
        const auto window = motion::lookForQuiet(recording_, sampleOf(k));
        problem_.AddResidualBlock(new ceres::AutoDiffCostFunction<Belief<3>, 3, 3>(
                                      new Belief<3>(Eigen::Vector3d::Zero(), motion::stillSpeed(window))),
                                  new ceres::TukeyLoss(5.0), poses_[k].velocity.data());
        problem_.AddResidualBlock(new ceres::AutoDiffCostFunction<Belief<3>, 3, 3>(new Belief<3>(
                                      window.meanRate, Eigen::Vector3d::Constant(std::max(0.003, window.rateSpread)))),
                                  nullptr, gyroscopeBias_.data());
    }
}

/// Weak bounds say the same thing for two seconds.
void Batch::addBounds()
{
    for (std::size_t k = 1; k < poses_.size(); ++k) {
        const double share = std::sqrt(2.0 / (timeOf(k) - timeOf(k - 1)));
        believe<1>(&poses_[k].height, 0, knowledge_.heightSpread * share);
        const double speed = knowledge_.speedSpread * share;
        problem_.AddResidualBlock(new ceres::AutoDiffCostFunction<Belief<3>, 3, 3>(
                                      new Belief<3>(Eigen::Vector3d::Zero(), Eigen::Vector3d(speed, speed, 1e6))),
                                  nullptr, poses_[k].velocity.data());
    }
}

void Batch::addPriors()
{
    problem_.AddResidualBlock(
        new ceres::AutoDiffCostFunction<FirstAttitude, 3, 4>(new FirstAttitude(poses_[0].attitude)), nullptr,
        poses_[0].attitude.coeffs().data());
    believe<3>(poses_[0].velocity.data(), 0, 1.5);
    believe<1>(&poses_[0].height, 0, 2.0);
    believe<3>(gyroscopeBias_.data(), 0, recording_.sensor.gyroscopeBias);
    believe<3>(accelerometerBias_.data(), 0, recording_.sensor.accelerometerBias);
    believe<1>(&top_, 0, 2.0);
    believe<1>(&bottom_, 0, 2.0);
}

void Batch::addReturns()
{
    for (const auto& turning : returns_) {
        const auto after = std::upper_bound(engine_.keyframes.begin(), engine_.keyframes.end(), turning.sample);
        const auto k = std::min(static_cast<std::size_t>(after - engine_.keyframes.begin()), poses_.size() - 1) - 1;
        // What the bar travels from the keyframe to the turning point, beside the keyframe's velocity times the delay:
        // so short a way that the engine's velocities serve.
        const double delay = recording_.samples[turning.sample].time - timeOf(k);
        const double travelled =
            engine_.height[turning.sample] - engine_.height[sampleOf(k)] - delay * engine_.velocity[sampleOf(k)];
        problem_.AddResidualBlock(new ceres::AutoDiffCostFunction<ReturnResidual, 1, 1, 3, 1>(new ReturnResidual(
                                      travelled, delay, turning.top ? knowledge_.topSpread : knowledge_.bottomSpread)),
                                  new ceres::TukeyLoss(4.0), &poses_[k].height, poses_[k].velocity.data(),
                                  turning.top ? &top_ : &bottom_);
    }
}

Solution Batch::run(Wanted wanted)
{
    ceres::Solver::Options options;
    options.linear_solver_type = ceres::SPARSE_NORMAL_CHOLESKY;
    options.max_num_iterations = 200;
    options.function_tolerance = 1e-12;
    options.parameter_tolerance = 1e-12;
    options.logging_type = ceres::SILENT;
    ceres::Solver::Summary summary;
    ceres::Solve(options, &problem_, &summary);

    Solution solution;
    solution.converged = summary.termination_type == ceres::CONVERGENCE;
    for (const auto& pose : poses_) {
        solution.velocity.push_back(pose.velocity.z());
        solution.height.push_back(pose.height);
    }
    solution.gyroscopeBias = gyroscopeBias_;
    solution.accelerometerBias = accelerometerBias_;

    auto& here = poses_[wanted.keyframe];
    auto& there = poses_[wanted.earlier];
    ceres::Covariance covariance({});
    const std::vector<std::pair<const double*, const double*>> blocks{{here.velocity.data(), here.velocity.data()},
                                                                      {&here.height, &here.height},
                                                                      {&there.height, &there.height},
                                                                      {&here.height, &there.height}};
    if (!covariance.Compute(blocks, &problem_)) {
        solution.converged = false;
        return solution;
    }
    Eigen::Matrix<double, 3, 3, Eigen::RowMajor> speed;
    double hereHere = 0, thereThere = 0, hereThere = 0;
    covariance.GetCovarianceBlock(here.velocity.data(), here.velocity.data(), speed.data());
    covariance.GetCovarianceBlock(&here.height, &here.height, &hereHere);
    covariance.GetCovarianceBlock(&there.height, &there.height, &thereThere);
    covariance.GetCovarianceBlock(&here.height, &there.height, &hereThere);
    solution.velocityDeviation = std::sqrt(speed(2, 2));
    solution.riseDeviation = std::sqrt(hereHere + thereThere - 2 * hereThere);
    return solution;
}

} // namespace

Solution solve(const motion::Recording& recording, const motion::Knowledge& knowledge,
               const motion::VerticalMotion& engine, std::span<const motion::Return> returns, Wanted wanted)
{
    return Batch(recording, knowledge, engine, returns).run(wanted);
}

} // namespace fleetrung::oracle
