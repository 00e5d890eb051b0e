// A sensor on the instep. While the forefoot is down the foot turns about the toes: heel down after a landing, heel up
// into the take-off, where its turning is fastest. In the air the toe is first pulled after the body, then swings
// against it: the specific force is not zero. All numbers here are starting values, common practice, no source.
#include <algorithm>
#include <cmath>

#include "demo/simulator/jump_body.hpp"
#include "demo/simulator/strokes.hpp"

namespace fleetrung::simulator
{
namespace
{

class ShoeBody : public JumpBody
{
public:
    ShoeBody(const SetPlan& thePlan, Scene& theScene, Random& source) : JumpBody(thePlan, theScene, source)
    {
        scene.mount = {-0.10, 0, 0.07}; // from the toes
        scene.tilt = scene.roll = scene.yaw = scene.swayForward = 0;
        for (auto& o : scene.oscillations) {
            o.amplitude *= 0.2; // a foot on the ground trembles less than a waist
        }
    }

    void walk(int steps) override;
    void climb(double height) override;
    double stepOff(double box) override;
    void contact(const Landing& landing, double takeoffSpeed, double duration) override;
    void pushOff(double depth, double takeoffSpeed, bool counterMovement) override;
    double fly(const Flight& flight) override;
    void flyPart(double speed, double share) override;
    void absorb(const Landing& landing) override;

private:
    void swing(double duration, double lift, double rise, double length);
    void land(double speed, bool heels);
    void heelUp(double available);
    void turnTo(double duration, double angle, double rate);
    void waitPitch(double until) { scene.pitch.hold(until - scene.pitch.end()); }
    void air(double duration, double landingSpeed, double rise);

