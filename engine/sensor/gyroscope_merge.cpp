#include "engine/sensor/gyroscope_merge.hpp"

namespace fleetrung::sensor
{
namespace
{

constexpr std::size_t room = 2048;      // samples: 1 s at 2 kHz
constexpr double widestGap = 0.1;       // s between two rates that are joined by a line
constexpr double longestStretch = 0.02; // s before the first rate
constexpr double longestWait = 0.3;     // s of accelerometer samples that wait for rates

} // namespace

GyroscopeMerge::GyroscopeMerge() : accelerations_(room), rates_(room) {}

void GyroscopeMerge::clear()
{
    accelerations_.clear();
    rates_.clear();
}

void GyroscopeMerge::addAcceleration(const Waiting& sample)
{
    if (!accelerations_.push(sample))
        ++leftOut_;
}

void GyroscopeMerge::addRate(double key, const Eigen::Vector3d& rate)
{
    if (rates_.size() == 0 || key > rates_.back().key)
        rates_.push({key, rate});
}

std::optional<GyroscopeMerge::Waiting> GyroscopeMerge::next()
{
    while (accelerations_.size() > 0) {
        Waiting sample = accelerations_.front();
        const auto found = rateAt(sample.key, sample.sample.angularRate);
        if (found == Found::Wait && accelerations_.back().key - sample.key < longestWait)
            return std::nullopt;
        accelerations_.pop();
        if (found == Found::Yes)
            return sample;
        ++leftOut_;
    }
    return std::nullopt;
}

GyroscopeMerge::Found GyroscopeMerge::rateAt(double key, Eigen::Vector3d& rate)
{
    while (rates_.size() > 1 && rates_[1].key <= key)
        rates_.pop();
    if (rates_.size() == 0)
        return Found::Wait;
    const Rate& before = rates_.front();
    if (before.key >= key) {
        rate = before.value;
        return before.key - key <= longestStretch ? Found::Yes : Found::Never;
    }
    if (rates_.size() == 1)
        return Found::Wait;
    const Rate& after = rates_[1];
    if (after.key - before.key > widestGap)
        return Found::Never;
    const double share = (key - before.key) / (after.key - before.key);
    rate = before.value + share * (after.value - before.value);
    return Found::Yes;
}

} // namespace fleetrung::sensor
