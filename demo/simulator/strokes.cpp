#include "demo/simulator/strokes.hpp"

#include <algorithm>
#include <cmath>

#include <Eigen/Dense>

namespace fleetrung::simulator
{
namespace
{

/// A level as known part + first unknown * a + second unknown * b.
struct OpenLevel {
    double time, known, a, b;
    Ease ease = Ease::Smooth;
};

struct Change {
    double velocity, height;
};

Change changeOver(const Stroke& stroke, double startVelocity)
{
    Path path;
    path.settleAt(0, startVelocity);
    append(path, stroke);
    return {path.state().velocity - startVelocity, path.state().height};
}

/// Both unknowns from the change of velocity and height that the stroke must make: they enter linearly.
Stroke solve(const std::vector<OpenLevel>& open, double startVelocity, Change wanted)
{
    const auto filled = [&](double a, double b) {
        Stroke stroke;
        for (const auto& level : open) {
            stroke.push_back({level.time, level.known + a * level.a + b * level.b, level.ease});
        }
        return stroke;
    };
    const auto none = changeOver(filled(0, 0), startVelocity);
    const auto first = changeOver(filled(1, 0), startVelocity);
    const auto second = changeOver(filled(0, 1), startVelocity);
    Eigen::Matrix2d effect;
    effect << first.velocity - none.velocity, second.velocity - none.velocity, first.height - none.height,
        second.height - none.height;
    const Eigen::Vector2d missing{wanted.velocity - none.velocity, wanted.height - none.height};
    const Eigen::Vector2d unknown = effect.inverse() * missing;
    return filled(unknown[0], unknown[1]);
}

/// Share of a Smooth piece at which it crosses zero when it runs from `before` to -1.
double crossingShare(double before)
{
    const double target = before / (1 + before);
    double low = 0;
    double high = 1;
    for (int i = 0; i < 60; ++i) {
        const double u = (low + high) / 2;
        (u * u * u * (10 - 15 * u + 6 * u * u) < target ? low : high) = u;
    }
    return (low + high) / 2;
}

/// Moves one way only, and accelerates within limits.
bool isSound(const Stroke& stroke, double direction, double least, double greatest)
{
    Path path;
    append(path, stroke);
    const double end = path.end();
    constexpr int steps = 100;
    for (int i = 1; i < steps; ++i) {
        const auto k = path.at(end * i / steps);
        if (direction * k.velocity <= 0 || k.acceleration < least || k.acceleration > greatest) {
            return false;
        }
    }
    return true;
}

} // namespace

std::optional<Stroke> upwardStroke(const Upward& wanted, double greatestBrake)
{
    const double peak = wanted.peakTime;
    const double crossing = crossingShare(wanted.brakeBefore);
    const double after = std::min(0.55 * (wanted.duration - peak), 0.4 * peak * (1 - crossing) / crossing);
    const double before = after * crossing / (1 - crossing);
    const bool deadStop = wanted.startAcceleration == 0;
    const double firstPush = deadStop ? std::min(0.12, 0.35 * peak) : 0.25 * peak;
    const double middle = (firstPush + peak - before) / 2;
    const std::vector<OpenLevel> open{
        {0, wanted.startAcceleration, 0, 0},
        {firstPush, 0, 1, 0, deadStop ? Ease::Rise : Ease::Smooth},
        {middle, 0, wanted.middle, 0.3 * wanted.brakeBefore},
        {peak - before, 0, 0, wanted.brakeBefore},
        {peak + after, 0, 0, -1},
        {wanted.duration, 0, 0, -wanted.endBrake},
    };
    auto stroke = solve(open, 0, {0, wanted.range});
    const bool brakes = stroke[4].acceleration < 0;
    if (!brakes || !isSound(stroke, 1, -greatestBrake, 60)) {
        return std::nullopt;
    }
    return stroke;
}

std::optional<Stroke> downwardStroke(const Downward& wanted, double greatestFall)
{
    const double T = wanted.duration;
    const std::vector<OpenLevel> open{
        {0, wanted.startAcceleration, 0, 0}, {0.25 * T, 0, -1, 0}, {0.5 * T, 0, -0.2, 0.2}, {0.75 * T, 0, 0, 1},
        {T, wanted.endAcceleration, 0, 0},
    };
    auto stroke = solve(open, 0, {0, -wanted.range});
    if (!isSound(stroke, -1, -greatestFall, 80)) {
        return std::nullopt;
    }
    return stroke;
}

Stroke settlingStroke(double acceleration, double duration)
{
    // One unknown: the push that takes the speed back to zero; how far it dips follows.
    const Stroke shape{{0, acceleration}, {0.45 * duration, 0}, {0.75 * duration, 0}, {duration, 0}};
    Stroke pushed = shape;
    pushed[1].acceleration = 1;
    pushed[2].acceleration = 0.5;
    const double falls = changeOver(shape, 0).velocity;
    const double lifts = changeOver(pushed, 0).velocity - falls;
    for (std::size_t i = 1; i < 3; ++i) {
        pushed[i].acceleration *= -falls / lifts;
    }
    return pushed;
}

Stroke contactStroke(double landingSpeed, double takeoffSpeed, double duration, double gravity)
{
    const std::vector<OpenLevel> open{
        {0, -gravity, 0, 0},
        {0.3 * duration, 0, 1, 0, Ease::Rise},
        {0.7 * duration, 0, 0, 1},
        {duration, -gravity, 0, 0, Ease::Fall},
    };
    return solve(open, -landingSpeed, {landingSpeed + takeoffSpeed, 0});
}

Stroke takeoffStroke(double range, double takeoffSpeed, double duration, double startAcceleration, double gravity)
{
    const std::vector<OpenLevel> open{
        {0, startAcceleration, 0, 0},
        {0.35 * duration, 0, 1, 0},
        {0.75 * duration, 0, 0, 1},
        {duration, -gravity, 0, 0, Ease::Fall},
    };
    return solve(open, 0, {takeoffSpeed, range});
}

Stroke catchStroke(double speed, double duration, double startAcceleration)
{
    const Stroke shape{{0, startAcceleration}, {0.25 * duration, 0, Ease::Rise}, {0.6 * duration, 0}, {duration, 0}};
    Stroke pushed = shape;
    pushed[1].acceleration = 1;
    pushed[2].acceleration = 0.6;
    const double falls = changeOver(shape, -speed).velocity;
    const double lifts = changeOver(pushed, -speed).velocity - falls;
    const double push = (speed - falls) / lifts;
    pushed[1].acceleration *= push;
    pushed[2].acceleration *= push;
    return pushed;
}

Stroke reachingStroke(const Reach& wanted)
{
    const double T = wanted.duration;
    const std::vector<OpenLevel> open{
        {0, wanted.start, 0, 0}, {0.3 * T, 0, 1, 0}, {0.7 * T, 0, 0, 1}, {T, wanted.end, 0, 0}};
    return solve(open, wanted.startVelocity, {wanted.endVelocity - wanted.startVelocity, wanted.change});
}

Stroke toeFlight(double duration, double landingSpeed, double rise, double swing, double gravity)
{
    const double T = duration;
    const std::vector<OpenLevel> open{
        {0, 0, 0, 0},
        {std::min(0.020, 0.10 * T), 0, 1, 0, Ease::Rise},
        {std::min(0.055, 0.25 * T), 0, 0.5, 0},
        {std::min(0.100, 0.40 * T), swing - gravity, 0, 0},
        {0.7 * T, 0, 0, 1},
        {T, -gravity, 0, 0},
    };
    return solve(open, 0, {-landingSpeed, rise});
}

double append(Path& path, const Stroke& stroke)
{
    const double before = path.state().height;
    for (std::size_t i = 1; i < stroke.size(); ++i) {
        path.ease(stroke[i].time - stroke[i - 1].time, stroke[i - 1].acceleration, stroke[i].acceleration,
                  stroke[i].ease);
    }
    return path.state().height - before;
}

} // namespace fleetrung::simulator
