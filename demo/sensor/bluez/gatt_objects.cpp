#include "demo/sensor/bluez/gatt_objects.hpp"

namespace fleetrung::demo
{
namespace
{

const QString serviceInterface = QStringLiteral("org.bluez.GattService1");
const QString characteristicInterface = QStringLiteral("org.bluez.GattCharacteristic1");
const QString descriptorInterface = QStringLiteral("org.bluez.GattDescriptor1");

/// One part of a path: "service0010".
QString part(const char* kind, int handle)
{
    return QStringLiteral("/%1%2").arg(kind).arg(handle, 4, 16, QChar('0'));
}

class GattService : public Object
{
public:
    GattService(ObjectTree& tree, const QString& devicePath, int handle, QString uuid)
        : Object(tree, devicePath + part("service", handle)), devicePath_(devicePath), uuid_(std::move(uuid))
    {
    }

    [[nodiscard]] Interfaces interfaces() const override
    {
        return {{serviceInterface,
                 {{"UUID", uuid_},
                  {"Primary", true},
                  {"Device", QVariant::fromValue(QDBusObjectPath(devicePath_))},
                  {"Includes", QVariant::fromValue(QList<QDBusObjectPath>())}}}};
    }
    bool call(const QDBusMessage& /*message*/) override { return false; }

private:
    QString devicePath_, uuid_;
};

/// The client characteristic configuration (0x2902): read as it stands, written only by StartNotify and StopNotify.
class ClientConfiguration : public Object
{
public:
    ClientConfiguration(ObjectTree& tree, const GattCharacteristic& owner, int handle)
        : Object(tree, owner.path() + part("desc", handle)), owner_(owner)
    {
    }

    [[nodiscard]] Interfaces interfaces() const override
    {
        return {{descriptorInterface,
                 {{"UUID", "00002902-0000-1000-8000-00805f9b34fb"},
                  {"Characteristic", QVariant::fromValue(QDBusObjectPath(owner_.path()))},
                  {"Value", value()}}}};
    }

    bool call(const QDBusMessage& message) override
    {
        if (message.member() == "ReadValue") {
            answer(message, {value()});
            return true;
        }
        if (message.member() == "WriteValue") {
            refuse(message, "org.bluez.Error.NotPermitted", "Write not permitted");
            return true;
        }
        return false;
    }

private:
    [[nodiscard]] QByteArray value() const { return {owner_.hasListeners() ? "\x01\x00" : "\x00\x00", 2}; }

