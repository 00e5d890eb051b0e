#include "engine/reps/strokes.hpp"

#include <algorithm>
#include <cmath>
#include <limits>

#include <Eigen/Cholesky>
#include <Eigen/Core>

namespace fleetrung::reps
{
namespace
{

constexpr double restingSpeed = 0.04;    // m/s: slower than this is a pause
constexpr double pauseDuration = 0.12;   // s: a reversal passes through +-restingSpeed in less
constexpr double reversalSpeed = 0.015;  // m/s: beyond the error of velocity next to a pause
constexpr double longestRamp = 0.5;      // s that a movement takes at most to reach restingSpeed
constexpr double hardlyMoving = 0.006;   // m/s: about the error of velocity next to a pause, at most
constexpr double pauseBeforeRamp = 0.12; // s of the pause that the fit of a change point takes in

using motion::VerticalMotion;

/// v as seen in the direction of the movement.
struct Directed {
    const VerticalMotion& motion;
    double sign;
    double velocity(std::size_t i) const { return sign * motion.velocity[i]; }
    double acceleration(std::size_t i) const { return sign * motion.acceleration[i]; }
};

/// Velocity and acceleration before the end of a ramp: time runs from negative to 0 there, whichever way the edge
/// looks.
struct Approach {
    std::vector<double> time;         // s
    std::vector<double> velocity;     // m/s
    std::vector<double> acceleration; // m/s2
};

Approach approachTo(const Directed& view, std::size_t rampEnd, std::size_t quietEnd, int step)
{
    Approach approach;
    for (std::size_t i = rampEnd;; i -= static_cast<std::size_t>(step)) {
        approach.time.push_back(-std::abs(view.motion.time[i] - view.motion.time[rampEnd]));
        approach.velocity.push_back(view.velocity(i));
        approach.acceleration.push_back(step * view.acceleration(i));
        if (i == quietEnd || approach.time.back() < -longestRamp)
            break;
    }
    return approach;
}

/// What velocity does while the bar rests, as far as the error of the solve and the lifter's own movement show it.
struct Rest {
    double velocity = 0; // m/s, mean
    double spread = 0;   // m/s, standard deviation
};

/// First index of the approach (which runs back in time) whose velocity is below a limit.
std::size_t lastBelow(const Approach& approach, double limit)
{
    std::size_t i = 0;
    while (i + 1 < approach.time.size() && approach.velocity[i] >= limit)
        ++i;
    return i;
}

Rest restBefore(const Approach& approach, std::size_t start)
{
    double n = 0, sum = 0, squares = 0;
    for (std::size_t i = start; i < approach.time.size(); ++i) {
        const double before = approach.time[start] - approach.time[i];
        if (before < 0.02 || before > pauseBeforeRamp)
            continue;
        n += 1;
        sum += approach.velocity[i];
        squares += approach.velocity[i] * approach.velocity[i];
    }
    if (n < 3)
        return {0.0, hardlyMoving / 4};
    return {std::clamp(sum / n, -hardlyMoving, hardlyMoving),
            std::sqrt(std::max(0.0, squares / n - sum * sum / (n * n)))};
}

/// Cuts the approach down to the very beginning of the movement: the quieter the rest, the smaller a velocity shows it.
/// What comes later need not be a ramp, and what came before the pause (a bar set down, a heel) must not be in the fit.
void focus(Approach& approach)
{
    const Rest rest = restBefore(approach, lastBelow(approach, hardlyMoving));
    const std::size_t start =
        lastBelow(approach, rest.velocity + std::clamp(4 * rest.spread, 0.5 * hardlyMoving, hardlyMoving));
    const double clear = rest.velocity + std::clamp(12 * rest.spread, 2 * hardlyMoving, restingSpeed);
    std::size_t first = 0;
    while (first + 4 < start && approach.velocity[first + 1] >= clear)
        ++first;
    std::size_t last = start;
    while (last + 1 < approach.time.size() && approach.time[start] - approach.time[last] < pauseBeforeRamp)
        ++last;
    const auto cut = [&](std::vector<double>& values) {
        values = {values.begin() + static_cast<std::ptrdiff_t>(first),
                  values.begin() + static_cast<std::ptrdiff_t>(last + 1)};
    };
    cut(approach.time);
    cut(approach.velocity);
    cut(approach.acceleration);
}

/// Residual of acceleration = level + slope * max(0, t - start) by least squares.
double rampResidual(const Approach& approach, double start)
{
    double n = 0, sr = 0, srr = 0, sa = 0, sra = 0, saa = 0;
    for (std::size_t i = 0; i < approach.time.size(); ++i) {
        const double ramp = std::max(0.0, approach.time[i] - start);
        const double a = approach.acceleration[i];
        n += 1;
        sr += ramp;
        srr += ramp * ramp;
        sa += a;
        sra += ramp * a;
        saa += a * a;
    }
    const double determinant = n * srr - sr * sr;
    if (determinant <= 0)
        return std::numeric_limits<double>::infinity();
    const double slope = (n * sra - sr * sa) / determinant;
    const double level = (sa - slope * sr) / n;
    return saa - level * sa - slope * sra;
}

/// The instant at which acceleration leaves the level of the pause and becomes a ramp: the best of a fine grid.
double changePoint(const Directed& view, std::size_t quietEnd, std::size_t rampEnd, int step)
{
    Approach approach = approachTo(view, rampEnd, quietEnd, step);
    focus(approach);
    constexpr double grid = 0.0005;
    double best = approach.time.back();
    double least = std::numeric_limits<double>::infinity();
    for (double start = best; start < approach.time.front(); start += grid) {
        const double residual = rampResidual(approach, start);
        if (residual < least) {
            least = residual;
            best = start;
        }
    }
    return view.motion.time[rampEnd] + step * best;
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

/// Whether velocity goes straight through zero rather than settling there: a reversal, however slow it is afterwards.
bool turnsBack(const Directed& view, std::size_t slowAt, std::size_t limit, int step)
{
    const auto& time = view.motion.time;
    for (std::size_t i = slowAt; std::abs(time[i] - time[slowAt]) < pauseDuration;
         i += static_cast<std::size_t>(step)) {
        if (view.velocity(i) < -reversalSpeed)
            return true;
        if (i == limit)
            break;
    }
    return false;
}

/// Walks from the peak towards `limit` and finds where the movement begins (step -1) or ends (step +1).
Edge findEdge(const Directed& view, std::size_t peak, std::size_t limit, int step)
{
    const auto& time = view.motion.time;
    std::size_t slowAt = peak;
    while (slowAt != limit && view.velocity(slowAt) >= restingSpeed)
        slowAt += static_cast<std::size_t>(step);
    std::size_t restEnd = slowAt;
    while (restEnd != limit && std::abs(view.velocity(restEnd)) < restingSpeed)
        restEnd += static_cast<std::size_t>(step);
    std::size_t zero = slowAt;
    while (zero != limit && view.velocity(zero) > 0)
        zero += static_cast<std::size_t>(step);
    const bool rests = std::abs(time[restEnd] - time[slowAt]) >= pauseDuration || restEnd == slowAt;
    if (rests && !turnsBack(view, slowAt, limit, step))
        return {changePoint(view, restEnd, slowAt, -step), true};
    if (view.velocity(zero) > 0)
        return {time[zero], false};
    return {crossing(view.motion, step < 0 ? zero : zero - 1), false};
}

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
