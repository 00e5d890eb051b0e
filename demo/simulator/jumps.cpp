#include "demo/simulator/jumps.hpp"

#include <cmath>

#include "demo/simulator/jump_body.hpp"

namespace fleetrung::simulator
{
namespace
{

class Jumper
{
public:
    Jumper(const SetPlan& thePlan, Scene& theScene, Random& source)
        : plan(thePlan), scene(theScene), random(source),
          body(plan.onShoe ? shoeBody(plan, scene, random) : waistBody(plan, scene, random))
    {
    }

    void dropJumps(double box);
    void fromStanding(double depth, bool counterMovement);
    void hops();

private:
    struct Contact {
        double duration, speed; ///< s, take-off speed in m/s
    };
    [[nodiscard]] Contact contact(int index, double usualContact, double usualHeight);
    [[nodiscard]] bool flat() const { return plan.mishap == Mishap::FlatLanding; }
    void begin();
    void touch(double landingSpeed, const Contact& contact);
    double bounce(double landingSpeed);
    bool flyAndLand(double speed, bool last);

    const SetPlan& plan;
    Scene& scene;
    Random& random;
    std::unique_ptr<JumpBody> body;
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

void Jumper::begin()
{
    body->grip();
    if (plan.approach) {
        body->rest(0.8);
        body->walk(4);
    }
    body->rest(plan.stillBefore);
}

void Jumper::touch(double landingSpeed, const Contact& next)
{
    const double landing = body->now();
    body->contact({landingSpeed, flat()}, next.speed, next.duration);
    scene.jumps.push_back({landing, body->now(), 0, landingSpeed, next.speed, false});
}

/// A hop of about a tenth of a second that nobody wanted.
double Jumper::bounce(double landingSpeed)
{
    const double hop = random.uniform(0.45, 0.6);
    body->contact({landingSpeed, flat(), false}, hop, random.uniform(0.13, 0.2));
    return body->fly({hop});
}

/// False where the recording ends on the way.
bool Jumper::flyAndLand(double speed, bool last)
{
    if (plan.mishap == Mishap::EndsInFlight && last) {
        body->flyPart(speed, random.uniform(0.5, 0.8));
        return false;
    }
    double rise = 0;
    if (plan.mishap == Mishap::OntoBox) {
        rise = random.uniform(0.15, 0.20);
    } else if (plan.mishap == Mishap::BentLanding) {
        rise = -random.uniform(0.06, 0.14);
    }
    double landing = body->fly({speed, rise});
    scene.jumps.back().secondLanding = body->now();
    if (plan.mishap == Mishap::DoubleBounce && scene.jumps.back().fromStanding) {
        landing = bounce(landing);
    }
    body->absorb({landing, flat()});
    if (rise > 0) {
        body->rest(random.uniform(0.8, 1.2));
        body->climb(-rise);
    }
    return true;
}

void Jumper::dropJumps(double box)
{
    begin();
    for (int i = 0; i < plan.repetitions; ++i) {
        const bool last = i + 1 == plan.repetitions;
        if (i > 0 || plan.approach) {
            body->climb(box);
            body->rest(random.uniform(1.0, 2.0));
        }
        const auto next = contact(i, 0.20, 0.34);
        double landing = body->stepOff(box);
        const double first = body->now();
        const double speed = landing;
        if (plan.mishap == Mishap::DoubleBounce) {
            landing = bounce(landing);
        }
        touch(landing, next);
        scene.jumps.back().landing = first;
        scene.jumps.back().landingSpeed = speed;
        if (!flyAndLand(next.speed, last)) {
            return;
        }
        body->rest(plan.topPause + random.uniform(0.5, 1.0));
    }
    body->rest(plan.stillAfter);
}

void Jumper::fromStanding(double depth, bool counterMovement)
{
    begin();
    for (int i = 0; i < plan.repetitions; ++i) {
        const auto next = contact(i, 0, 0.34);
        body->pushOff(depth, next.speed, counterMovement);
        scene.jumps.push_back({0, body->now(), 0, 0, next.speed, true});
        if (!flyAndLand(next.speed, i + 1 == plan.repetitions)) {
            return;
        }
        body->rest(plan.topPause + random.uniform(0.5, 1.0));
        if (plan.approach) {
            body->walk(random.chance(0.5) ? 2 : -2);
            body->rest(random.uniform(1.0, 2.0));
        }
    }
    body->rest(plan.stillAfter);
}

void Jumper::hops()
{
    begin();
    double speed = 0;
    for (int i = 0; i < plan.repetitions; ++i) {
        const auto next = contact(i, 0.17, 0.05);
        if (i == 0) {
            body->pushOff(0.07, next.speed, true); // a dip that turns round at once
        } else {
            touch(speed, next);
        }
        speed = body->fly({next.speed});
        if (i > 0) {
            scene.jumps.back().secondLanding = body->now();
        }
    }
    if (plan.repetitions > 0) {
        body->absorb({speed, flat()});
    }
    body->rest(plan.stillAfter);
}

} // namespace

void playJumps(const SetPlan& plan, const Gesture& gesture, Scene& scene, Random& random)
{
    const double range = plan.range > 0 ? plan.range : gesture.range;
    if (gesture.kind == Kind::DropJump && !plan.approach) {
        scene.vertical = Path(range); // begins on the box
    }
    Jumper jumper(plan, scene, random);
    switch (gesture.kind) {
    case Kind::DropJump:
        return jumper.dropJumps(range);
    case Kind::CounterMovementJump:
    case Kind::SquatJump:
        return jumper.fromStanding(range, gesture.kind == Kind::CounterMovementJump);
    default:
        return jumper.hops();
    }
}

} // namespace fleetrung::simulator
