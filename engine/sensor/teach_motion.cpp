#include "engine/sensor/teach_motion.hpp"

#include <algorithm>
#include <cmath>

namespace fleetrung::sensor::teaching
{

using Eigen::Vector3d;

constexpr double farOff = 0.7; // gravities

Integral::Integral(std::vector<double> time, const std::vector<double>& value) : time_(std::move(time))
{
    sum_.resize(time_.size());
    for (std::size_t i = 1; i < time_.size(); ++i) {
        sum_[i] = sum_[i - 1] + (time_[i] - time_[i - 1]) * (value[i] + value[i - 1]) / 2;
    }
}

double Integral::until(double when) const
{
    if (time_.size() < 2 || when <= time_.front()) {
        return 0;
    }
    if (when >= time_.back()) {
        return sum_.back();
    }
    const auto after = static_cast<std::size_t>(std::upper_bound(time_.begin(), time_.end(), when) - time_.begin());
    const double share = (when - time_[after - 1]) / (time_[after] - time_[after - 1]);
    return sum_[after - 1] + share * (sum_[after] - sum_[after - 1]);
}

std::vector<double> sampleTimes(const Table& table, int samples)
{
    std::vector<double> gaps;
    for (std::size_t i = 1; i < table.size(); ++i) {
        gaps.push_back(table.time[i] - table.time[i - 1]);
    }
    const auto middle = gaps.begin() + static_cast<std::ptrdiff_t>(gaps.size() / 2);
    std::nth_element(gaps.begin(), middle, gaps.end());
    const double period = *middle / samples;
    std::vector<double> times;
    times.reserve(table.size() * static_cast<std::size_t>(samples));
    for (std::size_t i = 0; i < table.size(); ++i) {
        for (int sample = 0; sample < samples; ++sample) {
            const double time = table.time[i] - (samples - 1 - sample) * period;
            times.push_back(times.empty() ? time : std::max(time, times.back() + 1e-7));
        }
    }
    return times;
}

std::vector<double> samplesOf(const Table& table, const Triad& triad, std::size_t axis)
{
    std::vector<double> values;
    values.reserve(table.size() * static_cast<std::size_t>(triad.samples));
    double last = 0;
    for (std::size_t i = 0; i < table.size(); ++i) {
        for (int sample = 0; sample < triad.samples; ++sample) {
            const double value = table.at(i, triad.of(axis, sample));
            last = std::isfinite(value) && std::abs(value) < 1e12 ? value : last;
            values.push_back(last);
        }
    }
    return values;
}

Vector3d Gravity::mean(double from, double to) const
{
    return {integral[0].mean(from, to), integral[1].mean(from, to), integral[2].mean(from, to)};
}

void mendSpikes(std::vector<double>& reading, double far)
{
    const auto raw = reading;
    for (std::size_t i = 2; i + 2 < raw.size(); ++i) {
        std::array<double, 5> near{raw[i - 2], raw[i - 1], raw[i], raw[i + 1], raw[i + 2]};
        std::nth_element(near.begin(), near.begin() + 2, near.end());
        reading[i] = std::abs(raw[i] - near[2]) > far ? near[2] : raw[i];
    }
}

Gravity gravityOf(const Table& table, const Accelerometer& accelerometer)
{
    Gravity gravity;
    gravity.time = sampleTimes(table, accelerometer.triad.samples);
    for (std::size_t axis = 0; axis < 3; ++axis) {
        auto& reading = gravity.reading.at(axis);
        reading = samplesOf(table, accelerometer.triad, axis);
        for (auto& value : reading) {
            value = (value - accelerometer.center[static_cast<Eigen::Index>(axis)]) / accelerometer.countsPerGravity;
        }
        mendSpikes(reading, farOff);
        gravity.integral.at(axis) = Integral(gravity.time, reading);
    }
    return gravity;
}

Rest restIn(const Gravity& gravity, const Steps::Span& span)
{
    constexpr double window = 0.25;
    const double from = span.from + 0.15, to = std::max(span.to - 0.05, from + window);
    Rest rest{gravity.mean(from, to), 0};
    for (double begin = from; begin + window <= to + 1e-9; begin += window / 2) {
        rest.wander = std::max(rest.wander, (gravity.mean(begin, begin + window) - rest.mean).norm());
    }
    return rest;
}

Raise raiseIn(const Gravity& gravity, const Steps::Span& span, double metresPerSecondSquared)
{
    constexpr double still = 0.3; // s at either end
    const Vector3d begin = gravity.mean(span.from, span.from + still), end = gravity.mean(span.to - still, span.to);
    const double duration = span.to - span.from;
    Raise raise;
    std::vector<double> force, step;
    double impulse = 0, before = 0;
    const auto first = std::lower_bound(gravity.time.begin(), gravity.time.end(), span.from) - gravity.time.begin();
    for (auto i = static_cast<std::size_t>(first) + 1; i < gravity.time.size() && gravity.time[i] < span.to; ++i) {
        const double share = (gravity.time[i] - span.from) / duration;
        const Vector3d rest = begin + share * (end - begin);
        const Vector3d reading{gravity.reading[0][i], gravity.reading[1][i], gravity.reading[2][i]};
        const double now = metresPerSecondSquared * (reading - rest).dot(rest.normalized());
        force.push_back((before + now) / 2);
        step.push_back(gravity.time[i] - gravity.time[i - 1]);
        impulse += force.back() * step.back();
        raise.push = std::max(raise.push, std::abs(now));
        before = now;
    }
    double speed = 0;
    for (std::size_t i = 0; i < force.size(); ++i) {
        const double gained = (force[i] - impulse / duration) * step[i];
        raise.height += (speed + gained / 2) * step[i];
        speed += gained;
    }
    return raise;
}

} // namespace fleetrung::sensor::teaching
