#include "engine/reps/strokes.hpp"

#include <algorithm>
#include <cmath>

#include <Eigen/Cholesky>
#include <Eigen/Core>

namespace fleetrung::reps
{
namespace
{

constexpr double restingSpeed = 0.04;  // m/s: slower than this is a pause
constexpr double pauseDuration = 0.12; // s: a reversal passes through +-restingSpeed in less
constexpr double rampShare = 0.4;      // of the greatest acceleration: up to there a start is taken as a ramp
constexpr double rampWindow = 0.4;     // s looked at before that point, as far as the pause lasts

using motion::VerticalMotion;

/// v as seen in the direction of the movement.
struct Directed {
    const VerticalMotion& motion;
    double sign;
    double velocity(std::size_t i) const { return sign * motion.velocity[i]; }
    double acceleration(std::size_t i) const { return sign * motion.acceleration[i]; }
};

/// The instant at which acceleration leaves a constant and becomes a ramp, by least squares over all instants of a fine
/// grid. `step` +1 looks forward in time (a start), -1 backward (an end).
double changePoint(const Directed& view, std::size_t quietEnd, std::size_t rampEnd, int step)
{
    const auto& time = view.motion.time;
    std::vector<double> t, a;
    const double origin = time[rampEnd];
    const double length = std::min(rampWindow, std::abs(origin - time[quietEnd]));
    for (std::size_t i = rampEnd;; i -= static_cast<std::size_t>(step)) {
        if (std::abs(time[i] - origin) > length)
            break;
        t.push_back(step * (time[i] - origin)); // 0 at the ramp's end, negative before it
        a.push_back(view.acceleration(i));
        if ((step > 0 && i == 0) || (step < 0 && i + 1 == time.size()))
            break;
    }
    const double grid = 0.0005;
    double best = t.back();
    double least = std::numeric_limits<double>::infinity();
    for (double start = t.back() + 0.02; start < 0; start += grid) {
        // a = level + slope * max(0, t - start)
        double n = 0, sr = 0, srr = 0, sa = 0, sra = 0, saa = 0;
        for (std::size_t i = 0; i < t.size(); ++i) {
            const double r = std::max(0.0, t[i] - start);
            n += 1;
            sr += r;
            srr += r * r;
            sa += a[i];
            sra += r * a[i];
            saa += a[i] * a[i];
        }
        const double determinant = n * srr - sr * sr;
        if (determinant <= 0)
            continue;
        const double slope = (n * sra - sr * sa) / determinant;
        const double level = (sa - slope * sr) / n;
        const double residual = saa - level * sa - slope * sra;
        if (residual < least) {
            least = residual;
            best = start;
        }
    }
    return origin + step * best;
}

double crossing(const VerticalMotion& motion, std::size_t before)
{
    const double v0 = motion.velocity[before];
    const double v1 = motion.velocity[before + 1];
    const double share = v0 == v1 ? 0.0 : std::clamp(v0 / (v0 - v1), 0.0, 1.0);
    return motion.time[before] + share * (motion.time[before + 1] - motion.time[before]);
}

struct Edge {
    double time;
    bool deadStop;
};

/// Walks from the peak towards `limit` and finds where the movement begins (step -1) or ends (step +1).
Edge findEdge(const Directed& view, std::size_t peak, std::size_t limit, int step)
{
    const auto& time = view.motion.time;
    const double slow = std::max(restingSpeed, 0.05 * view.velocity(peak));
    std::size_t slowAt = peak;
    while (slowAt != limit && view.velocity(slowAt) >= slow)
        slowAt += static_cast<std::size_t>(step);
    std::size_t restEnd = slowAt;
    while (restEnd != limit && std::abs(view.velocity(restEnd)) < slow)
        restEnd += static_cast<std::size_t>(step);
    if (std::abs(time[restEnd] - time[slowAt]) >= pauseDuration || restEnd == slowAt) {
        double greatest = 0;
        for (std::size_t i = slowAt; i != peak; i -= static_cast<std::size_t>(step))
            greatest = std::max(greatest, -step * view.acceleration(i));
        const auto pushed = [&](std::size_t i) { return -step * view.acceleration(i) >= rampShare * greatest; };
        std::size_t rampEnd = slowAt;
        while (rampEnd != peak && !pushed(rampEnd))
            rampEnd -= static_cast<std::size_t>(step);
        while (rampEnd != restEnd && pushed(rampEnd + static_cast<std::size_t>(step)))
            rampEnd += static_cast<std::size_t>(step);
        return {changePoint(view, restEnd, rampEnd, -step), true};
    }
    std::size_t zero = slowAt;
    while (zero != limit && view.velocity(zero) > 0)
        zero += static_cast<std::size_t>(step);
    if (view.velocity(zero) > 0)
        return {time[zero], false};
    return {crossing(view.motion, step < 0 ? zero : zero - 1), false};
}

/// Vertex of a quadratic fitted to velocity around a sample: the peak to a fraction of a sample.
void refinePeak(const VerticalMotion& motion, Movement& movement)
{
    const double half = std::clamp(0.12 * (movement.end - movement.start), 0.012, 0.05);
    const auto& time = motion.time;
    const std::size_t middle = movement.peakSample;
    std::size_t first = middle, last = middle;
    while (first > 0 && (middle - first < 2 || time[middle] - time[first] < half))
        --first;
    while (last + 1 < time.size() && (last - middle < 2 || time[last] - time[middle] < half))
        ++last;
    Eigen::Matrix3d normal = Eigen::Matrix3d::Zero();
    Eigen::Vector3d right = Eigen::Vector3d::Zero();
    for (std::size_t i = first; i <= last; ++i) {
        const double t = (time[i] - time[middle]) / half;
        const Eigen::Vector3d row(1, t, t * t);
        normal += row * row.transpose();
        right += motion.velocity[i] * row;
    }
    const Eigen::Vector3d fit = normal.ldlt().solve(right);
    movement.peak = time[middle];
    movement.peakVelocity = motion.velocity[middle];
    const double vertex = -fit[1] / (2 * fit[2]);
    if (fit[2] * movement.peakVelocity < 0 && std::abs(vertex) <= 1.0) {
        movement.peak += vertex * half;
        movement.peakVelocity = fit[0] + 0.5 * fit[1] * vertex;
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