    static constexpr double standing = 0; ///< rad, foot flat
    double heelPush = 0;                  ///< rad/s2, of the heel at take-off
};

/// From the pitch path's present state; ends turning at `rate`.
void ShoeBody::turnTo(double duration, double angle, double rate)
{
    const auto& state = scene.pitch.state();
    append(scene.pitch, reachingStroke({duration, state.velocity, rate, angle - state.height, state.acceleration, 0}));
    scene.pitch.settleAt(angle, rate);
}

/// One swing of the foot to the next place, heel strike at its end.
void ShoeBody::swing(double duration, double lift, double rise, double length)
{
    waitPitch(now());
    scene.forward.hold(now() - scene.forward.end());
    scene.forward.minimumJerk(duration, length);
    turnTo(0.5 * duration, 0.5, 0);
    turnTo(0.5 * duration, standing, 0);
    scene.vertical.minimumJerk(0.5 * duration, std::max(0.0, rise) + lift);
    scene.vertical.minimumJerk(0.5 * duration, std::min(0.0, rise) - lift);
    strike(0, 0.03, 1.5, random.uniform(8, 30));
}

void ShoeBody::walk(int steps)
{
    for (int i = 0; i < std::abs(steps); ++i) {
        swing(random.uniform(0.40, 0.50), random.uniform(0.05, 0.09), 0,
              random.uniform(0.5, 0.7) * (steps > 0 ? 1 : -1));
        rest(random.uniform(0.45, 0.6));
    }
}

void ShoeBody::climb(double height)
{
    swing(random.uniform(0.6, 0.8), random.uniform(0.05, 0.09), height, 0.4);
}

double ShoeBody::stepOff(double box)
{
    auto& path = scene.vertical;
    const double lift = random.uniform(0.03, 0.06);
    const double speed = std::sqrt(2 * plan.gravity * box);
    const double footSpeed = speed * random.uniform(0.9, 1.0);
    waitPitch(now());
    scene.forward.hold(now() - scene.forward.end());
    const double start = now();
    path.minimumJerk(random.uniform(0.3, 0.4), lift);
    const double fall = path.state().height;
    // Duration that a fall from there takes at about g, with some of it spent on setting off.
    const double duration = footSpeed / plan.gravity + 0.08;
    append(path, reachingStroke({duration, 0, -footSpeed, -fall, 0, -plan.gravity}));
    path.settleAt(0, -footSpeed);
    scene.forward.minimumJerk(now() - start, 0.35);
    turnTo(now() - start, random.uniform(0.25, 0.45), -1);
    return speed;
}

/// The toe stops within a few milliseconds, and rings.
void ShoeBody::land(double speed, bool heels)
{
    auto& path = scene.vertical;
    const double floor = path.state().height;
    const double stop = random.uniform(0.008, 0.014);
    strike(0.004, random.uniform(0.018, 0.030), random.uniform(1.5, 2.5), random.uniform(20, 60));
    if (heels) {
        strike(random.uniform(0.035, 0.055), random.uniform(0.02, 0.03), 1, random.uniform(120, 250));
    }
    append(path, catchStroke(speed, stop, -plan.gravity));
    path.settleAt(path.state().height, 0);
    path.minimumJerk(random.uniform(0.03, 0.05), floor - path.state().height);
    path.settleAt(floor, 0);
}

/// The heel rises for the last tenth of a second of the contact and turns fastest as the toes leave.
void ShoeBody::heelUp(double available)
{
    const double duration = std::min(random.uniform(0.09, 0.12), available);
    const double rate = random.uniform(9, 13);
    // Levels 0, A, A/2 on smooth curves: rate = A d (0.25 + 0.375).
    heelPush = rate / (0.625 * duration);
    waitPitch(now() - duration);
    append(scene.pitch, {{0, 0}, {0.5 * duration, heelPush}, {duration, 0.5 * heelPush}});
}

void ShoeBody::contact(const Landing& landing, double takeoffSpeed, double duration)
{
    const double start = now();
    auto& path = scene.vertical;
    land(landing.speed * random.uniform(0.85, 1.0), landing.heels);
    path.hold(start + duration - now());
    const double low = landing.heels ? 0.0 : random.uniform(0.03, 0.12);
    turnTo(std::min(0.4 * duration, landing.heels ? 0.05 : 0.08), low, 0);
    heelUp(0.55 * duration);
    static_cast<void>(takeoffSpeed);
}

void ShoeBody::pushOff(double depth, double takeoffSpeed, bool counterMovement)
{
    const double push = 2.2 * depth / takeoffSpeed;
    rest((counterMovement ? 1.36 * std::sqrt(depth) : random.uniform(2.0, 3.0)) + push);
    heelUp(push);
}

void ShoeBody::air(double duration, double landingSpeed, double rise)
{
    const double floor = scene.vertical.state().height;
    append(scene.vertical, toeFlight(duration, landingSpeed, rise, random.uniform(-3, 3), plan.gravity));
    scene.vertical.settleAt(floor + rise, -landingSpeed);
    // The ankle's push ends with the ground's: the turning is braked at once.
    auto& pitch = scene.pitch;
    const double turn = random.uniform(0.003, 0.008);
    const double brake = std::min(0.07, 0.35 * duration);
    const double braking = pitch.state().velocity / (0.9 * brake);
    pitch.ease(turn, 0.5 * heelPush, -braking);
    pitch.ease(brake, -braking, -0.8 * braking);
    turnTo(duration - turn - brake, random.uniform(0.25, 0.45), -1);
}

double ShoeBody::fly(const Flight& flight)
{
    const double duration = flightTime(flight);
    const double landing = plan.gravity * duration - flight.speed;
    air(duration, landing * random.uniform(0.9, 1.05),
        std::max(0.0, flight.rise)); // bent legs: the foot meets the same floor
    return landing;
}

void ShoeBody::flyPart(double speed, double share)
{
    const double duration = flightTime({speed});
    air(duration, 0.95 * speed, 0);
    scene.endsAt = now() - (1 - share) * duration;
}

void ShoeBody::absorb(const Landing& landing)
{
    const double start = now();
    land(landing.speed * random.uniform(0.85, 1.0), landing.heels);
    turnTo(landing.heels ? 0.05 : 0.09, standing, 0);
    strike(0.06, 0.03, 1.5, random.uniform(5, 20)); // heels come down
    rest(random.uniform(1.2, 1.8));
    waitPitch(start + 1.0);
}

} // namespace

std::unique_ptr<JumpBody> shoeBody(const SetPlan& plan, Scene& scene, Random& random)
{
    return std::make_unique<ShoeBody>(plan, scene, random);
}

} // namespace fleetrung::simulator
