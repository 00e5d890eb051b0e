// What happens around repetitions: rests, grips, impacts, steps, rack and floor.
#pragma once

#include "demo/simulator/random.hpp"
#include "demo/simulator/scene.hpp"

namespace fleetrung::simulator
{

class Stage
{
public:
    Stage(Scene& wholeScene, Random& source, double gravityHere)
        : scene(wholeScene), random(source), gravity(gravityHere)
    {
    }

    [[nodiscard]] double now() const { return scene.vertical.end(); }
    [[nodiscard]] double height() const { return scene.vertical.state().height; }
    void rest(double duration);
    void grip();
    void release();
    /// An impact now: the bar rings for a moment; `strength` is its peak acceleration [m/s2].
    void impact(double strength);
    /// Straight down to `height` and a soft landing on a support.
    void putDown(double duration, double height);
    /// Let go: free fall to `height`, bounces, rest.
    void letFall(double height);
    void loadPlates(int plates);
    void unrack();
    void rerack();
    /// `steps` > 0 forward, < 0 back.
    void walk(int steps);

private:
    Scene& scene;
    Random& random;
    double gravity;
};

} // namespace fleetrung::simulator
