#include "demo/simulator/simulator.hpp"

#include <algorithm>
#include <array>
#include <stdexcept>

#include "demo/simulator/choreography.hpp"
#include "demo/simulator/sensor.hpp"
#include "demo/simulator/truth.hpp"
#include "engine/base/numbers.hpp"

namespace fleetrung::simulator
{
namespace
{

struct Limit {
    const char* name;
    double value, least, greatest;
};

Expected<void> check(const SetPlan& plan, const SensorPlan& sensor)
{
    const std::vector<Limit> limits{
        {"range", plan.range, 0, 4},
        {"repetitions", static_cast<double>(plan.repetitions), 0, 30},
        {"loadShare", plan.loadShare, 0, 1.05},
        {"meanVelocity", plan.meanVelocity, 0, 5},
        {"speed", plan.speed, 0.3, 3},
        {"timeToPeakShare", plan.timeToPeakShare, 0, 0.9},
        {"topPause", plan.topPause, 0, 5},
        {"bottomPause", plan.bottomPause, 0, 5},
        {"tempo", plan.tempo, 0.3, 5},
        {"velocityLoss", plan.velocityLoss, 0, 0.6},
        {"gravity", plan.gravity, 9.5, 10.1},
        {"stillBefore", plan.stillBefore, 0, 600},
        {"rate", sensor.rate, 25, 2000},
        {"clockSkew", sensor.clockSkew, -0.01, 0.01},
        {"wobble", sensor.wobble, -1, 1},
        {"samplesPerPacket", static_cast<double>(sensor.samplesPerPacket), 1, 1000},
        {"timingJitter", sensor.timingJitter, 0, 0.3 / sensor.rate},
        {"burstLoss", sensor.faults.burstLoss, 0, 60},
        {"burstRepetition", static_cast<double>(sensor.faults.burstRepetition.value_or(0)), 0, 29},
        {"clockStep", sensor.faults.clockStep, -1e4, 1e4},
        {"stuckAxis", static_cast<double>(sensor.faults.stuckAxis.value_or(0)), 0, 5},
    };
    for (const auto& limit : limits) {
        if (!(limit.value >= limit.least && limit.value <= limit.greatest)) {
            return fail(Code::InvalidArgument, limit.name,
                        "give a value from " + shortestText(limit.least) + " to " + shortestText(limit.greatest));
        }
    }
    if (sensor.accelerometerRange != 0 && !(sensor.accelerometerRange >= 2 && sensor.accelerometerRange <= 32)) {
        return fail(Code::InvalidArgument, "accelerometerRange", "give 2 to 32 g, or 0 for the part's own");
    }
    return {};
}

/// From the scene's time to the recording's own clock.
StrokeTruth onClock(StrokeTruth truth, const SensorPlan& plan)
{
    const double pace = 1 + plan.clockSkew;
    for (double* instant : {&truth.eccentricStart, &truth.concentricStart, &truth.peakTime, &truth.concentricEnd}) {
        *instant = plan.startTime + *instant * pace;
    }
    for (double* time : {&truth.timeToPeakVelocity, &truth.secondPullTime, &truth.otherPeakTime, &truth.dropStopTime}) {
        *time *= pace;
    }
    return truth;
}

/// Where the burst of loss begins on the recording's own clock.
double burstStart(const Scene& scene, const SensorPlan& plan)
{
    const auto& faults = plan.faults;
    if (!faults.burstRepetition || static_cast<std::size_t>(*faults.burstRepetition) >= scene.repetitions.size()) {
        return faults.burstAt;
    }
    const auto& mark = scene.repetitions[static_cast<std::size_t>(*faults.burstRepetition)];
    const double middle = 0.5 * (mark.concentricStart + mark.concentricEnd);
    return plan.startTime + middle * (1 + plan.clockSkew) - 0.5 * faults.burstLoss;
}

std::vector<motion::Sample> samplesOf(const std::vector<Packet>& packets)
{
    std::vector<motion::Sample> samples;
    for (const auto& packet : packets) {
        samples.insert(samples.end(), packet.samples.begin(), packet.samples.end());
    }
    return samples;
}

} // namespace

Expected<SimulatedSet> simulateSet(const SetPlan& plan, const SensorPlan& sensor, std::uint64_t seed)
{
    const auto* gesture = findGesture(plan.lift);
    if (gesture == nullptr) {
        return fail(Code::InvalidArgument, plan.lift, "the simulator knows no lift of this name");
    }
    const auto* part = findPart(sensor.part);
    if (part == nullptr) {
        return fail(Code::InvalidArgument, std::string(sensor.part), "the simulator knows no sensor part of this name");
    }
    if (const auto checked = check(plan, sensor); !checked) {
        return tl::unexpected(checked.error());
    }

    Random random(seed);
    Random choices(random.seed()); // the movement does not depend on what the sensor draws
    Random noise(random.seed());
    Random radio(random.seed());
    Scene scene;
    try {
        scene = choreograph(plan, *gesture, sensor.wobble, choices);
    } catch (const std::domain_error& error) {
        return fail(Code::InvalidArgument, plan.lift, error.what());
    }
    SensorPlan worn = sensor;
    worn.lever += scene.mount;
    auto readings = readScene(scene, worn, *part, plan.gravity, noise);

    SimulatedSet set;
    set.packets = transmit(readings, sensor, burstStart(scene, sensor), radio);
    set.received = samplesOf(set.packets);
    set.recording = std::move(readings.recording);
    set.motion = std::move(readings.motion);
    for (const auto& mark : scene.repetitions) {
        const auto of = [&](const Eigen::Vector3d& lever) {
            const Motion motion = [&scene, lever](double time) { return scene.pointAt(time, lever); };
            return onClock(measureStroke(motion, mark, plan.gravity, isBallistic(*gesture)), sensor);
        };
        set.truth.push_back({of(worn.lever), of(Eigen::Vector3d::Zero()), mark.partial});
    }
    const double pace = 1 + sensor.clockSkew;
    for (const auto& jump : scene.jumps) {
        auto instants = std::array{jump.landing, jump.takeoff, jump.secondLanding};
        for (double& instant : instants) {
            instant = instant > 0 ? sensor.startTime + instant * pace : 0;
        }
        set.jumps.push_back(
            {instants[0], instants[1], instants[2], jump.landingSpeed, jump.takeoffSpeed, jump.fromStanding});
    }
    return set;
}

} // namespace fleetrung::simulator
