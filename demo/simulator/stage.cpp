#include "demo/simulator/stage.hpp"

#include <cmath>
#include <cstdlib>
#include <numbers>

#include "demo/simulator/strokes.hpp"

namespace fleetrung::simulator
{

void Stage::rest(double duration)
{
    scene.vertical.hold(duration);
}

void Stage::grip()
{
    scene.grips.push_back({now(), 0.3, 0, 1});
}

void Stage::release()
{
    scene.grips.push_back({now(), 0.3, 1, 0});
}

void Stage::impact(double strength)
{
    const double duration = random.uniform(0.05, 0.09);
    const double cycles = random.uniform(1.5, 2.5);
    const double sideways = random.uniform(-0.5, 0.5);
    const double forward = random.uniform(-0.4, 0.4);
    const double turn = 2 * std::numbers::pi * cycles / duration;
    const Eigen::Vector3d direction{forward, sideways, 1};
    scene.rings.push_back({now(), duration, direction * strength / (turn * turn), cycles});
}

void Stage::putDown(double duration, double height)
{
    scene.vertical.minimumJerk(duration, height - scene.vertical.state().height);
    impact(random.uniform(6, 18));
    release();
}

void Stage::letFall(double height)
{
    auto& path = scene.vertical;
    release();
    path.ease(0.06, path.state().acceleration, -gravity);
    const auto top = path.state();
    const double speed = std::sqrt(top.velocity * top.velocity + 2 * gravity * (top.height - height));
    path.ease((speed + top.velocity) / gravity, -gravity, -gravity);
    path.settleAt(height, -speed);
    double landing = speed;
    while (landing > 0.25) {
        const double away = 0.3 * landing; // restitution of rubber plates: starting value
        append(path, contactStroke(landing, away, 0.03, gravity));
        path.ease(2 * away / gravity, -gravity, -gravity);
        path.settleAt(height, -away);
        landing = away;
    }
    append(path, catchStroke(landing, 0.05, -gravity));
    path.minimumJerk(0.1, height - path.state().height);
}

void Stage::loadPlates(int plates)
{
    for (int i = 0; i < plates; ++i) {
        rest(random.uniform(0.8, 1.6));
        impact(random.uniform(8, 30));
        rest(random.uniform(0.15, 0.4));
        impact(random.uniform(3, 12));
    }
    rest(random.uniform(1.0, 2.0));
}

void Stage::unrack()
{
    grip();
    impact(random.uniform(1, 4));
    scene.vertical.minimumJerk(random.uniform(0.45, 0.7), random.uniform(0.03, 0.05));
    rest(random.uniform(0.3, 0.7));
}

void Stage::walk(int steps)
{
    for (int i = 0; i < std::abs(steps); ++i) {
        const double duration = random.uniform(0.5, 0.7);
        const double length = random.uniform(0.2, 0.3) * (steps > 0 ? 1 : -1);
        const double bob = random.uniform(0.008, 0.018);
        scene.forward.hold(now() - scene.forward.end());
        scene.forward.minimumJerk(duration, length);
        scene.vertical.minimumJerk(duration / 2, -bob);
        impact(random.uniform(4, 14)); // heel strike
        scene.vertical.minimumJerk(duration / 2, bob);
    }
}

void Stage::rerack()
{
    const double down = random.uniform(0.03, 0.05);
    impact(random.uniform(3, 10)); // uprights
    rest(random.uniform(0.1, 0.3));
    putDown(random.uniform(0.3, 0.5), height() - down);
}

} // namespace fleetrung::simulator
