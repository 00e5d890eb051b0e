#include "tests/ble/bare_central.hpp"

#include <QDeadlineTimer>
#include <QEventLoop>
#include <QTimer>

namespace fleetrung::ble
{

bool waitUntil(const std::function<bool()>& holds, int milliseconds)
{
    QEventLoop loop;
    QTimer look;
    const QDeadlineTimer deadline(milliseconds);
    QObject::connect(&look, &QTimer::timeout, &loop, [&] {
        if (deadline.hasExpired() || holds()) {
            loop.quit();
        }
    });
    look.start(5);
    if (!holds()) {
        loop.exec();
    }
    return holds();
}

BareCentral::BareCentral() = default;

BareCentral::~BareCentral()
{
    agent_.stop();
}

bool BareCentral::find(const QString& address, int milliseconds)
{
    agent_.setLowEnergyDiscoveryTimeout(0);
    agent_.start(QBluetoothDeviceDiscoveryAgent::LowEnergyMethod);
    const bool found = waitUntil(
        [&] {
            const auto devices = agent_.discoveredDevices();
            return std::any_of(devices.begin(), devices.end(),
                               [&](const auto& device) { return device.address().toString() == address; });
        },
        milliseconds);
    agent_.stop();
    waitUntil([this] { return !agent_.isActive(); });
    return found;
}

void BareCentral::searchFor(int milliseconds)
{
    agent_.setLowEnergyDiscoveryTimeout(milliseconds);
    agent_.start(QBluetoothDeviceDiscoveryAgent::LowEnergyMethod);
    waitUntil([this] { return !agent_.isActive(); }, 2 * milliseconds + 2000);
}

bool BareCentral::connectTo(const QString& address, int milliseconds)
{
    services_.clear();
    controller_.reset();
    controller_.reset(QLowEnergyController::createCentral(QBluetoothDeviceInfo(QBluetoothAddress(address), {}, 0)));
    controller_->connectToDevice();
    const auto failed = [this] { return controller_->error() != QLowEnergyController::NoError; };
    waitUntil([&] { return failed() || controller_->state() == QLowEnergyController::ConnectedState; }, milliseconds);
    if (controller_->state() != QLowEnergyController::ConnectedState) {
        return false;
    }
    controller_->discoverServices();
    waitUntil([&] { return failed() || controller_->state() == QLowEnergyController::DiscoveredState; });
    return !failed() && controller_->state() == QLowEnergyController::DiscoveredState;
}

QLowEnergyService* BareCentral::open(const QString& uuid)
{
    const QBluetoothUuid wanted{QUuid(uuid)};
    for (const auto& service : services_) {
        if (service->serviceUuid() == wanted) {
            return service.get();
        }
    }
    std::unique_ptr<QLowEnergyService> service(controller_->createServiceObject(wanted));
    if (!service) {
        return nullptr;
    }
    QObject::connect(service.get(), &QLowEnergyService::errorOccurred, service.get(), [this] { ++serviceErrors; });
    service->discoverDetails(QLowEnergyService::SkipValueDiscovery);
    waitUntil([&] { return service->state() == QLowEnergyService::RemoteServiceDiscovered; });
    return services_.emplace_back(std::move(service)).get();
}

bool BareCentral::subscribe(const QString& service, const QString& characteristic)
{
    auto* const opened = open(service);
    if (opened == nullptr) {
        return false;
    }
    const auto wanted = opened->characteristic(QBluetoothUuid{QUuid(characteristic)});
    const auto configuration = wanted.descriptor(QBluetoothUuid::DescriptorType::ClientCharacteristicConfiguration);
    if (!configuration.isValid()) {
        return false;
    }
    QObject::connect(opened, &QLowEnergyService::characteristicChanged, opened,
                     [this, uuid = wanted.uuid()](const auto& changed, const auto& bytes) {
                         if (changed.uuid() == uuid) {
                             received.push_back(bytes);
                         }
                     });
    bool written = false;
    QObject::connect(opened, &QLowEnergyService::descriptorWritten, opened, [&] { written = true; });
    const int errors = serviceErrors;
    opened->writeDescriptor(configuration, QByteArray::fromHex("0100"));
    waitUntil([&] { return written || serviceErrors > errors; });
    QObject::disconnect(opened, &QLowEnergyService::descriptorWritten, opened, nullptr);
    return written;
}

void BareCentral::write(const QString& service, const QString& characteristic, const QByteArray& bytes)
{
    auto* const opened = open(service);
    bool written = false;
    QObject::connect(opened, &QLowEnergyService::characteristicWritten, opened, [&] { written = true; });
    const int errors = serviceErrors;
    opened->writeCharacteristic(opened->characteristic(QBluetoothUuid{QUuid(characteristic)}), bytes);
    waitUntil([&] { return written || serviceErrors > errors; });
    QObject::disconnect(opened, &QLowEnergyService::characteristicWritten, opened, nullptr);
}

QByteArray BareCentral::read(const QString& service, const QString& characteristic)
{
    auto* const opened = open(service);
    if (opened == nullptr) {
        return {};
    }
    QByteArray value;
    bool answered = false;
    QObject::connect(opened, &QLowEnergyService::characteristicRead, opened, [&](const auto&, const auto& bytes) {
        value = bytes;
        answered = true;
    });
    const int errors = serviceErrors;
    opened->readCharacteristic(opened->characteristic(QBluetoothUuid{QUuid(characteristic)}));
    waitUntil([&] { return answered || serviceErrors > errors; });
    QObject::disconnect(opened, &QLowEnergyService::characteristicRead, opened, nullptr);
    return value;
}

void BareCentral::disconnectFrom()
{
    controller_->disconnectFromDevice();
    waitUntil([this] { return controller_->state() == QLowEnergyController::UnconnectedState; });
}

} // namespace fleetrung::ble
