// Services, characteristics and descriptors of one device as D-Bus objects. Error names and the life of a notify
// session (one a client, kept over a lost link, ended with the client) are those of BlueZ 5.66, src/gatt-client.c
// [memory].
#pragma once

#include <functional>
#include <memory>
#include <vector>

#include "demo/sensor/bluez/counts.hpp"
#include "demo/sensor/bluez/gatt_layout.hpp"
#include "demo/sensor/bluez/object_tree.hpp"

namespace fleetrung::demo
{

/// What the attributes need of the device they belong to.
struct GattHost {
    std::function<bool()> connected;
    std::function<bool()> mayUse; ///< false: the sensor demands pairing first
    std::function<void(const QString& service, const QString& characteristic, const QByteArray& bytes)> written;
    Counts* counts = nullptr;
};

class GattCharacteristic : public Object
{
public:
    GattCharacteristic(ObjectTree& tree, const QString& servicePath, int handle, QString serviceUuid,
                       CharacteristicLayout layout, const GattHost& host);

    [[nodiscard]] const QString& uuid() const { return layout_.uuid; }
    [[nodiscard]] const QString& serviceUuid() const { return serviceUuid_; }
    [[nodiscard]] bool hasListeners() const { return !listeners_.isEmpty(); }
    void setValue(const QByteArray& value) { layout_.value = value; }
    /// To those that listen.
    void notify(const QByteArray& value);
    void clientLeft(const QString& client);
    void listenersForgotten(); ///< the device was removed

    [[nodiscard]] Interfaces interfaces() const override;
    bool call(const QDBusMessage& message) override;

private:
    void startNotify(const QDBusMessage& message);
    void stopNotify(const QDBusMessage& message);
    void read(const QDBusMessage& message);
    void write(const QDBusMessage& message);
    void setNotifying();
    [[nodiscard]] bool ready(const QDBusMessage& message) const;

    QString servicePath_, serviceUuid_;
    CharacteristicLayout layout_;
    const GattHost& host_;
    QStringList listeners_; ///< bus names
    bool notifying_ = false;
};

/// All attributes of a device. Shown once the sensor's services are known.
class GattObjects
{
public:
    GattObjects(ObjectTree& tree, const QString& devicePath, const std::vector<ServiceLayout>& services,
                const GattHost& host);
    void show();
    void hide();
    [[nodiscard]] GattCharacteristic* find(const QString& service, const QString& characteristic);
    void clientLeft(const QString& client);
    void listenersForgotten();

private:
    std::vector<std::unique_ptr<Object>> objects_;
    std::vector<GattCharacteristic*> characteristics_;
};

} // namespace fleetrung::demo
