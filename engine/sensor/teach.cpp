#include "engine/sensor/teach.hpp"

#include <algorithm>
#include <cmath>

#include "engine/base/numbers.hpp"
#include "engine/sensor/packet_decoder.hpp"
#include "engine/sensor/teach_checks.hpp"
#include "engine/sensor/teach_map.hpp"
#include "engine/sensor/teach_sureness.hpp"

namespace fleetrung::sensor
{
namespace
{

using namespace teaching;

constexpr double sureEnough = 0.8;
constexpr Used allFaces{true, true, true, true, true, true};

struct Found {
    std::optional<Accelerometer> accelerometer;
    std::optional<Taught> answer;
};

/// All six faces; else five, and what was wrong with the sixth.
Found accelerometerOf(const std::vector<Table>& tables, const Steps& steps)
{
    if (auto found = findAccelerometer(tables, steps, allFaces)) {
        return {found, {}};
    }
    std::optional<Accelerometer> best;
    for (std::size_t face = 0; face < faces; ++face) {
        auto used = allFaces;
        used.at(face) = false;
        auto found = findAccelerometer(tables, steps, used);
        if (found && (!best || found->residual + found->resolution < best->residual + best->resolution)) {
            best = found;
            best->leftOut = face;
        }
    }
    if (!best) {
        return {{}, blameAnyFace(tables, steps)};
    }
    return {{}, blameFace(gravityOf(tables[best->table], *best), steps, *best->leftOut)};
}

teaching::Stream streamOf(const Table& table, const std::vector<Triad>& triads)
{
    teaching::Stream stream;
    stream.running = findRunning(table, triads);
    const int samples = triads.front().samples;
    if (stream.running.counter) {
        stream.rate = samples / (stream.running.counter->step * stream.running.counter->tick);
    } else if (stream.running.stamp) {
        stream.rate = samples / (stream.running.stamp->step * plausibleTick(stream.running.stamp->tick));
    } else {
        stream.rate = samples * packetRateOf(table).rate;
    }
    const bool counted = stream.running.counter || stream.running.stamp;
    stream.rate = plausibleRate(stream.rate, counted ? 0.001 : 0.006);
    return stream;
}

Findings findingsOf(const std::vector<Table>& tables, const Accelerometer& accelerometer,
                    const std::optional<Gyroscope>& gyroscope)
{
    Findings findings{accelerometer, gyroscope, {}, {}};
    std::vector<Triad> triads{accelerometer.triad};
    if (gyroscope && gyroscope->table == accelerometer.table) {
        triads.push_back(gyroscope->triad);
    } else if (gyroscope) {
        findings.gyroscopeStream = streamOf(tables[gyroscope->table], {gyroscope->triad});
    }
    findings.accelerometerStream = streamOf(tables[accelerometer.table], triads);
    return findings;
}

/// The map must read back what it was made from.
double shareDecoded(const SensorMap& map, const TeachRecording& recording, const std::vector<Table>& tables,
                    const Findings& findings)
{
    PacketDecoder decoder(map);
    double least = 1;
    for (std::size_t stream = 0; stream < map.streams.size(); ++stream) {
        const auto index = stream == 0 ? findings.accelerometer.table : findings.gyroscope->table;
        const auto& triad = stream == 0 ? findings.accelerometer.triad : findings.gyroscope->triad;
        for (const auto& packet : recording.packets) {
            if (packet.source == tables[index].notifier) {
                (void)decoder.decode(stream, packet.bytes, packet.arrival);
            }
        }
        const auto expected = static_cast<double>(tables[index].size()) * triad.samples;
        least = std::min(least, static_cast<double>(decoder.counts(stream).samples) / expected);
    }
    return least;
}

} // namespace

double secondsOf(TeachStep step)
{
    switch (step) {
    case TeachStep::TurnOne:
    case TeachStep::TurnTwo:
    case TeachStep::TurnThree:
        return 6;
    case TeachStep::RaiseOne:
    case TeachStep::RaiseTwo:
        return 4;
    default:
        return 3;
    }
}

Taught teach(const TeachRecording& recording, const std::function<bool(double)>& progress)
{
    const auto stopped = [&](double done) { return progress && !progress(done); };
    const auto checked = teaching::stepsOf(recording);
    if (recording.packets.empty() || !(recording.gravity > 0) || !(recording.raiseHeight > 0)) {
        return notTeachable("The sensor sent nothing.");
    }
    if (checked.answer) {
        return *checked.answer;
    }
    const auto& steps = checked.steps;
    if (stopped(0)) {
        return notTeachable("stopped");
    }
    auto tables = tablesOf(recording);
    std::for_each(tables.begin(), tables.end(), retime);
    if (tables.empty()) {
        return notTeachable("The sensor sent too little, or nothing twice of one shape.");
    }
    if (const auto answer = emptyStep(tables, steps)) {
        return *answer;
    }
    if (stopped(0.1)) {
        return notTeachable("stopped");
    }
    const auto found = accelerometerOf(tables, steps);
    if (found.answer) {
        return *found.answer;
    }
    const auto& accelerometer = *found.accelerometer;
    const auto gravity = gravityOf(tables[accelerometer.table], accelerometer);
    if (const auto answer = restlessFace(gravity, steps)) {
        return *answer;
    }
    if (stopped(0.4)) {
        return notTeachable("stopped");
    }
    const auto search = findGyroscope(tables, steps, accelerometer, gravity);
    if (const auto answer = search.found ? wrongTurn(*search.found, gravity, steps) : std::nullopt) {
        return *answer;
    }
    const auto raises = raisesOf(gravity, steps, recording.gravity, recording.raiseHeight);
    if (const auto answer = wrongRaise(raises, recording.raiseHeight)) {
        return *answer;
    }
    if (stopped(0.7)) {
        return notTeachable("stopped");
    }
    const auto findings = findingsOf(tables, accelerometer, search.found);
    auto map = mapOf(recording, tables, findings);
    if (const auto unsound = checkSensorMap(map)) {
        return notTeachable("What was found makes no sound map: " + unsound->message + ".");
    }
    const double decoded = shareDecoded(map, recording, tables, findings);
    auto taught = judge(tables, findings, search.somethingTurns, raises, decoded);
    if (taught.sure >= sureEnough) {
        taught.map = std::move(map);
    }
    if (stopped(1)) {
        return notTeachable("stopped");
    }
    return taught;
}

} // namespace fleetrung::sensor
