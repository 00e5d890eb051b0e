#include "demo/sensor/bluez/object_tree.hpp"

#include <set>

#include <QDBusMetaType>

namespace fleetrung::demo
{
namespace
{

const QString objectManager = QStringLiteral("org.freedesktop.DBus.ObjectManager");
const QString propertiesInterface = QStringLiteral("org.freedesktop.DBus.Properties");

/// org.freedesktop.DBus.Properties of one object; a message without type where the call is none of them.
QDBusMessage propertyAnswer(const QDBusMessage& message, Object& object)
{
    const auto interfaces = object.interfaces();
    const auto interface = message.arguments().value(0).toString();
    const auto property = message.arguments().value(1).toString();
    if (!interfaces.contains(interface)) {
        return message.createErrorReply(QDBusError::InvalidArgs, "no such interface: " + interface);
    }
    const auto properties = interfaces.value(interface);
    if (message.member() == "GetAll") {
        return message.createReply(QVariant(properties));
    }
    if (!properties.contains(property)) {
        return message.createErrorReply(QDBusError::InvalidArgs, "no such property: " + property);
    }
    if (message.member() == "Get") {
        return message.createReply(QVariant::fromValue(QDBusVariant(properties.value(property))));
    }
    const auto value = message.arguments().value(2).value<QDBusVariant>().variant();
    return object.setProperty(property, value)
               ? message.createReply()
               : message.createErrorReply(QDBusError::PropertyReadOnly, property + " cannot be set");
}

} // namespace

void Object::show()
{
    if (shown_) {
        return;
    }
    shown_ = true;
    tree_.objects_[path_] = this;
    shownInterfaces_ = interfaces().keys();
    tree_.emitSignal("/", objectManager, "InterfacesAdded",
                     {QVariant::fromValue(QDBusObjectPath(path_)), QVariant::fromValue(interfaces())});
}

void Object::hide()
{
    if (!shown_) {
        return;
    }
    shown_ = false;
    tree_.objects_.erase(path_);
    tree_.emitSignal("/", objectManager, "InterfacesRemoved",
                     {QVariant::fromValue(QDBusObjectPath(path_)), shownInterfaces_});
}

void Object::changed(const QString& interface, const QVariantMap& properties, const QStringList& gone)
{
    if (shown_) {
        tree_.emitSignal(path_, propertiesInterface, "PropertiesChanged", {interface, properties, gone});
    }
}

void Object::answer(const QDBusMessage& message, const QVariantList& values) const
{
    tree_.bus_.send(message.createReply(values));
}

void Object::refuse(const QDBusMessage& message, const QString& error, const QString& text) const
{
    tree_.bus_.send(message.createErrorReply(error, text));
}

ObjectTree::ObjectTree(QDBusConnection bus) : bus_(std::move(bus))
{
    qDBusRegisterMetaType<Interfaces>();
    qDBusRegisterMetaType<ManagedObjects>();
    bus_.registerVirtualObject("/", this, QDBusConnection::SingleNode);
    bus_.registerVirtualObject("/org/bluez", this, QDBusConnection::SubPath);
}

void ObjectTree::emitSignal(const QString& path, const QString& interface, const QString& name,
                            const QVariantList& values)
{
    auto signal = QDBusMessage::createSignal(path, interface, name);
    signal.setArguments(values);
    bus_.send(signal);
}

ManagedObjects ObjectTree::managedObjects() const
{
    ManagedObjects all;
    for (const auto& [path, object] : objects_) {
        all[QDBusObjectPath(path)] = object->interfaces();
    }
    return all;
}

bool ObjectTree::handleMessage(const QDBusMessage& message, const QDBusConnection& connection)
{
    if (message.path() == "/" && message.interface() == objectManager && message.member() == "GetManagedObjects") {
        return connection.send(message.createReply(QVariant::fromValue(managedObjects())));
    }
    const auto found = objects_.find(message.path());
    if (found == objects_.end()) {
        return false;
    }
    if (message.interface() == propertiesInterface) {
        return connection.send(propertyAnswer(message, *found->second));
    }
    return found->second->call(message);
}

QString ObjectTree::introspect(const QString& path) const
{
    QString xml;
    const auto found = objects_.find(path);
    if (found != objects_.end()) {
        const auto interfaces = found->second->interfaces();
        for (const auto& interface : interfaces.keys()) {
            xml += "<interface name=\"" + interface + "\"/>";
        }
    }
    std::set<QString> children;
    const auto above = path == "/" ? path : path + "/";
    for (const auto& [each, object] : objects_) {
        if (each.startsWith(above)) {
            children.insert(each.mid(above.size()).section('/', 0, 0));
        }
    }
    for (const auto& child : children) {
        xml += "<node name=\"" + child + "\"/>";
    }
    return xml;
}

} // namespace fleetrung::demo
