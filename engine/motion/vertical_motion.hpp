// Vertical motion of a sensor from its specific force and angular rate.
//
// A nominal state (attitude, velocity, height, biases) is propagated between keyframes together with the closed-form
// sensitivities of its end to its start. What is known of the motion (zero velocity where the sensor stands still, tops
// and bottoms that return to their height, a weak bound on how far a lifter goes) enters one robust least-squares solve
// over the keyframes; its corrections spread back over the samples, and its covariance gives the uncertainty of
// differences.
//
// Frame: z up, yaw arbitrary. Height has an arbitrary zero. Units: SI.
#pragma once

#include <span>
#include <vector>

#include "engine/base/error.hpp"
#include "engine/motion/keyframe_filter.hpp"
#include "engine/motion/knowledge.hpp"
#include "engine/motion/sample.hpp"
#include "engine/motion/tracker.hpp"

namespace fleetrung::motion
{

struct VerticalMotion {
    std::vector<double> time;           ///< s, one entry a sample
    std::vector<double> acceleration;   ///< m/s2, up positive, gravity removed
    std::vector<double> velocity;       ///< m/s
    std::vector<double> height;         ///< m
    std::vector<bool> still;            ///< the solve believes that the sensor stood still here
    std::vector<std::size_t> keyframes; ///< sample of each keyframe, the first one the first sample
    Smoothing solution;                 ///< of the keyframes, for uncertainties

    /// Covariance of (velocity, height) at the given samples, stacked: 2 rows a sample.
    [[nodiscard]] Eigen::MatrixXd covariance(std::span<const std::size_t> samples) const;
};

/// The final solve of a whole recording. The recording needs 8 samples with increasing times; the callers check and say
/// so in the words of the trade. It must outlive the solver.
class VerticalMotionSolver
{
public:
    VerticalMotionSolver(const Recording& recording, const Knowledge& knowledge);

    /// The motion as stillness alone gives it, without covariances: enough to find turning points. Fails with
    /// NotAvailable where the specific force is nowhere near gravity, and NotConverged where the solve breaks down.
    [[nodiscard]] Expected<VerticalMotion> look();
    /// After `look`: the solve with turning points that return to their heights (there may be none).
    [[nodiscard]] Expected<VerticalMotion> solve(std::span<const Return> returns);

private:
    struct Turning {
        std::size_t keyframe; ///< at or before the sample
        double share;         ///< of the way to the next keyframe
        double height;        ///< m, nominal
        bool top;
        double weight = 1;
    };

    bool track();
    void linearise();
    [[nodiscard]] bool sweep(bool withCovariance, double turningWidth = 1.0);
    void useTurnings(std::size_t k, WholeInformation& information, double width);
    [[nodiscard]] bool comesBack(const QuietSpan& span) const;
    /// Judges all spans and turnings by the motion just solved. True where a span came back that had been refused.
    bool reweigh(double turningWidth);
    [[nodiscard]] bool anyRefused() const;
    [[nodiscard]] double widestGap() const;
    [[nodiscard]] double spreadOf(const Turning& turning) const;
    [[nodiscard]] double gapOf(const Turning& turning) const;
    [[nodiscard]] double largestTilt() const;
    [[nodiscard]] VerticalMotion trace() const;

    const Recording& recording_;
    Weighing weighing_;
    Tracker tracker_;
    std::vector<Keyframe> keyframes_;
    std::vector<Link> links_;
    std::vector<Turning> turnings_;
    std::vector<double> acceleration_, velocity_, height_; ///< of the nominal motion, one a sample
    Smoothing smoothing_;
};

/// Solve without returns.
[[nodiscard]] Expected<VerticalMotion> solveVerticalMotion(const Recording& recording, const Knowledge& knowledge);

/// The attitude at the first sample as the first quiet window of the recording and the gyroscope give it; where nothing
/// is quiet, as the mean force does.
struct FirstAttitude {
    Eigen::Quaterniond attitude;
    double spread;                 ///< rad
    Eigen::Vector3d gyroscopeBias; ///< rad/s
    double force;                  ///< m/s2, length of what was taken for gravity
    bool quiet = false;            ///< a quiet window was found
};
[[nodiscard]] FirstAttitude findFirstAttitude(const Recording& recording);

} // namespace fleetrung::motion
