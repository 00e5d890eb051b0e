#include "engine/reps/live_window.hpp"

#include <algorithm>
#include <span>

#include "engine/motion/gravity.hpp"

namespace fleetrung::reps
{
namespace
{

constexpr double longestWindow = 15.0; // s
constexpr double unquietSpread = 0.3;  // rad, of a first attitude taken in motion

} // namespace

LiveWindow::LiveWindow(const motion::Recording& recording, const motion::Knowledge& knowledge)
    : recording_(recording), tracker_(recording, knowledge)
{
    piece_.sensor = recording.sensor;
    piece_.hasGyroscope = recording.hasGyroscope;
}

void LiveWindow::reserve(std::size_t samples, double rate)
{
    const double seconds = static_cast<double>(samples) / rate;
    tracker_.reserve(static_cast<std::size_t>(seconds / motion::keyframeSpacing) + 8);
    for (auto* values : {&acceleration_, &velocity_, &height_})
        values->reserve(samples);
    const auto window = static_cast<std::size_t>(1.05 * (longestWindow + 1) * rate) + 8;
    const auto windowKeyframes = static_cast<std::size_t>((longestWindow + 1) / motion::keyframeSpacing) + 8;
    for (auto* values : {&motion_.time, &motion_.acceleration, &motion_.velocity, &motion_.height})
        values->reserve(window);
    motion_.still.reserve(window);
    motion_.keyframes.reserve(windowKeyframes);
    motion_.solution.reserve(windowKeyframes);
    piece_.samples.reserve(window);
}

bool LiveWindow::start()
{
    const auto first = motion::findFirstAttitude(recording_);
    if (first.force < 0.5 * motion::standardGravity || first.force > 1.5 * motion::standardGravity)
        return false;
    tracker_.start(first.attitude, first.quiet ? first.spread : unquietSpread, first.gyroscopeBias);
    return true;
}

std::optional<Instant> LiveWindow::advance()
{
    if (taken_ > 0 && !tracker_.advanceOne())
        return std::nullopt;
    const motion::Propagation& now = *tracker_.open();
    const std::size_t sample = taken_++;
    acceleration_.push_back(now.acceleration().z());
    velocity_.push_back(now.state().velocity.z());
    height_.push_back(now.state().height);
    if (tracker_.keyframes().size() != keyframes_) {
        keyframes_ = tracker_.keyframes().size();
        velocityError_ = tracker_.newestError()[motion::at::velocity + 2];
    }
    return Instant{sample, recording_.samples[sample].time, velocity_.back() + velocityError_, acceleration_.back()};
}

bool LiveWindow::atKeyframe() const
{
    return tracker_.keyframes().back().sample + 1 == taken_;
}

bool LiveWindow::solve(double from)
{
    const auto& keyframes = tracker_.keyframes();
    const auto timeOf = [&](const motion::Keyframe& keyframe) { return recording_.samples[keyframe.sample].time; };
    from = std::max(from, recording_.samples[taken_ - 1].time - longestWindow);
    const auto after = std::upper_bound(keyframes.begin(), keyframes.end(), from,
                                        [&](double time, const motion::Keyframe& k) { return time < timeOf(k); });
    const auto first = static_cast<std::size_t>(std::max(after - keyframes.begin() - 1, std::ptrdiff_t{0}));
    if (!tracker_.smoothToNow(first, motion_.solution, true))
        return false;
    spread(first);
    return true;
}

void LiveWindow::spread(std::size_t first)
{
    const auto& keyframes = tracker_.keyframes();
    firstSample_ = keyframes[first].sample;
    const std::size_t count = taken_ - firstSample_;
    for (auto* values : {&motion_.time, &motion_.acceleration, &motion_.velocity, &motion_.height})
        values->resize(count);
    motion_.still.resize(count);
    for (std::size_t i = 0; i < count; ++i)
        motion_.time[i] = recording_.samples[firstSample_ + i].time;
    const auto tail = [&](const std::vector<double>& values) { return std::span(values).subspan(firstSample_); };
    const motion::NominalMotion nominal{tail(acceleration_), tail(velocity_), tail(height_)};
    const motion::LocalVector none = motion::LocalVector::Zero();
    motion_.keyframes.clear();
    for (std::size_t k = first; k < keyframes.size(); ++k) {
        motion_.keyframes.push_back(keyframes[k].sample - firstSample_);
        const bool last = k + 1 == keyframes.size();
        const std::size_t end = last ? count - 1 : keyframes[k + 1].sample - firstSample_;
        const motion::Stretch stretch{motion_.keyframes.back(),
                                      end,
                                      motion_.time[end] - motion_.time[motion_.keyframes.back()],
                                      motion_.solution.correction(k - first),
                                      motion_.solution.correction(k - first + 1),
                                      last ? none : keyframes[k + 1].reset,
                                      keyframes[k].stillWeight > 0.5,
                                      !last && keyframes[k + 1].stillWeight > 0.5};
        motion::spreadCorrection(stretch, nominal, motion_);
        if (last)
            motion::correctLast(stretch, nominal, motion_);
    }
    motion_.keyframes.push_back(count - 1);
}

void LiveWindow::takeOff(double velocity)
{
    const double from = motion_.time.front();
    for (std::size_t i = 0; i < motion_.time.size(); ++i) {
        motion_.velocity[i] -= velocity;
        motion_.height[i] -= velocity * (motion_.time[i] - from);
    }
}

const motion::Recording& LiveWindow::piece()
{
    const auto from = recording_.samples.begin() + static_cast<std::ptrdiff_t>(firstSample_);
    piece_.samples.assign(from, from + static_cast<std::ptrdiff_t>(motion_.time.size()));
    return piece_;
}

bool LiveWindow::everStill() const
{
    const auto& keyframes = tracker_.keyframes();
    return std::any_of(keyframes.begin(), keyframes.end(),
                       [](const motion::Keyframe& keyframe) { return keyframe.stillWeight > 0.5; });
}

} // namespace fleetrung::reps
