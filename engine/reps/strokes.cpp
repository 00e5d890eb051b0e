#include "engine/reps/strokes.hpp"

#include <algorithm>
#include <cmath>

#include <Eigen/Cholesky>
#include <Eigen/Core>

#include "engine/reps/edges.hpp"

namespace fleetrung::reps
{
namespace
{

using motion::VerticalMotion;

/// Greatest value of a cubic fitted to velocity around a sample: the peak to a fraction of a sample. A quadratic would
/// lean towards the flatter side of a skewed peak.
void refinePeak(const VerticalMotion& motion, Movement& movement)
{
    const double half = std::clamp(0.12 * (movement.end - movement.start), 0.012, 0.05);
    const auto& time = motion.time;
    const std::size_t middle = movement.peakSample;
    std::size_t first = middle, last = middle;
    while (first > 0 && (middle - first < 3 || time[middle] - time[first] < half))
        --first;
    while (last + 1 < time.size() && (last - middle < 3 || time[last] - time[middle] < half))
        ++last;
    Eigen::Matrix4d normal = Eigen::Matrix4d::Zero();
    Eigen::Vector4d right = Eigen::Vector4d::Zero();
    for (std::size_t i = first; i <= last; ++i) {
        const double t = (time[i] - time[middle]) / half;
        const Eigen::Vector4d row(1, t, t * t, t * t * t);
        normal += row * row.transpose();
        right += motion.velocity[i] * row;
    }
    const Eigen::Vector4d fit = normal.ldlt().solve(right);
    movement.peak = time[middle];
    movement.peakVelocity = motion.velocity[middle];
    // fit[1] + 2 fit[2] t + 3 fit[3] t^2 = 0, the root near the sample, in the form that bears fit[3] = 0.
    const double discriminant = fit[2] * fit[2] - 3 * fit[1] * fit[3];
    if (fit[2] * movement.peakVelocity >= 0 || discriminant < 0)
        return;
    const double vertex = -fit[1] / (fit[2] + std::copysign(std::sqrt(discriminant), fit[2]));
    if (std::abs(vertex) <= 1.0) {
        movement.peak += vertex * half;
        movement.peakVelocity = fit[0] + vertex * (fit[1] + vertex * (fit[2] + vertex * fit[3]));
    }
}

} // namespace

std::vector<Stroke> findStrokes(const motion::VerticalMotion& motion, double prominence)
{
    std::vector<Stroke> strokes;
    const auto& height = motion.height;
    std::size_t low = 0, high = 0;
    std::optional<std::size_t> bottom, topBefore;
    int direction = 0; // +1 while the last confirmed turning point is a bottom
    for (std::size_t i = 1; i < height.size(); ++i) {
        if (height[i] > height[high])
            high = i;
        if (height[i] < height[low])
            low = i;
        if (direction != 1 && height[i] - height[low] >= prominence) {
            if (direction == -1 || !bottom)
                bottom = low;
            direction = 1;
            high = i;
        } else if (direction != -1 && height[high] - height[i] >= prominence) {
            if (bottom && direction == 1)
                strokes.push_back({*bottom, high, topBefore});
            topBefore = high;
            direction = -1;
            low = i;
        }
    }
    if (direction == 1 && bottom)
        strokes.push_back({*bottom, high, topBefore});
    return strokes;
}

Movement findMovement(const motion::VerticalMotion& motion, std::size_t from, std::size_t to, int direction)
{
    const Directed view{motion, static_cast<double>(direction)};
    Movement movement{};
    movement.peakSample = from;
    for (std::size_t i = from; i <= to; ++i)
        if (view.velocity(i) > view.velocity(movement.peakSample))
            movement.peakSample = i;
    // A pause may reach beyond the turning points: look on to where the motion is clearly another one.
    const Edge start = findEdge(view, movement.peakSample, 0, -1);
    const Edge end = findEdge(view, movement.peakSample, motion.time.size() - 1, +1);
    movement.start = start.time;
    movement.fromDeadStop = start.deadStop;
    movement.end = end.time;
    movement.toDeadStop = end.deadStop;
    refinePeak(motion, movement);
    return movement;
}

std::size_t sampleAt(const motion::VerticalMotion& motion, double time)
{
    const auto after = std::upper_bound(motion.time.begin(), motion.time.end(), time);
    return after == motion.time.begin() ? 0 : static_cast<std::size_t>(after - motion.time.begin()) - 1;
}

double valueAt(const motion::VerticalMotion& motion, const std::vector<double>& values, double time)
{
    const std::size_t i = sampleAt(motion, time);
    if (i + 1 >= values.size())
        return values.back();
    const double share = (time - motion.time[i]) / (motion.time[i + 1] - motion.time[i]);
    return values[i] + std::clamp(share, 0.0, 1.0) * (values[i + 1] - values[i]);
}

double heightAt(const motion::VerticalMotion& motion, double time)
{
    const std::size_t i = sampleAt(motion, time);
    if (i + 1 >= motion.height.size())
        return motion.height.back();
    const double dt = motion.time[i + 1] - motion.time[i];
    const double s = std::clamp((time - motion.time[i]) / dt, 0.0, 1.0);
    const double h0 = motion.height[i], h1 = motion.height[i + 1];
    const double d0 = motion.velocity[i] * dt, d1 = motion.velocity[i + 1] * dt;
    return h0 + s * (d0 + s * (3 * (h1 - h0) - 2 * d0 - d1 + s * (2 * (h0 - h1) + d0 + d1)));
}

} // namespace fleetrung::reps
