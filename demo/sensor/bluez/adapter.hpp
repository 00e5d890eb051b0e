// org.bluez.Adapter1: power and discovery. Also the agent and profile managers that Qt speaks to before it pairs.
#pragma once

#include <functional>
#include <vector>

#include <QObject>
#include <QTimer>

#include "demo/sensor/bluez/object_tree.hpp"

namespace fleetrung::demo
{

class Device;

/// Takes and forgets agents and profiles: the sensor has neither display nor keys.
class Managers : public Object
{
public:
    explicit Managers(ObjectTree& tree) : Object(tree, "/org/bluez") {}
    [[nodiscard]] Interfaces interfaces() const override;
    bool call(const QDBusMessage& message) override;
};

class Adapter : public QObject, public Object
{
public:
    Adapter(ObjectTree& tree, std::vector<Device*>& devices);

    [[nodiscard]] bool powered() const { return powered_ && shown(); }
    [[nodiscard]] bool discovering() const { return !searchers_.isEmpty(); }
    void setPowered(bool on);
    void plugOut();
    void plugIn();
    void clientLeft(const QString& client);

    [[nodiscard]] Interfaces interfaces() const override;
    bool call(const QDBusMessage& message) override;
    bool setProperty(const QString& property, const QVariant& value) override;

private:
    void startDiscovery(const QDBusMessage& message);
    void stopDiscovery(const QDBusMessage& message);
    void removeDevice(const QDBusMessage& message);
    void setSearchers(const QStringList& searchers);

    std::vector<Device*>& devices_;
    QTimer air_; ///< ticks while somebody searches
    QStringList searchers_;
    bool powered_ = true;
};

} // namespace fleetrung::demo
