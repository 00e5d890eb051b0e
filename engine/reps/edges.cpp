#include "engine/reps/edges.hpp"

#include <algorithm>
#include <cmath>
#include <limits>

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
constexpr double longestPauseUsed = 0.3; // s of the pause that show the velocity of rest
constexpr double leastRest = 0.03;       // s of the pause that tell the level before a ramp
constexpr double clearShare = 0.3;       // of the stroke's greatest acceleration: it has set in
constexpr double restQuantile = 0.3;
constexpr double greatestOffset = 0.025; // m/s

using motion::VerticalMotion;

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
    double velocity = 0; // m/s
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

/// A low quantile of velocity over the pause: the ramp at its end is faster, and a solve may leave an offset of some
/// mm/s that must not be taken for a movement.
double restingVelocity(const Approach& approach)
{
    std::size_t count = 0;
    while (count < approach.time.size() && approach.time[count] > -longestPauseUsed)
        ++count;
    std::vector<double> sorted(approach.velocity.begin(),
                               approach.velocity.begin() + static_cast<std::ptrdiff_t>(count));
    const auto middle = sorted.begin() + static_cast<std::ptrdiff_t>(restQuantile * static_cast<double>(count - 1));
    std::nth_element(sorted.begin(), middle, sorted.end());
    return std::clamp(*middle, -greatestOffset, greatestOffset);
}

Rest restBefore(const Approach& approach, std::size_t start, double level)
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
        return {level, hardlyMoving / 4};
    return {std::clamp(sum / n, level - hardlyMoving, level + hardlyMoving),
            std::sqrt(std::max(0.0, squares / n - sum * sum / (n * n)))};
}

/// Cuts the approach down to the very beginning of the movement: the quieter the rest, the smaller a velocity shows it.
/// What comes later need not be a ramp, and what came before the pause (a bar set down, a heel) must not be in the fit.
void focus(Approach& approach, double clearly)
{
    const double level = restingVelocity(approach);
    const Rest rest = restBefore(approach, lastBelow(approach, level + hardlyMoving), level);
    const std::size_t start =
        lastBelow(approach, rest.velocity + std::clamp(4 * rest.spread, 0.5 * hardlyMoving, hardlyMoving));
    const double clear = rest.velocity + std::clamp(12 * rest.spread, 2 * hardlyMoving, restingSpeed);
    std::size_t first = 0;
    while (first + 4 < start && approach.velocity[first + 1] >= clear && approach.acceleration[first + 1] >= clearly)
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

/// Residual of acceleration = level + slope * shape(t - start) by least squares. The shape is the first half of a
/// minimum-jerk stroke, s (1 - s) (1 - s / 2) with s = 1 at the peak of velocity (Flash & Hogan, J Neurosci
/// 1985;5:1688-1703): a straight ramp would put the start of a fast stroke some ms too early.
double rampResidual(const Approach& approach, double start, double accelerationEnd)
{
    double n = 0, sr = 0, srr = 0, sa = 0, sra = 0, saa = 0;
    for (std::size_t i = 0; i < approach.time.size(); ++i) {
        const double since = std::max(0.0, approach.time[i] - start);
        const double share = since / (accelerationEnd - start);
        const double ramp = since * (1.0 - share) * (1.0 - 0.5 * share);
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

/// Greatest acceleration of the ramp's stroke up to its peak velocity.
double strongest(const Directed& view, std::size_t slowAt, std::size_t peak, int towards)
{
    double most = 0;
    for (std::size_t i = slowAt;; i += static_cast<std::size_t>(towards)) {
        most = std::max(most, towards * view.acceleration(i));
        if (i == peak)
            return most;
    }
}

/// A fast stroke leaves the pause between two samples, and a lifter may shift the bar a little before it: the fit of a
/// ramp reaches on to where acceleration has clearly set in, as long as it keeps growing there.
std::size_t rampEnd(const Directed& view, std::size_t slowAt, std::size_t peak, int towards, double clearly)
{
    std::size_t end = slowAt;
    while (end != peak && towards * view.acceleration(end) < clearly) {
        const std::size_t further = end + static_cast<std::size_t>(towards);
        if (towards * (view.acceleration(further) - view.acceleration(end)) <= 0)
            break;
        end = further;
    }
    return end;
}

/// The instant at which acceleration leaves the level of the pause and becomes a ramp: the best of a fine grid.
double changePoint(const Directed& view, std::size_t quietEnd, std::size_t slowAt, std::size_t peak, int step)
{
    const double clearly = clearShare * strongest(view, slowAt, peak, step);
    const std::size_t end = rampEnd(view, slowAt, peak, step, clearly);
    const double accelerationEnd = std::abs(view.motion.time[peak] - view.motion.time[end]);
    Approach approach = approachTo(view, end, quietEnd, step);
    focus(approach, clearly);
    // Some of the pause must be left on the near side, or nothing would say what its level is.
    const double earliest = std::min(approach.time.back() + leastRest, 0.5 * approach.time.back());
    const auto bestOf = [&](double from, double to, double grid) {
        double best = from;
        double least = std::numeric_limits<double>::infinity();
        for (double start = from; start < to; start += grid) {
            const double residual = rampResidual(approach, start, accelerationEnd);
            if (residual < least) {
                least = residual;
                best = start;
            }
        }
        return best;
    };
    constexpr double coarse = 0.004, fine = 0.0005; // s
    const double near = bestOf(earliest, approach.time.front(), coarse);
    const double best = bestOf(std::max(earliest, near - coarse), std::min(approach.time.front(), near + coarse), fine);
    return view.motion.time[end] + step * best;
}

double crossing(const VerticalMotion& motion, std::size_t before)
{
    const double v0 = motion.velocity[before];
    const double v1 = motion.velocity[before + 1];
    const double share = v0 == v1 ? 0.0 : std::clamp(v0 / (v0 - v1), 0.0, 1.0);
    return motion.time[before] + share * (motion.time[before + 1] - motion.time[before]);
}

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

} // namespace

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
        return {changePoint(view, restEnd, slowAt, peak, -step), true};
    if (view.velocity(zero) > 0)
        return {time[zero], false};
    return {crossing(view.motion, step < 0 ? zero : zero - 1), false};
}

} // namespace fleetrung::reps
