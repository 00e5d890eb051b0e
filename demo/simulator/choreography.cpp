#include "demo/simulator/choreography.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <stdexcept>

#include "demo/simulator/jumps.hpp"
#include "demo/simulator/stage.hpp"
#include "demo/simulator/strokes.hpp"

namespace fleetrung::simulator
{
namespace
{

constexpr double shortestRest = 0.3;  // s, lifts from a support
constexpr double settlingTime = 0.25; // s
constexpr double greatestBrake = 9.0; // m/s2: below g, else feet or bar would leave their place
constexpr double greatestFall = 9.3;  // m/s2

/// One repetition as it will be done.
struct Intent {
    double range, duration, peakShare, lowering;
    bool partial;
};

/// An upward stroke, and for a touch-and-go the downward one before it that ends with the same acceleration.
struct Strokes {
    Stroke down;
    Stroke up;
};

class Choreographer
{
public:
    Choreographer(const SetPlan& thePlan, const Gesture& theGesture, Scene& theScene, Random& source)
        : plan(thePlan), gesture(theGesture), scene(theScene), random(source), stage(theScene, source, plan.gravity)
    {
    }

    void play();

private:
    [[nodiscard]] Intent intent(int index);
    [[nodiscard]] bool bodyHolds() const { return gesture.kind == Kind::Stand || gesture.kind == Kind::Step; }
    [[nodiscard]] Upward upward(const Intent& wanted, double duration, double share, double start, double soft) const;
    [[nodiscard]] Strokes touchAndGo(const Intent& wanted, double fall, double startAcceleration) const;
    [[nodiscard]] Stroke fromRest(const Intent& wanted) const;
    void textbook(const Intent& wanted);
    void stand(const Intent& wanted, bool last);
    void fromSupport(const Intent& wanted);
    void toShoulders(const Intent& wanted);
    void catchAndStand();
    void settle(double acceleration);
    void mark(double eccentricStart, double concentricStart, bool fromRest, bool partial);

