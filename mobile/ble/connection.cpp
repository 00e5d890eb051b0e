#include "mobile/ble/connection.hpp"

#include <algorithm>
#include <utility>

#include <QBluetoothAddress>
#include <QLowEnergyConnectionParameters>
#include <QLowEnergyDescriptor>

#include "mobile/ble/scanner.hpp"

namespace fleetrung::ble
{
namespace
{

using Controller = QLowEnergyController;
using Service = QLowEnergyService;
constexpr auto clientConfiguration = QBluetoothUuid::DescriptorType::ClientCharacteristicConfiguration;

QBluetoothUuid uuidOf(const std::string& text)
{
    return QBluetoothUuid(QString::fromStdString(text));
}

std::string textOf(const QBluetoothUuid& uuid)
{
    return uuid.toString(QUuid::WithoutBraces).toStdString();
}

bool canSubscribe(const QLowEnergyCharacteristic& characteristic)
{
    const auto can = characteristic.properties();
    return (can.testFlag(QLowEnergyCharacteristic::Notify) || can.testFlag(QLowEnergyCharacteristic::Indicate)) &&
           characteristic.descriptor(clientConfiguration).isValid();
}

/// Services whose notifications never are motion.
bool ofTheSystem(const QBluetoothUuid& service)
{
    using Known = QBluetoothUuid::ServiceClassUuid;
    return service == QBluetoothUuid(Known::GenericAccess) || service == QBluetoothUuid(Known::GenericAttribute) ||
           service == QBluetoothUuid(Known::BatteryService) || service == QBluetoothUuid(Known::DeviceInformation);
}

bool sameStreams(const std::vector<sensor::Notifier>& left, const std::vector<sensor::Notifier>& right)
{
    return std::ranges::equal(left, right, [](const auto& a, const auto& b) {
        return a.service == b.service && a.characteristic == b.characteristic;
    });
}

} // namespace

bool isPaired(const QString& address)
{
    const QBluetoothAddress mac(address);
    return !mac.isNull() && QBluetoothLocalDevice().pairingStatus(mac) != QBluetoothLocalDevice::Unpaired;
}

bool ConnectionPlan::sameAs(const ConnectionPlan& other) const
{
    return address == other.address && start == other.start && stop == other.stop &&
           sameStreams(streams, other.streams);
}

Connection::Connection(ConnectionPlan plan, const Timing& timing, Events events)
    : plan_(std::move(plan)), timing_(timing), events_(std::move(events)), steps_(timing.step)
{
    deadline_.setSingleShot(true);
    connect(&deadline_, &QTimer::timeout, this, [this] {
        if (phase_ == Phase::Closing)
            end(why_);
        else
            close(why_);
    });
    connect(&batteryTimer_, &QTimer::timeout, this, &Connection::readBattery);
}

Connection::~Connection()
{
    steps_.forget();
    services_.clear(); // before the controller that made them
}

void Connection::open()
{
    deadline_.start(timing_.attempt);
    controller_.reset(Controller::createCentral(deviceOf(plan_.address, plan_.name)));
    watchController();
    controller_->connectToDevice();
}

void Connection::watchController()
{
    connect(controller_.get(), &Controller::connected, this, [this] {
        if (phase_ != Phase::Connecting)
            return;
        phase_ = Phase::Discovering;
        why_ = TroubleKind::Refused;
        QLowEnergyConnectionParameters wish; // where the system lets a program wish; Linux does not
        wish.setIntervalRange(7.5, 15);
        controller_->requestConnectionUpdate(wish);
        // Not at once: where the link was up already, this signal comes from inside connectToDevice.
        QMetaObject::invokeMethod(
            this,
            [this] {
                if (phase_ == Phase::Discovering)
                    controller_->discoverServices();
            },
            Qt::QueuedConnection);
    });
    connect(controller_.get(), &Controller::discoveryFinished, this, &Connection::onServices);
    connect(controller_.get(), &Controller::errorOccurred, this, &Connection::onController);
    connect(controller_.get(), &Controller::stateChanged, this, [this](Controller::ControllerState state) {
        if (state == Controller::UnconnectedState)
            end(phase_ == Phase::Streaming ? TroubleKind::Dropped : why_);
    });
    connect(controller_.get(), &Controller::mtuChanged, this, [this](int mtu) {
        info_.mtu = mtu;
        if (phase_ == Phase::Streaming)
            events_.info(info_);
    });
}

void Connection::onController(Controller::Error error)
{
    if (phase_ == Phase::Closing || phase_ == Phase::Streaming)
        return; // the change of state says all
    switch (error) {
    case Controller::UnknownRemoteDeviceError:
        why_ = TroubleKind::NotFound;
        break;
    case Controller::InvalidBluetoothAdapterError:
        why_ = TroubleKind::NoAdapter;
        break;
    case Controller::AuthorizationError:
        why_ = TroubleKind::BondStale;
        break;
    case Controller::MissingPermissionsError:
        why_ = TroubleKind::NotAllowed;
        break;
    default: // the system does not tell more
        break;
    }
    if (controller_->state() == Controller::UnconnectedState)
        end(why_); // refused before it began: no change of state follows
    else if (phase_ != Phase::Connecting)
        close(why_);
}

void Connection::onServices()
{
    if (phase_ != Phase::Discovering)
        return;
    const auto there = controller_->services();
    if (plan_.streams.empty()) {
        std::ranges::copy_if(there, std::back_inserter(toDiscover_),
                             [](const auto& uuid) { return !ofTheSystem(uuid); });
    } else {
        const auto need = [&](const std::string& service) {
            const QBluetoothUuid uuid = uuidOf(service);
            if (std::ranges::find(toDiscover_, uuid) == toDiscover_.end())
                toDiscover_.push_back(uuid);
        };
        for (const auto& stream : plan_.streams)
            need(stream.service);
        for (const auto& write : plan_.start)
            need(write.service);
        for (const auto& write : plan_.stop)
            need(write.service);
    }
    if (std::ranges::any_of(toDiscover_, [&](const auto& uuid) { return !there.contains(uuid); }))
        return close(TroubleKind::WrongSensor);
    discoverNext();
}

void Connection::discoverNext()
{
    if (phase_ != Phase::Discovering)
        return;
    if (services_.size() < toDiscover_.size()) {
        if (!addService(toDiscover_[services_.size()], [this] { discoverNext(); }))
            close(TroubleKind::WrongSensor);
        return;
    }
    if (!findSources() || !findWrites())
        return close(TroubleKind::WrongSensor);
    phase_ = Phase::Subscribing;
    subscribeNext(0);
}

bool Connection::addService(const QBluetoothUuid& uuid, std::function<void()> discovered)
{
    auto* service = controller_->createServiceObject(uuid);
    if (!service)
        return false;
    services_.emplace_back(service);
    steps_.serve(service);
    connect(
        service, &Service::characteristicChanged, this,
        [this, service](const auto& characteristic, const auto& bytes) { onPacket(service, characteristic, bytes); });
    connect(
        service, &Service::stateChanged, this,
        [discovered = std::move(discovered)](Service::ServiceState state) {
            if (state == Service::RemoteServiceDiscovered)
                discovered();
        },
        Qt::QueuedConnection);
    // Values are not read: some sensors never answer a read of some characteristic.
    service->discoverDetails(Service::SkipValueDiscovery);
    return true;
}

Service* Connection::serviceOf(const QBluetoothUuid& uuid) const
{
    const auto found = std::ranges::find_if(services_, [&](const auto& s) { return s->serviceUuid() == uuid; });
    return found == services_.end() ? nullptr : found->get();
}

bool Connection::findSources()
{
    if (plan_.streams.empty()) {
        for (const auto& service : services_)
            for (const auto& characteristic : service->characteristics())
                if (canSubscribe(characteristic))
                    sources_.push_back({service.get(), characteristic});
        return !sources_.empty();
    }
    for (const auto& stream : plan_.streams) {
        auto* service = serviceOf(uuidOf(stream.service));
        sources_.push_back({service, service->characteristic(uuidOf(stream.characteristic))});
        if (!canSubscribe(sources_.back().characteristic))
            return false;
    }
    return true;
}

bool Connection::findWrites() const
{
    return std::ranges::all_of(plan_.start, [this](const auto& write) {
        return serviceOf(uuidOf(write.service))->characteristic(uuidOf(write.characteristic)).isValid();
    });
}

void Connection::subscribeNext(std::size_t index)
{
    if (index == sources_.size())
        return startWrites(0);
    const auto& source = sources_[index];
    steps_.subscribe(source.service, source.characteristic, true, [this, index](bool good, const QByteArray&) {
        // While teaching, one that cannot be heard is no reason to give up the others.
        if (good || plan_.streams.empty())
            subscribeNext(index + 1);
        else
            onRefused();
    });
}

void Connection::startWrites(std::size_t index)
{
    if (index == plan_.start.size()) {
        if (phase_ == Phase::Subscribing)
            onStreaming();
        return;
    }
    write(plan_.start[index], [this, index](bool good, const QByteArray&) {
        if (good)
            startWrites(index + 1);
        else
            onRefused();
    });
}

/// The link is up, and what we need is refused: perhaps the sensor demands pairing.
void Connection::onRefused()
{
    const QBluetoothAddress address(plan_.address);
    if (address.isNull()) // the system keeps addresses to itself, and pairs by itself
        return close(TroubleKind::Refused);
    if (pairing_ || isPaired(plan_.address))
        return close(TroubleKind::BondStale);
    pairing_ = std::make_unique<QBluetoothLocalDevice>();
    connect(pairing_.get(), &QBluetoothLocalDevice::pairingFinished, this, [this] {
        if (phase_ == Phase::Subscribing)
            subscribeNext(0);
    });
    connect(pairing_.get(), &QBluetoothLocalDevice::errorOccurred, this, [this] { close(TroubleKind::BondStale); });
    pairing_->requestPairing(address, QBluetoothLocalDevice::Paired);
}

void Connection::onStreaming()
{
    phase_ = Phase::Streaming;
    deadline_.stop();
    subscribed_ = sources_;
    std::vector<sensor::Notifier> notifiers;
    for (const auto& source : sources_)
        notifiers.push_back({textOf(source.service->serviceUuid()), textOf(source.characteristic.uuid())});
    if (const int mtu = controller_->mtu(); mtu > 0)
        info_.mtu = mtu;
    events_.streaming(notifiers);
    // Not from inside the answer to the last write: Qt on Linux still counts that as a job of its queue, and would wait
    // for it to end the discovery of the next service, which it then never does.
    QMetaObject::invokeMethod(
        this,
        [this] {
            if (phase_ == Phase::Streaming)
                readInformation();
        },
        Qt::QueuedConnection);
}

void Connection::onPacket(const Service* service, const QLowEnergyCharacteristic& characteristic,
                          const QByteArray& bytes)
{
    const std::int64_t arrival = Radio::now();
    if (phase_ != Phase::Subscribing && phase_ != Phase::Streaming)
        return;
    if (characteristic.uuid() == QBluetoothUuid(QBluetoothUuid::CharacteristicType::BatteryLevel))
        return tellBattery(bytes);
    for (std::size_t i = 0; i < sources_.size(); ++i)
        if (sources_[i].service == service && sources_[i].characteristic.uuid() == characteristic.uuid())
            events_.packet(
                i, {reinterpret_cast<const std::uint8_t*>(bytes.constData()), static_cast<std::size_t>(bytes.size())},
                arrival);
}

void Connection::resubscribe()
{
    if (phase_ != Phase::Streaming)
        return;
    for (const auto& source : sources_)
        steps_.subscribe(source.service, source.characteristic, false, {});
    for (const auto& source : sources_)
        steps_.subscribe(source.service, source.characteristic, true, {});
    for (const auto& bytes : plan_.start)
        write(bytes, {});
}

void Connection::write(const sensor::CharacteristicWrite& write, LinkSteps::Done done)
{
    auto* service = serviceOf(uuidOf(write.service));
    const QByteArray bytes(reinterpret_cast<const char*>(write.bytes.data()),
                           static_cast<qsizetype>(write.bytes.size()));
    steps_.write(service, service->characteristic(uuidOf(write.characteristic)), bytes, write.withResponse,
                 std::move(done));
}

void Connection::close(TroubleKind kind)
{
    if (phase_ == Phase::Closing || phase_ == Phase::Ended)
        return;
    const bool streamed = phase_ == Phase::Streaming;
    phase_ = Phase::Closing;
    why_ = kind;
    steps_.forget();
    batteryTimer_.stop();
    deadline_.start(timing_.closing);
    if (streamed)
        for (const auto& bytes : plan_.stop)
            if (serviceOf(uuidOf(bytes.service))->characteristic(uuidOf(bytes.characteristic)).isValid())
                write(bytes, {});
    if (!streamed || subscribed_.empty())
        return disconnectNow();
    for (std::size_t i = 0; i < subscribed_.size(); ++i) {
        const bool last = i + 1 == subscribed_.size();
        const auto& [service, characteristic] = subscribed_[i];
        steps_.subscribe(service, characteristic, false, [this, last](bool, const QByteArray&) {
            if (last)
                disconnectNow();
        });
    }
}

void Connection::disconnectNow()
{
    // Also while it still connects: else the system would go on and leave a link that nobody holds.
    if (controller_ && controller_->state() != Controller::UnconnectedState)
        controller_->disconnectFromDevice();
    else
        end(why_);
}

void Connection::end(TroubleKind kind)
{
    if (phase_ == Phase::Ended)
        return;
    phase_ = Phase::Ended;
    steps_.forget();
    deadline_.stop();
    batteryTimer_.stop();
    controller_->disconnect(this);
    for (const auto& service : services_)
        service->disconnect(this);
    // Queued: this may be a call of the controller, which must not be deleted inside of it.
    QMetaObject::invokeMethod(
        this, [this, kind] { events_.ended(kind); }, Qt::QueuedConnection);
}

} // namespace fleetrung::ble
