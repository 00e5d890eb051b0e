#include "demo/simulator/truth.hpp"

#include <algorithm>
#include <cmath>
#include <optional>
#include <vector>

namespace fleetrung::simulator
{
namespace
{

using Scalar = std::function<double(double)>;

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

/// Two peaks as in the season rules, evidence 5.
bool twoPeaks(const std::vector<Extremum>& peaks, const Motion& motion, const Extremum& top)
{
    for (const auto& peak : peaks) {
        if (peak.time == top.time || peak.value < 0.9 * top.value) {
            continue;
        }
        double valley = peak.value;
        for (int i = 0; i <= 200; ++i) {
            valley = std::min(valley, motion(peak.time + (top.time - peak.time) * i / 200).velocity);
        }
        if (peak.value - valley >= std::max(0.03, 0.08 * top.value)) {
            return true;
        }
    }
    return false;
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

} // namespace

StrokeTruth measureStroke(const Motion& motion, const RepetitionMark& mark, double gravity)
{
    const Scalar velocity = [&](double t) { return motion(t).velocity; };
    constexpr double reach = 0.06; // s: how far sway and lever can move a turning point
    StrokeTruth truth;
    truth.eccentricStart = mark.eccentricStart;
    truth.concentricStart =
        mark.fromRest ? mark.concentricStart : crossingNear(velocity, mark.concentricStart, reach, true);
    truth.concentricEnd =
        mark.endsInFlight ? mark.concentricEnd : crossingNear(velocity, mark.concentricEnd, reach, false);

    const auto begin = motion(truth.concentricStart);
    const auto end = motion(truth.concentricEnd);
    const double duration = truth.concentricEnd - truth.concentricStart;
    truth.range = end.height - begin.height;
    truth.meanVelocity = truth.range / duration;

    const auto peaks = velocityPeaks(motion, truth.concentricStart, truth.concentricEnd, 1);
    const auto top = greatest(peaks, motion, truth.concentricEnd, 1);
    truth.peakTime = top.time;
    truth.peakVelocity = top.value;
    truth.timeToPeakVelocity = top.time - truth.concentricStart;
    truth.displacementToPeak = motion(top.time).height - begin.height;
    truth.twoPeaked = twoPeaks(peaks, motion, top);

    const double pushed = propulsiveEnd(motion, truth.concentricStart, truth.concentricEnd, gravity);
    truth.meanPropulsiveVelocity = (motion(pushed).height - begin.height) / (pushed - truth.concentricStart);
    truth.velocityAt100ms = velocity(truth.concentricStart + 0.1);
    truth.velocityAt200ms = velocity(truth.concentricStart + 0.2);

    if (mark.eccentricStart < mark.concentricStart) {
        const auto falls = velocityPeaks(motion, truth.eccentricStart, truth.concentricStart, -1);
        truth.eccentricPeakVelocity = -greatest(falls, motion, truth.concentricStart, -1).value;
    } else {
        truth.eccentricStart = truth.concentricStart;
    }
    return truth;
}

} // namespace fleetrung::simulator
