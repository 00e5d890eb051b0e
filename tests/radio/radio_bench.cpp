#include "tests/radio/radio_bench.hpp"

#include <algorithm>
#include <stdexcept>

#include <QCoreApplication>
#include <QDeadlineTimer>

#include "demo/sensor/bluez/plain_map.hpp"

namespace fleetrung::ble
{

using std::chrono::milliseconds;

demo::PrivateBus*& theBus()
{
    static demo::PrivateBus* bus = nullptr;
    return bus;
}

bool waitUntil(const std::function<bool()>& holds, int time)
{
    const QDeadlineTimer over(time);
    while (!holds() && !over.hasExpired())
        QCoreApplication::processEvents(QEventLoop::AllEvents | QEventLoop::WaitForMoreEvents, 20);
    return holds();
}

Timing shortTiming()
{
    return {.firstRetry = milliseconds(50),
            .longestRetry = milliseconds(800),
            .attempt = milliseconds(6000),
            .step = milliseconds(2000),
            .closing = milliseconds(1500),
            .silence = milliseconds(600),
            .scanRetry = milliseconds(100),
            .health = milliseconds(200)};
}

KnownSensor known(const QString& address)
{
    return {.address = address, .name = QStringLiteral("My sensor"), .map = demo::plainMap(), .calibration = {}};
}

Air::Air(const QStringList& options) : SensorBench(QStringLiteral(FLEETRUNG_SENSOR), *theBus(), options)
{
    if (!ready())
        throw std::runtime_error("the simulated sensor does not start: " + complaint().toStdString());
}

bool Told::streaming(const QString& address) const
{
    const auto told = state.find(address);
    return told != state.end() && told->second == sensor::LinkState::Streaming;
}

bool Told::hasTold(TroubleKind kind) const
{
    return std::ranges::any_of(troubles, [kind](const auto& told) { return told.second.kind == kind; });
}

bool Told::inTrouble(TroubleKind kind, const QString& address) const
{
    const auto told = trouble.find(address);
    return told != trouble.end() && told->second == kind;
}

Watched::Watched(const Timing& timing, std::unique_ptr<Permission> permission) : radio(std::move(permission), timing)
{
    QObject::connect(&radio, &Radio::stateChanged, [this](const QString& address, sensor::LinkState state) {
        told.states.emplace_back(address, state);
        told.state[address] = state;
    });
    QObject::connect(&radio, &Radio::trouble, [this](const QString& address, const Trouble& trouble) {
        told.troubles.emplace_back(address, trouble);
        told.trouble[address] = trouble.kind;
    });
    QObject::connect(&radio, &Radio::troubleOver, [this](const QString& address) { told.trouble.erase(address); });
    QObject::connect(&radio, &Radio::found, [this](const FoundSensor& sensor) { told.found[sensor.address] = sensor; });
    QObject::connect(&radio, &Radio::info,
                     [this](const QString& address, const SensorInfo& info) { told.info[address] = info; });
    QObject::connect(&radio, &Radio::health,
                     [this](const QString& address, const sensor::Health& health) { told.health[address] = health; });
    QObject::connect(&radio, &Radio::samples, [this](const QString& address, const auto& samples) {
        auto& all = told.samples[address];
        all.insert(all.end(), samples.begin(), samples.end());
    });
    QObject::connect(&radio, &Radio::learning,
                     [this](const QString&, const auto& notifiers) { told.notifiers = notifiers; });
    QObject::connect(&radio, &Radio::raw, [this](const QString&, const auto& packets) {
        told.raw.insert(told.raw.end(), packets.begin(), packets.end());
    });
    QObject::connect(&radio, &Radio::scanningChanged, [this](bool scanning) { told.scanning = scanning; });
}

RunningSet::RunningSet(Radio& radio, const QString& address) : source_(radio.sourceOf(address)())
{
    source_->start({.stateChanged = [this](sensor::LinkState state) { states.push_back(state); },
                    .sample =
                        [this](const motion::Sample& sample, const motion::Receipt& receipt) {
                            samples.push_back(sample);
                            receipts.push_back(receipt);
                            onSample(sample);
                        },
                    .failed = [](const Error&) {}});
}

RunningSet::~RunningSet()
{
    source_->stop();
}

bool RunningSet::inOrder() const
{
    return std::ranges::adjacent_find(samples, [](const auto& a, const auto& b) { return a.time >= b.time; }) ==
           samples.end();
}

} // namespace fleetrung::ble
