#include "engine/jumps/edges.hpp"

#include <algorithm>
#include <cmath>
#include <optional>

#include "engine/jumps/kink.hpp"

namespace fleetrung::jumps
{
namespace
{

using Eigen::Vector3d;

constexpr double airTime = 0.030;       // s of flight that tell its level and trend
constexpr double rise = 0.016;          // s of contact on which the force's curve is followed
constexpr std::size_t fewest = 5;       // samples of it at least
constexpr double softest = 0.024;       // s in which a softly landed body reaches a quarter of its weight
constexpr double tailShare = 0.5;       // of an interval that the force may have been too small to be noticed
constexpr double ringIn = 0.008;        // s: a ringing impact can hide the force for so long
constexpr double landingPush = 0.080;   // s of contact that tell the direction of the force, ringing or not
constexpr double push = 0.040;          // s of contact that tell the direction of the force
constexpr double landingForce = 0.6;    // m/s2 that leave the level of the flight: a body turns before it lands
constexpr double takeoffForce = 0.3;    // and its push fades out softly
constexpr double noise = 0.05;          // m/s2
constexpr double curveShare = 0.04;     // of a sample interval: what curves other than polynomials add
constexpr double landingShare = 0.06;   // likewise, where impacts ring
constexpr double landingGrowth = 22;    // 1/s, of that share: slow sampling hides more of the ringing
constexpr double landingFloor = 0.0005; // s, likewise
constexpr double root12 = 3.4641016;    // a rectangle's width over its standard deviation

struct Span {
    std::size_t first, last; // samples, both inside
};

/// `count` samples at least, and `duration` at least, before (step -1) or after (step 1) a sample.
std::size_t away(const Signal& signal, std::size_t from, int step, std::size_t count, double duration)
{
    std::size_t i = from;
    std::size_t moved = 0;
    while ((step > 0 ? i + 1 < signal.size() : i > 0) &&
           (moved < count || std::abs(signal.time[i] - signal.time[from]) < duration)) {
        i = step > 0 ? i + 1 : i - 1;
        ++moved;
    }
    return i;
}

Vector3d direction(const Signal& signal, Span span)
{
    Vector3d sum = Vector3d::Zero();
    for (std::size_t i = span.first; i <= span.last; ++i)
        sum += signal.force(i);
    return sum.normalized();
}

double intervalAt(const Signal& signal, std::size_t i)
{
    return i > 0 ? signal.time[i] - signal.time[i - 1] : 1 / signal.rate;
}

/// No curve to follow: somewhere in the interval that ends with the sample.
Measured within(const Signal& signal, std::size_t i)
{
    const double interval = intervalAt(signal, i);
    return {signal.time[i] - interval / 2, interval / root12};
}

Measured withCurve(const Kink& kink, double interval)
{
    return {kink.time, std::hypot(kink.uncertainty, curveShare * interval)};
}

bool hasGap(const Signal& signal, Span span)
{
    for (std::size_t i = span.first + 1; i <= span.last; ++i)
        if (intervalAt(signal, i) > 2.5 / signal.rate)
            return true;
    return false;
}

std::vector<double> along(const Signal& signal, const Vector3d& axis, Span span)
{
    std::vector<double> values;
    for (std::size_t i = span.first; i <= span.last; ++i)
        values.push_back(axis.dot(signal.force(i)));
    return values;
}

std::span<const double> times(const Signal& signal, Span span)
{
    return std::span(signal.time).subspan(span.first, span.last - span.first + 1);
}

/// The force in flight, and how far from it a force is no longer of the flight for sure.
struct Level {
    double time;
    Vector3d value, slope;
    double leaves;

