#include "mobile/ble/link_steps.hpp"

#include <utility>

#include <QBluetoothUuid>
#include <QLowEnergyDescriptor>

namespace fleetrung::ble
{
namespace
{

using Service = QLowEnergyService;
constexpr auto clientConfiguration = QBluetoothUuid::DescriptorType::ClientCharacteristicConfiguration;

} // namespace

LinkSteps::LinkSteps(std::chrono::milliseconds patience) : patience_(patience)
{
    late_.setSingleShot(true);
    connect(&late_, &QTimer::timeout, this, [this] { finish(false, {}); });
}

void LinkSteps::serve(Service* service)
{
    connect(service, &Service::characteristicRead, this,
            [this, service](const auto& characteristic, const auto& value) {
                answered(service, Service::CharacteristicReadError, characteristic, value);
            });
    connect(service, &Service::characteristicWritten, this, [this, service](const auto& characteristic, const auto&) {
        answered(service, Service::CharacteristicWriteError, characteristic, {});
    });
    connect(service, &Service::descriptorWritten, this, [this, service](const QLowEnergyDescriptor&, const auto&) {
        if (busy_)
            answered(service, Service::DescriptorWriteError, steps_.front().characteristic, {});
    });
    connect(service, &Service::errorOccurred, this, [this, service](Service::ServiceError error) {
        const bool ours = busy_ && steps_.front().service == service;
        if (ours && (error == steps_.front().failure || error == Service::OperationError))
            finish(false, {});
    });
}

void LinkSteps::read(Service* service, const QLowEnergyCharacteristic& characteristic, Done done)
{
    add({.service = service,
         .characteristic = characteristic,
         .failure = Service::CharacteristicReadError,
         .begin =
             [service, characteristic] {
                 service->readCharacteristic(characteristic);
                 return false;
             },
         .done = std::move(done)});
}

void LinkSteps::write(Service* service, const QLowEnergyCharacteristic& characteristic, const QByteArray& bytes,
                      bool withResponse, Done done)
{
    const auto can = characteristic.properties();
    const bool answers = (withResponse && can.testFlag(QLowEnergyCharacteristic::Write)) ||
                         !can.testFlag(QLowEnergyCharacteristic::WriteNoResponse);
    add({.service = service,
         .characteristic = characteristic,
         .failure = Service::CharacteristicWriteError,
         .begin =
             [service, characteristic, bytes, answers] {
                 service->writeCharacteristic(characteristic, bytes,
                                              answers ? Service::WriteWithResponse : Service::WriteWithoutResponse);
                 return !answers;
             },
         .done = std::move(done)});
}

void LinkSteps::subscribe(Service* service, const QLowEnergyCharacteristic& characteristic, bool on, Done done)
{
    const bool notifies = characteristic.properties().testFlag(QLowEnergyCharacteristic::Notify);
    const QByteArray value = QByteArray::fromHex(!on ? "0000" : notifies ? "0100" : "0200"); // little endian
    add({.service = service,
         .characteristic = characteristic,
         .failure = Service::DescriptorWriteError,
         .begin =
             [service, characteristic, value] {
                 service->writeDescriptor(characteristic.descriptor(clientConfiguration), value);
                 return false;
             },
         .done = std::move(done)});
}

void LinkSteps::forget()
{
    late_.stop();
    steps_.clear();
    busy_ = false;
}

void LinkSteps::add(Step step)
{
    steps_.push_back(std::move(step));
    // Not at once: the step before may still be inside its own answer.
    QMetaObject::invokeMethod(
        this, [this] { next(); }, Qt::QueuedConnection);
}

void LinkSteps::next()
{
    if (busy_ || steps_.empty())
        return;
    busy_ = true;
    late_.start(patience_);
    const auto begin = steps_.front().begin; // a copy: the step may end inside of it
    if (begin())
        finish(true, {});
}

void LinkSteps::answered(const Service* service, Service::ServiceError kind,
                         const QLowEnergyCharacteristic& characteristic, const QByteArray& value)
{
    if (!busy_)
        return;
    const Step& step = steps_.front();
    if (step.service == service && step.failure == kind && step.characteristic.uuid() == characteristic.uuid())
        finish(true, value);
}

void LinkSteps::finish(bool good, const QByteArray& value)
{
    if (!busy_)
        return;
    late_.stop();
    const Done done = std::move(steps_.front().done);
    steps_.pop_front();
    busy_ = false;
    if (done)
        done(good, value);
    QMetaObject::invokeMethod(
        this, [this] { next(); }, Qt::QueuedConnection);
}

} // namespace fleetrung::ble
