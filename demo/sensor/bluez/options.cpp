#include "demo/sensor/bluez/options.hpp"

#include <fstream>
#include <sstream>

#include "demo/sensor/bluez/plain_map.hpp"
#include "demo/sensor/bluez/posed_movement.hpp"
#include "engine/motion/recording_csv.hpp"

namespace fleetrung::demo
{
namespace
{

Expected<std::string> contentOf(const std::string& path)
{
    const std::ifstream file(path, std::ios::binary);
    std::ostringstream bytes;
    bytes << file.rdbuf();
    if (!file) {
        return fail(Code::NotFound, path, "cannot be read");
    }
    return bytes.str();
}

Expected<sensor::SensorMap> mapOf(const std::string& path)
{
    if (path.empty()) {
        return plainMap();
    }
    return contentOf(path).and_then([](const std::string& text) { return sensor::parseSensorMap(text); });
}

double rateOf(const Options& options, const sensor::SensorMap& map)
{
    const double told = map.streams.front().rate;
    return options.rate > 0 ? options.rate : told > 0 ? told : 100;
}

Expected<motion::Recording> recordingOf(const Options& options, const LiftPlan& lift, bool hasGyroscope)
{
    if (!options.recording.empty()) {
        return contentOf(options.recording)
            .and_then([](const std::string& text) { return motion::importRecording(text); })
            .map([](motion::ImportedRecording imported) { return std::move(imported.recording); });
    }
    return simulatedSet(lift, hasGyroscope).map([](simulator::SimulatedSet set) { return std::move(set.recording); });
}

/// Sets `rate` where the movement has its own.
Expected<std::unique_ptr<Movement>> movementOf(const Options& options, const LiftPlan& lift, bool hasGyroscope,
                                               double& rate)
{
    if (options.posed) {
        return std::make_unique<PosedMovement>(rate, lift.seed);
    }
    auto recording = recordingOf(options, lift, hasGyroscope);
    if (!recording) {
        return tl::unexpected(recording.error());
    }
    if (recording->samples.size() < 2) {
        return fail(Code::InvalidInput, options.recording, "holds fewer than two samples");
    }
    if (!options.recording.empty()) {
        rate = motion::samplingRate(*recording);
    }
    return std::make_unique<PlayedMovement>(std::move(*recording), 0.5 * restSeconds, options.pause);
}

Expected<void> addSensor(Simulation& simulation, const Options& options, bool second)
{
    auto map = mapOf(second ? options.second : options.map);
    if (!map) {
        return tl::unexpected(map.error());
    }
    SensorPlan plan;
    plan.identity = second ? Identity{"C2:00:00:00:00:02", "Shoe sensor", {}, -64}
                           : Identity{"C2:00:00:00:00:01", "Bar sensor", {}, -58};
    plan.identity.services << QString::fromStdString(map->streams.front().service);
    plan.rate = rateOf(options, *map);
    plan.clockSkew = options.skew * 1e-6;
    plan.payload = options.payload;
    plan.seed = options.lift.seed;
    plan.map = std::move(*map);
    LiftPlan lift = options.lift;
    lift.rate = plan.rate;
    lift.onShoe = second;
    lift.seed += second ? 1 : 0;
    auto movement = movementOf(options, lift, plan.map.hasGyroscope(), plan.rate);
    if (!movement) {
        return tl::unexpected(movement.error());
    }
    simulation.addSensor(std::move(plan), std::move(*movement));
    return {};
}

} // namespace

Expected<void> populate(Simulation& simulation, const Options& options)
{
    if (const auto added = addSensor(simulation, options, false); !added) {
        return added;
    }
    if (!options.second.empty()) {
        if (const auto added = addSensor(simulation, options, true); !added) {
            return added;
        }
    }
    if (options.neighbours) {
        simulation.addNeighbours();
    }
    if (options.connectedBefore) {
        simulation.sensor(0)->device().connectedFromBefore();
    }
    return {};
}

} // namespace fleetrung::demo
