// How firmly each piece of knowledge is believed.
#include <algorithm>
#include <cmath>

#include "engine/motion/gravity.hpp"
#include "engine/motion/tracker.hpp"

namespace fleetrung::motion
{
namespace
{

constexpr double gateLimit = 11.0;  // chi-square, 4 degrees of freedom, 2.7 %: one still span refused costs little
constexpr double gateFloor = 0.006; // m/s: no prediction is trusted more than this
const Eigen::Vector3d evenSpeed(0.05, 0.05, 0.3); // m/s, standard deviation of a bar that moves evenly
constexpr double heldAcceleration = 0.012;        // m/s2, what breathing does to a held bar
constexpr double heldRate = 0.01;                 // rad/s, what a held bar turns
constexpr double windowTremor = 0.03;             // m/s2, what tremor leaves of the mean of one window
constexpr double boundCorrelationTime = 2.0;      // s over which the weak bounds say the same thing
constexpr std::size_t boundEvery = 5;             // keyframes
constexpr double unseenAcceleration = 5.0;        // m/s2, what a bar may do while nobody sees it
constexpr double clippedShare = 0.5;              // of the range
constexpr double unseenTurn = 0.5;                // rad/s
constexpr double axisLeak = 0.5;                  // of the scale error; starting value of this project

double squared(double x)
{
    return x * x;
}

} // namespace

Eigen::Vector3d stillSpeed(const Quietness& quiet)
{
    return quiet.supported ? Eigen::Vector3d(0.004, 0.004, 0.003) : Eigen::Vector3d(0.015, 0.015, 0.006);
}

void addReadings(SpanMotion& motion, const std::vector<Keyframe>& keyframes, const QuietSpan& span,
                 const WholeVector& whole, const WholeMatrix& wholeCovariance)
{
    motion.acceleration = 0;
    Eigen::Vector3d rate = -whole.segment<3>(whole::gyroscopeBias);
    WholeRow sensitivity = WholeRow::Zero();
    const double count = static_cast<double>(span.last - span.first + 1);
    for (std::size_t k = span.first; k <= span.last; ++k) {
        const Eigen::Vector3d up = keyframes[k].nominal.attitude.conjugate() * Eigen::Vector3d::UnitZ();
        const Eigen::Vector3d& force = keyframes[k].quiet.meanForce;
        motion.acceleration += (up.dot(force - whole.segment<3>(whole::accelerometerBias)) - standardGravity) / count;
        rate += keyframes[k].quiet.meanRate / count;
        sensitivity.segment<3>(whole::accelerometerBias) += up.transpose() / count;
        sensitivity.segment<3>(whole::accelerometerScale) += up.cwiseProduct(force).transpose() / count;
    }
    motion.accelerationVariance = sensitivity.dot((wholeCovariance * sensitivity.transpose()).transpose()) +
                                  squared(heldAcceleration) + squared(windowTremor) / count;
    Eigen::Matrix3d rateCovariance = wholeCovariance.block<3, 3>(whole::gyroscopeBias, whole::gyroscopeBias);
    rateCovariance.diagonal().array() += squared(heldRate);
    motion.turning = rate.dot(rateCovariance.ldlt().solve(rate));
}

std::optional<double> supportForStanding(const SpanMotion& motion, const Quietness& quiet)
{
    Eigen::Matrix3d standing = motion.velocityCovariance;
    standing.diagonal().array() += stillSpeed(quiet).array().square() + gateFloor * gateFloor;
    // An even motion may have no acceleration either, so none speaks for standing; much of it speaks against both.
    const double setsOff = squared(motion.acceleration) / motion.accelerationVariance;
    const double chiSquare = motion.velocity.dot(standing.ldlt().solve(motion.velocity)) + setsOff + motion.turning;
    if (chiSquare > gateLimit)
        return std::nullopt;
    Eigen::Matrix3d moving = standing;
    moving.diagonal() += evenSpeed.cwiseAbs2();
    return motion.velocity.dot(moving.ldlt().solve(motion.velocity)) - chiSquare +
           std::log(moving.determinant() / standing.determinant());
}

Belief Weighing::prior(double tiltSpread) const
{
    Belief belief;
    LocalVector spread;
    spread << tiltSpread, tiltSpread, 1.5, 1.5, 1.5, 2.0;
    belief.covariance = spread.cwiseAbs2().asDiagonal();
    return belief;
}

WholeInformation Weighing::wholePrior() const
{
    const auto& sensor = recording.sensor;
    // A sensor without an error of its own would pin these to zero; rounding alone leaves more.
    constexpr double least = 1e-6;
    Eigen::Matrix<double, estimatedSize, 1> spread;
    spread.segment<3>(whole::gyroscopeBias).setConstant(std::max(least, sensor.gyroscopeBias));
    spread.segment<3>(whole::accelerometerBias).setConstant(std::max(least, sensor.accelerometerBias));
    spread.segment<2>(whole::top).setConstant(2.0);
    WholeInformation information;
    information.matrix.diagonal().head<estimatedSize>() = spread.cwiseAbs2().cwiseInverse();
    information.consideredVariance.head<3>().setConstant(squared(sensor.accelerometerScaleError));
    information.consideredVariance.tail<3>().setConstant(squared(sensor.gyroscopeScaleError));
    return information;
}

/// Time between two samples in which a reading stood at the end of its range [s].
double Weighing::clippedTime(std::size_t from, std::size_t to) const
{
    const auto& samples = recording.samples;
    const double force = 0.999 * recording.sensor.accelerometerRange, rate = 0.999 * recording.sensor.gyroscopeRange;
    double time = 0;
    for (std::size_t i = from + 1; i <= to; ++i)
        if (samples[i].specificForce.lpNorm<Eigen::Infinity>() >= force ||
            samples[i].angularRate.lpNorm<Eigen::Infinity>() >= rate)
            time += samples[i].time - samples[i - 1].time;
    return time;
}

LocalMatrix Weighing::noise(const Propagation& propagation, std::size_t from, std::size_t to) const
{
    const auto& sensor = recording.sensor;
    const double t = propagation.duration();
    // The scale errors of each axis are considered apart; what is left is how the axes leak into each other.
    double tilt = squared(sensor.gyroscopeNoise) * t / 2 + squared(1e-4) * t +
                  squared(axisLeak * sensor.gyroscopeScaleError * propagation.turned());
    if (!recording.hasGyroscope)
        tilt += squared(0.15) * t; // a held bar that nobody watches turns by some degrees each second
    double speed = squared(sensor.accelerometerNoise) * t / 2 + propagation.missedVariance() + squared(3e-4) * t +
                   squared(axisLeak * sensor.accelerometerScaleError * propagation.acceleratedTravel());
    // An interval over a gap holds nothing but its two ends; beyond the range there may be as much again as in it.
    const double unseen = to == from + 1 && t > longGap ? t : 0.0;
    const double clipped = clippedTime(from, to);
    speed += squared(unseenAcceleration * unseen);
    tilt += squared(unseenTurn * (unseen + clipped));
    if (clipped > 0 && std::isfinite(sensor.accelerometerRange))
        speed += squared(clippedShare * sensor.accelerometerRange * clipped);
    LocalMatrix q = LocalMatrix::Zero();
    q.diagonal().segment<2>(at::tilt).setConstant(tilt);
    q.diagonal().segment<3>(at::velocity).setConstant(speed);
    q(at::height, at::height) = speed * t * t / 3 + 1e-10;
    q(at::height, at::velocity + 2) = q(at::velocity + 2, at::height) = speed * t / 2;
    return q;
}

void Weighing::bound(Belief& belief, WholeInformation& information, std::size_t k, const Keyframe& keyframe) const
{
    if (k % boundEvery != boundEvery - 1)
        return;
    constexpr double share = boundEvery * keyframeSpacing / boundCorrelationTime;
    const State& nominal = keyframe.nominal;
    measure(belief, information, at::height, -nominal.height, squared(knowledge.heightSpread) / share);
    for (int axis = 0; axis < 2; ++axis)
        measure(belief, information, at::velocity + axis, -nominal.velocity[axis],
                squared(knowledge.speedSpread) / share);
}

void Weighing::still(Belief& belief, WholeInformation& information, const Keyframe& keyframe) const
{
    const double weight = keyframe.stillWeight;
    if (weight < 1e-6)
        return;
    const Eigen::Vector3d spread = stillSpeed(keyframe.quiet);
    for (int axis = 0; axis < 3; ++axis)
        measure(belief, information, at::velocity + axis, -keyframe.nominal.velocity[axis],
                squared(spread[axis]) / weight);
    // The more the hand moves, the less a window shows of the gyroscope's bias.
    const double rateVariance = squared(std::max(0.003, keyframe.quiet.rateSpread)) / weight;
    for (int axis = 0; axis < 3 && recording.hasGyroscope; ++axis)
        information.measure(whole::gyroscopeBias + axis, keyframe.quiet.meanRate[axis], rateVariance);
}

} // namespace fleetrung::motion
