// One who jumps, as the sensor worn on the body sees it: the pieces of which jumps are made, each appended to the
// scene.
#pragma once

#include <memory>

#include "demo/simulator/random.hpp"
#include "demo/simulator/scene.hpp"
#include "demo/simulator/simulator.hpp"
#include "demo/simulator/stage.hpp"

namespace fleetrung::simulator
{

struct Landing {
    double speed;       ///< m/s, of the body, positive
    bool heels = false; ///< the heels strike after the forefoot
    bool marked = true; ///< stands in the truth
};

struct Flight {
    double speed;    ///< m/s at take-off, of the body
    double rise = 0; ///< m, second landing above the take-off
};

class JumpBody
{
public:
    JumpBody(const SetPlan& thePlan, Scene& theScene, Random& source)
        : plan(thePlan), scene(theScene), random(source), stage(theScene, source, plan.gravity)
    {
    }
    virtual ~JumpBody() = default;
    JumpBody(const JumpBody&) = delete;
    JumpBody& operator=(const JumpBody&) = delete;

    virtual void walk(int steps) = 0;
    /// On to something that rises by `height`, from rest to rest.
    virtual void climb(double height) = 0;
    /// Off the box; ends when the foot meets the ground. The body's speed then, positive [m/s].
    virtual double stepOff(double box) = 0;
    /// From landing to take-off.
    virtual void contact(const Landing& landing, double takeoffSpeed, double duration) = 0;
    /// From standing to take-off; without counter-movement after a rest in the squat.
    virtual void pushOff(double depth, double takeoffSpeed, bool counterMovement) = 0;
    /// From take-off to the foot's next meeting with the ground. Returns the body's speed then.
    virtual double fly(const Flight& flight) = 0;
    /// From take-off for a share of the flight only.
    virtual void flyPart(double speed, double share) = 0;
    /// From landing to standing.
    virtual void absorb(const Landing& landing) = 0;

    [[nodiscard]] double now() const { return stage.now(); }
    void rest(double duration) { stage.rest(duration); }
    void grip() { stage.grip(); }

protected:
    [[nodiscard]] double flightTime(const Flight& flight) const;
    /// A short sharp blow after `delay` [s].
    void strike(double delay, double duration, double cycles, double strength);

    const SetPlan& plan;
    Scene& scene;
    Random& random;
    Stage stage;
};

[[nodiscard]] std::unique_ptr<JumpBody> waistBody(const SetPlan& plan, Scene& scene, Random& random);
[[nodiscard]] std::unique_ptr<JumpBody> shoeBody(const SetPlan& plan, Scene& scene, Random& random);

} // namespace fleetrung::simulator