    const SetPlan& plan;
    const Gesture& gesture;
    Scene& scene;
    Random& random;
    Stage stage;
    double standing = 0; // m, height between repetitions
};

Intent Choreographer::intent(int index)
{
    const double usual = plan.range > 0 ? plan.range : gesture.range;
    const double deviation = std::min(plan.rangeScatter, 0.05 * usual);
    const double scatter = std::clamp(random.normal(), -2.5, 2.5) * deviation;
    const double speedScatter = 1 + plan.speedScatter * std::clamp(random.normal(), -2.5, 2.5);
    const double lowering = random.uniform(0.95, 1.05);

    const bool partial = std::find(plan.partial.begin(), plan.partial.end(), index) != plan.partial.end();
    const double fatigue = plan.repetitions > 1 ? static_cast<double>(index) / (plan.repetitions - 1) : 0;
    // At equal acceleration speed goes with the root of the range.
    const double loaded = std::max(0.8 * gesture.slowest, gesture.slowest + gesture.gain * (1 - plan.loadShare));
    const double fresh = plan.meanVelocity > 0 ? plan.meanVelocity : loaded * std::sqrt(usual / gesture.range);
    const double speed = plan.speed * fresh * (1 - plan.velocityLoss * std::pow(fatigue, 1.2)) * speedScatter;
    const double share = plan.timeToPeakShare > 0 ? plan.timeToPeakShare : gesture.peakShare;
    const double range = (usual + scatter) * (partial ? 0.6 : 1.0);
    return {range, range / (speed * (partial ? 0.8 : 1.0)), share + 0.1 * plan.velocityLoss * fatigue,
            lowering * plan.tempo * range / gesture.loweringSpeed, partial};
}

Upward Choreographer::upward(const Intent& wanted, double duration, double share, double start, double soft) const
{
    // Above 80 % of the maximum the push sags half-way: the sticking region, with a second peak after it.
    const double sticking = soft * std::max(0.0, plan.loadShare - 0.80) * 7;
    Upward stroke{wanted.range, duration, share * duration, start, 0.35, 0.4, gesture.middle - sticking};
    const bool toTheShoulders = gesture.kind == Kind::Clean || gesture.kind == Kind::Hang || gesture.key == "high-pull";
    if (toTheShoulders) {
        stroke.brakeBefore = 0.9;
        stroke.endBrake = 1.0; // the bar goes on falling
        stroke.middle = gesture.middle;
    }
    return stroke;
}

/// What was asked for, or the nearest that a body can do: first a softer reversal, then an earlier peak, then another
/// duration.
template <class Attempt> auto mildest(const Attempt& attempt)
{
    constexpr int softer = 8;
    constexpr int earlierPeaks = 5;
    constexpr int durations = 60;
    for (int k = 0; k < durations; ++k) {
        const int away = k % 2 == 1 ? (k + 1) / 2 : -(k / 2); // 0, 1, -1, 2, -2, ...
        const double slower = std::max(0.4, 1 + 0.04 * away);
        for (int j = 0; j < earlierPeaks; ++j) {
            double soft = 1;
            for (int i = 0; i < softer; ++i, soft *= 0.8) {
                if (auto strokes = attempt(soft, 0.04 * j, slower)) {
                    return *strokes;
                }
            }
        }
    }
    throw std::domain_error("no body can do this stroke: ask for another range, speed or tempo");
}

Strokes Choreographer::touchAndGo(const Intent& wanted, double fall, double startAcceleration) const
{
    return mildest([&](double soft, double earlier, double slower) -> std::optional<Strokes> {
        const double duration = wanted.duration * slower;
        const double share = wanted.peakShare - earlier;
        const double reversal = soft * 2.2 * wanted.range / (share * duration * duration);
        const auto up = upwardStroke(upward(wanted, duration, share, reversal, 1 - 6 * earlier), greatestBrake);
        if (!up) {
            return std::nullopt;
        }
        // The way down gives in before the way up does.
        for (const double stretch : {1.0, 1.12, 0.9, 1.25, 0.8, 1.4}) {
            const double lowering = wanted.lowering * slower * stretch;
            if (const auto down = downwardStroke({fall, lowering, startAcceleration, reversal}, greatestFall)) {
                return Strokes{*down, *up};
            }
        }
        return std::nullopt;
    });
}

Stroke Choreographer::fromRest(const Intent& wanted) const
{
    return mildest([&](double soft, double earlier, double slower) {
        const double duration = wanted.duration * slower;
        return upwardStroke(upward(wanted, duration, wanted.peakShare - earlier, 0, soft), greatestBrake);
    });
}

void Choreographer::mark(double eccentricStart, double concentricStart, bool startsAtRest, bool partial)
{
    scene.repetitions.push_back({eccentricStart, concentricStart, stage.now(), startsAtRest, false, partial});
}

void Choreographer::settle(double acceleration)
{
    append(scene.vertical, settlingStroke(acceleration, settlingTime));
}

void Choreographer::textbook(const Intent& wanted)
{
    auto& path = scene.vertical;
    const bool down = gesture.kind == Kind::Stand || gesture.kind == Kind::Hang;
    const double eccentricStart = stage.now();
    if (down) {
        path.minimumJerk(wanted.lowering, -wanted.range);
        stage.rest(std::max(shortestRest, plan.bottomPause));
    }
    const double start = stage.now();
    if (plan.shape == Shape::MinimumJerk) {
        path.minimumJerk(wanted.duration, wanted.range);
    } else {
        path.halfSine(wanted.duration, 0.5 * std::numbers::pi * wanted.range / wanted.duration);
    }
    mark(down ? eccentricStart : start, start, true, wanted.partial);
    stage.rest(std::max(shortestRest, plan.topPause));
    if (!down) {
        path.minimumJerk(wanted.lowering, -wanted.range);
        stage.rest(std::max(shortestRest, plan.bottomPause));
    }
}

void Choreographer::stand(const Intent& wanted, bool last)
{
    auto& path = scene.vertical;
    const double eccentricStart = stage.now();
    const double startAcceleration = path.state().acceleration;
    const double start = path.state().height;
    Strokes strokes;
    if (plan.bottomPause > 0) {
        strokes.up = fromRest(wanted);
    } else {
        strokes = touchAndGo(wanted, wanted.range, startAcceleration);
    }
    // The stroke ends a few millimetres above the standing height and settles to it.
    const double endAcceleration = strokes.up.back().acceleration;
    Path dip;
    const double overshoot = -append(dip, settlingStroke(endAcceleration, settlingTime));
    const double bottom = standing + overshoot - wanted.range;
    const double fall = start - bottom;
    if (plan.bottomPause > 0) {
        const auto down = mildest([&](double /*soft*/, double /*earlier*/, double slower) {
            return downwardStroke({fall, wanted.lowering * slower, startAcceleration, 0}, greatestFall);
        });
        append(path, down);
        path.settleAt(bottom, 0);
        stage.rest(plan.bottomPause);
    } else {
        const double reversal = strokes.up.front().acceleration;
        const auto down = mildest([&](double /*soft*/, double /*earlier*/, double slower) {
            return downwardStroke({fall, strokes.down.back().time * slower, startAcceleration, reversal}, greatestFall);
        });
        append(path, down);
        path.settleAt(bottom, 0);
    }
    const double concentricStart = stage.now();
    append(path, strokes.up);
    path.settleAt(standing + overshoot, 0);
    mark(eccentricStart, concentricStart, plan.bottomPause > 0, wanted.partial);
    if (plan.topPause > 0 || last) {
        settle(endAcceleration);
        path.settleAt(standing, 0);
        stage.rest(plan.topPause);
    }
}

void Choreographer::fromSupport(const Intent& wanted)
{
    auto& path = scene.vertical;
    const double bottom = path.state().height;
    const auto up = fromRest(wanted);
    const double start = stage.now();
    if (!bodyHolds()) {
        stage.grip();
    }
    append(path, up);
    path.settleAt(bottom + wanted.range, 0);
    mark(start, start, true, wanted.partial);
    if (gesture.key == "high-pull") { // no catch: it goes down with the bar at once
        const auto down = mildest([&](double /*soft*/, double /*earlier*/, double slower) {
            return downwardStroke({wanted.range, wanted.lowering * slower, up.back().acceleration, 0}, greatestFall);
        });
        append(path, down);
        path.settleAt(bottom, 0);
        stage.impact(random.uniform(6, 18));
        stage.release();
    } else {
        settle(up.back().acceleration);
        stage.rest(std::max(0.15, plan.topPause));
        if (bodyHolds()) {
            path.minimumJerk(wanted.lowering, bottom - path.state().height);
            if (gesture.key == "step-up") {
                stage.impact(random.uniform(2, 6)); // the foot meets the floor
            }
        } else if (plan.drop) {
            stage.letFall(bottom);
        } else {
            stage.putDown(wanted.lowering, bottom);
        }
    }
    stage.rest(std::max(shortestRest, plan.bottomPause));
}

void Choreographer::catchAndStand()
{
    auto& path = scene.vertical;
    const double acceleration = path.state().acceleration;
    const auto down = mildest([&](double /*soft*/, double /*earlier*/, double slower) {
        return downwardStroke({gesture.caught, 0.30 * slower, acceleration, 0}, greatestFall);
    });
    append(path, down);
    path.settleAt(path.state().height, 0);
    stage.rest(random.uniform(0.1, 0.25));
    path.minimumJerk(std::max(0.7, gesture.recovered / 0.4), gesture.recovered);
    stage.rest(std::max(0.3, plan.topPause));
}

void Choreographer::toShoulders(const Intent& wanted)
{
    auto& path = scene.vertical;
    const double before = path.state().height;
    const bool hang = gesture.kind == Kind::Hang;
    const double eccentricStart = stage.now();
    Stroke up;
    if (hang) {
        // The dip takes up the scatter: the bar comes to the same height each time.
        const double usual = plan.range > 0 ? plan.range : gesture.range;
        Intent dipping = wanted;
        const double dip = std::max(0.06, gesture.dip + wanted.range - usual);
        dipping.lowering = plan.tempo * dip / gesture.loweringSpeed;
        const auto strokes = touchAndGo(dipping, dip, 0);
        append(path, strokes.down);
        path.settleAt(before - dip, 0);
        up = strokes.up;
    } else {
        up = fromRest(wanted);
        stage.grip();
    }
    const double start = stage.now();
    const double bottom = path.state().height;
    append(path, up);
    path.settleAt(bottom + wanted.range, 0);
    mark(hang ? eccentricStart : start, start, !hang, wanted.partial);
    catchAndStand();
    if (hang) {
        path.minimumJerk(random.uniform(0.8, 1.1), before - path.state().height);
    } else if (plan.drop) {
        stage.letFall(before);
    } else {
        stage.putDown(random.uniform(1.1, 1.5), before);
    }
    stage.rest(std::max(hang ? 0.5 : shortestRest, plan.bottomPause));
}

void Choreographer::play()
{
    const bool fromRack = gesture.kind == Kind::Stand || gesture.kind == Kind::Step || gesture.kind == Kind::Hang;
    const bool lies = gesture.key == "bench-press";
    if (plan.rackWork) {
        stage.loadPlates(2 + random.below(3));
    }
    if (fromRack) {
        if (plan.rackWork) {
            stage.unrack();
            stage.walk(lies ? 0 : -(2 + random.below(2)));
            stage.rest(random.uniform(0.8, 1.6));
        } else {
            stage.grip();
        }
    }
    standing = scene.vertical.state().height;
    scene.reference = standing;
    stage.rest(plan.stillBefore);
    for (int i = 0; i < plan.repetitions; ++i) {
        const auto wanted = intent(i);
        if (plan.shape != Shape::Natural) {
            textbook(wanted);
        } else if (gesture.kind == Kind::Stand) {
            stand(wanted, i + 1 == plan.repetitions);
        } else if (gesture.kind == Kind::Pull || gesture.kind == Kind::Step) {
            fromSupport(wanted);
        } else {
            toShoulders(wanted);
        }
    }
    stage.rest(plan.stillAfter);
    if (plan.rackWork && fromRack) {
        stage.walk(lies ? 0 : 2);
        stage.rerack();
        stage.rest(random.uniform(1.0, 2.0));
    }
}

} // namespace

Scene choreograph(const SetPlan& plan, const Gesture& gesture, double wobble, Random& random)
{
    Scene scene;
    if (plan.living) {
        scene.oscillations = livingOscillations(random);
    }
    const double sign = random.chance(0.5) ? 1 : -1;
    scene.strokeRange = std::max(0.1, plan.range > 0 ? plan.range : gesture.range);
    scene.swayForward = plan.sway * random.uniform(0.01, 0.03) * std::min(1.0, scene.strokeRange / 0.4);
    scene.tilt = sign * (wobble + plan.sway * random.uniform(0.02, 0.06));
    scene.roll = plan.sway * random.normal(0, 0.01);
    scene.yaw = plan.sway * random.normal(0, 0.01);
    if (isJump(gesture.kind)) {
        playJumps(plan, gesture, scene, random);
    } else {
        Choreographer(plan, gesture, scene, random).play();
    }
    return scene;
}

} // namespace fleetrung::simulator
