#include <algorithm>
#include <cmath>
#include <stdexcept>

#include "demo/simulator/jump_body.hpp"
#include "demo/simulator/strokes.hpp"

namespace fleetrung::simulator
{
namespace
{

class WaistBody : public JumpBody
{
public:
    WaistBody(const SetPlan& thePlan, Scene& theScene, Random& source) : JumpBody(thePlan, theScene, source)
    {
        // In flight nothing pushes a body sideways; the trunk leans with its height, and the
        // sensor sits somewhere around the body's centre.
        scene.swayForward = 0;
        scene.strokeRange = 1.0;
        scene.tilt = plan.sway * random.normal(0, 0.2);
        scene.mount = {random.normal(0, 0.08), 0, 0.03};
    }

    void walk(int steps) override { stage.walk(steps); }
    void climb(double height) override { scene.vertical.minimumJerk(random.uniform(0.9, 1.3), height); }
    double stepOff(double box) override;
    void contact(const Landing& landing, double takeoffSpeed, double duration) override;
    void pushOff(double depth, double takeoffSpeed, bool counterMovement) override;
    double fly(const Flight& flight) override;
    void flyPart(double speed, double share) override;
    void absorb(const Landing& landing) override;

private:
    void land(const Landing& landing);
    double down = 0; ///< s, when the body last began to go down
};

double WaistBody::stepOff(double box)
{
    auto& path = scene.vertical;
    down = now();
    path.ease(0.18, 0, -plan.gravity);
    const auto falling = path.state();
    const double fall = falling.height - (scene.reference);
    const double speed = std::sqrt(falling.velocity * falling.velocity + 2 * plan.gravity * fall);
    path.ease((speed + falling.velocity) / plan.gravity, -plan.gravity, -plan.gravity);
    path.settleAt(scene.reference, -speed);
    static_cast<void>(box);
    return speed;
}

void WaistBody::land(const Landing& landing)
{
    stage.impact(random.uniform(10, 25));
    if (landing.heels) {
        strike(random.uniform(0.030, 0.055), random.uniform(0.03, 0.04), 1, random.uniform(45, 80));
    }
}

/// The foot is down: falls at `landing.speed`, leaves at `takeoffSpeed`, at the same height.
void WaistBody::contact(const Landing& landing, double takeoffSpeed, double duration)
{
    auto& path = scene.vertical;
    const double start = now();
    const double floor = path.state().height;
    land(landing);
    append(path, contactStroke(landing.speed, takeoffSpeed, duration, plan.gravity));
    path.settleAt(floor, takeoffSpeed);
    // The body's lowest point, where the concentric phase begins.
    double low = start;
    double high = now();
    for (int i = 0; i < 60; ++i) {
        const double middle = (low + high) / 2;
        (path.at(middle).velocity < 0 ? low : high) = middle;
    }
    if (landing.marked) {
        scene.repetitions.push_back({down, low, now(), false, true, false});
    }
}

void WaistBody::pushOff(double depth, double takeoffSpeed, bool counterMovement)
{
    auto& path = scene.vertical;
    const double begin = now();
    const double floor = path.state().height;
    const double push = 2.2 * depth / takeoffSpeed;
    double reversal = 0;
    if (counterMovement) {
        // As hard a reversal as a body can fall into in the time, from the hardest down.
        const double slow = 1.36 * std::sqrt(depth); // s: 0.36 at the 7 cm of a hop, 0.75 at the 30 cm of a jump
        reversal = 0.9 * takeoffSpeed / push;
        auto stroke = downwardStroke({depth, slow, 0, reversal}, plan.gravity);
        for (int i = 0; i < 20 && !stroke; ++i) {
            reversal *= 0.85;
            stroke = downwardStroke({depth, slow, 0, reversal}, plan.gravity);
        }
        if (!stroke) {
            throw std::domain_error("no body can dip so far so soon: ask for another depth");
        }
        append(path, *stroke);
    } else {
        path.minimumJerk(random.uniform(0.9, 1.4), -depth);
        rest(random.uniform(1.0, 2.0));
    }
    path.settleAt(floor - depth, 0);
    const double bottom = now();
    append(path, takeoffStroke(depth, takeoffSpeed, push, reversal, plan.gravity));
    path.settleAt(floor, takeoffSpeed);
    scene.repetitions.push_back({counterMovement ? begin : bottom, bottom, now(), !counterMovement, true, false});
}

double WaistBody::fly(const Flight& flight)
{
    auto& path = scene.vertical;
    down = now() + flight.speed / plan.gravity;
    const double floor = path.state().height;
    const double duration = flightTime(flight);
    const double landing = plan.gravity * duration - flight.speed;
    path.ease(duration, -plan.gravity, -plan.gravity);
    path.settleAt(floor + flight.rise, -landing);
    return landing;
}

void WaistBody::flyPart(double speed, double share)
{
    scene.vertical.ease(share * flightTime({speed}), -plan.gravity, -plan.gravity);
}

void WaistBody::absorb(const Landing& landing)
{
    auto& path = scene.vertical;
    const double floor = path.state().height;
    land(landing);
    append(path, catchStroke(landing.speed, random.uniform(0.30, 0.40), -plan.gravity));
    path.settleAt(path.state().height, 0);
    stage.rest(random.uniform(0.15, 0.3));
    const double standing = floor > scene.reference + 0.1 ? floor : scene.reference; // on a box, or on the floor
    path.minimumJerk(random.uniform(0.8, 1.1), standing - path.state().height);
    path.settleAt(standing, 0);
}

} // namespace

std::unique_ptr<JumpBody> waistBody(const SetPlan& plan, Scene& scene, Random& random)
{
    return std::make_unique<WaistBody>(plan, scene, random);
}

} // namespace fleetrung::simulator
