#include "demo/simulator/path.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace fleetrung::simulator
{
namespace
{

/// An ease curve and its first and second integral from 0.
struct Curve {
    double value, once, twice;
};

Curve curve(Ease ease, double u)
{
    const double u2 = u * u;
    const double u3 = u2 * u;
    const double u4 = u2 * u2;
    switch (ease) {
    case Ease::Smooth:
        return {u3 * (10 - 15 * u + 6 * u2), u4 * (2.5 - 3 * u + u2), u4 * u * (0.5 - 0.5 * u + u2 / 7)};
    case Ease::Rise: {
        const double r = 1 - u;
        const double r2 = r * r;
        const double r4 = r2 * r2;
        return {1 - r2 * r, u - (1 - r4) / 4, u2 / 2 - u / 4 + (1 - r4 * r) / 20};
    }
    case Ease::Fall:
        return {u3, u4 / 4, u4 * u / 20};
    case Ease::MinimumJerk:
        return {60 * u - 180 * u2 + 120 * u3, 30 * u2 - 60 * u3 + 30 * u4, 10 * u3 - 15 * u4 + 6 * u4 * u};
    case Ease::HalfSine: {
        constexpr double pi = std::numbers::pi;
        return {pi * std::cos(pi * u), std::sin(pi * u), (1 - std::cos(pi * u)) / pi};
    }
    }
    return {};
}

} // namespace

Kinematics Piece::at(double time) const
{
    const double u = std::clamp((time - start) / duration, 0.0, 1.0);
    const auto c = curve(ease, u);
    if (ease == Ease::MinimumJerk || ease == Ease::HalfSine) {
        return {height + duration * duration * from * c.twice, velocity + duration * from * c.once, from * c.value};
    }
    const double change = to - from;
    return {height + duration * (velocity * u + duration * (from * u * u / 2 + change * c.twice)),
            velocity + duration * (from * u + change * c.once), from + change * c.value};
}

void Path::ease(double duration, double from, double to, Ease shape)
{
    if (duration <= 0) {
        return;
    }
    pieces.push_back({time, duration, now.height, now.velocity, from, to, shape});
    time += duration;
    now = pieces.back().at(time);
}

void Path::hold(double duration)
{
    now.velocity = 0;
    ease(duration, 0, 0);
}

void Path::minimumJerk(double duration, double rise)
{
    const double target = now.height + rise;
    ease(duration, rise / (duration * duration), 0, Ease::MinimumJerk);
    settleAt(target, 0);
}

void Path::halfSine(double duration, double peak)
{
    ease(duration, peak / duration, 0, Ease::HalfSine);
    now.velocity = 0;
}

void Path::settleAt(double height, double velocity)
{
    now.height = height;
    now.velocity = velocity;
}

Kinematics Path::at(double when) const
{
    if (pieces.empty() || when < 0) {
        return {pieces.empty() ? now.height : pieces.front().height, 0, 0};
    }
    if (when >= time) {
        return {now.height, now.velocity, 0};
    }
    const auto after = std::upper_bound(pieces.begin(), pieces.end(), when,
                                        [](double t, const Piece& piece) { return t < piece.start; });
    return std::prev(after)->at(when);
}

} // namespace fleetrung::simulator
