#include "demo/sensor/bluez/adapter.hpp"

#include "demo/sensor/bluez/device.hpp"

namespace fleetrung::demo
{
namespace
{

const QString adapterInterface = QStringLiteral("org.bluez.Adapter1");

} // namespace

Interfaces Managers::interfaces() const
{
    return {{"org.bluez.AgentManager1", {}}, {"org.bluez.ProfileManager1", {}}};
}

bool Managers::call(const QDBusMessage& message)
{
    answer(message);
    return true;
}

Adapter::Adapter(ObjectTree& tree, std::vector<Device*>& devices) : Object(tree, "/org/bluez/hci0"), devices_(devices)
{
    QObject::connect(&air_, &QTimer::timeout, this, [this] {
        for (auto* device : devices_) {
            device->advertise();
        }
    });
    air_.setInterval(Device::advertisingPeriod);
}

Interfaces Adapter::interfaces() const
{
    return {{adapterInterface,
             {{"Address", "02:00:00:00:00:01"},
              {"AddressType", "public"},
              {"Name", "invented"},
              {"Alias", "invented"},
              {"Class", QVariant::fromValue<quint32>(0)},
              {"Powered", powered_},
              {"Discoverable", false},
              {"DiscoverableTimeout", QVariant::fromValue<quint32>(0)},
              {"Pairable", true},
              {"PairableTimeout", QVariant::fromValue<quint32>(0)},
              {"Discovering", discovering()},
              {"UUIDs", QStringList{}}}}};
}

bool Adapter::call(const QDBusMessage& message)
{
    const auto method = message.member();
    if (method == "StartDiscovery") {
        startDiscovery(message);
    } else if (method == "StopDiscovery") {
        stopDiscovery(message);
    } else if (method == "SetDiscoveryFilter") {
        answer(message);
    } else if (method == "RemoveDevice") {
        removeDevice(message);
    } else {
        return false;
    }
    return true;
}

bool Adapter::setProperty(const QString& property, const QVariant& value)
{
    if (property != "Powered") {
        return false;
    }
    setPowered(value.toBool());
    return true;
}

void Adapter::setPowered(bool on)
{
    if (powered_ == on) {
        return;
    }
    powered_ = on;
    if (!on) {
        setSearchers({});
        for (auto* device : devices_) {
            device->drop();
        }
    }
    changed(adapterInterface, {{"Powered", on}});
}

void Adapter::plugOut()
{
    setSearchers({});
    for (auto* device : devices_) {
        device->drop();
        device->forget();
    }
    hide();
}

void Adapter::plugIn()
{
    powered_ = true;
    show();
}

void Adapter::startDiscovery(const QDBusMessage& message)
{
    if (!powered_) {
        refuse(message, "org.bluez.Error.NotReady", "Resource Not Ready");
        return;
    }
    if (searchers_.contains(message.service())) {
        refuse(message, "org.bluez.Error.InProgress", "Operation already in progress");
        return;
    }
    answer(message);
    setSearchers(searchers_ + QStringList{message.service()});
}

void Adapter::stopDiscovery(const QDBusMessage& message)
{
    if (!searchers_.contains(message.service())) {
        refuse(message, "org.bluez.Error.Failed", "No discovery started");
        return;
    }
    answer(message);
    clientLeft(message.service());
}

void Adapter::removeDevice(const QDBusMessage& message)
{
    const auto path = message.arguments().value(0).value<QDBusObjectPath>().path();
    for (auto* device : devices_) {
        if (device->path() == path && device->shown()) {
            device->drop();
            device->forget();
            answer(message);
            return;
        }
    }
    refuse(message, "org.bluez.Error.DoesNotExist", "Does Not Exist");
}

void Adapter::clientLeft(const QString& client)
{
    auto left = searchers_;
    left.removeAll(client);
    setSearchers(left);
}

void Adapter::setSearchers(const QStringList& searchers)
{
    const bool before = discovering();
    searchers_ = searchers;
    if (before == discovering()) {
        return;
    }
    changed(adapterInterface, {{"Discovering", discovering()}});
    if (discovering()) {
        air_.start();
        return;
    }
    air_.stop();
    for (auto* device : devices_) {
        device->searchEnded();
    }
}

} // namespace fleetrung::demo