    const GattCharacteristic& owner_;
};

} // namespace

GattCharacteristic::GattCharacteristic(ObjectTree& tree, const QString& servicePath, int handle, QString serviceUuid,
                                       CharacteristicLayout layout, const GattHost& host)
    : Object(tree, servicePath + part("char", handle)), servicePath_(servicePath), serviceUuid_(std::move(serviceUuid)),
      layout_(std::move(layout)), host_(host)
{
}

Interfaces GattCharacteristic::interfaces() const
{
    QVariantMap properties{{"UUID", layout_.uuid},
                           {"Service", QVariant::fromValue(QDBusObjectPath(servicePath_))},
                           {"Flags", layout_.flags},
                           {"Value", layout_.value}};
    if (layout_.notifies()) {
        properties["Notifying"] = notifying_;
    }
    return {{characteristicInterface, properties}};
}

bool GattCharacteristic::call(const QDBusMessage& message)
{
    const auto method = message.member();
    if (method == "StartNotify") {
        startNotify(message);
    } else if (method == "StopNotify") {
        stopNotify(message);
    } else if (method == "ReadValue") {
        read(message);
    } else if (method == "WriteValue") {
        write(message);
    } else {
        return false;
    }
    return true;
}

/// False, and refused, where the attribute cannot be used now.
bool GattCharacteristic::ready(const QDBusMessage& message) const
{
    if (!host_.connected()) {
        refuse(message, "org.bluez.Error.Failed", "Not connected");
        return false;
    }
    if (!host_.mayUse()) {
        refuse(message, "org.bluez.Error.NotPermitted", "Not paired");
        return false;
    }
    return true;
}

void GattCharacteristic::startNotify(const QDBusMessage& message)
{
    ++host_.counts->startNotify;
    if (!layout_.notifies()) {
        refuse(message, "org.bluez.Error.NotSupported", "Operation is not supported");
        return;
    }
    if (host_.connected() && !ready(message)) {
        return;
    }
    // Without a link the session is kept for when it comes; a second call of the same client changes nothing.
    if (!listeners_.contains(message.service())) {
        listeners_ << message.service();
    }
    answer(message);
    setNotifying();
}

void GattCharacteristic::stopNotify(const QDBusMessage& message)
{
    ++host_.counts->stopNotify;
    if (!listeners_.contains(message.service())) {
        refuse(message, "org.bluez.Error.Failed", "No notify session started");
        return;
    }
    answer(message);
    clientLeft(message.service());
}

void GattCharacteristic::clientLeft(const QString& client)
{
    listeners_.removeAll(client);
    setNotifying();
}

void GattCharacteristic::listenersForgotten()
{
    listeners_.clear();
    notifying_ = false;
}

void GattCharacteristic::setNotifying()
{
    if (notifying_ == hasListeners()) {
        return;
    }
    notifying_ = hasListeners();
    changed(characteristicInterface, {{"Notifying", notifying_}});
}

void GattCharacteristic::read(const QDBusMessage& message)
{
    ++host_.counts->reads;
    if (!ready(message)) {
        return;
    }
    if (!layout_.flags.contains("read")) {
        refuse(message, "org.bluez.Error.NotPermitted", "Read not permitted");
        return;
    }
    answer(message, {layout_.value});
}

void GattCharacteristic::write(const QDBusMessage& message)
{
    ++host_.counts->writes;
    if (!ready(message)) {
        return;
    }
    if (!layout_.flags.contains("write") && !layout_.flags.contains("write-without-response")) {
        refuse(message, "org.bluez.Error.NotPermitted", "Write not permitted");
        return;
    }
    answer(message);
    host_.written(serviceUuid_, layout_.uuid, message.arguments().value(0).toByteArray());
}

void GattCharacteristic::notify(const QByteArray& value)
{
    layout_.value = value;
    if (hasListeners() && host_.connected()) {
        changed(characteristicInterface, {{"Value", value}});
    }
}

GattObjects::GattObjects(ObjectTree& tree, const QString& devicePath, const std::vector<ServiceLayout>& services,
                         const GattHost& host)
{
    int handle = 0x10;
    for (const auto& service : services) {
        const auto& servicePath =
            objects_.emplace_back(std::make_unique<GattService>(tree, devicePath, handle++, service.uuid))->path();
        for (const auto& layout : service.characteristics) {
            auto made = std::make_unique<GattCharacteristic>(tree, servicePath, handle, service.uuid, layout, host);
            handle += 2; // declaration and value
            auto* const characteristic = made.get();
            characteristics_.push_back(characteristic);
            objects_.push_back(std::move(made));
            if (layout.notifies()) {
                objects_.push_back(std::make_unique<ClientConfiguration>(tree, *characteristic, handle++));
            }
        }
    }
}

void GattObjects::show()
{
    for (const auto& object : objects_) {
        object->show();
    }
}

void GattObjects::hide()
{
    for (const auto& object : objects_) {
        object->hide();
    }
}

GattCharacteristic* GattObjects::find(const QString& service, const QString& characteristic)
{
    for (auto* each : characteristics_) {
        if (each->serviceUuid() == service && each->uuid() == characteristic) {
            return each;
        }
    }
    return nullptr;
}

void GattObjects::clientLeft(const QString& client)
{
    for (auto* each : characteristics_) {
        each->clientLeft(client);
    }
}

void GattObjects::listenersForgotten()
{
    for (auto* each : characteristics_) {
        each->listenersForgotten();
    }
}

} // namespace fleetrung::demo
