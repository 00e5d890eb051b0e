#include "mobile/ble/scanner.hpp"

#include <utility>

#include <QBluetoothAddress>
#include <QBluetoothUuid>

namespace fleetrung::ble
{
namespace
{

using Agent = QBluetoothDeviceDiscoveryAgent;

constexpr qint64 betweenTellings = 500; // ms: a signal that flickers is not told more often

/// BlueZ gives a nameless device its address for a name.
QString ownName(const QBluetoothDeviceInfo& device)
{
    const QString dashed = device.address().toString().replace(u':', u'-');
    return device.name() == dashed ? QString() : device.name();
}

FoundSensor describe(const QBluetoothDeviceInfo& device)
{
    FoundSensor found{.address = addressOf(device), .name = ownName(device), .signal = device.rssi(), .services = {}};
    for (const auto& uuid : device.serviceUuids())
        found.services.append(uuid.toString(QUuid::WithoutBraces));
    return found;
}

TroubleKind troubleOf(Agent::Error error)
{
    switch (error) {
    case Agent::PoweredOffError:
        return TroubleKind::BluetoothOff;
    case Agent::MissingPermissionsError:
    case Agent::LocationServiceTurnedOffError:
        return TroubleKind::NotAllowed;
    default:
        return TroubleKind::NoAdapter;
    }
}

} // namespace

QString addressOf(const QBluetoothDeviceInfo& device)
{
    return device.address().isNull() ? device.deviceUuid().toString(QUuid::WithoutBraces) : device.address().toString();
}

QBluetoothDeviceInfo deviceOf(const QString& address, const QString& name)
{
    const QBluetoothAddress mac(address);
    QBluetoothDeviceInfo device =
        mac.isNull() ? QBluetoothDeviceInfo(QBluetoothUuid(address), name, 0) : QBluetoothDeviceInfo(mac, name, 0);
    device.setCoreConfigurations(QBluetoothDeviceInfo::LowEnergyCoreConfiguration);
    return device;
}

Scanner::Scanner(const Timing& timing, Events events) : timing_(timing), events_(std::move(events))
{
    retry_.setSingleShot(true);
    connect(&retry_, &QTimer::timeout, this, &Scanner::settle);
    connect(&anew_, &QTimer::timeout, this, [this] {
        agent_->stop();
        begin();
    });
}

Scanner::~Scanner()
{
    if (agent_ && agent_->isActive())
        agent_->stop();
}

void Scanner::userWants(bool scan)
{
    if (scan && !user_ && agent_ && agent_->isActive()) // what is known already is told again
        for (const auto& [address, told] : told_)
            events_.found(told.sensor);
    user_ = scan;
    settle();
}

void Scanner::linkWants(const QString& address, bool scan)
{
    if (scan)
        links_.insert(address);
    else
        links_.erase(address);
    settle();
}

void Scanner::settle()
{
    const bool wanted = user_ || !links_.empty();
    if (wanted && !(agent_ && agent_->isActive()) && !retry_.isActive())
        begin();
    if (!wanted) {
        retry_.stop();
        anew_.stop();
        if (agent_ && agent_->isActive())
            agent_->stop();
        told_.clear();
    }
    setUserScan(user_ && agent_ && agent_->isActive());
}

void Scanner::begin()
{
    if (!agent_)
        makeAgent();
    starting_ = true;
    agent_->start(Agent::LowEnergyMethod);
    starting_ = false;
    if (!agent_->isActive())
        return;
    anew_.start(timing_.scanAnew);
    setTrouble(std::nullopt);
}

void Scanner::makeAgent()
{
    agent_ = std::make_unique<Agent>();
    agent_->setLowEnergyDiscoveryTimeout(0); // until stopped
    // Queued: what follows from a sighting may stop the agent, which must not happen inside its own signal.
    connect(agent_.get(), &Agent::deviceDiscovered, this, &Scanner::onDevice, Qt::QueuedConnection);
    connect(
        agent_.get(), &Agent::deviceUpdated, this, [this](const auto& device) { onDevice(device); },
        Qt::QueuedConnection);
    connect(agent_.get(), &Agent::errorOccurred, this, &Scanner::onError);
    connect(agent_.get(), &Agent::finished, this, [this] { retry_.start(timing_.scanRetry); });
}

void Scanner::onDevice(const QBluetoothDeviceInfo& device)
{
    if (!agent_->isActive())
        return;
    const FoundSensor found = describe(device);
    if (user_) {
        const auto known = told_.find(found.address);
        const bool same = known != told_.end() && known->second.sensor.name == found.name &&
                          known->second.sensor.services == found.services;
        const bool quiet =
            same && (known->second.sensor.signal == found.signal || !known->second.since.hasExpired(betweenTellings));
        if (!quiet) {
            auto& told = told_[found.address];
            told.sensor = found;
            told.since.start();
            events_.found(found);
        }
    } else {
        told_[found.address].sensor = found;
    }
    if (found.signal != 0) // without a signal the system only remembers the device
        events_.sighted(found.address);
}

void Scanner::onError(Agent::Error error)
{
    anew_.stop();
    // A running scan that is broken off tells nothing yet: starting it again shows what the matter is.
    if (starting_)
        setTrouble(troubleOf(error));
    retry_.start(timing_.scanRetry);
    setUserScan(false);
}

void Scanner::setTrouble(std::optional<TroubleKind> trouble)
{
    if (trouble == trouble_)
        return;
    trouble_ = trouble;
    if (trouble)
        events_.trouble(*trouble);
    else
        events_.troubleOver();
}

void Scanner::setUserScan(bool running)
{
    if (running == userScan_)
        return;
    userScan_ = running;
    events_.userScan(running);
}

} // namespace fleetrung::ble
