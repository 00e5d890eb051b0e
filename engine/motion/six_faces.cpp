#include <algorithm>
#include <cmath>

#include <Eigen/LU>

#include "engine/motion/calibration.hpp"

namespace fleetrung::motion
{
namespace
{

constexpr double stillFor = 1.5;   // s
constexpr double quietFor = 0.3;   // s: from here on it is settling
constexpr double longestGap = 0.3; // s without a sample: what came before is forgotten
// At rest a consumer part spreads by some 0.02 m/s2 and 0.002 rad/s; a hand by far more. Starting values.
constexpr double forceSpread = 0.12;     // m/s2, standard deviation of one axis
constexpr double rateSpread = 0.03;      // rad/s
const double steepest = std::cos(0.262); // 15 degrees between gravity and the axis: case and sensor differ by a few
constexpr double contradiction = 0.10;   // share of gravity
constexpr int newtonSteps = 6;

constexpr std::array<const char*, faceCount> faceNames{"face +x up", "face -x up", "face +y up",
                                                       "face -y up", "face +z up", "face -z up"};

struct Rest {
    Eigen::Vector3d force = Eigen::Vector3d::Zero(), rate = Eigen::Vector3d::Zero(); ///< means
    bool quiet = false;
};

/// Of the samples from that instant on.
Rest restSince(const std::vector<Sample>& samples, double from)
{
    Rest rest;
    Eigen::Vector3d force2 = Eigen::Vector3d::Zero();
    Eigen::Vector3d rate2 = Eigen::Vector3d::Zero();
    const Eigen::Vector3d force0 = samples.back().specificForce; // squares of small numbers lose no digits
    const Eigen::Vector3d rate0 = samples.back().angularRate;
    int count = 0;
    for (auto sample = samples.rbegin(); sample != samples.rend() && sample->time >= from; ++sample, ++count) {
        const Eigen::Vector3d force = sample->specificForce - force0;
        const Eigen::Vector3d rate = sample->angularRate - rate0;
        rest.force += force;
        rest.rate += rate;
        force2 += force.cwiseProduct(force);
        rate2 += rate.cwiseProduct(rate);
    }
    rest.force /= count;
    rest.rate /= count;
    const Eigen::Vector3d forceVariance = force2 / count - rest.force.cwiseProduct(rest.force);
    const Eigen::Vector3d rateVariance = rate2 / count - rest.rate.cwiseProduct(rest.rate);
    rest.quiet = count > 3 && forceVariance.maxCoeff() <= forceSpread * forceSpread &&
                 rateVariance.maxCoeff() <= rateSpread * rateSpread;
    rest.force += force0;
    rest.rate += rate0;
    return rest;
}

/// A sensor does not lie quite level on its faces: scale and offset of all axes such that the six readings all have the
/// length of gravity, by Newton's method from the closed form.
void allowForSlant(Calibration& calibration, const std::array<Eigen::Vector3d, faceCount>& readings, double gravity)
{
    using Six = Eigen::Matrix<double, 6, 1>;
    const Calibration closed = calibration;
    for (int step = 0; step < newtonSteps; ++step) {
        Eigen::Matrix<double, 6, 6> slopes;
        Six wrong;
        for (int i = 0; i < 6; ++i) {
            const Eigen::Vector3d& reading = readings.at(static_cast<std::size_t>(i));
            const Eigen::Vector3d force = calibration.scale.cwiseProduct(reading) - calibration.offset;
            wrong[i] = force.squaredNorm() - gravity * gravity;
            slopes.block<1, 3>(i, 0) = 2 * force.cwiseProduct(reading).transpose();
            slopes.block<1, 3>(i, 3) = -2 * force.transpose();
        }
        const Six change = slopes.partialPivLu().solve(wrong);
        calibration.scale -= change.head<3>();
        calibration.offset -= change.tail<3>();
    }
    const bool found = calibration.scale.allFinite() && calibration.offset.allFinite() &&
                       (calibration.scale - closed.scale).cwiseAbs().maxCoeff() < contradiction;
    if (!found)
        calibration = closed;
}

} // namespace

SixFaces::Now SixFaces::add(const Sample& uncalibrated)
{
    const double now = uncalibrated.time;
    if (!window_.empty() && (now <= window_.back().time || now - window_.back().time > longestGap))
        window_.clear();
    window_.push_back(uncalibrated);
    const double from = now - stillFor;
    // One sample before the span stays: it tells that the whole span was seen.
    const auto inside = std::ranges::find_if(window_, [from](const Sample& sample) { return sample.time > from; });
    if (inside - window_.begin() > 1)
        window_.erase(window_.begin(), inside - 1);
    if (!restSince(window_, now - quietFor).quiet) {
        justTaken_ = false;
        return Now::Moving;
    }
    const Rest rest = restSince(window_, from);
    if (window_.front().time > from || !rest.quiet)
        return justTaken_ ? Now::Taken : Now::Settling;

    Eigen::Index axis = 0;
    const double along = rest.force.cwiseAbs().maxCoeff(&axis);
    if (along < steepest * rest.force.norm())
        return Now::Slanted;
    const auto face = static_cast<std::size_t>(2 * axis + (rest.force[axis] < 0 ? 1 : 0));
    if (taken_[face])
        return justTaken_ ? Now::Taken : Now::TakenBefore;
    taken_[face] = justTaken_ = true;
    mean_[face] = rest.force;
    rate_[face] = rest.rate;
    return Now::Taken;
}

bool SixFaces::complete() const
{
    return std::ranges::all_of(taken_, [](bool taken) { return taken; });
}

void SixFaces::forget(std::size_t face)
{
    if (face < faceCount)
        taken_[face] = false;
    justTaken_ = false;
}

Expected<Calibration> SixFaces::solve(double gravity) const
{
    Calibration calibration;
    for (Eigen::Index axis = 0; axis < 3; ++axis) {
        const auto high = static_cast<std::size_t>(2 * axis);
        for (const std::size_t face : {high, high + 1})
            if (!taken_[face])
                return fail(Code::InvalidInput, faceNames[face], "this face has not lain up yet");
        const double up = mean_[high][axis];
        const double down = mean_[high + 1][axis];
        if (std::abs((up - down) / 2 - gravity) > contradiction * gravity)
            return fail(Code::InvalidInput,
                        faceNames[std::abs(up - gravity) > std::abs(down + gravity) ? high : high + 1],
                        "this face and its opposite tell another gravity; lay both flat again");
        calibration.scale[axis] = 2 * gravity / (up - down);
        calibration.offset[axis] = calibration.scale[axis] * (up + down) / 2;
    }
    allowForSlant(calibration, mean_, gravity);
    Eigen::Vector3d rates = Eigen::Vector3d::Zero();
    for (const auto& rate : rate_)
        rates += rate;
    calibration.gyroscopeBias = rates / static_cast<double>(faceCount);
    calibration.sixFaces = true;
    return calibration;
}

} // namespace fleetrung::motion
