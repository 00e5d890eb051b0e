#include "engine/reps/bar_watch.hpp"

#include <cmath>

namespace fleetrung::reps
{
namespace
{

constexpr double window = 0.25;       // s
constexpr double quietScatter = 0.20; // m/s2
constexpr double shortestRest = 1.0;  // s
constexpr double longestGap = 0.5;    // s; beyond it nobody knows whether it rested

} // namespace

void BarWatch::add(const motion::Sample& sample)
{
    if (any_ && sample.time <= last_)
        return;
    if (!any_ || sample.time - last_ > longestGap) {
        any_ = true;
        quiet_ = false;
        rested_ = 0;
        windowFrom_ = sample.time;
        count_ = 0;
    } else if (sample.time - windowFrom_ >= window && count_ > 1) {
        close(sample.time);
    }
    if (count_ == 0) {
        origin_ = sample.specificForce;
        sum_.setZero();
        squares_ = 0;
    }
    const Eigen::Vector3d off = sample.specificForce - origin_;
    sum_ += off;
    squares_ += off.squaredNorm();
    ++count_;
    last_ = sample.time;
}

void BarWatch::close(double end)
{
    const double variance = squares_ / count_ - (sum_ / count_).squaredNorm();
    const bool quiet = std::sqrt(std::max(0.0, variance)) <= quietScatter;
    if (quiet && !quiet_)
        quietFrom_ = windowFrom_;
    quiet_ = quiet;
    rested_ = quiet ? end - quietFrom_ : 0;
    if (rested_ >= shortestRest) {
        hasRested_ = true;
        moves_ = false;
    } else if (!quiet && hasRested_) {
        hasRested_ = false;
        moves_ = true;
    }
    windowFrom_ = end;
    count_ = 0;
}

} // namespace fleetrung::reps
