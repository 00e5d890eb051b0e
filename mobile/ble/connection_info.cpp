// What a streaming sensor says of itself: battery (service 0x180F, level 0x2A19: uint8, percent) and device
// information (0x180A, strings 0x2A24 .. 0x2A29). Assigned numbers of the Bluetooth SIG. All of it may be missing,
// refused or never answered.
#include "mobile/ble/connection.hpp"

#include <QLowEnergyDescriptor>

namespace fleetrung::ble
{
namespace
{

using Characteristic = QBluetoothUuid::CharacteristicType;
const QBluetoothUuid batteryService(QBluetoothUuid::ServiceClassUuid::BatteryService);
const QBluetoothUuid informationService(QBluetoothUuid::ServiceClassUuid::DeviceInformation);

} // namespace

void Connection::readInformation()
{
    const auto there = controller_->services();
    if (there.contains(batteryService) && !serviceOf(batteryService))
        addService(batteryService, [this] {
            if (phase_ != Phase::Streaming)
                return;
            auto* service = serviceOf(batteryService);
            const auto level = service->characteristic(Characteristic::BatteryLevel);
            readBattery();
            if (level.properties().testFlag(QLowEnergyCharacteristic::Notify) &&
                level.descriptor(QBluetoothUuid::DescriptorType::ClientCharacteristicConfiguration).isValid())
                steps_.subscribe(service, level, true, [this, service, level](bool good, const QByteArray&) {
                    if (good)
                        subscribed_.push_back({service, level});
                });
            else
                batteryTimer_.start(timing_.battery);
        });
    if (there.contains(informationService) && !serviceOf(informationService))
        addService(informationService, [this] {
            readText(Characteristic::ManufacturerNameString, &SensorInfo::manufacturer);
            readText(Characteristic::ModelNumberString, &SensorInfo::model);
            readText(Characteristic::FirmwareRevisionString, &SensorInfo::firmware);
            readText(Characteristic::HardwareRevisionString, &SensorInfo::hardware);
            readText(Characteristic::SerialNumberString, &SensorInfo::serial);
        });
    events_.info(info_);
}

void Connection::readBattery()
{
    auto* service = serviceOf(batteryService);
    const auto level = service->characteristic(Characteristic::BatteryLevel);
    if (phase_ == Phase::Streaming && level.properties().testFlag(QLowEnergyCharacteristic::Read))
        steps_.read(service, level, [this](bool good, const QByteArray& value) {
            if (good)
                tellBattery(value);
        });
}

void Connection::readText(const QBluetoothUuid& characteristic, QString SensorInfo::*where)
{
    auto* service = serviceOf(informationService);
    const auto text = service->characteristic(characteristic);
    if (phase_ == Phase::Streaming && text.properties().testFlag(QLowEnergyCharacteristic::Read))
        steps_.read(service, text, [this, where](bool good, const QByteArray& value) {
            if (!good)
                return;
            info_.*where = QString::fromUtf8(value.split(0).front()).trimmed(); // some end with a zero
            events_.info(info_);
        });
}

void Connection::tellBattery(const QByteArray& value)
{
    const int percent = value.isEmpty() ? -1 : static_cast<unsigned char>(value.front());
    if (percent < 0 || percent > 100 || info_.battery == percent)
        return;
    info_.battery = percent;
    if (phase_ == Phase::Streaming)
        events_.info(info_);
}

} // namespace fleetrung::ble
