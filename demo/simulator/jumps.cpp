#include "demo/simulator/jumps.hpp"

#include <cmath>

#include "demo/simulator/stage.hpp"
#include "demo/simulator/strokes.hpp"

namespace fleetrung::simulator
{
namespace
{

class Jumper
{
public:
    Jumper(const SetPlan& thePlan, Scene& theScene, Random& source)
        : plan(thePlan), scene(theScene), random(source), stage(theScene, source, plan.gravity)
    {
    }

    void dropJumps(double box);
    void hops();

private:
    struct Contact {
        double duration, speed; ///< s, take-off speed in m/s
    };
    [[nodiscard]] Contact contact(int index, double usualContact, double usualHeight);
    void land(double speed, const Contact& contact, double eccentricStart);
    void fly(double speed);
    void absorb(double speed);

    const SetPlan& plan;
    Scene& scene;
    Random& random;
    Stage stage;
};

Jumper::Contact Jumper::contact(int index, double usualContact, double usualHeight)
{
    const double fatigue = plan.repetitions > 1 ? static_cast<double>(index) / (plan.repetitions - 1) : 0;
    const double longer = (1 + plan.velocityLoss * fatigue) * (1 + plan.speedScatter * random.normal());
    const double lower = (1 - plan.velocityLoss * fatigue) * (1 + plan.speedScatter * random.normal());
    const double duration = (plan.contactTime > 0 ? plan.contactTime : usualContact) * longer;
    const double height = (plan.jumpHeight > 0 ? plan.jumpHeight : usualHeight) * lower;
    return {duration, std::sqrt(2 * plan.gravity * height)};
}

/// The foot is down: falls at `speed`, leaves at `contact.speed`, at the same height.
void Jumper::land(double speed, const Contact& contact, double eccentricStart)
{
    auto& path = scene.vertical;
    const double landing = stage.now();
    stage.impact(random.uniform(10, 25));
    append(path, contactStroke(speed, contact.speed, contact.duration, plan.gravity));
    path.settleAt(0, contact.speed);
    // The body's lowest point, where the concentric phase begins.
    double low = landing;
    double high = stage.now();
    for (int i = 0; i < 60; ++i) {
        const double middle = (low + high) / 2;
        (path.at(middle).velocity < 0 ? low : high) = middle;
    }
    scene.repetitions.push_back({eccentricStart, low, stage.now(), false, true, false});
    scene.jumps.push_back({landing, stage.now(), 0});
}

void Jumper::fly(double speed)
{
    auto& path = scene.vertical;
    path.ease(2 * speed / plan.gravity, -plan.gravity, -plan.gravity);
    path.settleAt(0, -speed);
    if (!scene.jumps.empty() && scene.jumps.back().secondLanding == 0) {
        scene.jumps.back().secondLanding = stage.now();
    }
}

void Jumper::absorb(double speed)
{
    auto& path = scene.vertical;
    stage.impact(random.uniform(10, 25));
    append(path, catchStroke(speed, random.uniform(0.30, 0.40), -plan.gravity));
    path.settleAt(path.state().height, 0);
    stage.rest(random.uniform(0.15, 0.3));
    path.minimumJerk(random.uniform(0.8, 1.1), -path.state().height);
    path.settleAt(0, 0);
}

void Jumper::dropJumps(double box)
{
    auto& path = scene.vertical;
    path = Path(box);
    stage.grip();
    stage.rest(plan.stillBefore);
    for (int i = 0; i < plan.repetitions; ++i) {
        const auto next = contact(i, 0.20, 0.34);
        const double stepOff = stage.now();
        path.ease(0.18, 0, -plan.gravity);
        const auto falling = path.state();
        const double speed = std::sqrt(falling.velocity * falling.velocity + 2 * plan.gravity * falling.height);
        path.ease((speed + falling.velocity) / plan.gravity, -plan.gravity, -plan.gravity);
        path.settleAt(0, -speed);
        land(speed, next, stepOff);
        fly(next.speed);
        absorb(next.speed);
        stage.rest(plan.topPause + random.uniform(0.5, 1.0));
        if (i + 1 < plan.repetitions) {
            path.minimumJerk(random.uniform(0.9, 1.3), box); // back onto the box
            stage.rest(random.uniform(1.0, 2.0));
        }
    }
    stage.rest(plan.stillAfter);
}

void Jumper::hops()
{
    auto& path = scene.vertical;
    stage.grip();
    stage.rest(plan.stillBefore);
    double apex = stage.now();
    double speed = 0;
    for (int i = 0; i < plan.repetitions; ++i) {
        const auto next = contact(i, 0.17, 0.05);
        if (i == 0) {
            // Push-off from standing: a dip that turns round at once.
            const double begin = stage.now();
            constexpr double dip = 0.07;
            const double push = 2.2 * dip / next.speed;
            const double reversal = 0.9 * next.speed / push;
            const auto down = downwardStroke({dip, 0.36, 0, reversal}, plan.gravity);
            append(path, down ? *down : Stroke{{0, 0}});
            path.settleAt(-dip, 0);
            const double bottom = stage.now();
            append(path, takeoffStroke(dip, next.speed, push, reversal, plan.gravity));
            path.settleAt(0, next.speed);
            scene.repetitions.push_back({begin, bottom, stage.now(), false, true, false});
        } else {
            land(speed, next, apex);
        }
        apex = stage.now() + next.speed / plan.gravity;
        fly(next.speed);
        speed = next.speed;
    }
    if (plan.repetitions > 0) {
        absorb(speed);
    }
    stage.rest(plan.stillAfter);
}

} // namespace

void playJumps(const SetPlan& plan, const Gesture& gesture, Scene& scene, Random& random)
{
    Jumper jumper(plan, scene, random);
    if (gesture.kind == Kind::DropJump) {
        jumper.dropJumps(plan.range > 0 ? plan.range : gesture.range);
    } else {
        jumper.hops();
    }
}

} // namespace fleetrung::simulator
