#include "demo/simulator/truth.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <optional>
#include <vector>

namespace fleetrung::simulator
{
namespace
{

using Scalar = std::function<double(double)>;

constexpr double scanStep = 0.004; // s: well below a period of tremor

/// f changes sign between the two.
double bisect(const Scalar& f, double low, double high)
{
    const bool rising = f(high) > f(low);
    for (int i = 0; i < 50 && high - low > 1e-11; ++i) {
        const double middle = (low + high) / 2;
        ((f(middle) > 0) == rising ? high : low) = middle;
    }
    return (low + high) / 2;
}

/// The crossing of zero in the given direction nearest to `near`, within `reach`; `near` itself where there is none.
double crossingNear(const Scalar& f, double near, double reach, bool rising)
{
    constexpr int steps = 40;
    std::optional<double> best;
    double before = f(near - reach);
    for (int i = 1; i <= steps; ++i) {
        const double t = near - reach + 2 * reach * i / steps;
        const double now = f(t);
        if (rising ? (before < 0 && now >= 0) : (before > 0 && now <= 0)) {
            const double found = bisect(f, t - 2 * reach / steps, t);
            if (!best || std::abs(found - near) < std::abs(*best - near)) {
                best = found;
            }
        }
        before = now;
    }
    return best.value_or(near);
}

struct Extremum {
    double time, value;
};

/// All maxima of velocity inside, refined on the zero of acceleration.
std::vector<Extremum> velocityPeaks(const Motion& motion, double from, double to, double sign)
{
    const auto steps = std::max(40, static_cast<int>((to - from) / 0.004));
    const Scalar acceleration = [&](double t) { return sign * motion(t).acceleration; };
    std::vector<Extremum> peaks;
    double before = acceleration(from);
    for (int i = 1; i <= steps; ++i) {
        const double t = from + (to - from) * i / steps;
        const double now = acceleration(t);
        if (before > 0 && now <= 0) {
            const double peak = bisect(acceleration, from + (to - from) * (i - 1) / steps, t);
            peaks.push_back({peak, sign * motion(peak).velocity});
        }
        before = now;
    }
    return peaks;
}

Extremum greatest(const std::vector<Extremum>& peaks, const Motion& motion, double end, double sign)
{
    Extremum best{end, sign * motion(end).velocity};
    for (const auto& peak : peaks) {
        if (peak.value > best.value) {
            best = peak;
        }
    }
    return best;
}

/// The highest other peak that stands out from the valley between the two: season rules, evidence 5.
std::optional<Extremum> otherPeak(const std::vector<Extremum>& peaks, const Motion& motion, const Extremum& top)
{
    std::optional<Extremum> best;
    for (const auto& peak : peaks) {
        double valley = peak.value;
        for (int i = 0; i <= 200; ++i) {
            valley = std::min(valley, motion(peak.time + (top.time - peak.time) * i / 200).velocity);
        }
        const bool standsOut = peak.value - valley >= std::max(0.03, 0.08 * top.value);
        if (standsOut && (!best || peak.value > best->value)) {
            best = peak;
        }
    }
    return best;
}

/// Greatest value of a smooth function: a scan, then golden section on the best stretch.
Extremum greatestOf(const Scalar& f, double from, double to)
{
    const auto steps = std::max(40, static_cast<int>((to - from) / scanStep));
    const double step = (to - from) / steps;
    Extremum best{from, f(from)};
    for (int i = 1; i <= steps; ++i) {
        const double value = f(from + i * step);
        if (value > best.value) {
            best = {from + i * step, value};
        }
    }
    double low = std::max(from, best.time - step), high = std::min(to, best.time + step);
    constexpr double ratio = 0.6180339887498949;
    while (high - low > 1e-9) {
        const double left = high - ratio * (high - low), right = low + ratio * (high - low);
        (f(left) > f(right) ? high : low) = f(left) > f(right) ? right : left;
    }
    const double time = (low + high) / 2;
    return f(time) > best.value ? Extremum{time, f(time)} : best;
}

/// Start of the second pull: where a tenth of the rise from the transition's least acceleration is made up.
std::optional<double> secondPullStart(const Motion& motion, double from, double to)
{
    const Scalar acceleration = [&](double t) { return motion(t).acceleration; };
    const auto steps = std::max(40, static_cast<int>((to - from) / scanStep));
    std::vector<double> sampled;
    for (int i = 0; i <= steps; ++i) {
        sampled.push_back(acceleration(from + (to - from) * i / steps));
    }
    std::vector<double> after = sampled; // greatest from here on
    for (std::size_t i = after.size() - 1; i-- > 0;) {
        after[i] = std::max(after[i], after[i + 1]);
    }
    double before = sampled.front(), depth = 0.5;
    std::optional<double> valley;
    for (std::size_t i = 1; i + 1 < sampled.size(); ++i) {
        before = std::max(before, sampled[i]);
        if (std::min(before, after[i]) - sampled[i] > depth) {
            depth = std::min(before, after[i]) - sampled[i];
            valley = from + (to - from) * static_cast<double>(i) / steps;
        }
    }
    if (!valley) {
        return std::nullopt;
    }
    const auto least = greatestOf([&](double t) { return -acceleration(t); }, *valley - scanStep, *valley + scanStep);
    const auto greatest = greatestOf(acceleration, *valley, to);
    const double level = -least.value + 0.1 * (greatest.value + least.value);
    const Scalar above = [&](double t) { return acceleration(t) - level; };
    for (double t = least.time; t < greatest.time; t += scanStep) {
        if (above(t + scanStep) >= 0) {
            return bisect(above, t, t + scanStep);
        }
    }
    return std::nullopt;
}

/// First instant with acceleration below -g; `to` where there is none.
double propulsiveEnd(const Motion& motion, double from, double to, double gravity)
{
    const Scalar above = [&](double t) { return motion(t).acceleration + gravity; };
    const auto steps = std::max(40, static_cast<int>((to - from) / 0.002));
    for (int i = 1; i <= steps; ++i) {
        const double t = from + (to - from) * i / steps;
        if (above(t) < 0) {
            const double before = from + (to - from) * (i - 1) / steps;
            return above(before) > 0 ? bisect(above, before, t) : before;
        }
    }
    return to;
}

/// What force and power are made of: acceleration and speed after the start.
void addForces(StrokeTruth& truth, const Motion& motion, double gravity)
{
    constexpr std::array<double, 4> windows{0.05, 0.10, 0.15, 0.20};
    const double start = truth.concentricStart;
    for (std::size_t i = 0; i < windows.size(); ++i) {
        const auto then = motion(start + windows[i]);
        truth.meanAcceleration[i] = (then.velocity - motion(start).velocity) / windows[i];
        truth.earlyAcceleration[i] = then.acceleration;
    }
    truth.peakAcceleration = greatestOf([&](double t) { return motion(t).acceleration; }, start, truth.peakTime).value;
    truth.endVelocity = motion(truth.concentricEnd).velocity;
    const Scalar power = [&](double t) { return (motion(t).acceleration + gravity) * motion(t).velocity; };
    truth.peakPowerPerMass = greatestOf(power, start, truth.concentricEnd).value;
    if (const auto pull = secondPullStart(motion, start, truth.peakTime)) {
        truth.secondPullTime = truth.peakTime - *pull;
    }
}

/// How the descent is braked and turned round, from its greatest speed on.
void addReversal(StrokeTruth& truth, const Motion& motion, double fastest, bool afterPause)
{
    const double start = truth.concentricStart;
    const Scalar acceleration = [&](double t) { return motion(t).acceleration; };
    truth.peakReversalAcceleration = greatestOf(acceleration, fastest, std::min(truth.peakTime, start + 0.1)).value;
    const Scalar velocity = [&](double t) { return motion(t).velocity; };
    double stop = start;
    for (double t = fastest; t < start; t += scanStep) {
        if (velocity(t + scanStep) >= 0) {
            stop = bisect(velocity, t, t + scanStep);
            break;
        }
    }
    truth.dropStopTime = stop - fastest;
    truth.stopDepth = motion(truth.eccentricStart).height - motion(stop).height;
    if (!afterPause) {
        truth.brakingSlope = acceleration(start) / (start - fastest);
    }
}

} // namespace

bool isBallistic(const Gesture& gesture)
{
    return gesture.kind == Kind::Clean || gesture.kind == Kind::Hang || gesture.key == "high-pull";
}

StrokeTruth measureStroke(const Motion& motion, const RepetitionMark& mark, double gravity, bool ballistic)
{
    const Scalar velocity = [&](double t) { return motion(t).velocity; };
    constexpr double reach = 0.06; // s: how far sway and lever can move a turning point
    StrokeTruth truth;
    truth.eccentricStart = mark.eccentricStart;
    truth.concentricStart =
        mark.fromRest ? mark.concentricStart : crossingNear(velocity, mark.concentricStart, reach, true);
    truth.concentricEnd =
        mark.endsInFlight ? mark.concentricEnd : crossingNear(velocity, mark.concentricEnd, reach, false);
    const auto peaks = velocityPeaks(motion, truth.concentricStart, truth.concentricEnd, 1);
    const auto top = greatest(peaks, motion, truth.concentricEnd, 1);
    const double pushed = propulsiveEnd(motion, top.time, truth.concentricEnd, gravity);
    if (ballistic) {
        truth.concentricEnd = pushed;
    }

    const auto begin = motion(truth.concentricStart);
    const auto end = motion(truth.concentricEnd);
    const double duration = truth.concentricEnd - truth.concentricStart;
    truth.range = end.height - begin.height;
    truth.meanVelocity = truth.range / duration;

    truth.peakTime = top.time;
    truth.peakVelocity = top.value;
    truth.timeToPeakVelocity = top.time - truth.concentricStart;
    truth.displacementToPeak = motion(top.time).height - begin.height;
    if (const auto other = otherPeak(peaks, motion, top)) {
        truth.otherPeakVelocity = other->value;
        truth.otherPeakTime = other->time - truth.concentricStart;
        truth.twoPeaked = other->value >= 0.9 * top.value;
    }
    truth.meanPropulsiveVelocity = (motion(pushed).height - begin.height) / (pushed - truth.concentricStart);
    truth.velocityAt100ms = velocity(truth.concentricStart + 0.1);
    truth.velocityAt200ms = velocity(truth.concentricStart + 0.2);
    addForces(truth, motion, gravity);

    if (mark.eccentricStart < mark.concentricStart) {
        const auto falls = velocityPeaks(motion, truth.eccentricStart, truth.concentricStart, -1);
        const auto fastest = greatest(falls, motion, truth.concentricStart, -1);
        truth.eccentricPeakVelocity = -fastest.value;
        addReversal(truth, motion, fastest.time, mark.fromRest);
    } else {
        truth.eccentricStart = truth.concentricStart;
    }
    return truth;
}

} // namespace fleetrung::simulator
