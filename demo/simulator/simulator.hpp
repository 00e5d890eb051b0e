// The motion and sensor simulator: one set of one lift, recorded by one sensor, with its exact truth.
//
// The bar's path is a continuous function of time (strokes.hpp, scene.hpp); the truth is read from that function, never
// from the noisy samples. World frame: x forward, y along the bar, z up. SI units. The same arguments give the same
// bytes in every build: all randomness comes from `seed`.
#pragma once

#include <array>
#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

#include <Eigen/Core>

#include "demo/simulator/sensor_plan.hpp"
#include "engine/base/error.hpp"
#include "engine/motion/sample.hpp"

namespace fleetrung::simulator
{

/// Natural: as people lift. The others are textbook strokes from rest to rest whose metrics are known in closed form.
enum class Shape { Natural, MinimumJerk, HalfSine };

/// What goes wrong in every jump of a set; EndsInFlight in the last one.
enum class Mishap {
    None,
    FlatLanding,  ///< the heels strike 30-55 ms after the forefoot
    BentLanding,  ///< the second landing on bent legs, 6-14 cm lower than the take-off
    DoubleBounce, ///< drop jumps: a small hop before the jump; jumps from standing: one after it
    EndsInFlight, ///< the recording ends in flight
    OntoBox       ///< the second landing on something 15-20 cm high
};

/// What is lifted and how. Zeros mean "what is usual for the lift" (gestures.cpp).
struct SetPlan {
    std::string lift = "half-squat"; ///< lift key, or "ankle-hop" (jumps of 3-8 cm), "counter-movement-jump",
                                     ///< "squat-jump"; jumps are worn on the waist, or on a shoe
    double range = 0;        ///< m, onset to the end of the upward stroke; step-ups and drop jumps: box height; other
                             ///< jumps: depth of the push-off
    int repetitions = 5;     ///< 0-30
    double loadShare = 0.70; ///< of the rung's one-repetition maximum; sets the speed, and sticking above 0.80
    double meanVelocity = 0; ///< m/s of the first repetition, instead of the load's
    double speed = 1;        ///< relative to what the load (or meanVelocity) says, 0.3-3
    double timeToPeakShare = 0;   ///< time to peak velocity / concentric duration of the first repetition
    double topPause = 1.0;        ///< s between repetitions, 0-5; 0 = the bar turns round at once
    double bottomPause = 0;       ///< s, 0-5; 0 = touch-and-go. Lifts from a dead stop rest at least 0.3 s
    double tempo = 1.0;           ///< eccentric duration, relative to what is usual
    double velocityLoss = 0.10;   ///< share of the first repetition's speed lost by the last; peaks come later with it
    double rangeScatter = 0.010;  ///< m, standard deviation between repetitions
    double speedScatter = 0.015;  ///< relative standard deviation between repetitions
    std::vector<int> partial;     ///< 0-based repetitions that go through 60 % of the range only
    double contactTime = 0;       ///< s, drop jumps and ankle hops
    double jumpHeight = 0;        ///< m, jumps
    Mishap mishap = Mishap::None; ///< jumps
    bool onShoe = false;          ///< jumps: on the instep instead of the waist
    bool approach = false;        ///< jumps: walks up first, and on to the next one
    Shape shape = Shape::Natural; ///< textbook strokes rest at least 0.3 s at both ends
    bool living = true;           ///< tremor (8-12 Hz, 0.02-0.05 m/s2) and breathing while a person holds the bar
    double sway = 1.0;            ///< horizontal sway and bar tilt coupled with the stroke, relative to what is usual
    double stillBefore = 2.0;     ///< s held still before the first repetition
    double stillAfter = 1.5;      ///< s held still after the last one
    bool rackWork = false;    ///< plates loaded, un-racked, walked out, settled before; walked in and re-racked after
    bool drop = false;        ///< lifts from the floor or blocks: dropped instead of lowered
    double gravity = 9.80665; ///< m/s2
};

/// The motion of one point over one repetition; the words are those of engine/reps/repetition.hpp. Instants are on the
/// recording's own clock. Where the lift is ballistic the concentric phase ends at take-off or release (a <= -g).
struct StrokeTruth {
    double eccentricStart = 0, concentricStart = 0, peakTime = 0, concentricEnd = 0; ///< s
    double meanVelocity = 0, meanPropulsiveVelocity = 0, peakVelocity = 0;           ///< m/s
    double timeToPeakVelocity = 0;                                                   ///< s
    double range = 0, displacementToPeak = 0;                                        ///< m
    double eccentricPeakVelocity = 0;                ///< m/s, negative; 0 from a dead stop
    double velocityAt100ms = 0, velocityAt200ms = 0; ///< m/s
    std::array<double, 4> meanAcceleration{};        ///< m/s2, over the first 50, 100, 150, 200 ms
    std::array<double, 4> earlyAcceleration{};       ///< m/s2, at 50, 100, 150, 200 ms
    double peakAcceleration = 0;                     ///< m/s2, concentric start to peak velocity
    double endVelocity = 0;                          ///< m/s, at the concentric end
    double peakPowerPerMass = 0;                     ///< W/kg, greatest (a + g) v
    double secondPullTime = 0;                       ///< s, to peak velocity; 0 where acceleration does not sink
    double otherPeakVelocity = 0, otherPeakTime = 0; ///< m/s, s from concentric start; 0: none stands out
    double peakReversalAcceleration = 0;             ///< m/s2; 0 from a dead stop
    double brakingSlope = 0;                         ///< m/s3; 0 from a dead stop and after a pause
    double dropStopTime = 0, stopDepth = 0;          ///< s, m: to the first zero of velocity; 0 from a dead stop
    bool twoPeaked = false; ///< two peaks at least 8 % (and 0.03 m/s) deep, the lower at least 90 % of the higher
};

struct TrueRepetition {
    StrokeTruth sensor; ///< vertical motion of the sensor: what an engine can know
    StrokeTruth bar;    ///< of the bar's centre (of the body's centre in jumps)
    bool partial = false;
};

/// A jump worn on the body; instants on the recording's own clock [s]. A shoe leaves and meets the ground at these
/// instants too.
struct TrueJump {
    double landing = 0; ///< of the contact before the jump; meaningless from standing
    double takeoff = 0;
    double secondLanding = 0; ///< 0 where the recording ends before it
    double landingSpeed = 0;  ///< m/s, of the body, positive
    double takeoffSpeed = 0;  ///< m/s, of the body
    bool fromStanding = false;
};

/// One radio packet as the phone gets it: in the order of arrival, doubled and swapped ones included, lost ones absent.
struct Packet {
    std::uint32_t counter; ///< of the packet's first sample
    double arrival;        ///< s on the phone's clock
    std::vector<motion::Sample> samples;
};

/// Vertical motion at each sample of the recording, without noise [m, m/s, m/s2].
struct TrueMotion {
    std::vector<double> height, velocity, acceleration; ///< of the sensor
};

struct SimulatedSet {
    motion::Recording recording; ///< packets put in order, lost ones missing, time stamps of a clock that never stepped
    std::vector<TrueRepetition> truth; ///< empty where the plan asks for no repetition
    std::vector<TrueJump> jumps;       ///< of jumps; the push-off that starts hops is none of them
    TrueMotion motion;
    std::vector<Packet> packets;
    std::vector<motion::Sample> received; ///< as it came off the air: in the order of arrival, doubled ones twice
};

/// Fails with InvalidArgument for a lift it does not know and for values outside the ranges above.
[[nodiscard]] Expected<SimulatedSet> simulateSet(const SetPlan& plan, const SensorPlan& sensor, std::uint64_t seed);

/// The recording in the columns of the project's recording CSV (SI units), with its comment lines; `loadKg` 0 leaves
/// the load out.
[[nodiscard]] std::string recordingCsv(const motion::Recording& recording, std::string_view lift, double loadKg);

/// The truth as CSV, one row a repetition, both points.
[[nodiscard]] std::string truthCsv(const std::vector<TrueRepetition>& truth);

/// The truth of jumps as CSV, one row a jump; empty cells where a jump has no landing before it, or none after.
[[nodiscard]] std::string jumpsCsv(const std::vector<TrueJump>& jumps);

} // namespace fleetrung::simulator
