// The D-Bus objects under "/": what the daemon of a real system shows of its adapter, devices and attributes, as
// org.freedesktop.DBus.ObjectManager, Properties and Introspectable tell it.
#pragma once

#include <map>

#include <QDBusConnection>
#include <QDBusMessage>
#include <QDBusObjectPath>
#include <QDBusVirtualObject>
#include <QMap>
#include <QVariantMap>

namespace fleetrung::demo
{

using Interfaces = QMap<QString, QVariantMap>; ///< interface -> its properties
using ManagedObjects = QMap<QDBusObjectPath, Interfaces>;

class ObjectTree;

/// One object. It is seen on the bus from show() to hide().
class Object
{
public:
    Object(ObjectTree& tree, QString path) : tree_(tree), path_(std::move(path)) {}
    virtual ~Object() { hide(); }
    Object(const Object&) = delete;
    Object& operator=(const Object&) = delete;

    [[nodiscard]] const QString& path() const { return path_; }
    [[nodiscard]] virtual Interfaces interfaces() const = 0;
    /// Answers a method call, now or later; false: there is no such method.
    virtual bool call(const QDBusMessage& message) = 0;
    /// False: no such property, or it cannot be set.
    virtual bool setProperty(const QString& /*property*/, const QVariant& /*value*/) { return false; }

    void show();
    void hide();
    [[nodiscard]] bool shown() const { return shown_; }

protected:
    void changed(const QString& interface, const QVariantMap& properties, const QStringList& gone = {});
    void answer(const QDBusMessage& message, const QVariantList& values = {}) const;
    void refuse(const QDBusMessage& message, const QString& error, const QString& text) const;

private:
    ObjectTree& tree_;
    QString path_;
    bool shown_ = false;
    QStringList shownInterfaces_; ///< kept, since a destructor can no longer ask for them
};

class ObjectTree : public QDBusVirtualObject
{
public:
    explicit ObjectTree(QDBusConnection bus);

    [[nodiscard]] QString introspect(const QString& path) const override;
    bool handleMessage(const QDBusMessage& message, const QDBusConnection& connection) override;

private:
    friend class Object;
    [[nodiscard]] ManagedObjects managedObjects() const;
    void emitSignal(const QString& path, const QString& interface, const QString& name, const QVariantList& values);

    QDBusConnection bus_;
    std::map<QString, Object*> objects_;
};

} // namespace fleetrung::demo

Q_DECLARE_METATYPE(fleetrung::demo::Interfaces)
Q_DECLARE_METATYPE(fleetrung::demo::ManagedObjects)
