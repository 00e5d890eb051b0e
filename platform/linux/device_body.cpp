// A desk has nothing to shake. The screen is kept on by the Inhibit call of the freedesktop.org idle inhibition
// service.
#include "mobile/feedback/device_body.hpp"

#include <optional>

#include <QDBusConnection>
#include <QDBusMessage>
#include <QDBusPendingCallWatcher>
#include <QDBusPendingReply>

namespace fleetrung::feedback
{
namespace
{

QDBusMessage call(const char* method)
{
    return QDBusMessage::createMethodCall(QStringLiteral("org.freedesktop.ScreenSaver"),
                                          QStringLiteral("/org/freedesktop/ScreenSaver"),
                                          QStringLiteral("org.freedesktop.ScreenSaver"), QString::fromLatin1(method));
}

class Body : public DeviceBody
{
public:
    [[nodiscard]] bool canShake() const override { return false; }
    void shake(const std::vector<int>&) override {}

    void keepAwake(bool awake) override
    {
        if (awake == awake_)
            return;
        awake_ = awake;
        if (!QDBusConnection::sessionBus().isConnected()) // no desk environment: nothing darkens the screen
            return;
        if (!awake)
            return release();
        auto inhibit = call("Inhibit");
        inhibit << QStringLiteral("Fleetrung") << QStringLiteral("a set is under way");
        asked_ = std::make_unique<QDBusPendingCallWatcher>(QDBusConnection::sessionBus().asyncCall(inhibit));
        QObject::connect(asked_.get(), &QDBusPendingCallWatcher::finished, [this] {
            const QDBusPendingReply<quint32> reply = *asked_;
            if (reply.isValid())
                cookie_ = reply.value();
            if (!awake_) // over before the answer came
                release();
        });
    }

private:
    void release()
    {
        if (!cookie_)
            return;
        auto uninhibit = call("UnInhibit");
        uninhibit << *cookie_;
        QDBusConnection::sessionBus().send(uninhibit);
        cookie_.reset();
    }

    bool awake_ = false;
    std::optional<quint32> cookie_;
    std::unique_ptr<QDBusPendingCallWatcher> asked_;
};

} // namespace

std::unique_ptr<DeviceBody> deviceBody()
{
    return std::make_unique<Body>();
}

} // namespace fleetrung::feedback
