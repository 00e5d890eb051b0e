#include "demo/sensor/bluez/device.hpp"

#include "demo/sensor/bluez/adapter.hpp"

namespace fleetrung::demo
{
namespace
{

const QString deviceInterface = QStringLiteral("org.bluez.Device1");
const QString failed = QStringLiteral("org.bluez.Error.Failed");

QString pathOf(const Adapter& adapter, QString address)
{
    return adapter.path() + "/dev_" + address.replace(':', '_');
}

} // namespace

Device::Device(ObjectTree& tree, const Adapter& adapter, Identity identity, const std::vector<ServiceLayout>& services,
               DeviceEvents events)
    : Object(tree, pathOf(adapter, identity.address)), adapter_(adapter), identity_(std::move(identity)),
      events_(std::move(events)), host_{[this] { return connected_; },
                                        [this] { return faults_.pairing != PairingFault::Demanded || paired_; },
                                        [this](const auto& service, const auto& characteristic, const auto& bytes) {
                                            events_.written(service, characteristic, bytes);
                                        },
                                        &counts_},
      attributes_(tree, path(), services, host_)
{
    for (auto* timer : {&resolving_, &fading_}) {
        timer->setSingleShot(true);
    }
    QObject::connect(&resolving_, &QTimer::timeout, this, [this] { setResolved(); });
    QObject::connect(&fading_, &QTimer::timeout, this, [this] {
        if (!connected_ && !kept_) {
            hide();
        }
    });
}

Interfaces Device::interfaces() const
{
    QVariantMap properties{
        {"Address", identity_.address},
        {"AddressType", "random"},
        {"Alias", identity_.name.isEmpty() ? QString(identity_.address).replace(':', '-') : identity_.name},
        {"Adapter", QVariant::fromValue(QDBusObjectPath(adapter_.path()))},
        {"UUIDs", identity_.services},
        {"Connected", connected_},
        {"ServicesResolved", resolved_},
        {"Paired", paired_ || faults_.staleBond},
        {"Bonded", paired_ || faults_.staleBond},
        {"Trusted", false},
        {"Blocked", false},
        {"LegacyPairing", false}};
    if (!identity_.name.isEmpty()) {
        properties["Name"] = identity_.name;
    }
    if (heard_) {
        properties["RSSI"] = QVariant::fromValue(static_cast<qint16>(identity_.signal));
    }
    return {{deviceInterface, properties}};
}

bool Device::call(const QDBusMessage& message)
{
    const auto method = message.member();
    if (method == "Connect") {
        connectCall(message);
    } else if (method == "Disconnect") {
        ++counts_.disconnectCalls;
        answer(message);
        setConnected(false);
    } else if (method == "Pair") {
        pair(message);
    } else if (method == "CancelPairing") {
        answer(message);
    } else {
        return false;
    }
    return true;
}

void Device::advertise()
{
    if (!present_ || connected_) {
        return;
    }
    // A little up and down, as signal strength is never steady; the same in every run.
    static constexpr int steps[] = {0, 1, -1, 2, 0, -2};
    identity_.signal += steps[++heardTimes_ % 6];
    heard_ = true;
    fading_.start(faults_.forgottenAfter);
    if (!shown()) {
        show();
    } else {
        changed(deviceInterface, {{"RSSI", QVariant::fromValue(static_cast<qint16>(identity_.signal))}});
    }
}

void Device::searchEnded()
{
    if (heard_) {
        heard_ = false;
        changed(deviceInterface, {}, {"RSSI"});
    }
}

void Device::connectCall(const QDBusMessage& message)
{
    ++counts_.connectCalls;
    if (!adapter_.powered()) {
        refuse(message, "org.bluez.Error.NotReady", "Resource Not Ready");
    } else if (connecting_) {
        refuse(message, "org.bluez.Error.InProgress", "Operation already in progress");
    } else if (connected_) {
        answer(message);
    } else {
        connecting_ = kept_ = true;
        QTimer::singleShot(present_ ? faults_.connecting : faults_.outOfReach, this,
                           [this, message] { finishConnect(message); });
    }
}

void Device::finishConnect(const QDBusMessage& message)
{
    connecting_ = false;
    if (!present_ || !adapter_.powered() || faults_.refuse != 0) {
        faults_.refuse -= present_ && faults_.refuse > 0 ? 1 : 0;
        refuse(message, failed, "le-connection-abort-by-local");
        return;
    }
    setConnected(true);
    if (faults_.staleBond) {
        QTimer::singleShot(faults_.connecting, this, [this, message] {
            drop();
            refuse(message, failed, "le-connection-abort-by-remote");
        });
        return;
    }
    answer(message);
}

void Device::setConnected(bool on)
{
    if (connected_ == on) {
        return;
    }
    connected_ = on;
    resolving_.stop();
    if (on) {
        ++counts_.connections;
        changed(deviceInterface, {{"Connected", true}});
        if (!faults_.staleBond) {
            resolving_.start(faults_.discovering);
        }
    } else {
        if (resolved_) {
            resolved_ = false;
            changed(deviceInterface, {{"ServicesResolved", false}});
        }
        changed(deviceInterface, {{"Connected", false}});
    }
    events_.link(on);
}

void Device::setResolved()
{
    resolved_ = true;
    attributes_.show();
    changed(deviceInterface, {{"ServicesResolved", true}});
}

void Device::pair(const QDBusMessage& message)
{
    ++counts_.pairCalls;
    if (!connected_ || faults_.pairing == PairingFault::Fails || faults_.staleBond) {
        drop();
        refuse(message, "org.bluez.Error.AuthenticationFailed", "Authentication Failed");
        return;
    }
    paired_ = true;
    changed(deviceInterface, {{"Paired", true}, {"Bonded", true}});
    answer(message);
}

void Device::drop()
{
    if (connected_) {
        ++counts_.linksLost;
        setConnected(false);
    }
}

void Device::vanish()
{
    present_ = false;
    drop();
}

void Device::forget()
{
    paired_ = kept_ = heard_ = faults_.staleBond = false;
    attributes_.listenersForgotten();
    attributes_.hide();
    hide();
}

void Device::connectedFromBefore()
{
    kept_ = connected_ = true;
    show();
    setResolved();
    events_.link(true);
}

void Device::clientLeft(const QString& client)
{
    attributes_.clientLeft(client);
}

} // namespace fleetrung::demo