    [[nodiscard]] Vector3d beyond(const Signal& signal, std::size_t i) const
    {
        return signal.force(i) - value - slope * (signal.time[i] - time);
    }
};

Level levelOver(const Signal& signal, Span span, double least)
{
    const auto count = static_cast<double>(span.last - span.first + 1);
    Level level{0, Vector3d::Zero(), Vector3d::Zero(), 0};
    for (std::size_t i = span.first; i <= span.last; ++i) {
        level.time += signal.time[i] / count;
        level.value += signal.force(i) / count;
    }
    double xx = 0;
    Vector3d xy = Vector3d::Zero();
    for (std::size_t i = span.first; i <= span.last; ++i) {
        const double x = signal.time[i] - level.time;
        xx += x * x;
        xy += x * (signal.force(i) - level.value);
    }
    if (xx > 0)
        level.slope = xy / xx;
    double left = 0;
    for (std::size_t i = span.first; i <= span.last; ++i)
        left += level.beyond(signal, i).squaredNorm();
    level.leaves = std::max(least, 4 * std::sqrt(left / std::max(1.0, count - 2)));
    return level;
}

/// The level of the flight next to its end, away from what may already be the landing.
Level levelAt(const Signal& signal, const Flight& flight, int step)
{
    const std::size_t end = step > 0 ? flight.last : flight.first;
    const double duration = signal.time[flight.last] - signal.time[flight.first];
    const std::size_t near = away(signal, end, -step, 1, std::min(softest, 0.35 * duration));
    const std::size_t far = away(signal, near, -step, 3, std::min(airTime, 0.4 * duration));
    return levelOver(signal, {std::min(near, far), std::max(near, far)}, step > 0 ? landingForce : takeoffForce);
}

/// The last sample on the ground (step -1) or the first one (step 1): next to it the force is that of the flight. A
/// ringing impact may hide the force for some samples.
std::size_t leaving(const Signal& signal, const Flight& flight, int step)
{
    const Level level = levelAt(signal, flight, step);
    const std::size_t edge =
        step > 0 ? std::min(flight.last + 1, signal.size() - 1) : std::max<std::size_t>(flight.first, 1) - 1;
    const double reach = std::min(softest, 0.35 * (signal.time[flight.last] - signal.time[flight.first]));
    std::size_t found = edge;
    for (std::size_t i = edge;
         std::abs(signal.time[i] - signal.time[edge]) <= reach &&
         std::abs(signal.time[i] - signal.time[found]) <= (step > 0 ? ringIn : 0.0) + 1.5 / signal.rate;) {
        if (level.beyond(signal, i).norm() > level.leaves)
            found = i;
        i = step > 0 ? i - 1 : i + 1;
    }
    return found;
}

/// How many intervals before the first of three values their parabola crosses zero, going up.
std::optional<double> rootBefore(double a, double b, double c)
{
    const double bend = (a - 2 * b + c) / 2; // value at x intervals after the first: a + slope x + bend x^2
    const double slope = b - a - bend;
    const double under = slope * slope - 4 * bend * a;
    if (under < 0)
        return std::nullopt;
    // The root next to the first value, in the form that does not cancel.
    return 2 * a / (slope + std::copysign(std::sqrt(under), slope));
}

} // namespace

Measured waistLanding(const Signal& signal, const Flight& flight)
{
    // Force sets in at a thousand and more m/s3 (softly landed: a hundred): the first sample that leaves the level of
    // the flight is at most one interval late. Inside it the force's curve is followed back: a straight line comes out
    // early where the force bends over, a parabola late where an impact rings into it, so their middle is taken.
    const std::size_t ground = leaving(signal, flight, 1);
    if (ground + 2 >= signal.size() || hasGap(signal, {ground - 1, ground + 2}))
        return within(signal, ground);
    const Level level = levelAt(signal, flight, 1);
    const auto axis = direction(signal, {ground, away(signal, ground, 1, 3, landingPush)});
    const auto after = [&](std::size_t i) { return axis.dot(level.beyond(signal, i)); };
    const double interval = intervalAt(signal, ground);
    const auto inside = [&](double back) { return signal.time[ground] - std::clamp(back, 0.0, interval); };
    const double a = after(ground);
    const double b = after(ground + 1);
    const double c = after(ground + 2);
    const double line = inside(b > a ? a / (b - a) * interval : interval);
    const double parabola = inside(rootBefore(a, b, c).value_or(0.5) * interval);
    return {0.5 * (line + parabola),
            std::hypot(0.5 * (line - parabola), (landingShare + landingGrowth * interval) * interval, landingFloor)};
}

Measured waistTakeoff(const Signal& signal, const Flight& flight)
{
    const std::size_t ground = leaving(signal, flight, -1);
    if (ground == 0 || ground + 2 >= signal.size())
        return within(signal, flight.first);
    const Span span{away(signal, ground, -1, fewest, rise), away(signal, ground, 1, fewest, airTime)};
    const auto axis = direction(signal, {away(signal, ground, -1, 2, push), ground});
    const auto values = along(signal, axis, span);
    const double to = signal.time[ground + 1] + tailShare * intervalAt(signal, ground + 1);
    const auto kink = fitKink(times(signal, span), values, signal.time[ground], to, {3, 1}, noise);
    if (!kink || hasGap(signal, {ground, ground + 1}))
        return within(signal, ground + 1);
    return withCurve(*kink, intervalAt(signal, ground + 1));
}

Measured shoeLanding(const Signal& signal, const Flight& flight)
{
    // The impact was noticed at 40 m/s2; it began where the length left the level of the flight.
    const std::size_t from = away(signal, flight.last, -1, 3, 0.015);
    double level = 0;
    for (std::size_t i = from; i < flight.last; ++i)
        level = std::max(level, signal.length[i]);
    const std::size_t ground = signal.length[flight.last] > level + 8 ? flight.last : flight.last + 1;
    return within(signal, ground);
}

Measured shoeTakeoff(const Signal& signal, const Flight& flight, const std::vector<double>& heelRate)
{
    const std::size_t peak = flight.first - 1;
    const Span span{away(signal, peak, -1, fewest, 0.025), away(signal, peak, 1, fewest, 0.025)};
    const auto values = std::span(heelRate).subspan(span.first, span.last - span.first + 1);
    const double interval = 1 / signal.rate;
    const auto kink = fitKink(times(signal, span), values, signal.time[peak] - 1.5 * interval,
                              signal.time[peak] + 1.5 * interval, {2, 2}, 0.02);
    constexpr double ankle = 0.0030; // s: how far the fastest turning can be from the toes' leaving; starting value
    if (!kink || hasGap(signal, span))
        return {signal.time[peak], std::hypot(interval / root12, ankle)};
    return {kink->time, std::hypot(kink->uncertainty, ankle)};
}

} // namespace fleetrung::jumps
